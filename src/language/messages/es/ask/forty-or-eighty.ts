import type { QuestionWords } from '../../en/ask/question-words.ts';

export const fortyOrEighty: QuestionWords = {
  title: '¿Con 40 por ciento abierto, o esperar al 80?',
  about: '{farm}: el defoliante con 40 o con 80 por ciento de bellotas abiertas, cada uno en {seasons} de clima.',
  answers: {
    always: [
      'Aquí convino esperar al 80 por ciento.',
      'La granja termina con {money} más en promedio, de {least} a {most}.',
      'La espera da {lint} {lintWay} de fibra, y el micronaire {micronaireWay} {micronaire}. Tiene un precio: en {cheaper} una paca valió menos.',
    ],
    sometimes: [
      'Depende del clima: esperar convino en {late} de {seasons}.',
      'Esperar al 80 por ciento dejó a la granja entre {least} y {most} frente a ir con 40.',
      'La espera da {lint} {lintWay} de fibra, y el micronaire {micronaireWay} {micronaire}; en {cheaper} una paca valió menos.',
    ],
    never: [
      'Aquí convino ir con 40 por ciento.',
      'Esperar cuesta {money} en promedio; la diferencia va de {least} a {most}.',
      'La espera da {lint} {lintWay} de fibra, y el micronaire {micronaireWay} {micronaire}; en {cheaper} una paca valió menos.',
    ],
  },
  limits: [
    'Los servicios de extensión aconsejan el defoliante con cerca de 60 por ciento abierto; 40 y 80 son los dos lados de eso.',
    'Lo que cuestan el defoliante y una segunda pasada no se cuenta, y una tormenta que tumba el cultivo no está en el modelo.',
  ],
  sides: ['Con 40 por ciento', 'Con 80 por ciento'],
  numbers: {},
  decides: { graying: 'Gris por pulgada de lluvia' },
};
