import type { moduleWords as english } from '../../en/pictures/module.ts';

export const moduleWords: typeof english = {
  day: 'Día {day} de {days}',
  noDays: 'Sin guardar',
  rain: 'Lluvia hasta ahora: {rain}',
  round: {
    one: '{n} módulo redondo de {mass}',
    many: '{n} de módulos redondos de {mass}',
    other: '{n} módulos redondos de {mass}',
  },
  conventional: {
    one: '{n} módulo largo de {mass}',
    many: '{n} de módulos largos de {mass}',
    other: '{n} módulos largos de {mass}',
  },
  wagon: { one: '{n} carreta de {mass}', many: '{n} de carretas de {mass}', other: '{n} carretas de {mass}' },
  moistureBoth: 'Humedad: {came} a {goes}',
  feet: '{n} pies',
  captionPieces: 'Un copo, semilla o gota vale {tuft}; una pizca de basura, {bit}.',
  captionShort: 'Copo, semilla o gota: {tuft}. Pizca: {bit}.',
  captionRings: 'Cada anillo del centro: {degrees} más.',
  captionLimits: 'Muescas dobles: límites publicados.',
  captionPace: 'Una paca pasa en {seconds} segundos.',
  ringUs: '5 °F',
  ringMetric: '3 °C',
  core: 'Centro',
  rainSoFar: 'Lluvia hasta ahora',
  dayLabel: 'Día guardado',
  verdict: 'Veredicto',
  moistureInLabel: 'Humedad al llegar',
  moistureOutLabel: 'Humedad al salir a la despepitadora',
  eachLabel: 'En cada uno',
  countLabel: 'En el patio',
  seeRound:
    'Un módulo redondo envuelto espera en el patio con una sonda en el centro; detrás están los demás de la granja.',
  seeConventional:
    'Un módulo largo, apisonado y con lomo, espera en el patio con una sonda en el centro; detrás están los demás.',
  seeWagon: 'Una carreta colmada de algodón en hueso espera a la despepitadora con una sonda; detrás están las demás.',
  covers: {
    good: 'Su lona está sana y la lluvia escurre.',
    poor: 'Su lona está rota y entra la lluvia.',
    none: 'No tiene lona.',
  },
  seeRain: 'La lluvia cuelga de la nube día por día: {rain} hasta ahora, en el día {day} de {days}.',
  seeCore: 'El centro está a {core}: {verdict}. Las reglas publicadas dicen despepitar pronto a {soon} y ya a {now}.',
};
