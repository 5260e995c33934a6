import type { choice as english } from '../en/choice.ts';

export const choice: typeof english = {
  undo: 'Deshacer la última elección',
  undone: 'Se deshizo la última elección.',
  nothingLeft: 'No queda nada por deshacer.',
  notYet: 'Aquí se dice qué produjo cada cambio.',
  did: 'La última elección:',
  hardly: 'La última elección casi no cambió nada más adelante.',
  compareBoth: 'Las dos temporadas, lado a lado',
  downstream: 'Más adelante también cambió:',
};
