import type { workings as english } from '../en/workings.ts';

export const workings: typeof english = {
  show: '{value}, ver de dónde sale: {name}',
  heading: 'De dónde sale: {name}',
  close: 'Cerrar',
};
