import type { choice as english } from '../en/choice.ts';

export const choice: typeof english = {
  undo: 'Deshacer la última elección',
  undone: 'Se deshizo la última elección.',
  nothingLeft: 'No queda nada por deshacer.',
  downstream: 'Más adelante, por esta elección:',
  hardly: 'Más adelante casi nada cambió por esta elección.',
  compareBoth: 'Comparar las dos',
};
