/** What a teacher reads beside the keys: how to mark, what to have ready, what to look for. */
export const sheetGuide = {
  title: 'For the teacher',
  set: 'Sheets {from} to {to}; {level}; {units}',
  marking: 'Marking',
  marks: [
    'One point for the right numbers taken from the text.',
    'One for a working that can be followed, even if a sum in it slips.',
    'One for the answer in its unit.',
    'One for rounding as the sheet says. Rounding midway often moves the last digit: the point for the working stays.',
  ],
  carried: 'A slip is counted once: what follows from it correctly is correct.',
  practice: 'Points, and what often goes wrong, are common practice among teachers, not a study.',
  materials: 'To have ready',
  always: ['A pencil for each pupil', 'A calculator for each, or for two'],
  for: {
    heat: '',
    ginBalance: '',
    turnout: '',
    bales: '',
    staple: 'Staple: the fiber card with its ruler, and a tuft of cotton',
    yarn: 'Yarn: a length of thread to untwist',
    clothWeight: 'Cloth weight: a scrap of cloth and a kitchen scale that reads grams',
    conversions: 'Units: a tape that shows inches and centimeters',
    layout: 'Layout: paper to cut as strips, scissors',
    trace: 'Back to the bolls: an open boll or its picture',
  },
  look: 'What to look for',
  looks: {
    heat: {
      1: 'High and low are halved together and the base comes off once. Halving only the low is the usual slip; ask which temperature lies in the middle.',
      2: 'A cold day is 0 and takes nothing from the others. A total that is too small usually holds a day below zero.',
      3: 'The days are rounded up: after the last whole day but one the boll is not yet open. Look whether the average still has its digits when it divides.',
    },
    ginBalance: {
      1: 'What is left over has a name: trash, motes and water. Ask where it is now, so that nobody says it is gone.',
      2: 'Water is found by taking away, as nobody weighed it. The percent is of the load, not of the lint.',
      3: 'Water comes in with the load, goes out with warm air and is put back at the press: three signs, one of them plus. Forgetting the last is the usual slip.',
    },
    turnout: {
      1: 'Lint over seed cotton, and not over seed. A turnout of more than half is a sign to look again.',
      2: 'The lint is a part of the module, so it must be less. The bales follow from lint, not from the module.',
      3: 'To go back from lint to seed cotton one divides by the turnout. Whoever multiplies gets less seed cotton than lint: ask whether that can be.',
    },
    bales: {
      1: 'Full bales are cut off, not rounded. The rest is what the full bales leave, not the decimals of the division.',
      2: 'The difference may be below zero. Cents become dollars at the end; a bale worth tens of thousands has kept its cents.',
      3: 'A ton of seed is not a bale of lint: each price has its own weight. Say aloud that the prices are of different years.',
    },
    staple: {
      1: 'Thirty-two thirty-seconds are an inch, so codes above 32 are longer than one. A number below one for such a code was divided the wrong way.',
      2: 'The code is the last row that the length reaches. Reading the nearest row instead is the usual slip.',
      3: 'The length is rounded to a hundredth first and read then. Near a border the order decides; ask what a hundredth is worth to the farm.',
    },
    yarn: {
      1: 'A count says how much length is in a weight, tex how much weight in a length. Ask which of two yarns is thinner before the sum.',
      2: 'Ne and tex run against each other. Fibers in the yarn come out in tens or hundreds; thousands mean that tex and mtex were mixed.',
      3: 'The finest count is cut off downward: one higher and there are too few fibers. Look whether the thinnest yarn was found first.',
    },
    clothWeight: {
      1: 'Weight over area, not area over weight. Compare with a cloth in hand: quilting cotton is near 4 oz/yd² or 130 g/m².',
      2: 'One of the lengths is in another unit. An area many times too large kept its inches or centimeters.',
      3: 'Threads to the inch become threads to the yard, and each is longer than the cloth by its wave. Leaving the wave out makes the cloth a few percent too light.',
    },
    conversions: {
      1: 'A percent off is taken from the first price, and one hundred percent is the whole. Ask for an estimate first.',
      2: 'A yard is shorter than a meter, so the number of meters is smaller. The sign of a mixed-up factor is a number on the wrong side.',
      3: 'To cut longer one divides by what is left; adding the same percent is close but short. The cloth gets heavier because the same threads lie in less area.',
    },
    layout: {
      1: 'Only whole strips count. The strips run along the selvage, so the width of the cloth is what is shared out.',
      2: 'The same area on wider cloth is shorter. Cloth is bought up to the next step of the shop, never down.',
      3: 'Strips are rounded up before their length is worked out. Ask which way wastes less and whether a print may lie crosswise.',
    },
    trace: {
      1: 'Seed cotton is more than its lint. Dividing by the turnout gives more, multiplying less.',
      2: 'Ounces become grams before they meet the boll, if the sheet is in US units. A few hundred bolls for some garments is the right size.',
      3: 'Each step back divides, and each number grows. Find the step that loses most and say what becomes of it.',
    },
  },
};
