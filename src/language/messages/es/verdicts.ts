import type { verdicts as english } from '../en/verdicts.ts';

export const verdicts: typeof english = {
  module: {
    sound: 'En buen estado: seco para guardar.',
    ginSoon: 'Se entibia: conviene despepitar pronto.',
    ginNow: 'Se calienta: hay que despepitar ya, o se pone amarillo.',
  },
  spinning: {
    comfortable: 'Esta fibra hila este hilo sin esfuerzo.',
    strained: 'Con esfuerzo: habrá roturas.',
    impossible: 'Más de lo que esta fibra puede hilar.',
  },
  spinningReasons: {
    fibresInSection: 'Quedarían muy pocas fibras lado a lado en el hilo.',
    staple: 'La fibra es corta para un hilo tan fino.',
    rotorCount: 'El rotor no hila tan fino.',
  },
  weaving: {
    settIgnored: 'El punto no lleva hilos por pulgada: sus mallas siguen del tamaño del bucle.',
    tightSett: 'Más cerrada de lo que se pondría en un telar de mano.',
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
    killedByFrost: 'La helada mató las plantas tiernas.',
    fibresInSection: 'La temporada termina aquí: esta fibra no puede hilar un hilo tan fino.',
    rotorCount: 'La temporada termina aquí: el rotor no puede hilar un hilo tan fino.',
    settTooHigh: 'La temporada termina aquí: tantos hilos no caben en una pulgada.',
    soWhat: 'Un cultivo que falla también es un resultado. El registro cierra igual.',
  },
  notes: {
    leafyPlant: 'Queda hoja verde en las plantas y se va con la cosecha.',
    poorCropForMachine: 'Un cultivo tan ralo casi no paga la máquina.',
    tooWetToStore: 'Muy húmedo para guardarlo mucho tiempo.',
    spindlesWetCotton: 'Los husillos mojados agregan un poco de agua.',
    fieldCleanerUsed: 'El limpiador de campo deja cáscaras y varas en el campo.',
    baleTooDamp: 'Esta paca está más húmeda de lo que acepta el comercio.',
    oddWeight: 'Las pacas salen lejos del peso fijado.',
    overflow: 'Llega más de lo que toman las unidades; el sobrante da otra vuelta.',
  },
};
