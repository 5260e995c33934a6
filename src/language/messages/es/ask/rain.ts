import type { QuestionWords } from '../../en/ask/question-words.ts';

export const rain: QuestionWords = {
  title: '¿Cuánto costó la lluvia?',
  about: '{farm}: {seasons}, cada una junto a sí misma sin una gota desde que abrió la primera bellota.',
  answers: {
    always: [
      'Cerca de {cost} por temporada, {share} de lo que se paga a la granja.',
      'En todas las temporadas la lluvia sobre bellotas abiertas costó dinero: de {least} a {most}.',
      'En promedio cayeron sobre ellas {rain}. La lluvia agrisa la fibra y se lleva algo de ella: una paca vale {bale} {baleWay}.',
    ],
    sometimes: [
      'Depende: en promedio {cost} por temporada, {share} de lo que se paga a la granja.',
      'El costo va de {least} a {most}; por debajo de cero, la lluvia hizo más bien que mal.',
      'En promedio cayeron {rain} sobre bellotas abiertas: una paca vale {bale} {baleWay}.',
    ],
    never: [
      'Nada: la lluvia hizo más bien que mal.',
      'Frente a un otoño seco la granja queda mejor en todas las temporadas; el costo va de {least} a {most}.',
      'En promedio cayeron {rain} sobre bellotas abiertas: una paca vale {bale} {baleWay}.',
    ],
  },
  limits: [
    'Cómo sigue el color a la lluvia es un supuesto nuestro, ajustado a promedios publicados.',
    'La pudrición de bellotas, la semilla que brota y los días sin poder cosechar no tienen precio aquí.',
  ],
  sides: ['Otoño seco', 'Como llovió'],
  numbers: {},
  decides: { graying: 'Gris por pulgada de lluvia', washedOut: 'Fibra perdida por pulgada de lluvia' },
  compareNote:
    'Ninguna decisión deja seco el cielo. El enlace muestra lo que sí se decide: esperar tres semanas más con las bellotas abiertas.',
};
