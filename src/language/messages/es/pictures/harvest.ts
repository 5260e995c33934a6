import type { harvestWords as english } from '../../en/pictures/harvest.ts';

export const harvestWords: typeof english = {
  personDays: { one: '{n} jornada', many: '{n} de jornadas', other: '{n} jornadas' },
  personDaysOf: 'para pizcar una paca',
  minutes: { one: '{n} minuto', many: '{n} de minutos', other: '{n} minutos' },
  minutesOf: 'de máquina, una paca',
  drum: 'Husillos, desde arriba',
  doffer: 'Desprendedores',
  wetPad: 'Almohadilla mojada',
  sack: 'Saco de pizca, abierto por un lado',
  rolls: 'Rodillos de cepillos y paletas',
  fieldCleaner: 'Limpiador de campo',
  shredded: 'Varas desvaradas',
  cutDown: 'Varas cortadas',
  drumShows:
    'El tambor gira de modo que sus husillos no se mueven contra las plantas: {speed} de surco por segundo en el campo, una vuelta en {seconds} segundos aquí.',
  dofferShows:
    'Los desprendedores giran al revés y sacan el algodón de los husillos: una vuelta en {seconds} segundos aquí.',
  rollsShow: 'Los rodillos dan {turns} vueltas por minuto, dibujadas {times} veces más lento.',
  cleanerShows: 'La sierra del limpiador de campo da {turns} vueltas por minuto, dibujadas {times} veces más lento.',
  captionPieces: 'Bellota, copo, semilla o gota: {tuft}; pizca de basura: {bit}.',
  captionShort: 'Bellota, copo, semilla o gota: {tuft}. Pizca: {bit}.',
  captionField: 'Una paca pasa en {seconds} segundos; en el campo, en {work}.',
  captionPace: 'Una paca pasa en {seconds} segundos.',
  feet: '{n} pies',
  field: 'El campo',
  progress: 'Recogido hasta ahora',
  work: 'Trabajo para una paca',
  row: 'Bellotas en un pie de surco',
  efficiency: 'Recogido de lo que quedaba en pie',
  seeHand:
    'Las manos sacan el algodón de las bellotas abiertas y llenan un saco de {feet} que se arrastra por el surco. Las cáscaras se quedan en la planta.',
  seeSpindle:
    'Los husillos con púas entran en una hilera de bellotas abiertas, enrollan el algodón y dejan las cáscaras en la planta; los desprendedores lo sacan de los husillos y las almohadillas mojadas los limpian.',
  seeStripper: 'Dos rodillos de cepillos y paletas arrancan todo: con el algodón vienen cáscaras, varas y hojas.',
  seeCleaner: 'Una sierra en el limpiador de campo lanza cáscaras y varas de vuelta al suelo.',
  seeFar: 'A lo lejos está recogido {share} del campo.',
};
