import type { verdicts as english } from '../en/verdicts.ts';

export const verdicts: typeof english = {
  module: {
    sound: 'En buen estado: seco para guardar.',
    ginSoon: 'Se entibia: conviene despepitar pronto.',
    ginNow: 'Se calienta: hay que despepitar ya, o se pone amarillo.',
  },
  spinning: {
    spins: 'Esta fibra hila este hilo.',
    near: 'Cerca del límite: habrá roturas.',
    beyond: 'Más de lo que esta fibra puede hilar.',
  },
  weaving: {
    open: 'Tela abierta.',
    usual: 'Una tela usual para este ligamento.',
    close: 'Tela cerrada: difícil de tejer en telar.',
    beyond: 'Más hilos de los que caben.',
  },
  refusals: {
    notEnoughBollsOpen: 'Solo {open} de las bellotas están abiertas. La cosecha pide {needed}.',
    cropFailed: 'No hubo cosecha esta temporada y no se puede seguir. Cambia la siembra, o prueba otra temporada.',
    tooWetToStore: 'El algodón en hueso tiene {moisture} de agua. Arriba de {limit} se calienta al guardarlo.',
    yarnOutOfReach: 'El hilo {count} es demasiado fino para esta fibra. Llega a {limit}.',
    settTooHigh: '{sett} no caben con este hilo. El máximo es {limit}.',
  },
  stopped: {
    heading: 'Aquí se detuvo el cultivo',
    neverEmerged: 'Las semillas no nacieron: se juntaron {dd60}, hacían falta {needed}.',
    neverSquared: 'Las plantas no formaron cuadros: se juntaron {dd60}, hacían falta {needed}.',
    neverFlowered: 'Las plantas no florecieron: se juntaron {dd60}, hacían falta {needed}.',
    noBollOpened: 'Ninguna bellota abrió antes del fin de la temporada: se juntaron {dd60}, hacían falta {needed}.',
    noCrop: 'No quedó ninguna bellota que cosechar. La temporada juntó {dd60}.',
    soWhat: 'Un cultivo que falla también es un resultado. El registro cierra igual.',
  },
  warnings: {
    heavyBale: 'Esta paca pesa más de lo que quieren la prensa y el comercio.',
    lightBale: 'La última paca salió ligera.',
    wetLint: 'La fibra tan húmeda puede apelmazarse y enmohecer en la paca.',
    dryLint: 'La fibra tan seca se rompe más y se resiste a la prensa.',
    overflow: 'Llega más de lo que toman las unidades; el sobrante da otra vuelta.',
    shortFibre: 'Más fibra corta de la que quiere la mayoría de las hilanderías.',
    lowMicronaire: 'El micronaire es bajo: fibra fina, o inmadura.',
    highMicronaire: 'El micronaire es alto: fibra gruesa.',
  },
};
