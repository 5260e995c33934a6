import type { follow as en } from '../en/follow.ts';

export const follow: typeof en = {
  choose: 'Seguir',
  all: 'Todas las partes',
  hint: 'Toque una banda, o elija una parte, para seguirla.',
  journey: '{part}: de dónde vino y dónde terminó, {scale}',
  station: 'Estación',
  account: 'Cuenta',
  came: 'Entró',
  went: 'Salió',
  share: 'Del total',
  sum: 'Todo junto',
};
