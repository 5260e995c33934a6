import { textWidth } from '../../cloth/letter-widths.ts';
import { patch } from '../../cloth/patch.ts';
import { arc, type Box, rectangle } from '../../cloth/point.ts';
import { chalkRule } from '../../cloth/ruler.ts';
import { type Slot, slotAt, tagHeight } from '../../cloth/slot-words.ts';
import { taperedStrip } from '../../cloth/tapered-strip.ts';
import { group, type Mark, type Point } from '../../display-list.ts';
import { type AccountPaths, accountBands, accountTags, type NamePlace, nameSlips } from '../flow/account-bands.ts';
import type { HarvestRoom, HarvestView } from './harvest-input.ts';
import { emptyBurs } from './spindle-drum.ts';
import { widthsOf } from './widths.ts';

interface Layout {
  /** The sack from its mouth on the left to its tail. */
  readonly sack: Box;
  readonly strap: readonly Point[];
  readonly tape: Box;
  readonly paths: AccountPaths;
  readonly burs: readonly Point[];
  readonly tags: Readonly<Partial<Record<string, Slot>>>;
  readonly names: readonly NamePlace[];
}

/** The row runs along the top; what the hands take folds down into the sack that lies along it. */
function layWide(room: HarvestRoom): Layout {
  const { input, textPx } = room;
  const { tallPx: h } = room;
  const { width: w } = input.size;
  const { grown, along, lot } = widthsOf(room);
  const top = 0.305 * h;
  const row = top + grown / 2;
  const turn = 0.31 * w;
  const sackY = 0.705 * h;
  const sack = { x: 0.375 * w, y: sackY - lot / 2 - 16, width: 0.6 * w, height: lot + 32 };
  const alongY = top + grown + 3 + along / 2;
  const under = top + grown + along + 4;
  const line = tagHeight(textPx);
  const under2 = tagHeight(textPx, w > 760 ? 1 : 2);
  const weatherY = under + under2 + 3;
  const waterY = 0.925 * h;
  return {
    sack,
    strap: strapOf(sack, 0.052 * w),
    tape: { x: sack.x, y: sack.y + sack.height + 7, width: sack.width, height: 25 },
    paths: {
      'out/leftInField': {
        path: [
          [turn, row],
          [w + 4, row],
        ],
        visible: [[lot / 2 + 10, w - turn]],
      },
      'out/weathered': {
        path: [
          [0.2 * w, row],
          [0.2 * w, weatherY],
          [-4, weatherY],
        ],
      },
      'out/evaporated': {
        path: [
          [0.235 * w, row],
          [0.235 * w, -4],
        ],
      },
      'in/moistureTakenUp': {
        path: [
          [-4, waterY],
          [0.225 * w, waterY],
          [0.225 * w, row],
        ],
      },
      'out/lot': {
        path: [
          [turn, row],
          [turn, sackY],
          [sack.x + sack.width - 14, sackY],
        ],
        visible: [[grown / 2 + 4, sackY - row + sack.x + sack.width - 20 - turn]],
      },
      'in/grown': {
        path: [
          [-4, row],
          [turn + lot / 2, row],
        ],
        form: 'boll',
      },
      'in/takenAlong': {
        path: [
          [-4, alongY],
          [turn - lot / 2 + 6, alongY],
        ],
      },
    },
    burs: [0.41, 0.49, 0.57, 0.65, 0.73, 0.81, 0.89, 0.97].map(
      (share, i): Point => [share * w, row + (i % 2 ? 0.055 : -0.062) * h],
    ),
    tags: {
      'in/grown': slotAt(10, 8, (w > 760 ? 0.22 : 0.26) * w, 0.16 * h),
      'in/takenAlong': slotAt(10, under, 0.19 * w, under2),
      'out/weathered': slotAt(10, weatherY + 2, 0.23 * w, under2),
      ...(w > 760
        ? {
            'out/evaporated': slotAt(0.24 * w + 6, 8, 0.12 * w, 0.15 * h),
            'in/moistureTakenUp': slotAt(10, waterY - line, 0.205 * w, line),
          }
        : {}),
      'out/leftInField': slotAt(0.7 * w, row + 0.085 * h, 0.285 * w, line, 'end'),
      'out/lot': {
        ...slotAt(0.52 * w, sack.y + sack.height / 2 - line / 2, 0.3 * w, line, 'middle'),
        stands: 'middle',
      },
    },
    names: [
      {
        text: input.labels.sack,
        slot: slotAt(0.4 * w, row + 0.085 * h, 0.29 * w, textPx * 2.9),
        to: [0.47 * w, sack.y + 5],
      },
    ],
  };
}

