import type { predict as english } from '../en/predict.ts';

export const predict: typeof english = {
  turnOn: 'Estimar primero el número de cada estación',
  turnOnHelp:
    'Una pregunta antes de los números de cada estación. No se lleva puntuación. El enlace de esta temporada también la hace.',
  yourGuess: 'La estimación',
  guess: 'Esta es mi estimación',
  skip: 'Saltar',
  stop: 'Sin más preguntas',
  noChoice: 'Primero hay que elegir una, o saltar.',
  noNumber: 'Hay que escribir un número entero de {low} a {high}, o saltar.',
  covered: 'Los números de esta estación vienen después de la estimación.',
  coveredPicture: 'El dibujo se abre después de la estimación.',
  thisSeason: 'Esta temporada',
  asked: {
    planting: {
      question: 'De 100 semillas, ¿cuántas llegan a ser plantas?',
      why: [
        'Hay {stand} plantas en un acre.',
        'Las plantas brotaron el {emerged}. En suelo frío la semilla tarda más, y brotan menos.',
      ],
    },
    bloom: {
      question: 'De 100 flores, ¿cuántas se caen sin dar bellota?',
      why: [
        'El {squaresDropped} de los cuadros (botones florales) se cayó antes de abrir, y el {bollsDropped} de las flores, como bellotas tiernas.',
        'Una planta se queda con lo que sus hojas y raíces alcanzan a alimentar: de cada una se cosecharon {bollsPerPlant} bellotas.',
      ],
    },
    boll: {
      question: '¿Cuántos días van de la primera flor a la primera bellota abierta?',
      why: [
        'La primera bellota abrió el {firstOpenBoll}. Con días cálidos madura antes; con días frescos, después.',
        'Una bellota abierta lleva {lintPerBoll} de fibra.',
      ],
    },
    harvest: {
      question: '¿Qué parte del algodón abierto se queda en el campo?',
      why: [
        '{leftInField} se quedaron atrás, y {weathered} se perdieron antes por el mal tiempo.',
        '{seedCotton} de algodón en hueso salieron del campo. Cuánto se queda depende de quién o qué cosecha.',
      ],
    },
    module: {
      question: '¿Qué tanto se calienta por dentro el algodón guardado?',
      why: [
        'Se guardó con {moisture} de humedad. El algodón en hueso húmedo se calienta solo; el seco, no.',
        'Su amarilleo llegó a {yellowing}.',
      ],
    },
    cleaning: {
      question: '¿Qué parte de las hojas, varas y tierra sale?',
      why: [
        '{ginTrash} fueron a la basura del despepite.',
        'El algodón más seco suelta más y se rompe más: aquí la fibra tenía {lintMoisture} de agua.',
      ],
    },
    ginning: {
      question: '¿Qué parte de esta carga es semilla, por peso?',
      why: [
        'Una paca de 480 libras pide {seedCottonPerBale} de algodón en hueso y deja {seedPerBale} de semilla.',
        'La fibra en pacas es el {turnout} de la carga. Lo demás son hojas, varas, tierra y agua.',
      ],
    },
    pressing: {
      question: '¿Cuántas pacas da este campo?',
      why: ['Aquí una paca lleva en promedio {baleWeight} de fibra, sin su envoltura ni sus amarres.'],
    },
    classing: {
      question: '¿Qué longitud comercial recibe la mayoría, en treintaidosavos de pulgada?',
      why: [
        'El tipo de semilla fija la mayor parte; la sequía, las noches frías y la limpieza dura la acortan.',
        'Con color {colorGrade} y grado de hoja {leafGrade}, las pacas valen {price}.',
      ],
    },
    spinning: {
      question: '¿Cuántas fibras van lado a lado en este hilo?',
      why: [
        'El hilo más fino que este algodón permite es {limit}.',
        'Con menos fibras el hilo es más fino y menos parejo: este varía {evenness} (CV).',
      ],
    },
    weaving: {
      question: '¿Cuánto acorta el acabado esta tela?',
      why: [
        'No se pierde nada: los hilos se juntan.',
        'El conteo de hilos era {threadCount} en el telar y ahora es {threadCountFinished}.',
      ],
    },
    sewing: {
      question: '¿De qué lado sale el cuadro de tela de una bellota?',
      why: [
        'Toda la tela se reparte entre todas las bellotas cosechadas.',
        'La tela de una paca mide {yards} de largo.',
      ],
    },
  },
  steps: {
    cottonHung: 'Fibra y semilla secas en las bellotas abiertas',
    cottonLeft: 'Fibra y semilla secas que se quedaron en el campo',
  },
};
