import type { card as english } from '../en/card.ts';

export const card: typeof english = {
  title: 'Tarjeta de temporada',
  toCard: 'La tarjeta de temporada: una página para imprimir o guardar',
};
