import { chanceOf, spread } from '../../cloth/chance.ts';
import { textWidth } from '../../cloth/letter-widths.ts';
import { patch } from '../../cloth/patch.ts';
import type { Box } from '../../cloth/point.ts';
import { letter, slip } from '../../cloth/slot-words.ts';
import { group, type Mark, type Point, type Stitch } from '../../display-list.ts';
import type { ModuleRoom } from './module-input.ts';

/** The cloud's share of the strip; below it hangs the rain. */
const CLOUD = 0.42;

const dayWidth = ({ input }: ModuleRoom, box: Box): number => box.width / Math.max(1, input.rainInches.length);

/** Length of an inch of rain, px: the wettest day fits, and a drizzle does not look like a flood. */
function pxPerInch({ input }: ModuleRoom, box: Box): number {
  const wettest = Math.max(input.rainTickInches, ...input.rainInches);
  return (box.height * (1 - CLOUD)) / wettest;
}

/** A cloud as long as the storage, a place in it for every day, and a scale for the rain. */
export function rainStill(room: ModuleRoom, box: Box): Mark[] {
  const { input, textPx } = room;
  const low = box.y + box.height * CLOUD;
  const chance = chanceOf('module/cloud');
  const steps = Math.max(4, Math.round(box.width / 60));
  const edge = Array.from(
    { length: steps + 1 },
    (_, i): Point => [box.x + box.width - (i / steps) * box.width, low + (i % 2 ? -3 : 2) + spread(chance, 1.5)],
  );
  const marks: Mark[] = [
    patch('module/cloud', [[box.x - 6, box.y], [box.x + box.width + 6, box.y], ...edge], 'indigo', {
      shadow: 2.6,
      seam: 0,
      scissors: { miss: 1.4, snip: 60 },
    }),
  ];
  const size = textPx;
  const wide = dayWidth(room, box);
  const days = input.rainInches.length;
  const every = days <= 10 ? 1 : 7;
  const named = Array.from({ length: days }, (_, i) => i + 1).filter(
    (day) => (day % every === 0 || day === 1) && wide * every > textWidth('00', size),
  );
  for (const day of named)
    marks.push(
      ...letter(
        String(day),
        {
          x: box.x + wide * (day - 0.5) - 20,
          y: box.y,
          width: 40,
          height: box.height * CLOUD,
          anchor: 'middle',
          stands: 'top',
        },
        { size, ink: 'lint', bold: true },
      ),
    );
  const tick = low + input.rainTickInches * pxPerInch(room, box);
  if (tick < box.y + box.height + 2)
    marks.push(
      {
        kind: 'stitches',
        stitches: [
          [box.x - 1, low + 2, box.x - 1, tick],
          [box.x - 6, tick, box.x + 4, tick],
        ],
        ink: 'ink',
        width: 1.4,
        flat: true,
      },
      ...slip(
        'module/rainTick',
        input.labels.rainTick,
        { x: box.x - 90, y: tick - size * 0.9, width: 82, height: size * 1.8, anchor: 'end', stands: 'middle' },
        { size, bold: true },
      ),
    );
  return marks;
}

/** Rain up to a day: one hanging strip for each wet day, and where today is. */
export function rainFallen(room: ModuleRoom, box: Box, day: number): Mark[] {
  const { input } = room;
  const low = box.y + box.height * CLOUD;
  const wide = dayWidth(room, box);
  const perInch = pxPerInch(room, box);
  const bar = Math.min(14, wide * 0.62);
  const wet: Mark[] = input.rainInches.slice(0, day).flatMap((inches, i): Mark[] => {
    const tall = Math.max(3, inches * perInch);
    if (inches <= 0) return [];
    // The least of rain shows as a drop under the cloud.
    const x = box.x + wide * (i + 0.5);
    return [
      patch(
        `module/rain${i}`,
        [
          [x - bar / 2, low - 4],
          [x + bar / 2, low - 4],
          [x + bar / 2, low + tall - bar * 0.3],
          [x, low + tall],
          [x - bar / 2, low + tall - bar * 0.3],
        ],
        'mid',
        { shadow: 1.2, seam: 0, grain: null, scissors: 'asDrawn' },
      ),
    ];
  });
  const marks: Mark[] = [group('rainFallen', wet, wet.length)];
  if (day > 0) {
    const x = box.x + wide * (day - 0.5);
    // Below the day's number.
    const tall = Math.max(6, Math.min(12, box.height * CLOUD - room.textPx * 1.1));
    marks.push(
      patch(
        'module/today',
        [
          [x, low - 1],
          [x - tall * 0.6, low - 1 - tall],
          [x + tall * 0.6, low - 1 - tall],
        ],
        'weld',
        { shadow: 1.2, seam: 0, grain: null, scissors: { miss: 0.4 } },
      ),
    );
  }
  return marks;
}

/** Rain that falls on the day shown: as many streaks as there are hundredths of an inch, up to a downpour. */
export function rainToday(name: string, box: Box, inches: number): Mark[] {
  const count = Math.min(70, Math.round(inches * 60));
  if (count === 0) return [];
  const chance = chanceOf(`${name}/${Math.round(inches * 100)}`);
  const stitches = Array.from({ length: count }, (): Stitch => {
    const x = box.x + chance() * box.width;
    const y = box.y + chance() * box.height;
    return [x, y, x - 4, y + 15];
  });
  return [{ kind: 'stitches', stitches, ink: 'indigo', width: 1.9, flat: true }];
}
