import type { decisions as english } from '../en/decisions.ts';

export const decisions: typeof english = {
  planting: {
    plantingDayOfYear: {
      label: 'Fecha de siembra',
      help: 'El algodón pide suelo tibio. Muy pronto, la semilla puede pudrirse; muy tarde, las últimas bellotas pueden no abrir.',
    },
    variety: {
      label: 'Semilla',
      help: 'La variedad fija qué tan larga puede ser la fibra y qué parte del algodón en hueso es fibra.',
      options: {
        uplandShort: 'Upland, fibra corta',
        uplandMedium: 'Upland, fibra media',
        uplandLong: 'Upland, fibra larga',
        pima: 'Pima, fibra extralarga',
      },
    },
    rowInches: { label: 'Ancho de surco', help: 'La distancia de un surco al siguiente.' },
    seedsPerFoot: { label: 'Semillas en el surco', help: 'Las plantas apretadas cargan menos bellotas cada una.' },
  },
  bloom: {
    irrigationInches: {
      label: 'Riego',
      help: 'Lo más que puede darse en la temporada, además de la lluvia; solo se da lo que el cultivo pide, hasta que abre un tercio de las bellotas. Con sed, la planta suelta cuadros y bellotas tiernas.',
    },
  },
  boll: {
    harvestAid: {
      label: 'Defoliante',
      help: 'Un producto químico que quita las hojas. Lo aplica personal con licencia, según la etiqueta.',
    },
    openPercent: {
      label: 'Bellotas abiertas al defoliar',
      help: 'Antes significa menos lluvia sobre el algodón, y fibras menos y de pared más delgada.',
    },
  },
  harvest: {
    method: {
      label: 'Cosecha con',
      help: 'Las manos y los husillos sacan el algodón en hueso; la de arranque se lleva la bellota entera.',
      options: {
        hand: 'Pizca a mano',
        spindle: 'Cosechadora de husillos',
        stripper: 'Cosechadora de arranque',
        stripperFieldCleaner: 'De arranque, con limpiador de campo',
      },
    },
    daysToHarvest: {
      label: 'Espera antes de cosechar',
      help: 'Días después del defoliante, o desde que abrieron suficientes bellotas.',
    },
    pickings: { label: 'Pasadas por el campo', help: 'La pizca puede volver por las bellotas que abren después.' },
    moisturePercent: {
      label: 'Humedad al cosechar',
      help: 'Cosechar con rocío se lleva agua también. Los husillos mojados suman cerca de un punto.',
    },
  },
  module: {
    kind: {
      label: 'Se guarda en',
      help: 'Cómo espera el algodón en hueso su turno de despepite.',
      options: { round: 'Módulo redondo', conventional: 'Módulo largo', wagon: 'Carreta' },
    },
    cover: {
      label: 'Cubierta',
      help: 'La lluvia que entra calienta el algodón.',
      options: { good: 'Cubierta sana', poor: 'Cubierta rota', none: 'Sin cubierta' },
    },
    storageDays: { label: 'Días guardado', help: 'Cuánto espera el algodón su turno en la despepitadora.' },
  },
  cleaning: {
    dryers: { label: 'Secadores', help: 'El algodón más seco se limpia mejor y se rompe más.' },
    dryerAirF: { label: 'Aire del secador', help: 'El calor del aire donde toca el algodón.' },
    cylinderCleaners: {
      label: 'Limpiadores de cilindros',
      help: 'Rodillos con púas tallan hoja y tierra contra una criba.',
    },
    stickMachines: {
      label: 'Extractoras de varas',
      help: 'Sierras que lanzan fuera varas y cáscaras; el algodón de arranque las necesita.',
    },
  },
  ginning: {
    stand: {
      label: 'Unidad de despepite',
      help: 'Las sierras son rápidas. El rodillo es lento y suave, para Pima.',
      options: { saw: 'De sierras', roller: 'De rodillo' },
    },
    lintCleaner: {
      label: 'Tipo de limpiador de fibra',
      help: 'Lo que encuentra la fibra después de la unidad.',
      options: { saw: 'De sierra', roller: 'De rodillo', air: 'Solo aire' },
    },
    lintCleaners: {
      label: 'Limpiadores de fibra',
      help: 'Cada uno mejora el grado de hoja y quita algo de longitud y de fibra.',
    },
    moistureAddedPoints: {
      label: 'Humedad antes de la unidad',
      help: 'Un poco de agua de vuelta evita que se rompan las fibras.',
    },
  },
  pressing: {
    netPounds: {
      label: 'Fibra en una paca',
      help: 'La paca de las estadísticas tiene 480 libras; las reales varían.',
    },
    restoreToPercent: {
      label: 'Humedad en la prensa',
      help: 'La fibra seca se resiste a la prensa. El agua que se agrega también se pesa.',
    },
  },
  classing: {
    market: {
      label: 'Mercado',
      help: 'Cada región publica sus propios premios y descuentos.',
      options: {
        southeast: 'Sureste',
        sanJoaquin: 'Valle de San Joaquín',
        eastTexas: 'Este de Texas y Oklahoma',
        westTexas: 'Oeste de Texas',
      },
    },
    moduleAveraging: {
      label: 'Promedio del módulo',
      help: 'Todas las pacas de un módulo comparten sus lecturas promedio.',
    },
  },
  spinning: {
    system: {
      label: 'Hilado',
      help: 'El peinado quita las fibras cortas; el rotor hila rápido y voluminoso.',
      options: { ringCarded: 'De anillos, cardado', ringCombed: 'De anillos, peinado', rotor: 'De rotor' },
    },
    countNe: { label: 'Título del hilo', help: 'Ne cuenta madejas de 840 yardas en una libra: más alto, más fino.' },
    noilPercent: {
      label: 'Parte peinada',
      help: 'La parte de fibra corta que aparta la peinadora, como borra de peinado.',
    },
  },
  weaving: {
    structure: {
      label: 'Tela',
      help: 'Cómo se cruzan los hilos, o se enlazan.',
      options: { plain: 'Tafetán', twill: 'Sarga', sateen: 'Satén', jersey: 'Jersey, de punto' },
    },
    endsPerInch: { label: 'Hilos de urdimbre por pulgada', help: 'Hilos a lo largo de la tela.' },
    picksPerInch: { label: 'Pasadas por pulgada', help: 'Hilos a lo ancho de la tela.' },
    finish: {
      label: 'Acabado',
      help: 'Lo que se le hace a la tela al salir del telar.',
      options: {
        grey: 'Ninguno (tela cruda)',
        scoured: 'Descrudado',
        bleached: 'Blanqueo',
        mercerised: 'Mercerizado',
        printed: 'Estampado',
      },
    },
  },
  sewing: {
    prewash: { label: 'Prelavado', help: 'Encogerla primero, o dejar que encoja la pieza terminada.' },
    seamInches: { label: 'Margen de costura', help: 'La tela que queda dentro de la costura no es retazo.' },
  },
};
