import type { navigation as english } from '../en/navigation.ts';

export const navigation: typeof english = {
  label: 'Páginas',
  menu: 'Páginas',
  more: 'Más',
  pages: {
    season: 'Temporada',
    ask: 'Preguntas',
    compare: 'Comparar',
    farm: 'Granja propia',
    bench: 'Mesa',
    trace: 'Origen',
    lessons: 'Lecciones',
    teach: 'Enseñar',
    kiosk: 'Pantalla',
    sources: 'Fuentes',
    model: 'El modelo',
  },
  about: {
    season: 'de la siembra a la mesa de costura',
    bench: 'un algodón, un hilo y una tela a elegir',
    trace: 'del quilt de vuelta al campo',
    lessons: 'lecturas breves, con algo que hacer en casa',
    ask: 'una docena, contestadas con números',
    farm: 'campo, desmotadora e hilandería propios',
    sources: 'de dónde viene cada número',
    model: 'cómo calcula y en qué se equivoca',
  },
  doors: {
    heading: {
      us: 'Una bellota de algodón da un retazo de unas cuatro pulgadas por lado.',
      metric: 'Una bellota de algodón da un retazo de unos diez centímetros por lado.',
    },
    lead: 'De la semilla a la costura. Cada libra se cuenta, de la siembra a la mesa de corte.',
    season: {
      name: 'Seguir una temporada',
      line: 'Sembrar, cosechar, despepitar, hilar y tejer en telar. Decidir, y ver qué cambia.',
    },
    bench: { name: 'Preguntar por una tela', line: 'Fibra, hilo y tela en dos mesas: qué les hace la longitud.' },
    teach: {
      name: 'Dar una clase',
      line: 'Un plan al minuto, preguntas para hacer y un enlace para la clase.',
    },
  },
  stationOf: 'Estación {number} de {all}',
  quilt: {
    label: 'Las doce estaciones',
    sewn: '{name}: cosido',
    basted: '{name}: aquí',
    chalked: '{name}: todavía no',
    progress: '{sewn} de {all} bloques cosidos',
  },
  sewIn: 'Coser este bloque',
  thenTo: 'seguir a {name}',
  finished: 'El quilt está terminado',
  farm: 'Granja',
  farmChoose: 'Elegir una granja',
};
