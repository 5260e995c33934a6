import type { bloom as english } from '../../en/pictures/bloom.ts';

export const bloom: typeof english = {
  titles: {
    upland: ['Blanca: abrió hoy', 'Rosa: su segundo día'],
    pima: ['Amarilla: abrió hoy', 'Roja: su segundo día'],
  },
  square: 'Abre en {days}',
  squareAge: 'Un cuadro de {days}',
  noSquare: 'Todavía no hay cuadros',
  notYet: 'el primero saldrá en la primera rama que da fruto',
  last: 'La planta dibujada se eligió al azar entre las que tienen una flor el último día que se muestra.',
  steps: {
    squareOn: 'Su cuadro apareció el',
    flowerOn: 'Su flor se abre el',
    age: 'Días desde entonces',
    left: 'Días que faltan',
    node: 'Nudo',
    place: 'Lugar en la rama, desde el tallo',
  },
};
