/** Words of the lessons from the field to the bale: their computed numbers and their figures. */
export const fieldToBale = {
  computed: {
    'days-planting-to-picking': 'From planting to picking in the example season.',
    'days-planting-to-square': 'From planting to the first square of the mean plant, example season.',
    'days-planting-to-flower': 'From planting to the first flower of the mean plant, example season.',
    'days-flower-to-open': 'From the first flower to the first open boll, example season.',
    'squares-per-plant': 'All squares of the mean plant in the example season, those that fell included.',
    'open-bolls-of-hundred-squares':
      'Bolls open at picking over all squares of the summer, mean plant, example season.',
    'bale-of-hundred': 'Weight of the bale over the weight of its seed cotton as it reaches the gin, example season.',
    'seed-per-bale': 'Seed, dry, that the gin stand parts from one bale of the example season.',
    'trash-per-bale': 'Burs, sticks, leaf, motes and dirt in the seed cotton of one bale, example season.',
    'seed-cotton-per-bale': 'Seed cotton that reaches the gin for one bale, with its trash and water, example season.',
    'bale-weight': 'Mean net weight of the bales of the example season.',
    'hand-gin-days-per-bale': 'The lint of that bale at the day’s task of a hand-cranked gin of 1793.',
    'bolls-per-picking-day':
      'A usual day’s picking over the seed cotton of a boll of the example season; rounded to a hundred.',
    'bolls-per-child-task': 'The task of a child over the seed cotton of a boll; rounded to ten.',
    'picking-days-per-bale': 'The hand-picked load for one bale over a usual day’s picking.',
    'hand-picked-load-per-bale':
      'Seed cotton that the hand-picked example farm of the 1930s hauls to the gin for one bale.',
  },
  titles: {
    steelyard: 'A sack on the steelyard',
    ginBalance: 'What one bale leaves behind at the gin',
    plantSummer: 'The summer of one plant',
  },
  figures: {
    steelyard: {
      title: 'A sack on the steelyard',
      pick: 'In the sack',
      says: 'A sack of {sack} hangs on the short arm. A poise of {poise}, slid {arm} out, holds it level. The sack holds {bolls} bolls.',
      rows: { sack: 'Sack', arm: 'Poise slid out', bolls: 'Bolls in the sack' },
      note: 'Load times its arm is poise times its arm. Arms are to one scale. Bolls are those of the example season.',
    },
    ginBalance: {
      title: 'What one bale leaves behind at the gin',
      pick: 'How it was harvested',
      harvests: { picked: 'Spindle picker', stripped: 'Stripper', byHand: 'By hand, 1930s' },
      says: '{harvest}: {into} go in for a bale of {bale}. The seed weighs {seed}. A strip is as long as its cotton is heavy; what a machine takes out lies beside it.',
      steps: {
        module: 'Into the gin',
        cleaning: 'Dryers and cleaners',
        stand: 'Gin stand: saws and ribs',
        lintCleaners: 'Lint cleaners',
        press: 'Press',
      },
      takenAt: {
        cleaning: 'Out at the dryers and cleaners',
        stand: 'Out at the gin stand',
        lintCleaners: 'Out at the lint cleaners',
        press: 'Out at the press',
      },
      bale: 'In the bale',
      parts: { lint: 'Fiber', seed: 'Seed', trash: 'Trash', water: 'Water' },
      goesOn: '{mass} go on',
      cutOff: '{mass} out',
      note: 'Seasons number 1 of three example farms, shared out among their bales. Parts are dry; the press may add a little water.',
    },
    plantSummer: {
      title: 'The summer of one plant',
      pick: 'Farm',
      farms: {
        'coastal-plain': 'Coastal plain',
        'high-plains-dryland': 'High plains, rain only',
        'irrigated-desert': 'Irrigated desert',
        'long-staple-valley': 'Valley, Pima',
      },
      says: '{farm}: planted {planted}, first flower {flower}, first open boll {open}. Each shape is as wide as the count on one plant that day.',
      events: {
        planted: 'Planted',
        emerged: 'Up',
        firstSquare: 'First square',
        firstFlower: 'First flower',
        firstOpenBoll: 'First open boll',
        picked: 'Picked',
      },
      counts: { squares: 'Squares', greenBolls: 'Green bolls', openBolls: 'Open bolls' },
      most: {
        squares: 'Most squares on one day',
        greenBolls: 'Most green bolls on one day',
        openBolls: 'Open bolls at picking',
      },
      openOfHundred: 'Open bolls, of a hundred squares',
      note: 'One mean plant of each field, season number 1. A flower is counted with the green bolls.',
    },
  },
};
