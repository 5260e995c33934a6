import type { QuestionWords } from '../../en/ask/question-words.ts';

export const byHand: QuestionWords = {
  title: '¿A mano, en los años treinta?',
  about: '{farm}, {area}, precios de {year}; al lado, una máquina de hoy en la llanura costera.',
  answers: {
    muchOfIt: [
      'Una paca eran {days} de pizca, por {balePay}.',
      'La pizca se pagaba por peso, {rate} por cien libras. Con {pounds} al día son {dayPay} por un día en el surco.',
      'Se llevó {share} de lo que se vendió la fibra. Hoy una máquina tarda cerca de {minutes} por paca.',
    ],
    littleOfIt: [
      'Una paca eran {days} de pizca, por {balePay}.',
      'La pizca se pagaba por peso, {rate} por cien libras. Con {pounds} al día son {dayPay} por un día en el surco: {share} de lo que se vendió la fibra.',
      'Hoy una máquina tarda cerca de {minutes} por paca.',
    ],
  },
  limits: [
    'Mucho de este trabajo era en aparcería: familias enteras, también niños, pizcaban por una parte y a menudo cerraban el año con deuda. La esclavitud había levantado antes los mismos campos. Un pago por cien libras no cuenta eso.',
    'Lo que una persona pizcaba en un día es una cifra usual; las personas eran distintas, y los campos también.',
    'Las dos granjas no son una misma antes y hoy: difieren la tierra, la semilla y los precios.',
  ],
  sides: ['A mano, entonces', 'Con máquina, hoy'],
  numbers: {},
  decides: {
    handPounds: 'Algodón en hueso que una mano pizca en un día',
    pickingRate: 'Pago por cien libras pizcadas',
    pickerAcres: 'Acres que cubre una cosechadora en una hora',
  },
};
