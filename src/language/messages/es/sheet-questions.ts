import type { sheetQuestions as english } from '../en/sheet-questions.ts';

export const sheetQuestions: typeof english = {
  kinds: {
    heat: 'Unidades calor',
    ginBalance: 'Balance del despepite',
    turnout: 'Rendimiento de fibra',
    bales: 'Pacas y dinero',
    staple: 'Código de longitud',
    yarn: 'Número del hilo y fibras',
    clothWeight: 'Peso de la tela',
    conversions: 'Porcentajes y unidades',
    layout: 'Hilo de la tela y corte',
    trace: 'De vuelta a las bellotas',
  },
  texts: {
    heat: {
      1: 'El algodón crece con el calor. Las unidades calor de un día son el punto medio entre su máxima y su mínima, menos {base}. Aquí hay tres días de una temporada.',
      2: 'Las unidades calor de un día son el punto medio entre su máxima y su mínima, menos {base}; un día por debajo de eso cuenta como 0. Aquí hay una semana de una primavera.',
      3: 'Las unidades calor de un día son el punto medio entre su máxima y su mínima, menos {base}; un día por debajo de eso cuenta como 0. De la flor a la bellota abierta hacen falta {need} unidades calor. Aquí hay una semana de un verano.',
    },
    ginBalance: {
      1: 'A una despepitadora entran {load} de algodón en hueso. {lint} van a la prensa como fibra y {seed} a la bodega de semilla.',
      2: 'A una despepitadora entran {load} de algodón en hueso. En la báscula salen {lint} de fibra, {seed} de semilla, {trash} de basura del despepite y {motes} de borra del despepite. Lo demás es agua que se evaporó.',
      3: 'A una despepitadora entran {load} de algodón en hueso; de eso, {moisture} es agua. En la báscula salen {lint} de fibra, {seed} de semilla, {trash} de basura del despepite y {motes} de borra del despepite; lo demás es agua que se evaporó. En la prensa se devuelven {added} de agua a la fibra.',
    },
    turnout: {
      1: 'De {load} de algodón en hueso una despepitadora saca {lint} de fibra. El rendimiento de fibra es la fibra como porcentaje del algodón en hueso.',
      2: 'Un módulo de {load} de algodón en hueso tiene un rendimiento de fibra de {turnoutPercent}. Una paca pesa {bale}.',
      3: 'El algodón en hueso de una granja tiene un rendimiento de fibra de {first}; el de la granja vecina, de {second}. Una paca pesa {bale}. Cada granja vende {bales} pacas.',
    },
    bales: {
      1: 'La fibra de una granja pesa {lint}. La despepitadora la prensa en pacas de {bale}.',
      2: 'Una paca pesa {net}. El algodón de calidad base se paga a {base}. La clase de esta paca cambia ese precio en {difference}.',
      3: {
        us: 'Una despepitadora saca {lint} de fibra del algodón de una granja y {seed} de semilla. Paga {seedPrice} por una tonelada corta (2,000 lb) de semilla y cobra {ginPrice} por cada paca de {bale}. Estos precios no son todos del mismo año.',
        metric:
          'Una despepitadora saca {lint} de fibra del algodón de una granja y {seed} de semilla. Paga {seedPrice} por una tonelada (1,000 kg) de semilla y cobra {ginPrice} por cada paca de {bale}. Estos precios no son todos del mismo año.',
      },
    },
    staple: {
      1: 'El código de longitud de fibra cuenta treintaidosavos de pulgada. Tres pacas tienen los códigos {first}, {second} y {third}.',
      2: 'La fibra de cuatro pacas mide {first}, {second}, {third} y {fourth}. La tabla da la longitud más corta de cada código.',
      3: 'La fibra de dos pacas mide {first} y {second}. Una pulgada son 25.4 mm. La tabla da la longitud más corta de cada código; la longitud se redondea antes de leer el código.',
    },
    yarn: {
      1: {
        us: 'Una libra de un hilo mide {length} de largo. 840 yd son una madeja, y el número Ne dice cuántas madejas hay en una libra.',
        metric: '{length} de un hilo pesan {mass}. Su tex es el peso de 1,000 m en gramos.',
      },
      2: {
        us: 'Un hilo tiene el número Ne {count}. El tex es {texTimesNe} dividido entre Ne. 1 tex son 1,000 mtex. Una fibra tiene {fiber}.',
        metric:
          'Un hilo tiene {count}. El número Ne es {texTimesNe} dividido entre el tex. 1 tex son 1,000 mtex. Una fibra tiene {fiber}.',
      },
      3: 'Un algodón marca {micronaire} de micronaire. En una fibra de madurez media eso son {mtexPerMicronaire} mtex por cada unidad. Se hila a Ne {ne}. El tex es {texTimesNe} dividido entre Ne, y 1 tex son 1,000 mtex. Un hilo cardado de anillos pide por lo menos {fewest} fibras lado a lado.',
    },
    clothWeight: {
      1: 'Un trozo de tela de {area} pesa {mass}.',
      2: {
        us: 'Una tela pesa {weight}. Se corta un largo de {length}, con {width} de ancho. Una yarda son 36 in y una libra 16 oz.',
        metric: 'Una tela pesa {weight}. Se corta un largo de {length}, con {width} de ancho.',
      },
      3: {
        us: 'Una tela tiene {ends} hilos de urdimbre y {picks} hilos de trama por pulgada, todos de Ne {count}: {count} veces 840 yd pesan una libra (16 oz). Cada hilo hace ondas, y así la urdimbre es {warpCrimp} más larga que la tela y la trama {weftCrimp}.',
        metric:
          'Una tela tiene {ends} hilos de urdimbre y {picks} hilos de trama por centímetro, todos de {count}: 1,000 m pesan esos gramos. Cada hilo hace ondas, y así la urdimbre es {warpCrimp} más larga que la tela y la trama {weftCrimp}.',
      },
    },
    conversions: {
      1: '{heavy} de las {all} pacas de una granja pesan más de {limit}. En una tienda un corte de tela de algodón cuesta {price} y luego se vende con {off} de rebaja.',
      2: 'Un patrón pide {length} de una tela de {weight}. 1 yd son {metresPerYard} m, y 1 oz/yd² son {gsmPerOunce} g/m².',
      3: 'En su primer lavado una tela pierde {shrink} de su largo y {shrinkAcross} de su ancho. Antes pesa {weight}. Una persona que cose lava {bought}. Otra necesita una pieza de {piece} de largo después del lavado.',
    },
    layout: {
      1: 'Se cortan tiras de {strip} de ancho, una al lado de otra, con el lado largo al hilo, a lo largo del orillo. La tela mide {width} de ancho entre los orillos.',
      2: {
        us: 'Un patrón necesita {needed} de una tela de {from} de ancho. La tienda la tiene de {to} de ancho. La tela se vende por cuartos de yarda. (Un corte real puede pedir una décima parte más o menos que la misma área.)',
        metric:
          'Un patrón necesita {needed} de una tela de {from} de ancho. La tienda la tiene de {to} de ancho. La tela se vende por décimas de metro. (Un corte real puede pedir una décima parte más o menos que la misma área.)',
      },
      3: {
        us: 'Un quilt mide {width} de ancho y {length} de largo. Su tela trasera es {over} más grande en cada sentido. Se cose con tiras enteras de una tela de {usable} de ancho, de pie o atravesadas. Una yarda son 36 in, y la tela se vende por cuartos de yarda.',
        metric:
          'Un quilt mide {width} de ancho y {length} de largo. Su tela trasera es {over} más grande en cada sentido. Se cose con tiras enteras de una tela de {usable} de ancho, de pie o atravesadas. La tela se vende por décimas de metro.',
      },
    },
    trace: {
      1: '{project}: {pieces} piezas llevan {lint} de fibra. El rendimiento de fibra en la despepitadora fue de {turnout}.',
      2: {
        us: '{project}: {pieces} piezas llevan {lint} de fibra. El rendimiento de fibra en la despepitadora fue de {turnout}. Una bellota guarda {boll} de algodón en hueso, y una onza son {gramsPerOunce} g.',
        metric:
          '{project}: {pieces} piezas llevan {lint} de fibra. El rendimiento de fibra en la despepitadora fue de {turnout}. Una bellota guarda {boll} de algodón en hueso.',
      },
      3: {
        us: '{project}: {pieces} piezas llevan {cloth} de tela. El acabado deja {finishing} de la tela del telar, el telar {weaving} del hilo, el hilado {realisation} de la fibra, y el rendimiento de fibra en la despepitadora fue de {turnout}. Una bellota guarda {boll} de algodón en hueso, y una onza son {gramsPerOunce} g.',
        metric:
          '{project}: {pieces} piezas llevan {cloth} de tela. El acabado deja {finishing} de la tela del telar, el telar {weaving} del hilo, el hilado {realisation} de la fibra, y el rendimiento de fibra en la despepitadora fue de {turnout}. Una bellota guarda {boll} de algodón en hueso.',
      },
    },
  },
  asks: {
    heat: {
      total: '¿Cuántas unidades calor trajeron estos días en total?',
      perDay: '¿Cuántas fueron por día, en promedio?',
      days: '¿En cuántos días como estos se abriría una bellota?',
    },
    ginBalance: {
      rest: '¿Cuánto es basura, borra del despepite y agua que se evaporó, todo junto?',
      dried: '¿Cuánta agua se evaporó?',
      seedShare: '¿Qué porcentaje de la carga era semilla?',
      water: '¿Cuánta agua entró con la carga?',
      waterOut: '¿Cuánta agua hay en todo lo que sale de la despepitadora, sumado?',
    },
    turnout: {
      turnout: '¿Cuál es el rendimiento de fibra?',
      lint: '¿Cuánta fibra da el módulo?',
      bales: '¿Cuántas pacas son?',
      needFirst: '¿Cuánto algodón en hueso pide una paca en la primera granja?',
      needSecond: '¿Y en la segunda?',
      more: '¿Cuánto algodón en hueso más acarrea la segunda granja por todas sus pacas?',
    },
    bales: {
      fullBales: '¿Cuántas pacas completas salen?',
      left: '¿Cuánta fibra sobra?',
      price: '¿Cuál es el precio del algodón de esta paca?',
      value: '¿Cuánto vale la paca?',
      credit: '¿Cuánto paga la despepitadora por la semilla?',
      charge: '¿Cuánto cobra por el despepite?',
      balance: '¿Cuánto recibe la granja una vez descontado el cobro? (Bajo cero: la granja paga.)',
    },
    staple: {
      firstInches: '¿Cuánto mide la fibra de la primera paca, en pulgadas?',
      secondInches: '¿Y la de la segunda?',
      thirdInches: '¿Y la de la tercera?',
      firstCode: '¿Qué código de longitud tiene la primera paca?',
      secondCode: '¿Qué código tiene la segunda?',
      thirdCode: '¿Qué código tiene la tercera?',
      fourthCode: '¿Qué código tiene la cuarta?',
    },
    yarn: {
      count: '¿Cuál es el número del hilo?',
      tex: '¿Cuántos tex tiene el hilo?',
      ne: '¿Cuál es su número Ne?',
      fibers: '¿Cuántas fibras hay más o menos lado a lado en el hilo?',
      fiber: '¿Cuántos mtex tiene una fibra?',
      finest: '¿Cuál es el número Ne más fino que permite este algodón?',
    },
    clothWeight: {
      weight: '¿Cuánto pesa la tela por su área?',
      area: '¿Cuál es el área del trozo?',
      mass: '¿Cuánto pesa el trozo?',
      warp: {
        us: '¿Cuánto mide toda la urdimbre de una yarda cuadrada?',
        metric: '¿Cuánto mide toda la urdimbre de un metro cuadrado?',
      },
      weft: '¿Y toda la trama?',
    },
    conversions: {
      share: '¿Qué porcentaje de las pacas es?',
      newPrice: '¿Cuánto cuesta la tela ahora?',
      otherLength: '¿Cuál es el largo en la otra unidad?',
      otherWeight: '¿Y el peso?',
      after: '¿Cuánto mide la tela de la primera persona después del lavado?',
      cutLength: '¿De qué largo debe cortar la otra su pieza?',
      heavier: '¿Cuánto pesa la tela después del lavado?',
    },
    layout: {
      strips: '¿Cuántas tiras caben?',
      left: '¿Qué ancho tiene lo que sobra?',
      sameArea: '¿Qué largo de la tela más ancha tiene la misma área?',
      buy: '¿Cuánto se compra?',
      stripsUpright: '¿Cuántas tiras de pie cubren el ancho?',
      upright: '¿Qué largo de tela llevan?',
      stripsCrosswise: '¿Cuántas tiras atravesadas cubren el largo?',
      crosswise: '¿Qué largo de tela llevan?',
    },
    trace: {
      seedCotton: '¿Cuánto algodón en hueso hay detrás?',
      bolls: '¿Cuántas bellotas son?',
      yarn: '¿Cuánto hilo entró al telar?',
      lint: '¿Cuánta fibra entró a la hilandería?',
    },
  },
  steps: { thinnest: 'El hilo más delgado', heat: 'Día {day}' },
  drawn: {
    selvage: 'orillo',
    grain: 'hilo',
    warp: 'urdimbre',
    weft: 'trama',
    quilt: 'quilt',
    upright: 'de pie',
    crosswise: 'atravesada',
    gin: 'despepite',
    lint: 'fibra',
    seed: 'semilla',
    trash: 'basura',
    motes: 'borra',
    water: 'agua',
    rest: 'lo demás',
  },
  projects: {
    'dress-shirt': 'Camisas',
    skirt: 'Faldas',
    't-shirt': 'Camisetas',
    jeans: 'Jeans',
    apron: 'Delantales',
    bandana: 'Paliacates',
    tote: 'Bolsas de tela',
    pillowcase: 'Fundas de almohada',
    'flat-sheet': 'Sábanas planas',
    'sheet-set': 'Juegos de sábanas',
  },
  tables: {
    week: { day: 'Día', high: 'Máxima', low: 'Mínima' },
    staple: { from: 'Desde', code: 'Código' },
  },
};
