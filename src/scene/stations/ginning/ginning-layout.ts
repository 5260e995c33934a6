import type { Box } from '../../cloth/point.ts';
import type { Point } from '../../display-list.ts';
import { hemPx } from '../flow/caption-hem.ts';
import { massOf } from '../flow/flow-input.ts';
import type { GinningInput } from './ginning-input.ts';

export interface Circle {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

/** Where everything of the scene stands, px. */
export interface GinningLayout {
  readonly tall: boolean;
  /** Size of words, px. */
  readonly text: number;
  readonly caption: string;
  /** How many words there is room for: the parts of the stand named, most of them, or short names alone. */
  readonly names: 'all' | 'most' | 'short';
  readonly pxPerKg: number;
  /** The saws or the roller. */
  readonly wheel: Circle;
  readonly roll: Circle;
  readonly brush: Circle;
  /** Middle lines of the bands. */
  readonly inPath: readonly Point[];
  readonly seedPath: readonly Point[];
  readonly lintPath: readonly Point[];
  readonly trashPath: readonly Point[];
  readonly waterPath: readonly Point[];
  readonly cleaners: readonly Box[];
  readonly motePaths: readonly (readonly Point[])[];
  readonly bins: Readonly<Record<'lint' | 'seed' | 'motes' | 'trash', Box>>;
  /** Where words go. */
  readonly slots: Readonly<Record<'in' | 'water' | 'lint' | 'seed' | 'motes' | 'trash' | 'cleaners', Box>>;
  readonly cards: { readonly front: Box | null; readonly handGin: Box };
}

/** Picture wider than this share of its height is laid out along, else down. */
const WIDE_FROM = 1.15;
const PAD = 8;
/** A turning wheel is drawn as one texture, which must not grow without end. */
const MOST_RADIUS_PX = 205;

/** Size of names and captions beside words of a size, px. */
export const smallOf = (text: number): number => (text < 14 ? 13 : Math.max(14, text - 2));

const box = (x: number, y: number, right: number, bottom: number): Box => ({
  x,
  y,
  width: Math.max(1, right - x),
  height: Math.max(1, bottom - y),
});

/** Words of the foot: in full, or in short where the picture is small. */
export interface Captions {
  readonly long: string;
  readonly short: string;
}

export function layGinning(input: GinningInput, captions: Captions): GinningLayout {
  const { width, height } = input.size;
  return width > height * WIDE_FROM ? layWide(input, captions) : layTall(input, captions);
}

/** Roll, saw and brush stand in a line; the roll reaches a little over the saw. */
function wheels(rollX: number, y: number, r: number, rollShare: number) {
  const roll = { x: rollX, y: y + r * 0.05, r: r * rollShare };
  const wheel = { x: rollX + r * 0.93 + roll.r * 0.72, y, r };
  const brush = { x: wheel.x + r * 1.25, y: y + r * 0.12, r: r * 0.3 };
  return { roll, wheel, brush };
}

function layWide(input: GinningInput, captions: Captions): GinningLayout {
  const { width: w } = input.size;
  const roomy = w >= 700;
  const text = roomy ? 16 : 14;
  const caption = roomy ? captions.long : captions.short;
  const h = input.size.height - hemPx(caption, w, smallOf(text));
  const inPx = Math.min(0.25 * h, 0.15 * w);
  const pxPerKg = inPx / massOf(input.seedCotton.masses);
  const seedPx = massOf(input.seed.masses) * pxPerKg;
  const r = Math.min(0.3 * h, (roomy ? 0.165 : 0.148) * w, MOST_RADIUS_PX);
  const side = Math.max(84, 0.11 * w);
  const { roll, wheel, brush } = wheels(side + r * 0.56, 0.5 * h, r, 0.58);
  const lintY = brush.y + brush.r * 0.8;
  const right = w - PAD;
  const lintWide = Math.max(50, 0.09 * w);
  const binLeft = right - lintWide;
  const from = brush.x + brush.r + (roomy ? 10 : 4);
  const count = Math.max(1, input.cleaners.length);
  const slot = (binLeft - 6 - from) / count;
  const cleanerWide = Math.min(slot - 5, 0.22 * h);
  const cleanerTall = Math.min(0.22 * h, cleanerWide * 1.5);
  const top = lintY - cleanerTall * 0.54;
  const cleaners = input.cleaners.map((_, i) =>
    box(from + slot * (i + 0.5) - cleanerWide / 2, top, from + slot * (i + 0.5) + cleanerWide / 2, top + cleanerTall),
  );
  const seedY = h - 12 - seedPx / 2;
  const seedX = roll.x + roll.r * 0.5;
  const houseLeft = right - Math.max(128, 0.18 * w);
  const house = box(houseLeft, h - PAD - 2 - Math.max(seedPx + 26, 0.235 * h), right, h - PAD - 2);
  const moteTop = top + cleanerTall + 0.02 * h;
  const motes = box(from - 4, moteTop, from + (roomy ? 0.036 : 0.06) * w, moteTop + 0.06 * h);
  const trash = box(PAD + 4, 0.49 * h, PAD + side * 0.72, 0.545 * h);
  const trashX = trash.x + trash.width * 0.5;
  const cardLeft = wheel.x + r * 0.86;
  const cardBottom = (roomy ? 0.34 : 0.255) * h;
  const lintNameLeft = right - Math.max(lintWide, (roomy ? 8.2 : 5.7) * text);
  return {
    tall: false,
    names: roomy ? 'all' : 'most',
    text,
    caption,
    pxPerKg,
    wheel,
    roll,
    brush,
    inPath: [
      [-4, 7 + inPx / 2],
      [roll.x, 7 + inPx / 2],
      [roll.x, roll.y - roll.r * 0.2],
    ],
    seedPath: [
      [seedX, roll.y + roll.r * 0.82],
      [seedX, seedY],
      [houseLeft + 14, seedY],
    ],
    lintPath: [
      [brush.x - 4, lintY],
      [binLeft + 10, lintY],
    ],
    trashPath: [
      [input.stand === 'saw' ? roll.x - roll.r * 0.6 : wheel.x - r * 1.4, trash.y - 10],
      [trashX, trash.y - 10],
      [trashX, trash.y + trash.height * 0.6],
    ],
    waterPath: [
      [PAD + 26, -4],
      [PAD + 26, 7 + inPx * 0.5],
    ],
    cleaners,
    motePaths: cleaners.map((each, i) => {
      const x = Math.min(each.x + each.width / 2, motes.x + motes.width - 8 - (cleaners.length - i) * 4);
      return [
        [each.x + each.width / 2, each.y + each.height - 6],
        [x, motes.y + motes.height * 0.7],
      ];
    }),
    bins: { lint: box(binLeft, lintY - 0.14 * h, right, lintY + 0.075 * h), seed: house, motes, trash },
    slots: {
      in: box(PAD, 7 + inPx + 8, side + 4, 0.5 * h),
      water: box(PAD + 46, 8, PAD + 46 + 0.16 * w, 72),
      lint: box(lintNameLeft, cardBottom + 3, right, lintY - 0.14 * h - 3),
      seed: box(house.x + 4, house.y + 5, house.x + house.width - 4, house.y + house.height * 0.84),
      motes: roomy
        ? box(motes.x + motes.width + 3, moteTop - 3, houseLeft - 7, h - seedPx + 10)
        : box(motes.x - 0.16 * w, moteTop - 3, motes.x - 3, moteTop + 44),
      trash: box(PAD, trash.y + trash.height + 3, seedX - seedPx / 2 - 4, trash.y + trash.height + 50),
      cleaners: box(from - 4, cardBottom + 3, lintNameLeft - (roomy ? 20 : 6), top - 1),
    },
    cards: {
      front: roomy ? box(cardLeft, 8, cardLeft + 0.165 * w, cardBottom) : null,
      handGin: box(roomy ? cardLeft + 0.18 * w : cardLeft, 8, right, cardBottom),
    },
  };
}

function layTall(input: GinningInput, captions: Captions): GinningLayout {
  const { width: w } = input.size;
  const text = Math.min(20, Math.max(13.5, w * 0.021));
  const phone = w < 520;
  const caption = phone ? captions.short : captions.long;
  const h = input.size.height - hemPx(caption, w, smallOf(text));
  const r = Math.min(0.235 * w, 0.235 * h, MOST_RADIUS_PX);
  const rollR = r * 0.56;
  const { roll, wheel, brush } = wheels(0.05 * w + rollR, (phone ? 0.395 : 0.38) * h, r, 0.56);
  const inPx = rollR * 1.8;
  const pxPerKg = inPx / massOf(input.seedCotton.masses);
  const lintY = brush.y + brush.r * 0.8;
  const lintX = (phone ? 0.88 : 0.89) * w;
  const binBottom = h - 7;
  const lintBin = box((phone ? 0.765 : 0.8) * w, 0.745 * h, w - PAD, binBottom);
  const count = Math.max(1, input.cleaners.length);
  const first = lintY + 0.06 * h;
  const slot = (lintBin.y - 8 - first) / count;
  const cleanerTall = Math.min(slot - 5, 0.17 * h);
  const cleanerWide = Math.min(0.19 * w, cleanerTall * 1.9);
  const cleaners = input.cleaners.map((_, i) =>
    box(
      lintX - cleanerWide / 2,
      first + slot * (i + 0.5) - cleanerTall / 2,
      lintX + cleanerWide / 2,
      first + slot * (i + 0.5) + cleanerTall / 2,
    ),
  );
  const cardBottom = (phone ? 0.162 : 0.17) * h;
  const seedX = roll.x + roll.r * 0.3;
  const house = box(PAD, 0.69 * h, 0.37 * w, binBottom);
  const trash = box((phone ? 0.47 : 0.56) * w, 0.66 * h, (phone ? 0.545 : 0.63) * w, 0.755 * h);
  const motes = box(0.69 * w, 0.785 * h, 0.775 * w, binBottom);
  const moteX = motes.x + motes.width * 0.5;
  return {
    tall: true,
    names: phone ? 'short' : 'all',
    text,
    caption,
    pxPerKg,
    wheel,
    roll,
    brush,
    inPath: [
      [roll.x, -4],
      [roll.x, roll.y - roll.r * 0.2],
    ],
    seedPath: [
      [seedX, roll.y + roll.r * 0.82],
      [seedX, house.y + 12],
    ],
    lintPath: [
      [brush.x - 4, lintY],
      [lintX, lintY],
      [lintX, lintBin.y + 10],
    ],
    trashPath: [
      [trash.x + trash.width * 0.5, wheel.y + r * 0.8],
      [trash.x + trash.width * 0.5, trash.y + 6],
    ],
    waterPath: [
      [-4, 0.06 * h],
      [roll.x, 0.06 * h],
    ],
    cleaners,
    motePaths: cleaners.map((each, i) => [
      [each.x + 6, each.y + each.height * 0.5],
      [moteX - i * 2, each.y + each.height * 0.5],
      [moteX - i * 2, motes.y + motes.height * 0.6],
    ]),
    bins: { lint: lintBin, seed: house, motes, trash },
    slots: {
      in: box(roll.x + inPx / 2 + 5, 4, 0.56 * w, (phone ? 0.185 : 0.165) * h),
      water: box(PAD, 0.1 * h, roll.x + inPx / 2 + 8, 0.22 * h),
      lint: lintBin,
      seed: box(house.x + 4, house.y, house.x + house.width - 4, house.y + house.height),
      motes: box(phone ? house.x + house.width + 4 : 0.56 * w, motes.y - 4, motes.x - 2, binBottom + 2),
      trash: box(trash.x + trash.width + 2, trash.y - 2, lintBin.x - 3, trash.y + trash.height + 4),
      cleaners: box(phone ? 0.73 * w : 0.72 * w, cardBottom + 4, w - PAD, brush.y - brush.r - (phone ? 2 : 0.06 * h)),
    },
    cards: {
      front: phone ? null : box(0.4 * w, 0.68 * h, 0.545 * w, binBottom + 4),
      handGin: box(phone ? 0.565 * w : 0.6 * w, 6, w - PAD, cardBottom),
    },
  };
}
