import type { QuestionWords } from '../../en/ask/question-words.ts';

export const oneStaple: QuestionWords = {
  title: 'Un treintaidosavo más larga, ¿y qué?',
  about:
    '{farm}, temporada 1: la paca media de la cosecha, de longitud comercial {staple}, y la misma un treintaidosavo de pulgada más larga.',
  answers: {
    nothing: [
      'En dinero, nada: ningún mercado lo paga con este largo.',
      'Entre {least} y {most} por paca es todo lo que dan {markets} mercados.',
      'En la hilandería cuenta: según una vieja regla el hilo más fino sin esfuerzo pasa de {finestNow} a {finestThen}.',
    ],
    somewhere: [
      'Depende del mercado: de {least} a {most} por paca.',
      'En {none} de los {markets} da menos de un dólar: ahí este algodón ya es tan largo como piden.',
      'En la hilandería cuenta: según una vieja regla el hilo más fino sin esfuerzo pasa de {finestNow} a {finestThen}.',
    ],
    everywhere: [
      'Dinero en cada mercado: de {least} a {most} por paca.',
      'Los {markets} mercados lo pagan con este largo.',
      'En la hilandería también cuenta: según una vieja regla el hilo más fino sin esfuerzo pasa de {finestNow} a {finestThen}.',
    ],
  },
  limits: [
    'Una semilla de fibra más larga cuesta algo en otro lado: la tabla pone la variedad larga junto a la media, con menos fibra en sus bellotas.',
    'La regla del hilo más fino es de los años treinta, para algodón de la India: una dirección más que una promesa.',
  ],
  sides: ['Semilla media', 'Semilla larga'],
  numbers: { limit: 'Lo más fino que se hila con esta fibra' },
  decides: { stapleSlope: 'Hilo más fino por pulgada más de largo' },
};
