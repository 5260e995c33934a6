import type { teachStops as english } from '../en/teach-stops.ts';

export const teachStops: typeof english = {
  talk: {
    opening: {
      title: 'Inicio: un retazo en cada mano',
      steps: [
        'Repartir los retazos antes de decir nada.',
        'Dejar que todos busquen los hilos que van en dos sentidos.',
      ],
      ask: '¿Qué era esto antes de ser tela?',
      usual:
        'Muchos dicen una tienda, una fábrica o una oveja. Pocos dicen una semilla. Se aceptan todas las respuestas y se vuelve a ellas al final.',
    },
    recap: {
      title: 'Repaso: algo para contar en casa',
      steps: [
        'Cada quien escribe una frase en un papelito.',
        'Leer tres en voz alta.',
        'Volver a preguntar a los dos a seis días.',
      ],
      ask: '¿En qué nos equivocamos, y qué vale la pena contar en casa?',
      usual: 'Cuentan la mayor sorpresa y dejan fuera el porqué. Conviene pedirlo cada vez.',
    },
  },
  hands: {
    pullThread: {
      title: 'Con las manos: deshacer un hilo',
      steps: [
        'Sacar un hilo de la orilla del retazo.',
        'Girarlo contra su torsión hasta que se separe.',
        'Ver las puntas a contraluz.',
      ],
      ask: '¿Qué mantiene juntas las fibras?',
      usual: 'A menudo, pegamento o nudos. Es solo la torsión: sin ella, las fibras se deslizan.',
    },
    fiberPinch: {
      title: 'Con las manos: medir una fibra',
      steps: [
        'Separar un poco de algodón, juntar las mitades y volver a separar, cinco veces.',
        'Poner el mechón sobre tela oscura.',
        'Medir desde la punta pareja hasta donde terminan casi todas las fibras.',
      ],
      ask: '¿Hay una sola longitud o muchas?',
      usual:
        'Casi todos esperan fibras iguales. El mechón se adelgaza poco a poco: un algodón tiene muchas longitudes.',
    },
    seedByHand: {
      title: 'Con las manos: quitar la semilla',
      steps: [
        'Dar a cada pareja un gajo de algodón en hueso, de una bellota.',
        'Quitar la fibra de una semilla y tomar el tiempo.',
        'Pesar en la mano la semilla y la fibra.',
      ],
      ask: '¿Qué pesa más, la semilla o su fibra?',
      usual:
        'Casi todos dicen la fibra, porque se ve más grande. La semilla pesa más. Usar solo algodón de una bellota: la semilla tratada para siembra es venenosa.',
    },
    hundredSquares: {
      title: 'Con las manos: una carga en cien cuadritos',
      steps: [
        'Cien cuadritos de papel son cien libras llevadas a la despepitadora.',
        'Cada mesa los reparte: fibra, semilla y todo lo demás.',
        'Dejar los montones así hasta que la temporada los muestre.',
      ],
      ask: '¿Cuántos cuadritos son fibra, cuántos semilla y cuántos ninguna de las dos?',
      usual:
        'Casi todos hacen más grande el montón de fibra. Se guardan los montones: son la apuesta que se verá después.',
    },
    biasPull: {
      title: 'Con las manos: al hilo y al bies',
      steps: [
        'Cortar una tira a lo largo del orillo y otra a 45 grados, del mismo tamaño.',
        'Jalar cada una junto a una regla.',
        'Soltar y medir otra vez.',
      ],
      ask: '¿Por qué una se estira y la otra no?',
      usual:
        'Muchos dicen que la tira al bies tiene hilos más débiles. Los hilos son los mismos; al bies, sus cuadros se inclinan.',
    },
    dampCotton: {
      title: 'Con las manos: lo que pesa la humedad',
      steps: [
        'Pesar un puñado de algodón.',
        'Rociarlo, apretarlo un poco y pesarlo otra vez.',
        'Tocar los dos con los ojos cerrados.',
      ],
      ask: 'Quien compra algodón por libra, ¿qué más compra?',
      usual:
        'Pocos piensan en el agua. El algodón que se siente seco también la tiene; por eso la despepitadora la mide.',
    },
    tenCounters: {
      title: 'Con las manos: diez fichas por una paca',
      steps: [
        'Diez fichas son el dinero de una paca y su semilla.',
        'Cada mesa las reparte: pizca, despepite, clasificación y lo que queda a la granja.',
        'Anotar el reparto.',
      ],
      ask: '¿A quién le tocan cuántas?',
      usual: 'Las mesas suelen olvidar la despepitadora, y que la semilla también se vende.',
    },
  },
  station: {
    planting: 'Casi todos dicen que todas. El suelo frío o duro se lleva su parte.',
    bloom: 'Casi todos dicen que pocas. La planta tira más flores de lo que parece sensato, y vive bien así.',
    boll: 'Las respuestas van de una semana a todo el verano. Conviene preguntar qué más dura lo mismo.',
    harvest:
      'Muchos dicen que nada: la máquina se lleva todo. Conviene preguntar quién volvería por el resto, y a qué costo.',
    module: 'Pocos esperan calor. Conviene preguntar quién ha metido la mano en un montón de zacate cortado.',
    cleaning: 'Muchos dicen que todo. Lo que queda se cuenta otra vez en la clasificación.',
    ginning: 'Casi todos dicen que poca, porque la fibra ocupa más lugar. Peso y lugar son dos cosas.',
    pressing: 'Las respuestas van de una a miles. Conviene preguntar primero cuánto pesa una paca.',
    classing: 'Muchos dicen varias pulgadas, como la lana. La unidad, 32avos de pulgada, ya es una sorpresa.',
    spinning: 'Las respuestas van de tres a miles. Conviene mostrar un hilo y volver a preguntar.',
    weaving:
      'Quienes cosen aciertan; los demás dicen que nada encoge. Conviene preguntar adónde se fue la tela: no se perdió ningún hilo.',
    sewing: 'Casi todos dicen una camisa o un hilo. Un retazo del tamaño de una mano sorprende.',
  },
  question: {
    'good-and-bad-years': 'Casi todos piensan en los precios. La lluvia y el calor bastan para mover la cosecha.',
    'forty-or-eighty':
      'Muchos esperan a que abran todas. Conviene preguntar qué les pasa mientras tanto a las abiertas.',
    rain: 'Muchos dicen que la lluvia es buena. Antes de que abran las bellotas, sí; después, no.',
    'stripper-or-picker': 'Casi todos eligen la máquina que deja menos. Conviene preguntar qué más se lleva.',
    'by-hand':
      'Los días se calculan muy por debajo. Conviene decir con claridad quién hizo este trabajo y cómo se pagó.',
    'wet-module': 'Pocos esperan una pérdida sin que nada se caiga. Primero se van el color y el precio.',
    'seed-and-lint': 'A menudo: pegamento o ganchos. La fibra crece de la piel de la semilla.',
    'saw-or-roller': 'Casi todos eligen la más rápida. Conviene preguntar qué le hace la sierra a una fibra larga.',
    'third-lint-cleaning': 'Más limpio suena mejor. Conviene preguntar qué se va junto con la hoja (basura).',
    'where-the-seed-goes': 'Casi todos dicen que se tira o se siembra. Muy poca se siembra.',
    'who-gets-the-money': 'Pocos nombran la despepitadora, y pocos cuentan la semilla como dinero.',
    'one-staple': 'Suena a nada. Conviene preguntar a quien compra hilo.',
  },
  bench: {
    pilling:
      'Muchos creen que la fibra larga lo arregla todo. Ayuda contra las bolitas; deshilacharse es cosa del ligamento.',
    lawn: 'Casi todos dicen que el linón lleva más algodón, porque cuesta más. Lleva menos, y más trabajo.',
    thread: 'Casi todos toman el número por un peso. Dos fabricantes pueden querer decir dos cosas.',
    flannel: 'Casi todos dicen que la fibra encogió. Los hilos se juntaron; su largo sigue ahí.',
  },
  lesson: {
    'one-boll-one-patch': {
      title: 'De una bellota a un retazo',
      ask: '¿Cuánta tela da una bellota de algodón?',
      usual:
        'Las respuestas son muy distintas; conviene dibujarlas primero. Los cuadros se comparan mejor que las palabras.',
    },
    'what-a-fiber-is': {
      title: 'Qué es una fibra de algodón: del pelo de la semilla al hilo',
      ask: '¿Cómo llega a ser hilo un copo de algodón?',
      usual:
        'Con pegamento, con nudos, con ganchos. Conviene destorcer un hilo despacio, dejar que se tuerza solo y volver a preguntar.',
    },
    'staple-length': {
      title: 'La longitud de la fibra, y cómo verla con los dedos',
      ask: '¿Cuánto mide una sola fibra de algodón, y cómo saberlo sin máquina?',
      usual: 'Casi todos dan una sola longitud. Conviene pedir la más corta y la más larga del mismo puñado.',
    },
    'uniformity-and-short-fiber': {
      title: 'Uniformidad y fibra corta: donde empiezan la pelusa y las bolitas',
      ask: '¿Por qué una tela se llena de pelusa y otra no?',
      usual: 'Casi todos buscan una falla en la hilandería. Ya venía en la paca.',
    },
    'inside-a-gin': {
      title: 'Dentro de una despepitadora',
      ask: '¿Qué le pasa al algodón dentro de una despepitadora, y qué sale además de la fibra?',
      usual: 'Casi todos nombran solo la sierra. Gran parte del trabajo es secar y limpiar.',
    },
    'from-hand-to-spindle': {
      title: 'De la mano al husillo',
      ask: '¿Quién pizcaba el algodón, qué tan rápido, y a quién se le pagaba?',
      usual:
        'Algunos lo saben por su familia. Conviene darles tiempo, y nombrar con claridad la esclavitud y la aparcería.',
    },
    'a-plants-summer': {
      title: 'El verano de una planta',
      ask: '¿Cómo pasa el verano una planta de algodón, desde la semilla hasta la bellota abierta?',
      usual: 'Casi todos dejan fuera la flor, o la ponen al final. La bellota sale de ella.',
    },
  },
  steps: {
    station: [
      'Leer la pregunta. Cada quien escribe su respuesta.',
      'Oír cinco respuestas y luego mostrar lo que dio la temporada.',
      'Preguntar qué podría cambiarlo.',
    ],
    question: [
      'Leer la pregunta. Levantar la mano por cada respuesta.',
      'Dos que no están de acuerdo dan sus razones.',
      'Mostrar la respuesta y luego abrir sus números.',
    ],
    bench: [
      'Leer la pregunta. Cada quien decide.',
      'Mostrar la respuesta y preguntar qué la probaría.',
      'Abrir las dos mesas para ver los números.',
    ],
    lesson: [
      'Leer la pregunta. Cada quien escribe su respuesta.',
      'Abrir la lección y ver juntos sus figuras.',
      'Terminar con dos preguntas de su cuestionario.',
    ],
  },
  materials: {
    scraps: 'Un retazo de algodón tejido en telar para cada quien',
    ruler: 'Reglas',
    cottonBall: 'Guata de algodón o bolitas de algodón',
    darkCloth: 'Tela oscura para poner las fibras',
    ginnedSeed: 'Gajos de algodón en hueso, de bellotas (nunca semilla tratada para siembra)',
    paperSquares: 'Cien cuadritos de papel por mesa',
    counters: 'Diez fichas o botones por mesa',
    scale: 'Una báscula de cocina',
    water: 'Un rociador con agua',
    slips: 'Papelitos y lápices',
  },
};
