import type { card as english } from '../en/card.ts';

export const card: typeof english = {
  title: 'Tarjeta de temporada',
  toCard: 'La tarjeta de temporada: una página para imprimir o guardar',
  toTrace: 'El camino de vuelta: cuántas bellotas y plantas pide una costura',
  toCompare: 'Esta temporada junto a las elecciones propias de la granja',
  paidMeans:
    'Lo que se paga a la granja es lo que dan las pacas y la semilla, menos el despepite, la clasificación, el almacén y la pizca contratada.',
  chose: 'Lo elegido:',
  choseNothing: 'Todas las elecciones son las de la granja.',
  invented: 'Tarjeta de temporada de una granja inventada',
  own: 'Tarjeta de temporada de la granja propia de alguien',
  headline: 'Una bellota dio un retazo de {size} por lado.',
  noPatch: 'Esta temporada no dio ningún retazo.',
  setting: '{climate}, {acres}, temporada número {seed}. {weather}.',
  weatherYear: '{weather}, {year}',
  trueSize: 'A tamaño real donde la regla mide lo justo: imprimir al 100%.',
  halfSize: 'A mitad de tamaño donde la regla mide la mitad: imprimir al 100%.',
  /** Names that stand alone here, away from their station. */
  labels: { value: 'Valor de las pacas', left: 'Pagado a la granja', weight: 'Peso de la tela' } as Readonly<
    Record<string, string>
  >,
  closingIn: '{total} entraron: {list}.',
  closingOut: '{total} salieron: {list}. Sin explicar: {left}.',
  item: '{amount} {name}',
  rest: '× se apoya en la memoria o en una suposición.',
  link: 'Abre otra vez esta temporada, con todos sus números:',
  linkHere: 'Abre otra vez esta temporada, solo en este aparato:',
  print: 'Imprimir la tarjeta',
  savePicture: 'Guardar como imagen',
  pictureFailed: 'Aquí no se pudo hacer la imagen. Imprimir a un archivo da la misma página.',
  back: 'Volver a esta temporada',
  changeFarm: 'Cambiar esta granja',
  inWords: 'La tarjeta en palabras',
  numbers: 'La temporada en números',
  alt: 'La tarjeta de temporada como imagen: {headline} Lo mismo en palabras está abajo.',
  rests: 'Cada número abre su cálculo. Los que llevan una puntada en cruz se apoyan en la memoria o en una suposición.',
};
