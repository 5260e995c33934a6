import type { follow as en } from '../en/follow.ts';

export const follow: typeof en = {
  choose: 'Seguir',
  all: 'Todas las partes',
  hint: 'Toque una banda, o elija una parte, para seguirla.',
  seedCame:
    'De la carga que llegó a la desmotadora, {share} en peso era semilla: {mass} con la fibra de una paca. Va a la bodega de semilla, y un molino de aceite saca de ella aceite, harina, cascarilla y línteres.',
  seedAsk: 'Pregunta: ¿adónde va la semilla?',
  left: '{part}: hasta aquí no llega nada; lo último salió en {station}.',
  toCome: '{part}: todavía nada; entra en {station}.',
  journey: '{part}: de dónde vino y dónde terminó, {scale}',
  station: 'Estación',
  account: 'Cuenta',
  came: 'Entró',
  went: 'Salió',
  share: 'Del total',
  sum: 'Todo junto',
};
