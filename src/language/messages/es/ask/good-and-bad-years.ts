import type { QuestionWords } from '../../en/ask/question-words.ts';

export const goodAndBadYears: QuestionWords = {
  title: '¿Qué tan lejos está un año bueno de uno malo?',
  about: '{farm}: nada decidido de otro modo, {years} temporadas de clima.',
  answers: {
    wide: [
      'El mejor año pagó {times} veces lo que pagó el peor.',
      'Con las mismas decisiones se pagó a la granja de {worst} a {best}; la mediana de las {years} temporadas es {middle}.',
      'La temporada {worstSeed}, la peor, tuvo {worstRain} de lluvia hasta la cosecha; la {bestSeed}, la mejor, tuvo {bestRain}.',
    ],
    narrow: [
      'No muy lejos: el mejor año pagó {times} veces lo que pagó el peor.',
      'Con las mismas decisiones se pagó a la granja de {worst} a {best}; la mediana de las {years} temporadas es {middle}.',
      'La temporada {worstSeed} tuvo {worstRain} de lluvia hasta la cosecha; la {bestSeed} tuvo {bestRain}.',
    ],
    failed: [
      'Un año malo puede no dejar nada.',
      'Con las mismas decisiones se pagó a la granja de {worst} a {best}; la mediana de las {years} temporadas es {middle}.',
      'La temporada {worstSeed} tuvo {worstRain} de lluvia hasta la cosecha; la {bestSeed} tuvo {bestRain}.',
    ],
  },
  limits: [
    'El precio es igual en todas las temporadas. En la vida una cosecha corta puede subirlo.',
    'En las llanuras secas la cosecha del modelo puede quedar lejos de la media del estado. El granizo y la arena no están en el modelo.',
  ],
  sides: ['El peor año', 'El mejor año'],
  numbers: { yield: 'Rendimiento de campo, en fibra' },
  decides: { thirst: 'Cosecha perdida por sed' },
};