/** The row comes down on the left; what the hands take folds over into the sack that lies below. */
function layTall(room: HarvestRoom): Layout {
  const { input, textPx, floor } = room;
  const { tallPx: h } = room;
  const { width: w } = input.size;
  const { grown, along, lot } = widthsOf(room);
  const left = 0.03 * w + along + 3;
  const row = left + grown / 2;
  const top = 0.255 * h;
  const sackY = (w < 480 ? 0.57 : 0.64) * h;
  const sack = {
    x: left + grown + 0.05 * w,
    y: sackY - lot / 2 - 12,
    width: 0.955 * w - left - grown - 0.05 * w,
    height: lot + 24,
  };
  const line = tagHeight(textPx);
  const alongX = 0.03 * w + along / 2;
  return {
    sack,
    strap: strapOf(sack, 0.06 * w),
    tape: { x: sack.x, y: sack.y + sack.height + 6, width: sack.width, height: textPx * 1.75 },
    paths: {
      'out/leftInField': {
        path: [
          [row, sackY],
          [row, h + 4],
        ],
        visible: [[lot / 2 + 4, 0.28 * h]],
      },
      'out/weathered': {
        path: [
          [row, 0.36 * h],
          [-4, 0.36 * h],
        ],
      },
      'out/evaporated': {
        path: [
          [row + grown * 0.2, 0.3 * h],
          [row + grown * 0.2, -4],
        ],
      },
      'in/moistureTakenUp': {
        path: [
          [-4, 0.42 * h],
          [row, 0.42 * h],
        ],
      },
      'out/lot': {
        path: [
          [row, sackY - lot / 2],
          [row, sackY],
          [sack.x + sack.width - 10, sackY],
        ],
        visible: [[lot * 0.75, lot / 2 + sack.x + sack.width - 14 - row]],
      },
      'in/grown': {
        path: [
          [row, top],
          [row, sackY - lot / 2 + 2],
        ],
        form: 'boll',
      },
      'in/takenAlong': {
        path: [
          [alongX, top],
          [alongX, sackY - lot / 2],
        ],
      },
    },
    burs: [0.83, 0.9].map((share, i): Point => [row + (i % 2 ? 0.06 : -0.06) * w, share * h]),
    tags: {
      'in/grown': slotAt(left + grown + 10, top + 6, 0.42 * w, line),
      'out/leftInField': slotAt(row + 10, floor - line - 4, 0.42 * w, line),
      'out/lot': slotAt(0.5 * w, sack.y - line - 6, 0.485 * w, line, 'end'),
    },
    names:
      w > 600
        ? [
            {
              text: input.labels.sack,
              slot: slotAt(0.36 * w, sack.y - 0.1 * h, 0.3 * w, line),
              to: [0.46 * w, sack.y + 6],
            },
          ]
        : [],
  };
}

/** The strap goes over a shoulder and comes back to the mouth. */
const strapOf = ({ x, y, height }: Box, reach: number): Point[] =>
  arc(0, 0, 1, -0.5 * Math.PI, -1.5 * Math.PI, 12).map(
    ([px, py]): Point => [x + 4 + px * reach, y + height * 0.44 + py * height * (py < 0 ? 0.62 : 0.46)],
  );

