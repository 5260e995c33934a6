import type { recap as english } from '../en/recap.ts';

export const recap: typeof english = {
  title: 'Repaso',
  lead: 'Preguntas para volver a ellas de dos a seis días después de una lección: lo que se pregunta otra vez tras una pausa se queda más tiempo. Ninguna respuesta sale de este dispositivo ni se guarda.',
  lessons: 'Lecciones',
  none: 'Hace falta elegir por lo menos una lección.',
  what: 'En papel',
  whats: { questions: 'Preguntas', answers: 'Preguntas con respuestas' },
  print: 'Imprimir el repaso',
  heading: '¿Qué quedó en la memoria?',
  right: 'Correcto.',
  wrong: 'No del todo.',
  answer: 'Respuesta: {letter}.',
  questions: {
    'what-a-fiber-is': {
      ask: 'Con una lupa se ve una sola fibra de algodón. ¿Qué es?',
      options: [
        {
          says: 'Un hilo que torció una hilandería',
          why: 'Un hilo son muchas fibras. Esta es una de ellas, antes de cualquier fábrica.',
        },
        {
          says: 'Una célula muy larga que creció sobre una semilla',
          why: 'Cada fibra es un solo pelo de la piel de la semilla.',
        },
        {
          says: 'Una tira de la pared de la bellota',
          why: 'La pared se seca y queda como cáscara. La fibra crece adentro, sobre las semillas.',
        },
      ],
      right: 1,
    },
    'staple-length': {
      ask: 'El registro de una paca da una sola longitud. ¿De quién es?',
      options: [
        { says: 'La de su fibra más larga', why: 'Un pelo largo dice poco de una paca.' },
        { says: 'La media de todas sus fibras', why: 'Esa es más corta: las fibras cortas también cuentan en ella.' },
        {
          says: 'La media de su mitad más larga',
          why: 'Se promedia la mitad más larga por peso. Es la que sostiene el hilo.',
        },
      ],
      right: 2,
    },
    'uniformity-and-short-fiber': {
      ask: 'Dos hilos son iguales, pero uno tiene mucha fibra corta. ¿Qué nota un dedo?',
      options: [
        {
          says: 'El que tiene más fibra corta es más velloso',
          why: 'Cada fibra tiene dos puntas, y las cortas traen más puntas por yarda.',
        },
        { says: 'El que tiene más fibra corta es más liso', why: 'Es al revés: salen más puntas.' },
        {
          says: 'Nada, la fibra corta se va en el lavado',
          why: 'Mucha se queda torcida adentro, con sus puntas afuera.',
        },
      ],
      right: 0,
    },
    micronaire: {
      ask: 'Un instrumento sopla aire por un tapón de algodón y da un número. ¿Qué no puede decir ese número solo?',
      options: [
        {
          says: 'Si bajo quiere decir fino o inmaduro',
          why: 'Los dos dejan pasar menos aire. Hace falta otro número para distinguirlos.',
        },
        { says: 'Si el aire pasa con facilidad', why: 'Eso es exactamente lo que mide.' },
        {
          says: 'Si una paca marca más que otra',
          why: 'Las lecturas se pueden comparar. Lo difícil es qué significan.',
        },
      ],
      right: 0,
    },
    strength: {
      ask: 'Un hilo se rompe con menos de lo que aguantarían sus fibras sumadas. ¿Por qué?',
      options: [
        { says: 'La torsión corta fibras', why: 'La torsión las aprieta unas con otras. No las corta.' },
        {
          says: 'Algunas fibras resbalan o jalan inclinadas, y no todas se rompen a la vez',
          why: 'Solo una parte de la resistencia de cada fibra va a lo largo del hilo.',
        },
        { says: 'El tinte se come lo demás', why: 'Esto también pasa en un hilo que nunca se tiñó.' },
      ],
      right: 1,
    },
    'color-and-leaf': {
      ask: 'El algodón abierto espera en el campo durante semanas de lluvia. ¿Qué cambia primero?',
      options: [
        { says: 'Su longitud', why: 'El tiempo casi no acorta una fibra; las máquinas sí.' },
        { says: 'Sus semillas crecen', why: 'Cuando la bellota abre, sus semillas ya no crecen.' },
        { says: 'Su brillo', why: 'Se vuelve más gris, y su precio baja.' },
      ],
      right: 2,
    },
    'inside-a-gin': {
      ask: 'Las básculas de una despepitadora muestran que sale menos de lo que entró. ¿Cuál es la explicación honesta?',
      options: [
        {
          says: 'En toda despepitadora se pierde algodón, nadie sabe cómo',
          why: 'Cada parte se puede pesar: fibra, semilla, basura de campo, borra del despepite. Lo demás es agua.',
        },
        { says: 'Se evaporó agua', why: 'El aire caliente se la lleva. Al sumarla, la cuenta cierra.' },
        { says: 'Las semillas se encogieron', why: 'También pierden un poco de agua, y eso se cuenta como agua.' },
      ],
      right: 1,
    },
    'yarn-numbers': {
      ask: 'Una etiqueta dice Ne 60 y otra Ne 30. Se necesita el hilo más delgado. ¿Cuál es?',
      options: [
        { says: 'Ne 60', why: 'Ne cuenta largos en una libra. Más largo con el mismo peso es un hilo más delgado.' },
        { says: 'Ne 30', why: 'Menos largos completan una libra, así que cada yarda pesa más.' },
        { says: 'Cualquiera, Ne es solo un color', why: 'Es una medida del grosor.' },
      ],
      right: 0,
    },
    'weave-and-thread-count': {
      ask: 'Un paquete presume un conteo de hilos muy alto. ¿Qué se pregunta primero?',
      options: [
        { says: '¿De qué color es?', why: 'El color no tiene que ver con el conteo.' },
        {
          says: '¿Se contaron uno por uno los cabos de cada hilo?',
          why: 'Eso puede duplicar el número y no cambia nada en la tela.',
        },
        { says: '¿Es algodón?', why: 'Vale la pena saberlo, pero no explica el número.' },
      ],
      right: 1,
    },
    'grain-and-bias': {
      ask: 'Un escote debe ceder un poco en la curva. ¿Cómo se corta su ribete?',
      options: [
        { says: 'A lo largo del orillo', why: 'Ahí la urdimbre va recta y casi no cede.' },
        { says: 'A lo ancho, de orillo a orillo', why: 'Eso cede un poco, no lo suficiente para una curva.' },
        {
          says: 'Inclinado entre urdimbre y trama',
          why: 'Ahí ningún hilo se jala derecho, y los cuadritos de la tela pueden ladearse.',
        },
      ],
      right: 2,
    },
    shrinkage: {
      ask: 'Un trozo de algodón lavado es más corto. ¿A dónde se fue su largo?',
      options: [
        { says: 'A las ondas de sus hilos', why: 'Los hilos miden lo mismo que antes. Hacen más ondas.' },
        { says: 'Por el desagüe, con el agua', why: 'Ahí se va un poco de pelusa, pero nada de largo.' },
        { says: 'Las fibras mismas se acortaron', why: 'Las fibras de algodón casi no cambian de largo al lavarse.' },
      ],
      right: 0,
    },
    'one-boll-one-patch': {
      ask: 'Un bloque de quilt se hace del doble de ancho y del doble de largo. ¿Cuántas veces las bellotas pide?',
      options: [
        { says: 'El doble', why: 'Es el doble de ancho y también el doble de largo.' },
        { says: 'Cuatro veces', why: 'Dos por dos: lo que pide algodón es el área.' },
        { says: 'Ocho veces', why: 'Eso sería para algo que además fuera del doble de grueso.' },
      ],
      right: 1,
    },
  },
};
