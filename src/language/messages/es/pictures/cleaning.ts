import type { cleaningWords as english } from '../../en/pictures/cleaning.ts';

export const cleaningWords: typeof english = {
  suctionPipe: 'Tubo de succión',
  overflow: 'Sobrante',
  outWords: 'de la basura ya salió',
  short: { in: 'Entra', trash: 'Basura', cleaned: 'Al despepite', evaporated: 'Vapor' },
  turning: '{turns} vueltas por minuto, aquí {slowed} veces más lento',
  wheels: {
    disperser: 'Cilindros con púas del tragamódulos',
    cylinder: 'Cilindros con púas',
    extractorSaw: 'Cilindros de sierras',
    brush: 'Cepillos',
  },
  shows: '{part}: {rate}',
  caption: 'Copo o semilla: {tuft}; pizca de basura: {bit}. {rate}.',
  captionShort: 'Copo o semilla: {tuft}; pizca: {bit}. Ruedas {slowed} veces más lentas.',
  rows: {
    took: '{machine}: basura hasta ahora',
    overflow: 'Pasa de largo el alimentador y da otra vuelta',
    share: 'Basura que sale antes del despepite',
    piece: 'Un copo o semilla representa',
    bit: 'Una pizca de basura representa',
  },
  see: 'Cada máquina deja caer lo que saca en la canaleta de abajo. El distribuidor lleva más de lo que toma el alimentador: {overflow} pasan de largo y dan otra vuelta.',
  seeMost: 'La que más saca es {machine}: {mass} de la basura hasta ahora.',
};
