import type { climates as englishClimates, eras as englishEras } from '../en/climates.ts';

export const climates: typeof englishClimates = {
  coastalPlain: 'Llanura costera',
  midSouth: 'Ribera del Sur Medio',
  highPlains: 'Llanos altos',
  lowDesert: 'Desierto bajo',
  centralValley: 'Valle central',
};

export const eras: typeof englishEras = {
  present: 'El presente',
  thirties: 'Los años treinta',
};