/** Canvas, cut open along its near side so that what is in it can be counted. */
function sackMarks({ sack, strap, tape }: Layout, { labels }: HarvestRoom['input'], textPx: number) {
  const { x, y, width: w, height: h } = sack;
  const back = patch(
    'harvest/sack',
    [
      [x, y],
      [x + w * 0.5, y - 5],
      [x + w * 0.94, y + 3],
      [x + w + 4, y + h * 0.3],
      [x + w + 5, y + h * 0.7],
      [x + w * 0.94, y + h - 2],
      [x + w * 0.5, y + h + 4],
      [x, y + h],
    ],
    'calico',
    { shadow: 6, seam: 7, thread: 'madder', scissors: { miss: 1.6, snip: 90 } },
  );
  const mouth = patch('harvest/mouth', rectangle(x - 5, y - 4, 13, h + 8), 'walnutPale', {
    shadow: 2.6,
    seam: 0,
    grain: null,
    scissors: { miss: 1.2 },
  });
  const band = patch('harvest/strap', taperedStrip(strap, 11, 11), 'madder', {
    shadow: 4,
    seam: 3.2,
    grain: null,
    scissors: 'asDrawn',
    stitchery: { on: 5, off: 4 },
  });
  const size = Math.min(textPx - 0.5, tape.height * 0.55);
  const foot = tape.y + tape.height - 5;
  const inner = labels.sackTicks.slice(0, -1);
  const whole = labels.sackTicks.at(-1);
  // Where every tick has no room for its words, every third is named.
  const widest = Math.max(0, ...inner.map(({ text }) => textWidth(text, size)));
  const step = widest + 8 < tape.width / labels.sackTicks.length ? 1 : 3;
  const wholeFrom = tape.width - 12 - textWidth(whole?.text ?? '', size * 1.1);
  const ruler: Mark[] = [
    patch('harvest/tape', rectangle(tape.x, tape.y, tape.width, tape.height), 'weldPale', {
      shadow: 2.6,
      seam: 0,
      scissors: { miss: 0.8, snip: 120, bow: 0.001 },
    }),
    ...chalkRule(
      [tape.x, tape.y],
      tape.width,
      inner.map(({ share, text }, i) => ({
        at: share * tape.width,
        ...((i + 1) % step === 0 && share * tape.width + textWidth(text, size) / 2 < wholeFrom ? { text } : {}),
      })),
      { direction: 'right', ink: 'ink', size },
    ).map((mark): Mark => (mark.kind === 'text' ? { ...mark, y: foot } : mark)),
    ...(whole
      ? [
          {
            kind: 'text',
            text: whole.text,
            x: tape.x + tape.width - 5,
            y: foot,
            size: size * 1.1,
            ink: 'ink',
            anchor: 'end',
            bold: true,
          } as const,
        ]
      : []),
  ];
  return { behind: [back], before: [mouth, band, ...ruler] };
}

/** Picking by hand: a sack dragged along the row. */
export function sackView(room: HarvestRoom): HarvestView {
  const { input, scale, wide, textPx } = room;
  const lay = wide ? layWide(room) : layTall(room);
  const bands = accountBands('harvest', input, lay.paths, scale);
  const burSize = 0.03 * Math.min(input.size.height, input.size.width * 0.7) + 5;
  const { behind, before } = sackMarks(lay, input, textPx);
  const names = nameSlips('harvest', lay.names, textPx);
  return {
    still: [
      group(
        'burs',
        lay.burs.flatMap(([x, y], i) => emptyBurs(`harvest/bur${i}`, x, y, burSize, i)),
      ),
      ...behind,
      ...bands.marks,
    ],
    parts: [],
    pieces: bands.pieces,
    over: (share) => [...before, ...names, ...accountTags('harvest', input, lay.tags, share, textPx)],
  };
}
