import type { StationId } from '../../../model/station.ts';

/** What is seen at a station, its two choices, and what it is good to know. */
interface KioskStation {
  /** {n} is the station's number in this season. */
  readonly say: string;
  /** What is counted where two choices are set side by side. */
  readonly counted: string;
  readonly choices: readonly [string, string];
  /** One minute: at most 45 words, without a number that a season could change. */
  readonly lesson: string;
}

/** The words of the kiosk: 60 on a screen at most, 25 at a guided stop. */
export const kiosk = {
  attract: {
    touch: 'Touch to sew',
    boll: { head: 'One boll', tail: 'one patch', line: 'About {size} square. Where did the rest go?' },
    today: 'Today on this farm',
    gin: { head: 'Most of it is seed', line: 'A saw pulls {lintOf} of lint off every {seedOf} of seed.' },
    quilt: { head: 'Twelve blocks', line: 'Field, gin, mill, table. One season takes two minutes.' },
    own: 'At this gin',
    days: {
      planting: 'Seedlings are putting down roots.',
      bloom: 'Flowers open white and close pink.',
      boll: 'Bolls swell, and fiber grows on every seed.',
      harvest: 'The picking is under way.',
      module: 'Picked cotton waits in the module.',
      gin: 'The gin pulls lint off seed.',
      mill: 'The mill spins last summer’s lint.',
      sewing: 'The cloth lies on the sewing table.',
      seed: 'Seed for spring is ordered.',
    },
  },
  language: { head: 'A season is starting', ask: 'Which language?' },
  keys: {
    home: 'Home',
    back: 'Back',
    next: 'Next',
    lint: 'The lint',
    seed: 'The seed',
    explore: 'All twelve',
    compare: 'Compare',
    lesson: 'Learn',
    listen: 'Listen',
    hush: 'Stop',
    softer: 'Softer',
    louder: 'Louder',
    more: 'More time',
  },
  band: 'Controls',
  stopOf: 'Stop {number} of {all}',
  warning: { head: 'Still there?', line: 'This starts over in {seconds} s. Touch anywhere to go on.' },
  stops: {
    boll: {
      head: 'One boll',
      text: '{seeds} seeds ride in it. On each grew about {fibers} fibers: white hairs, one cell each.',
    },
    harvest: {
      head: 'Off the plant',
      text: 'Each acre gave {mass} here: lint, seed, leaf and water, all in one load.',
    },
    ginning: { head: 'Which weighs more?', text: 'The saw pulls lint off the seed. Guess, and the bands open.' },
    seed: { head: 'The seed', text: 'Beside each bale of lint lie {seed} of seed. It becomes oil and feed.' },
    lint: { head: 'The lint', text: 'Beside each bale of lint lie {seed} of seed. It becomes oil and feed.' },
    pressing: {
      head: 'One bale',
      text: 'The lint of {bolls} bolls, pressed until it fits a doorway. This field made {bales} bales.',
    },
    spinning: {
      head: 'Only twist holds it',
      text: '{fibers} fibers lie side by side in this yarn. One boll makes {yards} of it.',
    },
    sewing: {
      head: 'One boll, one patch',
      text: 'All that white came to this: a square of {size}. Lay a hand on it: true size.',
    },
    sewingHalf: {
      head: 'One boll, one patch',
      text: 'All that white came to this: a square of {size}, drawn here at half size.',
    },
  },
  keepsake: {
    head: 'A block to keep',
    text: 'This block is this season’s: {station}. The farm is invented.',
    phone: 'The code opens the same season on a phone.',
  },
  noCrop: 'no crop',
  stations: {
    planting: {
      say: 'Of 100 seeds sown, {n} came up as plants.',
      counted: 'Plants from 100 seeds',
      choices: ['In season', 'Four weeks early'],
      lesson:
        'A cotton seed needs warmth more than water. In cold ground it lies and may rot; in warm ground it is up within a week or two. So growers watch soil and forecast, and plant late rather than twice.',
    },
    bloom: {
      say: '{n} of the flowers fell without making a boll.',
      counted: 'Flowers that fell',
      choices: ['Rain only', 'Rain and water'],
      lesson:
        'A cotton flower opens white in the morning and turns pink by the next. Then it drops, and leaves a boll, or nothing. A plant keeps only what its leaves and roots can feed.',
    },
    boll: {
      say: 'From first flower to first open boll: {n}.',
      counted: 'First flower to open boll',
      choices: ['Upland seed', 'Pima seed'],
      lesson:
        'First each fiber grows long: a single cell, as thin as a spider’s thread. Then it fills its own wall with cellulose, layer by layer. When the boll opens it dries, and twists like a flat ribbon.',
    },
    harvest: {
      say: '{n} of the open cotton stayed in the field.',
      counted: 'Left in the field',
      choices: ['Spindle picker', 'Stripper'],
      lesson:
        'A picker’s wet spindles twist the lint out of open bolls and leave the plant standing. A stripper takes everything: bolls, burs, sticks. It costs less to run and leaves the gin more to clean.',
    },
    module: {
      say: 'Inside, the stored cotton got {n} warm.',
      counted: 'Warmest inside',
      choices: ['Picked dry', 'Picked damp'],
      lesson:
        'Picked cotton is packed like a loaf and waits for its turn at the gin. Dry, it keeps for weeks. Damp, it heats itself like hay, and the lint turns yellow.',
    },
    cleaning: {
      say: '{n} of the leaf, sticks and dirt came out.',
      counted: 'Dirt taken out',
      choices: ['No cleaners', 'Every cleaner'],
      lesson:
        'Before the saws, cotton is dried and shaken over screens. Leaf, sticks and dirt fall out. Dry cotton lets go of more, but dry fiber also breaks more easily. A ginner looks for the middle.',
    },
    ginning: {
      say: '{n} of the load was seed, by weight.',
      counted: 'Lint baled of the load',
      choices: ['No lint cleaner', 'Three in a row'],
      lesson:
        'The saw’s teeth pull fiber through ribs too narrow for seed. Lint goes on to the bale, seed to the oil mill, and a little seed back to the field.',
    },
    pressing: {
      say: 'This field made {n} bales.',
      counted: 'Bales made',
      choices: ['Light bales', 'Heavy bales'],
      lesson:
        'Loose lint would fill a room. A press makes it a bale that one truck carries by the dozen. Every bale gets its own tag, so that its cotton can be followed to the mill.',
    },
    classing: {
      say: 'Most bales here have a staple of {n} of an inch.',
      counted: 'Staple in inches',
      choices: ['Short-staple seed', 'Long-staple seed'],
      lesson:
        'A handful from each bale is measured: how long, how strong, how fine, how white. Most buyers see the numbers and not the bale. A longer fiber can be spun into a finer yarn.',
    },
    spinning: {
      say: '{n} fibers lie side by side in this yarn.',
      counted: 'Fibers side by side',
      choices: ['This yarn', 'A coarser yarn'],
      lesson:
        'A fiber is short, a thread is long. Twist presses fibers against each other until none can slip. Long fiber needs less twist and makes a softer thread. Every hair on a thread is a fiber’s end.',
    },
    weaving: {
      say: 'Finishing shortened this cloth by {n}.',
      counted: 'Shortened by finishing',
      choices: ['Off the loom', 'Bleached'],
      lesson:
        'On the loom threads are pulled tight. In the first hot bath they draw together, and the cloth gets shorter. Nothing is lost. What shrank at the mill does not shrink again in a quilt.',
    },
    sewing: {
      say: 'One boll made a patch {n} wide.',
      counted: 'Patch from one boll',
      choices: ['This cloth', 'An opener weave'],
      lesson:
        'A hand lies on the cotton of one boll. The top of a bed quilt alone takes hundreds of bolls, and its filling more. Each of them grew for weeks on one plant, for one patch.',
    },
  } as Record<StationId, KioskStation>,
};
