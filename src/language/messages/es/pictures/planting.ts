import type { planting as english } from '../../en/pictures/planting.ts';

export const planting: typeof english = {
  caption:
    '{length} de un surco, {seeds}; semillas y hondura, ampliadas. Tira: el aire del día; amarillo: su calor sobre {base}.',
  captionShort: '{length} de un surco; semillas ampliadas. Amarillo: calor del día sobre {base}.',
  feet: '{n}\u00a0ft',
  titles: {
    sowing: 'Hoy se siembra',
    lying: 'Día {day} en la tierra',
    upToday: 'Brotó hoy',
    up: 'Brotó hace {days}',
  },
  places: {
    sowing: '{seeds}, una semilla de cada celda del plato',
    lying: '{had} de {needs} para brotar',
    up: '{nodes} nudos',
  },
  opener: 'El disco que abre el surco rueda con el suelo, una vuelta por cada {length} del surco dibujado.',
  wheel: 'Las ruedas llevan la sembradora y cierran el surco, una vuelta por cada {length} del surco dibujado.',
  plate: 'El plato suelta una semilla de cada celda: {seeds}.',
  rolling: 'El disco y las ruedas giran con el suelo, tanto como pasa el surco.',
  tube: 'Cada semilla en el tubo es una semilla del surco.',
  sowing: 'La sembradora trabaja el {date}: {all} semillas en un día.',
  lying: 'La semilla está en la tierra el {date}. Necesita {needs} para brotar y ha tenido {had}.',
  up: 'El {date} ya brotaron las plantas: {up} de {all} semillas, {share}. Miden {height} y tienen {nodes} nudos.',
  air: 'La tira es un termómetro: muestra el aire, de la mínima a la máxima del día. El algodón crece con el calor sobre {base}. La temperatura del suelo no está en el modelo.',
  rows: {
    upShare: 'Parte que nació',
    base: 'El calor cuenta desde',
    low: 'Mínima del día',
    high: 'Máxima del día',
    heatNeeded: 'Calor que una plántula necesita para brotar',
    perLength: 'Semillas en el surco',
  },
};
