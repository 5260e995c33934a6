import type { stations as english } from '../en/stations.ts';

export const stations: typeof english = {
  planting: {
    name: 'Siembra',
    instruction: 'Elige semilla, fecha y surco; después, a sembrar.',
    atTheTable: 'El tipo de semilla fija qué tan larga puede ser la fibra, y qué tan fino el hilo.',
  },
  bloom: {
    name: 'Floración',
    instruction: 'Decide cuánto regar y mira florecer los cuadros (botones florales).',
    atTheTable: 'Cada flor que se queda puede ser una bellota: tela para un retazo de unas cuatro pulgadas por lado.',
  },
  boll: {
    name: 'Bellota',
    instruction: 'Decide si se quitan las hojas, y cuándo.',
    atTheTable: 'En estas semanas la fibra llena su pared. Si la planta para antes, la fibra queda delgada.',
  },
  harvest: {
    name: 'Cosecha',
    instruction: 'Elige quién o qué cosecha, y cuánto esperar.',
    atTheTable: 'La lluvia sobre las bellotas abiertas agrisa el algodón antes de hilarlo.',
  },
  module: {
    name: 'Módulo',
    instruction: 'Compacta el algodón en hueso, cúbrelo y cuida su humedad.',
    atTheTable: 'El algodón guardado muy húmedo puede calentarse y amarillear mucho antes de ser tela.',
  },
  cleaning: {
    name: 'Limpieza',
    instruction: 'Elige cuánto secar y limpiar antes del despepite.',
    atTheTable: 'Los puntos oscuros de la manta cruda son lo que ningún limpiador quitó.',
  },
  ginning: {
    name: 'Despepite',
    instruction: 'Elige la unidad de despepite y los limpiadores de fibra.',
    atTheTable: 'Las fibras rotas tienen más puntas, y cada pelo de un hilo empieza en una punta.',
  },
  pressing: {
    name: 'Prensado',
    instruction: 'Fija el peso de la paca y la humedad devuelta.',
    atTheTable: 'Una paca da fibra para unas 765 camisas de vestir, según una lista; otras difieren.',
  },
  classing: {
    name: 'Clasificación',
    instruction: 'Lee los grados y elige un mercado.',
    atTheTable: 'La longitud y la finura, medidas aquí, deciden qué tan fino puede ser el hilo.',
  },
  spinning: {
    name: 'Hilado',
    instruction: 'Elige cómo hilar, y qué tan fino.',
    atTheTable: 'La fibra más larga pide menos torsión, y menos torsión da un hilo más suave.',
  },
  weaving: {
    name: 'Telar',
    instruction: 'Elige el ligamento, los hilos por pulgada y el acabado.',
    atTheTable: 'El conteo suma los hilos y las pasadas de una pulgada. Los cabos no se cuentan dos veces.',
  },
  sewing: {
    name: 'Mesa de costura',
    instruction: 'Elige si prelavar, elige el margen y corta.',
    atTheTable: 'Conviene lavar antes de cortar: la tela aún puede encoger. No se pierde nada; los hilos se juntan.',
  },
};
