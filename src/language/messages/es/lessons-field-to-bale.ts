import type { fieldToBale as english } from '../en/lessons-field-to-bale.ts';

export const fieldToBale: typeof english = {
  computed: {
    'days-planting-to-picking': 'De la siembra a la cosecha en la temporada de ejemplo.',
    'days-planting-to-square': 'De la siembra al primer cuadro de la planta media, temporada de ejemplo.',
    'days-planting-to-flower': 'De la siembra a la primera flor de la planta media, temporada de ejemplo.',
    'days-flower-to-open': 'De la primera flor a la primera bellota abierta, temporada de ejemplo.',
    'squares-per-plant': 'Todos los cuadros de la planta media en la temporada de ejemplo, también los que cayeron.',
    'open-bolls-of-hundred-squares':
      'Bellotas abiertas en la cosecha entre todos los cuadros del verano, planta media, temporada de ejemplo.',
    'bale-of-hundred':
      'Peso de la paca entre el peso de su algodón en hueso al llegar a la despepitadora, temporada de ejemplo.',
    'seed-per-bale':
      'Semilla como se pesa en su bodega para una paca de la temporada de ejemplo, con su agua y su pelusa.',
    'trash-per-bale':
      'Cáscaras, varas, hojas, semillas vanas y tierra en el algodón en hueso de una paca, en seco, temporada de ejemplo.',
    'seed-cotton-per-bale':
      'Algodón en hueso que llega a la despepitadora para una paca, con su basura y su agua, temporada de ejemplo.',
    'bale-weight':
      'La paca estadística de los Estados Unidos, por definición. Todos los números por paca son para esta.',
    'hand-gin-days-per-bale': 'El peso de esa paca entre la tarea diaria de una desmotadora de manivela de 1793.',
    'fewest-hand-gin-days-per-bale': 'Lo mismo con lo más que se alcanzó, según la carta.',
    'fewest-bolls-per-picking-day': 'El promedio de los hombres y muchachos de ese día, a sesenta bellotas por libra.',
    'most-bolls-per-picking-day': 'Lo mismo a ochenta bellotas por libra.',
    'fewest-bolls-per-child-task': 'La tarea de un niño, a sesenta bellotas por libra.',
    'most-bolls-per-child-task': 'Lo mismo a ochenta bellotas por libra.',
    'picking-days-per-bale-men':
      'La carga pizcada a mano para una paca entre el promedio de los hombres y muchachos de ese día.',
    'picking-days-per-bale-women': 'Lo mismo entre el promedio de las mujeres y muchachas.',
    'hand-picked-load-per-bale':
      'Algodón en hueso que la granja de ejemplo de los años treinta, pizcado a mano, lleva a la despepitadora para una paca; redondeado a diez.',
    'enslaved-1790': 'Censo de 1790, de memoria; los totales impresos difieren en unos miles. Redondeado a diez mil.',
    'enslaved-1860': 'Censo de 1860, de memoria. Redondeado a diez mil.',
    'machine-dollars-per-bale':
      'Costo de pizcar una paca con máquina, California 1949 (University of California Bulletin 743); redondeado a un dólar.',
  },
  titles: {
    steelyard: 'Un saco en la romana',
    ginBalance: 'Lo que una paca deja en la despepitadora',
    plantSummer: 'El verano de una planta',
  },
  figures: {
    steelyard: {
      title: 'Un saco en la romana',
      pick: 'En el saco',
      says: 'Un saco de {sack} cuelga del brazo corto. Un pilón de {poise}, a {arm}, lo equilibra. El saco lleva {bolls} bellotas.',
      bolls: 'de {fewest} a {most}',
      rows: { sack: 'Saco', arm: 'Distancia del pilón', bolls: 'Bellotas en el saco' },
      note: 'La carga por su brazo es el pilón por el suyo. Los brazos van a una misma escala. De sesenta a ochenta bellotas por libra, como dice un registro de la época.',
    },
    ginBalance: {
      title: 'Lo que una paca deja en la despepitadora',
      pick: 'Cómo se cosechó',
      harvests: {
        picked: 'Cosechadora de husillos',
        stripped: 'Cosechadora de arranque',
        byHand: 'A mano, años treinta',
      },
      says: '{harvest}: entran {into} para una paca de {bale}. La semilla, en seco, pesa {seed}. Cada tira es tan larga como pesa su algodón; lo que una máquina quita queda al lado.',
      steps: {
        module: 'Entra a la planta',
        cleaning: 'Secadores y limpiadores',
        stand: 'Unidad de despepite: sierras y costillas',
        lintCleaners: 'Limpiadores de fibra',
        press: 'Prensa',
      },
      takenAt: {
        cleaning: 'Sale en secadores y limpiadores',
        stand: 'Sale en la unidad de despepite',
        lintCleaners: 'Sale en los limpiadores de fibra',
        press: 'Sale en la prensa',
      },
      bale: 'En la paca',
      parts: { lint: 'Fibra', seed: 'Semilla', trash: 'Basura', water: 'Agua' },
      goesOn: 'siguen {mass}',
      cutOff: 'salen {mass}',
      note: 'Temporadas número 1 de tres granjas de ejemplo, cada una para una paca del mismo peso. Las partes van secas; la prensa puede agregar algo de agua.',
    },
    plantSummer: {
      title: 'El verano de una planta',
      pick: 'Granja',
      farms: {
        'coastal-plain': 'Llanura costera',
        'high-plains-dryland': 'Altiplano, solo con lluvia',
        'irrigated-desert': 'Desierto de riego',
        'long-staple-valley': 'Valle, Pima',
      },
      says: '{farm}: siembra el {planted}, primera flor el {flower}, primera bellota abierta el {open}. Cada forma es tan ancha como lo que hay en una planta ese día.',
      events: {
        planted: 'Siembra',
        emerged: 'Brota',
        firstSquare: 'Primer cuadro',
        firstFlower: 'Primera flor',
        firstOpenBoll: 'Primera bellota abierta',
        picked: 'Cosecha',
      },
      counts: { squares: 'Cuadros', greenBolls: 'Bellotas verdes', openBolls: 'Bellotas abiertas' },
      most: {
        squares: 'Más cuadros en un día',
        greenBolls: 'Más bellotas verdes en un día',
        openBolls: 'Bellotas abiertas en la cosecha',
      },
      openOfHundred: 'Bellotas abiertas, de cada cien cuadros',
      note: 'Una planta media de cada campo, temporada número 1. La flor se cuenta con las bellotas verdes.',
    },
  },
};
