import type { baleLesson as english } from '../en/lessons-bale.ts';

/** Las palabras de la lección sobre la paca: sus números y su figura. */
export const baleLesson: typeof english = {
  title: 'Una paca y su etiqueta',
  computed: {
    'bale-gross': 'Peso medio de las pacas de la temporada de ejemplo, con envoltura y flejes.',
    'bale-net': 'Peso medio del algodón que llevan, con su humedad.',
    'bale-tare':
      'Envoltura y flejes de una de sus pacas (especificaciones 2023-24 del National Cotton Council; la tabla estaba dañada donde se leyó).',
    'bales-of-season': 'Pacas que ató la prensa en la temporada de ejemplo.',
    'modules-of-season': 'Módulos que la temporada de ejemplo llevó a la despepitadora.',
    'bolls-per-bale': 'Todas las bellotas del campo entre las pacas de la temporada de ejemplo; redondeado a mil.',
    'cloth-per-bale':
      'Tela acabada de la temporada de ejemplo, en su ancho de costumbre, entre sus pacas; redondeado a diez.',
  },
  figure: {
    title: 'Una paca y su etiqueta',
    pick: 'Paca',
    outOf: '{n} de {all}',
    says: 'La paca {n} lleva la etiqueta {tag}. La báscula marca {gross}: {net} de algodón y {tare} de envoltura y flejes. Salió del módulo {module}, y detrás de ella hay {bolls} bellotas.',
    ginIs: 'clave, inventada',
    baleIs: 'número de la paca',
    sample: 'corte de muestra',
    gross: 'Bruto, en la báscula: {mass}',
    net: 'Neto, algodón: {mass}',
    tare: 'Tara: {mass}',
    leadsBack: 'A dónde lleva el número',
    back: { bale: 'Paca', module: 'Módulo', plants: 'Plantas', bolls: 'Bellotas' },
    columns: {
      tag: 'Etiqueta',
      gross: 'Bruto',
      tare: 'Tara',
      net: 'Neto',
      module: 'Módulo',
      staple: 'Largo de fibra',
      micronaire: 'Micronaire',
      color: 'Color, hoja',
      bolls: 'Bellotas',
    },
    note: 'Temporada de ejemplo, número 1. La despepitadora es inventada, y ninguna tiene la clave 00000. Una etiqueta de verdad lleva además un código de barras. El grosor dibujado es el de la panza, cuando más. Bellotas y plantas son las del campo, repartidas por peso.',
  },
};
