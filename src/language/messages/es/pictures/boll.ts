import type { boll as english } from '../../en/pictures/boll.ts';

export const boll: typeof english = {
  green: '{days} de edad',
  openToday: 'Se abrió hoy',
  open: 'Abierta hace {days}',
  place: 'nudo {node}: {locks} gajos, {seeds} semillas',
  placeCut: 'nudo {node}, cortada: {locks} gajos, {seeds} semillas',
  placeShort: '{locks} gajos, {seeds} semillas',
  length: 'Fibras hasta hoy: {length}',
  wall: 'fibra cortada, {share} llena',
  lengthNote:
    'En el dibujo las fibras crecen parejo hasta su largo completo a los {days} del reloj de la bellota; solo ese final está publicado.',
  none: 'La planta dibujada no conserva ninguna bellota esta temporada.',
  rows: {
    elongated: 'El alargamiento termina, en el reloj de la bellota',
    boll: 'Bellota en grande',
    fibreLength: 'Sus fibras',
    fibreWall: 'Su pared, de una llena',
    open: 'Bellotas abiertas, todo el campo',
  },
  steps: {
    floweredOn: 'Su flor se abrió el',
    openedOn: 'Se abrió el',
    daysSince: 'Días desde entonces',
    node: 'Nudo',
    locks: 'Gajos',
    seeds: 'Semillas',
    clock: 'Su edad en el reloj de la bellota',
    fullLength: 'Fibras más largas de la variedad',
    lengthShare: 'Parte de esa longitud',
  },
};
