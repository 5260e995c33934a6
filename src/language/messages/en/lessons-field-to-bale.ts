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
    'seed-per-bale':
      'Seed as it is weighed at the seed house for one bale of the example season, with its water and its fuzz.',
    'trash-per-bale': 'Burs, sticks, leaf, motes and dirt in the seed cotton of one bale, dry, example season.',
    'seed-cotton-per-bale': 'Seed cotton that reaches the gin for one bale, with its trash and water, example season.',
    'bale-weight':
      'The statistical bale of the United States, by definition. All numbers for one bale are for this one.',
    'hand-gin-days-per-bale': 'The weight of that bale over the day’s task at a hand-cranked gin of 1793.',
    'fewest-hand-gin-days-per-bale': 'The same at the most that the letter says was reached.',
    'fewest-bolls-per-picking-day': 'The mean of the men and boys that day, at sixty bolls to the pound.',
    'most-bolls-per-picking-day': 'The same at eighty bolls to the pound.',
    'fewest-bolls-per-child-task': 'The task of a child, at sixty bolls to the pound.',
    'most-bolls-per-child-task': 'The same at eighty bolls to the pound.',
    'picking-days-per-bale-men': 'The hand-picked load for one bale over the mean of the men and boys that day.',
    'picking-days-per-bale-women': 'The same over the mean of the women and girls.',
    'hand-picked-load-per-bale':
      'Seed cotton that the hand-picked example farm of the 1930s hauls to the gin for one bale; rounded to ten.',
    'enslaved-1790': 'Census of 1790, from memory; printed totals differ by a few thousand. Rounded to ten thousand.',
    'enslaved-1860': 'Census of 1860, from memory. Rounded to ten thousand.',
    'machine-dollars-per-bale':
      'Cost of picking a bale by machine, California 1949 (University of California Bulletin 743); rounded to a dollar.',
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
      bolls: '{fewest} to {most}',
      rows: { sack: 'Sack', arm: 'Poise slid out', bolls: 'Bolls in the sack' },
      note: 'Load times its arm is poise times its arm. Arms are to one scale. Sixty to eighty bolls to the pound, as a record of the time says.',
    },
    ginBalance: {
      title: 'What one bale leaves behind at the gin',
      pick: 'How it was harvested',
      harvests: { picked: 'Spindle picker', stripped: 'Stripper harvester', byHand: 'By hand, 1930s' },
      says: '{harvest}: {into} go in for a bale of {bale}. The seed, dry, weighs {seed}. A strip is as long as its cotton is heavy; what a machine takes out lies beside it.',
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
      note: 'Seasons number 1 of three example farms, each for a bale of one weight. Parts are dry; the press may add a little water.',
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
