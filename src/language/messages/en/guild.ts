/** One slide in words: what stands on it, and what is said over it. Names in braces are numbers of the season or of a lesson. */
interface SlideWords {
  readonly title: string;
  readonly line: string;
  readonly notes: readonly string[];
  /** What to ask the room, or to hand around. */
  readonly ask: string;
}

/** The words of the guild evening's talk; they come with its page. */
export const guild = {
  title: 'A guild evening',
  lead: 'A talk of {minutes} minutes in {slides} slides: each prints on a page of its own, with what to say beside it. The numbers are those of one season.',
  season: '{farm}, season {seed}. The farm is invented.',
  otherSeason: 'The season of the link made no woven cloth, so the talk takes this one: {season}',
  print: 'Print the talk',
  printHelp:
    'Landscape, one slide a page, US Letter or A4. To keep it as a file, choose “Save as PDF” in the print window.',
  backToPlan: 'Back to the plan',
  minutes: { one: '1 minute', other: '{n} minutes' },
  from: 'minute {from} to {to}',
  say: 'Say',
  ask: 'Ask or hand around',
  pageOf: 'Slide {n} of {all}',
  marks: '× rests on memory, common practice or an assumption.',
  figures: {
    yarnNumber: 'Number of this yarn',
    enslaved: 'Enslaved people, census of 1860',
    dayPicked: 'A man’s picking, one day of 1844',
    paid: 'Paid to them',
    nothing: 'nothing',
    cropper: 'A cropper’s share, 1913',
  },
  rest: 'All the rest',
  sourceMark: '{source} ({mark})',
  slides: {
    title: {
      title: 'From one boll to one patch',
      line: 'What happens to cotton before it is cloth, in numbers that add up.',
      notes: [
        'Every number tonight comes from one season on one farm: {farm}, season {seed}. The farm is invented; the way it grows, gins, spins and weaves follows published measurements.',
        'Twelve blocks, twelve stations. We follow one boll through all of them and ask at the end where every pound went.',
      ],
      ask: 'Hand around a scrap of quilting cotton, one for each. Keep it in the hand all evening.',
    },
    boll: {
      title: 'One boll, one patch',
      line: 'The lint of one boll becomes a square of finished cloth.',
      notes: [
        'One open boll of this season holds {boll_lintPerBoll} of lint and {bollSeed} of seed. That lint is {fibers} fibers; laid end to end they reach {fiberLength}.',
        'Spun and woven into this quilting cotton it makes a square with a side of {sewing_patch}. In that square lie {yarnYards} of yarn.',
        'On another farm or in another year the side is a little more or less. A dry summer can leave the bolls small.',
      ],
      ask: 'Before the slide: draw the patch on paper as large as each thinks. Then hold the drawings up.',
    },
    hands: {
      title: 'Whose hands',
      line: 'For most of this crop’s history here, every boll was picked by a person, and many of them were not free.',
      notes: [
        'From the gin of 1793 to 1865 most cotton in this country was picked by enslaved people. The census of 1860 counted about {enslaved_1860} enslaved people, and cotton was the chief reason that slavery grew. They were paid nothing.',
        'One plantation’s book of 1844 has an average of {men} for men and boys on one day, and {women} for women and girls. {men} is {fewest_bolls_per_picking_day} to {most_bolls_per_picking_day} bolls. To pick one bale took {picking_days_per_bale_men} like that. The pounds were written down by those who claimed to own the pickers.',
        'After 1865 many of the same families worked for a share of the crop, often {cropper}, less what they owed for food and seed. Machines took over in the years after 1945. In some countries people still pick under force.',
        'Read this slide slowly, and leave a silence after it. For some in the room it is family history.',
      ],
      ask: 'No question here. Whoever wants to say something may.',
    },
    gin: {
      title: 'Seed and lint part',
      line: 'The gin pulls fiber from seed. Most of the weight is seed.',
      notes: [
        'Of what comes to the gin, {ginning_turnout} becomes lint. For a bale the gin takes in {ginning_seedCottonPerBale} of seed cotton and gives {ginning_seedPerBale} of seed beside it.',
        'The seed is pressed for oil and fed to cattle. A little is sown. Leaf, burs and sticks go as gin trash, and the lint cleaners’ waste is sold as gin motes.',
      ],
      ask: 'Hand around a lock of seed cotton from a boll, and let someone pull one seed free. Use cotton from a boll only: treated planting seed is poisonous.',
    },
    bale: {
      title: 'The bale',
      line: 'Pressed, tied, weighed and numbered.',
      notes: [
        'This field pressed {pressing_balesPressed} bales. One weighs {pressing_baleWeight} without its wrap and ties, and {pressing_baleMoisture} of that is water from the air.',
        'One such bale makes {sewing_yards} of this cloth.',
      ],
      ask: 'How many quilts would one bale make? Let each table say a number.',
    },
    staple: {
      title: 'Staple',
      line: 'How long the fiber is decides how fine and how smooth the yarn can be.',
      notes: [
        'A sample of every bale is measured. Here most bales were called {classing_staple} of an inch, and they were priced at {classing_price}.',
        'A cotton is never one length. The longer half of its fibers gives the staple its name; the short ones make fuzz and, later, pills.',
      ],
      ask: 'Hand around cotton batting. Pull a pinch apart, lay the halves together and pull again, five times. How long is the tuft?',
    },
    twist: {
      title: 'Twist',
      line: 'Nothing but twist holds the fibers together.',
      notes: [
        'A section through this yarn cuts {spinning_fibresInSection} fibers. The spindle put in {spinning_twist}. Untwist it, and the fibers slide apart.',
        'Too little twist, and the yarn is weak and fuzzy. Too much, and it is hard and snarls. Of the lint that went into the mill, {spinning_realisation} came out as yarn.',
      ],
      ask: 'Everyone pulls one thread from the scrap and turns it against its twist until it slips apart.',
    },
    number: {
      title: 'What the number on the yarn says',
      line: 'A higher number is a finer yarn: it counts how many hanks of 840 yards weigh a pound.',
      notes: [
        'The yarn of this cloth is Ne {yarnNe}: {yarnNe} hanks of 840 yards in a pound. In tex, the grams of a kilometer, it is {yarnTex}.',
        'This fiber could be spun as fine as {spinning_limit}; finer than that too few fibers lie side by side. Ask what a number means before you compare two of them: thread makers use more than one system.',
      ],
      ask: 'Which two spools at home have the same number and are not alike?',
    },
    weight: {
      title: 'The weight of cloth',
      line: 'Threads in an inch times the weight of the yarn, and a little for the waves.',
      notes: [
        'This cloth weighs {weaving_weight} and has a thread count of {weaving_threadCountFinished} after finishing: ends and picks of an inch, added up.',
        'Every thread bends over and under the others, so it is longer than the cloth. That is crimp, and it is why a heavier cloth is not always a closer one.',
      ],
      ask: 'Fold the scrap in the hand. Is it lighter or heavier than the shirt you wear?',
    },
    shrink: {
      title: 'Why cloth shrinks',
      line: 'The fiber keeps its length. The threads draw together.',
      notes: [
        'Loom and finishing hold the cloth stretched. In finishing this cloth gave up {weaving_shrinkage}.',
        'In a first wash at home quilting cotton as sold gives about {wash_lengthwise} lengthwise and {wash_crosswise} across. Nothing is lost: the same threads lie in deeper waves.',
      ],
      ask: 'Who washes before cutting, and who does not? Let one of each say why.',
    },
    grain: {
      title: 'Grain',
      line: 'Warp along the selvage, weft across. The bias has no thread of its own.',
      notes: [
        'Pulled along the warp this kind of cloth gives about {stretch_lengthwise}, across it {stretch_crosswise}: first the waves straighten, then the thread itself must stretch.',
        'On the bias the threads turn like a garden gate. The geometry allows up to {stretch_bias}; hands feel it resist before that. So borders are cut straight, and bindings for curves on the bias. That is common practice.',
      ],
      ask: 'Pull the scrap three ways. Which one is the warp?',
    },
    pounds: {
      title: 'Where every pound went',
      line: 'Of all that came to the gin or was added after, in percent.',
      notes: [
        'Here is the whole load, from the gin’s door to the cutting table, water and weaver’s size with it. The strips add up to all of it, to less than a billionth.',
        'The longest strip is seed. Cloth in cut pieces is {clothShare}. Seed, motes and card strips are sold as well; they are goods of their own.',
      ],
      ask: 'Look at the patch drawn at the start. What surprised you most?',
    },
    sources: {
      title: 'What this rests on',
      line: 'Every number opens its working in the app, and every constant names its source.',
      notes: [
        'These are the sources of the numbers on the slides. What is marked memory or assumption is said so, and may be wrong. Ask for the app’s Sources page: it lists all of them, and where the model misses.',
        'The lesson “From hand to spindle” has more on who did the work.',
      ],
      ask: 'Which number would you check first?',
    },
  } satisfies Readonly<Record<string, SlideWords>>,
};
