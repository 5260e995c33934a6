import type { BenchQuestionWords, benchQuestions as english } from '../en/bench-questions.ts';

const question = (name: string, answer: string, ...why: string[]): BenchQuestionWords => ({ name, answer, why });

export const benchQuestions: typeof english = {
  heading: 'Preguntas para empezar',
  why: 'Por qué',
  rests: 'En qué se apoya',
  close: 'Cerrar la respuesta',
  threads: {
    single: 'Un hilo de Ne 50, tex',
    two: '50/2: dos de ellos unidos, tex',
    three: '50/3: tres de ellos unidos, tex',
    metric: '50 km por kilogramo, tex',
  },
  pilling: question(
    '¿Ayuda una fibra más larga contra las bolitas y el deshilachado?',
    'Contra las bolitas, sí. Contra el deshilachado, no por sí sola.',
    'Las bolitas empiezan donde termina una fibra. Una fibra más larga tiene menos puntas en el mismo tramo de hilo, y la segunda mesa las cuenta.',
    'El deshilachado es otra cosa: depende de qué tan juntos van los hilos, de su torsión y del acabado de la tela. Eso es práctica común, no un número nuestro.',
  ),
  lawn: question(
    '¿Por qué cuesta más el linón que la manta de algodón?',
    'El linón lleva menos algodón, pero más fino y más largo, y mucho más trabajo.',
    'Un hilo tan fino tiene muy pocas fibras para hilarse cardado: manda el límite de fibras lado a lado. Por eso la fibra se peina, la corta se aparta como borra de peinado, y se compra un algodón más largo.',
    'El hilo fino lleva más vueltas en cada pulgada, y en una yarda entran más pulgadas de hilo: cada huso gira más tiempo para ella.',
  ),
  thread: question(
    '¿Qué es en verdad un hilo de coser de peso 50?',
    'Depende del fabricante: el mismo número aparece en hilos que difieren más del doble.',
    'El título algodonero dice cuántas madejas de un solo cabo pesan una libra. Los cabos lo dividen: tres torcidos juntos son tan gruesos como uno solo de la tercera parte del título.',
    'Otros fabricantes cuentan los kilómetros del hilo completo en un kilogramo. Hay dos lecturas en uso, según se recuerda; conviene pedir el tex, que tiene un solo sentido.',
  ),
  flannel: question(
    '¿Por qué encogió mi franela?',
    'Sus hilos van separados y flojos. En el lavado se juntan y se ondulan más; no se pierde nada.',
    'En el telar el hilo va más recto de lo que quiere. El agua lo suelta: la ondulación sube, la tela se acorta y pesa más, y el hilo conserva su longitud.',
    'Una tela abierta y de torsión suave tiene espacio para juntarse. Un algodón para patchwork, más cerrado, tiene menos. Conviene comprar un poco más y lavarla antes de cortar.',
  ),
};
