import type { guild as english } from '../en/guild.ts';

export const guild: typeof english = {
  title: 'Una noche de costura en grupo',
  lead: 'Una charla de {minutes} minutos en {slides} láminas: cada una se imprime en su propia hoja, con lo que se dice al lado. Los números son los de una temporada.',
  season: '{farm}, temporada {seed}. La granja es inventada.',
  otherSeason: 'La temporada del enlace no dio tela tejida, así que la charla toma esta: {season}',
  print: 'Imprimir la charla',
  printHelp:
    'Horizontal, una lámina por hoja, en carta o A4. Para guardarla como archivo, elegir “Guardar como PDF” en la ventana de impresión.',
  backToPlan: 'Volver al plan',
  minutes: { one: '1 minuto', other: '{n} minutos' },
  from: 'minuto {from} a {to}',
  say: 'Decir',
  ask: 'Preguntar o pasar de mano en mano',
  pageOf: 'Lámina {n} de {all}',
  marks: '× se apoya en la memoria, la práctica común o un supuesto.',
  figures: {
    yarnNumber: 'Número de este hilo',
    enslaved: 'Personas esclavizadas, censo de 1860',
    dayPicked: 'Pizca de un hombre, un día de 1844',
    paid: 'Lo que se les pagaba',
    nothing: 'nada',
    cropper: 'Parte de quien trabajaba en aparcería, 1913',
  },
  rest: 'Todo lo demás',
  sourceMark: '{source} ({mark})',
  slides: {
    title: {
      title: 'De una bellota a un retazo',
      line: 'Lo que le pasa al algodón antes de ser tela, en números que cuadran.',
      notes: [
        'Cada número de esta noche viene de una temporada en una granja: {farm}, temporada {seed}. La granja es inventada; cómo crece, se despepita, se hila y se teje sigue mediciones publicadas.',
        'Doce bloques, doce estaciones. Seguimos una bellota por todas, y al final preguntamos a dónde fue cada libra.',
      ],
      ask: 'Dar a cada persona un retazo de algodón para quilt. Se queda en la mano toda la noche.',
    },
    boll: {
      title: 'Una bellota, un retazo',
      line: 'La fibra de una bellota llega a ser un cuadro de tela terminada.',
      notes: [
        'Una bellota abierta de esta temporada tiene {boll_lintPerBoll} de fibra y {bollSeed} de semilla. Esa fibra son {fibers} fibras; una tras otra llegan a {fiberLength}.',
        'Hilada y tejida en este algodón para quilt da un cuadro de {sewing_patch} por lado. En ese cuadro hay {yarnYards} de hilo.',
        'En otra granja o en otro año el lado es un poco mayor o menor. Un verano seco puede dejar chicas las bellotas.',
      ],
      ask: 'Antes de la lámina: dibujar en papel el retazo tan grande como cada quien crea. Después, mostrar los dibujos.',
    },
    hands: {
      title: 'De quién eran las manos',
      line: 'Durante casi toda la historia de este cultivo aquí, cada bellota la pizcó una persona, y muchas no eran libres.',
      notes: [
        'De la desmotadora de 1793 hasta 1865, casi todo el algodón de este país lo pizcaron personas esclavizadas. El censo de 1860 contó cerca de {enslaved_1860} personas esclavizadas, y el algodón fue la razón principal por la que creció la esclavitud. No se les pagaba nada.',
        'El libro de una plantación de 1844 da un promedio de {men} en un día para hombres y muchachos, y de {women} para mujeres y muchachas. {men} son de {fewest_bolls_per_picking_day} a {most_bolls_per_picking_day} bellotas. Pizcar una paca llevaba {picking_days_per_bale_men} así. Las libras las anotaban quienes decían ser dueños de quienes pizcaban.',
        'Después de 1865 muchas de las mismas familias trabajaron por una parte de la cosecha, a menudo {cropper}, menos lo que debían por comida y semilla. Las máquinas llegaron en los años después de 1945. En algunos países todavía se pizca por la fuerza.',
        'Leer esta lámina despacio, y dejar un silencio después. Para algunas personas presentes es historia de familia.',
      ],
      ask: 'Aquí no hay pregunta. Quien quiera decir algo puede hacerlo.',
    },
    gin: {
      title: 'Se separan semilla y fibra',
      line: 'El despepite arranca la fibra de la semilla. Casi todo el peso es semilla.',
      notes: [
        'De lo que llega al despepite, {ginning_turnout} queda en fibra. Para una paca entran {ginning_seedCottonPerBale} de algodón en hueso, y salen al lado {ginning_seedPerBale} de semilla.',
        'De la semilla se saca aceite, y se da de comer al ganado. Un poco se siembra. Hojas, cáscaras y varas salen como basura del despepite, y la borra de los limpiadores se vende.',
      ],
      ask: 'Pasar un capullo de algodón en hueso, y que alguien arranque una semilla. Solo algodón de bellota: la semilla tratada para siembra es venenosa.',
    },
    bale: {
      title: 'La paca',
      line: 'Prensada, atada, pesada y numerada.',
      notes: [
        'Este campo dio {pressing_balesPressed} pacas. Una pesa {pressing_baleWeight} sin envoltura ni flejes, y {pressing_baleMoisture} de eso es agua del aire.',
        'Una paca así da {sewing_yards} de esta tela.',
      ],
      ask: '¿Cuántos quilts saldrían de una paca? Que cada mesa diga un número.',
    },
    staple: {
      title: 'La longitud de la fibra',
      line: 'Qué tan larga es la fibra decide qué tan fino y liso puede ser el hilo.',
      notes: [
        'De cada paca se mide una muestra. Aquí casi todas se llamaron {classing_staple} de pulgada, y se pagaron a {classing_price}.',
        'Un algodón nunca tiene un solo largo. La mitad más larga de sus fibras da el nombre; las cortas hacen pelusa y, más tarde, bolitas.',
      ],
      ask: 'Pasar guata de algodón. Se separa una pizca, se juntan las mitades y se vuelve a separar, cinco veces. ¿Qué tan largo es el mechón?',
    },
    twist: {
      title: 'La torsión',
      line: 'Solo la torsión mantiene juntas las fibras.',
      notes: [
        'Un corte de este hilo pasa por {spinning_fibresInSection} fibras. El huso dio {spinning_twist}. Al destorcerlo, las fibras se deslizan.',
        'Con poca torsión el hilo es débil y con pelusa. Con mucha es duro y se enreda. De la fibra que entró a la hilandería, {spinning_realisation} salió como hilo.',
      ],
      ask: 'Cada persona saca un hilo del retazo y lo gira contra su torsión hasta que se separa.',
    },
    number: {
      title: 'Qué dice el número del hilo',
      line: 'Un número más alto es un hilo más fino: cuenta cuántas madejas de 840 yardas pesan una libra.',
      notes: [
        'El hilo de esta tela es Ne {yarnNe}: {yarnNe} madejas de 840 yardas en una libra. En tex, los gramos de un kilómetro, es {yarnTex}.',
        'Esta fibra se podría hilar hasta {spinning_limit}; en un hilo más fino van muy pocas fibras lado a lado. Antes de comparar dos números hay que saber qué cuentan: quienes hacen hilo de coser usan más de un sistema.',
      ],
      ask: '¿Qué dos carretes de la casa tienen el mismo número y no son iguales?',
    },
    weight: {
      title: 'El peso de la tela',
      line: 'Los hilos de una pulgada por el peso del hilo, y un poco más por las ondas.',
      notes: [
        'Esta tela pesa {weaving_weight} y tiene un conteo de {weaving_threadCountFinished} después del acabado: los hilos de urdimbre y de trama de una pulgada, sumados.',
        'Cada hilo pasa por encima y por debajo de los otros, así que es más largo que la tela. Eso es el rizo, y por eso una tela más pesada no siempre es más cerrada.',
      ],
      ask: 'Doblar el retazo en la mano. ¿Es más ligero o más pesado que la camisa que se lleva puesta?',
    },
    shrink: {
      title: 'Por qué encoge la tela',
      line: 'La fibra conserva su largo. Los hilos se juntan.',
      notes: [
        'El telar y el acabado sostienen la tela estirada. En el acabado esta tela cedió {weaving_shrinkage}.',
        'En la primera lavada en casa, el algodón para quilt como se vende cede cerca de {wash_lengthwise} a lo largo y {wash_crosswise} a lo ancho. Nada se pierde: los mismos hilos quedan en ondas más hondas.',
      ],
      ask: '¿Quién lava antes de cortar, y quién no? Que una persona de cada lado diga por qué.',
    },
    grain: {
      title: 'El hilo de la tela',
      line: 'La urdimbre va a lo largo del orillo, la trama cruza. Al sesgo no va ningún hilo.',
      notes: [
        'Al jalar a lo largo de la urdimbre, una tela así cede cerca de {stretch_lengthwise}; a lo ancho, {stretch_crosswise}: primero se enderezan las ondas, y luego tiene que estirarse el hilo mismo.',
        'Al sesgo los hilos giran como una puerta de jardín. La geometría permite hasta {stretch_bias}; las manos sienten antes la resistencia. Por eso los bordes se cortan al hilo, y los biases para curvas, al sesgo. Es práctica común.',
      ],
      ask: 'Jalar el retazo en tres direcciones. ¿Cuál es la urdimbre?',
    },
    pounds: {
      title: 'A dónde fue cada libra',
      line: 'De todo lo que llegó al despepite o se agregó después, en por ciento.',
      notes: [
        'Aquí está la carga entera, de la puerta del despepite a la mesa de corte, con el agua y el apresto. Las tiras suman todo, con menos de una milmillonésima de diferencia.',
        'La tira más larga es semilla. La tela en piezas cortadas es {clothShare}. La semilla, la borra y las cintas de carda también se venden; son mercancía.',
      ],
      ask: 'Mirar el retazo dibujado al principio. ¿Qué fue lo que más sorprendió?',
    },
    sources: {
      title: 'En qué se apoya',
      line: 'Cada número abre su cálculo en la aplicación, y cada constante nombra su fuente.',
      notes: [
        'Estas son las fuentes de los números de las láminas. Lo que lleva la marca de memoria o supuesto se dice, y puede estar mal. La página Fuentes de la aplicación las tiene todas, y dónde falla el modelo.',
        'La lección “De la mano al husillo” cuenta más de quiénes hicieron el trabajo.',
      ],
      ask: '¿Qué número habría que comprobar primero?',
    },
  },
};
