import type { QuestionWords } from '../../en/ask/question-words.ts';

export const wetModule: QuestionWords = {
  title: '¿Cuánto cuesta un módulo mojado?',
  about:
    '{farm}: cosechado con {dry} de humedad o, con rocío, con {wet}; luego {days} días bajo una buena lona, en {seasons} de clima.',
  answers: {
    always: [
      'Cerca de {bale} por paca, y la granja termina con {money} {moneyWay}.',
      'Costó dinero en todas las temporadas. El algodón húmedo se calienta y su amarillo sube {yellowing} en el almacén: en la temporada 1 el color de la mayoría de las pacas pasa de {dryColor} a {wetColor}.',
      'El límite publicado para guardar es {limit} de humedad.',
    ],
    sometimes: [
      'Depende: costó dinero en {costs} de {seasons}.',
      'En promedio una paca vale {bale} {baleWay} y la granja termina con {money} {moneyWay}; el amarillo sube {yellowing} en el almacén.',
      'El límite publicado para guardar es {limit} de humedad.',
    ],
    never: [
      'Aquí casi nada: en ninguna temporada costó dinero.',
      'En promedio una paca vale {bale} {baleWay} y la granja termina con {money} {moneyWay}; el amarillo sube {yellowing} en el almacén.',
      'El límite publicado para guardar es {limit} de humedad.',
    ],
  },
  limits: [
    'La fibra húmeda también se rompe menos en el despepite; por eso parte de lo perdido vuelve como peso y longitud.',
    'El fuego y la pudrición en el módulo, y el tiempo que pierde el despepite, no tienen precio aquí.',
  ],
  sides: ['Cosechado seco', 'Cosechado con rocío'],
  numbers: {},
  decides: {
    yellowsAbove: 'Humedad desde la que el algodón amarillea',
    yellowing: 'Amarillo por punto y día',
    spindleWater: 'Agua de los husillos mojados',
  },
};
