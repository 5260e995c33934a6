import type { QuestionWords } from '../../en/ask/question-words.ts';

export const whoGetsTheMoney: QuestionWords = {
  title: '¿Quién se queda con el dinero?',
  about: '{farm}, temporada 1: {bales}, con las cuentas hechas en el despepite.',
  answers: {
    seedPays: [
      'De cada paca llegan {left} a la granja, antes de lo que costó cultivarla.',
      'La fibra se vende en {lint} y la semilla en {seed}. El despepite cobra {ginning} y la oficina de clasificación {classing}; la semilla paga de sobra el despepite.',
      'La fibra de una bellota, que alcanza para un retazo de {patch} por lado, se vendió en {centsPerBoll} centavos.',
    ],
    seedFallsShort: [
      'De cada paca llegan {left} a la granja, antes de lo que costó cultivarla.',
      'La fibra se vende en {lint} y la semilla en {seed}. El despepite cobra {ginning} y la oficina de clasificación {classing}; aquí la semilla no paga el despepite.',
      'La fibra de una bellota, que alcanza para un retazo de {patch} por lado, se vendió en {centsPerBoll} centavos.',
    ],
  },
  limits: [
    'Semilla, fertilizante, agua, combustible, máquinas, tierra y salarios no están en el modelo.',
    'Lo que ganan la fábrica, quien estampa y la tienda con la tela tampoco está en el modelo.',
    'Los precios están mezclados: fibra de {lintYear}, semilla de {seedYear}, despepite de {ginYear}.',
  ],
  sides: ['Por una paca'],
  numbers: {},
  decides: { seedPrice: 'Precio de una tonelada de semilla', ginCharge: 'Cobro por despepitar una paca' },
};
