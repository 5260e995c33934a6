import type { momentWords as en } from '../../en/pictures/moment.ts';

/** Lo que se dice del momento que muestra un dibujo. */
export const momentWords: typeof en = {
  day: 'Día que se muestra',
  done: 'Trabajo que se muestra hecho',
  all: 'Todo lo que entra',
};
