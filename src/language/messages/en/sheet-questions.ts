/** The questions of the worksheets. {names} are numbers with their units. What is asked carries its rounding from the page. */
export const sheetQuestions = {
  kinds: {
    heat: 'Heat units',
    ginBalance: 'Balance at the gin',
    turnout: 'Turnout',
    bales: 'Bales and money',
    staple: 'Staple code',
    yarn: 'Yarn count and fibers',
    clothWeight: 'Cloth weight',
    conversions: 'Percent and units',
    layout: 'Grain and layout',
    trace: 'Back to the bolls',
  },
  /** One text, or one for each unit system where the trade asks it differently. */
  texts: {
    heat: {
      1: 'Cotton grows by warmth. The heat units of a day are the middle between its high and its low, less {base}. Here are three days of one season.',
      2: 'The heat units of a day are the middle between its high and its low, less {base}; a day below that counts as 0. Here is a week of one spring.',
      3: 'The heat units of a day are the middle between its high and its low, less {base}; a day below that counts as 0. From its flower to its opening a boll needs {need} heat units. Here is a week of one summer.',
    },
    ginBalance: {
      1: 'A gin takes in {load} of seed cotton. {lint} go to the press as lint and {seed} to the seed house.',
      2: 'A gin takes in {load} of seed cotton. On the scales it gives {lint} of lint, {seed} of seed, {trash} of trash and {motes} of motes. The rest is water that dried off.',
      3: 'A gin takes in {load} of seed cotton, of which {moisture} is water. On the scales it gives {lint} of lint, {seed} of seed, {trash} of trash and {motes} of motes; the rest is water that dried off. At the press {added} of water are put back into the lint.',
    },
    turnout: {
      1: 'From {load} of seed cotton a gin gets {lint} of lint. Turnout is the lint as a percent of the seed cotton.',
      2: 'A module of {load} of seed cotton has a turnout of {turnoutPercent}. A bale weighs {bale}.',
      3: 'The seed cotton of one farm has a turnout of {first}, that of its neighbor {second}. A bale weighs {bale}. Each farm sells {bales} bales.',
    },
    bales: {
      1: 'A farm’s lint weighs {lint}. The gin presses it into bales of {bale}.',
      2: 'A bale weighs {net}. Cotton of base quality brings {base}. The class of this bale changes that by {difference}.',
      3: {
        us: 'A gin makes {lint} of lint from one farm’s cotton and {seed} of seed. It pays {seedPrice} for a ton (2,000 lb) of seed and charges {ginPrice} for each bale of {bale}. These prices are not all of one year.',
        metric:
          'A gin makes {lint} of lint from one farm’s cotton and {seed} of seed. It pays {seedPrice} for a ton (1,000 kg) of seed and charges {ginPrice} for each bale of {bale}. These prices are not all of one year.',
      },
    },
    staple: {
      1: 'A staple code counts thirty-seconds of an inch. Three bales have the codes {first}, {second} and {third}.',
      2: 'The fibers of four bales measure {first}, {second}, {third} and {fourth}. The chart gives the shortest length of each staple code.',
      3: 'The fibers of two bales measure {first} and {second}. An inch is 25.4 mm. The chart gives the shortest length of each staple code; the length is rounded before the code is read.',
    },
    yarn: {
      1: {
        us: 'A pound of yarn is {length} long. 840 yd are a hank, and the count Ne says how many hanks are in a pound.',
        metric: '{length} of a yarn weigh {mass}. Its tex is the weight of 1,000 m in grams.',
      },
      2: {
        us: 'A yarn has the count Ne {count}. Tex is {texTimesNe} divided by Ne. 1 tex is 1,000 mtex. One fiber has {fiber}.',
        metric:
          'A yarn has {count}. The count Ne is {texTimesNe} divided by tex. 1 tex is 1,000 mtex. One fiber has {fiber}.',
      },
      3: 'A cotton reads {micronaire} micronaire. For a fiber of average ripeness that is {mtexPerMicronaire} mtex for each unit. It is spun to Ne {ne}. Tex is {texTimesNe} divided by Ne, and 1 tex is 1,000 mtex. A carded ring yarn needs at least {fewest} fibers side by side.',
    },
    clothWeight: {
      1: 'A piece of cloth of {area} weighs {mass}.',
      2: {
        us: 'A cloth weighs {weight}. A length of {length} is cut, {width} wide. A yard is 36 in and a pound 16 oz.',
        metric: 'A cloth weighs {weight}. A length of {length} is cut, {width} wide.',
      },
      3: {
        us: 'A cloth has {ends} warp threads and {picks} weft threads to the inch, all of Ne {count}: {count} times 840 yd weigh a pound (16 oz). Each thread waves, so that the warp is {warpCrimp} longer than the cloth and the weft {weftCrimp}.',
        metric:
          'A cloth has {ends} warp threads and {picks} weft threads to the centimeter, all of {count}: 1,000 m weigh so many grams. Each thread waves, so that the warp is {warpCrimp} longer than the cloth and the weft {weftCrimp}.',
      },
    },
    conversions: {
      1: '{heavy} of a farm’s {all} bales weigh more than {limit}. In a shop a length of cotton cloth costs {price} and is then sold at {off} off.',
      2: 'A pattern asks for {length} of a cloth of {weight}. 1 yd is {metresPerYard} m, and 1 oz/yd² is {gsmPerOunce} g/m².',
      3: 'In its first wash a cloth loses {shrink} of its length and {shrinkAcross} of its width. It weighs {weight} before. One sewist washes {bought} of it. Another needs a piece {piece} long after the wash.',
    },
    layout: {
      1: 'Strips {strip} wide are cut side by side with their long edges on the grain, along the selvage. The cloth is {width} wide between the selvages.',
      2: {
        us: 'A pattern needs {needed} of a cloth {from} wide. The shop has it {to} wide. Cloth is sold by the quarter yard. (A real layout can need a tenth more or less than the same area.)',
        metric:
          'A pattern needs {needed} of a cloth {from} wide. The shop has it {to} wide. Cloth is sold by the tenth of a meter. (A real layout can need a tenth more or less than the same area.)',
      },
      3: {
        us: 'A quilt is {width} wide and {length} long. Its backing is {over} larger each way. It is sewn from whole strips of cloth {usable} wide, either standing upright or lying crosswise. A yard is 36 in, and cloth is sold by the quarter yard.',
        metric:
          'A quilt is {width} wide and {length} long. Its backing is {over} larger each way. It is sewn from whole strips of cloth {usable} wide, either standing upright or lying crosswise. Cloth is sold by the tenth of a meter.',
      },
    },
    trace: {
      1: '{project}: {pieces} pieces take {lint} of lint. The turnout at the gin was {turnout}.',
      2: {
        us: '{project}: {pieces} pieces take {lint} of lint. The turnout at the gin was {turnout}. A boll holds {boll} of seed cotton, and an ounce is {gramsPerOunce} g.',
        metric:
          '{project}: {pieces} pieces take {lint} of lint. The turnout at the gin was {turnout}. A boll holds {boll} of seed cotton.',
      },
      3: {
        us: '{project}: {pieces} pieces take {cloth} of cloth. Finishing leaves {finishing} of the cloth off the loom, weaving {weaving} of the yarn, spinning {realisation} of the lint, and the gin’s turnout was {turnout}. A boll holds {boll} of seed cotton, and an ounce is {gramsPerOunce} g.',
        metric:
          '{project}: {pieces} pieces take {cloth} of cloth. Finishing leaves {finishing} of the cloth off the loom, weaving {weaving} of the yarn, spinning {realisation} of the lint, and the gin’s turnout was {turnout}. A boll holds {boll} of seed cotton.',
      },
    },
  },
  /** What is asked, by the name of the answer. */
  asks: {
    heat: {
      total: 'How many heat units did these days bring together?',
      perDay: 'How many was that a day, on average?',
      days: 'In how many such days would a boll open?',
    },
    ginBalance: {
      rest: 'How much is trash, motes and water that dried off, all together?',
      dried: 'How much water dried off?',
      seedShare: 'What percent of the load was seed?',
      water: 'How much water came in with the load?',
      waterOut: 'How much water is in everything that leaves the gin, put together?',
    },
    turnout: {
      turnout: 'What is the turnout?',
      lint: 'How much lint does the module give?',
      bales: 'How many bales is that?',
      needFirst: 'How much seed cotton does a bale take on the first farm?',
      needSecond: 'And on the second?',
      more: 'How much more seed cotton does the second farm haul for all its bales?',
    },
    bales: {
      fullBales: 'How many full bales are there?',
      left: 'How much lint is left over?',
      price: 'What is the price of this bale’s cotton?',
      value: 'What is the bale worth?',
      credit: 'What does the gin pay for the seed?',
      charge: 'What does it charge for the ginning?',
      balance: 'What does the farm get once the charge is taken off? (Below zero: the farm pays.)',
    },
    staple: {
      firstInches: 'How long are the fibers of the first bale, in inches?',
      secondInches: 'And of the second?',
      thirdInches: 'And of the third?',
      firstCode: 'What staple code has the first bale?',
      secondCode: 'What staple code has the second?',
      thirdCode: 'What staple code has the third?',
      fourthCode: 'What staple code has the fourth?',
    },
    yarn: {
      count: 'What is the count of the yarn?',
      tex: 'How many tex has the yarn?',
      ne: 'What is its count Ne?',
      fibers: 'About how many fibers lie side by side in the yarn?',
      fiber: 'How many mtex has a fiber?',
      finest: 'What is the finest count Ne that this cotton allows?',
    },
    clothWeight: {
      weight: 'What does the cloth weigh for its area?',
      area: 'What is the area of the piece?',
      mass: 'What does the piece weigh?',
      warp: {
        us: 'How long is all the warp in a square yard?',
        metric: 'How long is all the warp in a square meter?',
      },
      weft: 'And all the weft?',
    },
    conversions: {
      share: 'What percent of the bales is that?',
      newPrice: 'What does the cloth cost now?',
      otherLength: 'What is the length in the other unit?',
      otherWeight: 'And the weight?',
      after: 'How long is the first sewist’s cloth after the wash?',
      cutLength: 'How long must the other cut the piece?',
      heavier: 'What does the cloth weigh after the wash?',
    },
    layout: {
      strips: 'How many strips fit?',
      left: 'How wide is the piece left over?',
      sameArea: 'What length of the wider cloth has the same area?',
      buy: 'How much is bought?',
      stripsUpright: 'How many upright strips cover the width?',
      upright: 'What length of cloth do they take?',
      stripsCrosswise: 'How many crosswise strips cover the length?',
      crosswise: 'What length of cloth do they take?',
    },
    trace: {
      seedCotton: 'How much seed cotton is behind them?',
      bolls: 'How many bolls is that?',
      yarn: 'How much yarn went into the loom?',
      lint: 'How much lint went into the mill?',
    },
  },
  /** Lines of a working that nobody asks for. */
  steps: { thinnest: 'The thinnest yarn', heat: 'Day {day}' },
  /** Words on the drawings beside the questions. */
  drawn: {
    selvage: 'selvage',
    grain: 'grain',
    warp: 'warp',
    weft: 'weft',
    quilt: 'quilt',
    upright: 'upright',
    crosswise: 'crosswise',
    gin: 'gin',
    lint: 'lint',
    seed: 'seed',
    trash: 'trash',
    motes: 'motes',
    water: 'water',
    rest: 'the rest',
  },
  projects: {
    'dress-shirt': 'Shirts',
    skirt: 'Skirts',
    't-shirt': 'T-shirts',
    jeans: 'Pairs of jeans',
    apron: 'Aprons',
    bandana: 'Bandanas',
    tote: 'Tote bags',
    pillowcase: 'Pillowcases',
    'flat-sheet': 'Flat sheets',
    'sheet-set': 'Sets of sheets',
  },
  tables: {
    week: { day: 'Day', high: 'High', low: 'Low' },
    staple: { from: 'From', code: 'Code' },
  },
};
