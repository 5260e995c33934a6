import { textWidth } from '../../cloth/letter-widths.ts';
import { type Slot, slip } from '../../cloth/slot-words.ts';
import type { Mark } from '../../display-list.ts';
import { cylinderPlaces } from './knitting.ts';
import { loomPlaces } from './loom.ts';
import type { WeavingScene } from './weaving-input.ts';
import type { WeavingLayout } from './weaving-layout.ts';

/** What comes in, on slips at the left; the names of the machine's parts and of the bath, where there is room. */
export function machineWords(scene: WeavingScene, layout: WeavingLayout): Mark[] {
  const { labels, inflow } = scene;
  const { pad, band, loom, bath, text, roomy } = layout;
  const has = (account: string) => inflow.some((entry) => entry.account === account);
  const tall = text * (roomy ? 1.65 : 2.9);
  const leftWide = loom.x - pad - loom.width * (has('warpSize') ? 0.06 : 0.02);
  const words = (name: string, said: string, slot: Slot, style: { bold?: boolean; italic?: boolean }): Mark[] =>
    slip(`weaving/${name}`, said, slot, { size: text, ...style });
  const bandTop = band.y - band.px / 2;
  const marks: Mark[] = [
    ...words(
      'in',
      labels.in('lot'),
      roomy
        ? { x: pad, y: bandTop - tall - 3, width: leftWide, height: tall, anchor: 'start', stands: 'bottom' }
        : {
            x: pad,
            y: band.y + band.px / 2 + 2,
            width: loom.x + loom.width * 0.05 - pad,
            height: text * 1.7,
            anchor: 'start',
            stands: 'top',
          },
      { bold: true },
    ),
  ];
  if (has('warpSize'))
    marks.push(
      ...words(
        'size',
        labels.in('warpSize'),
        { x: pad, y: pad, width: leftWide, height: tall * (roomy ? 1.8 : 1), anchor: 'end', stands: 'top' },
        { bold: true },
      ),
    );
  if (!roomy) return marks;
  const right: Slot = {
    x: bath.x + (has('finish') ? bath.width * 0.26 : 0),
    y: pad,
    width: bath.width * (has('finish') ? 0.74 : 1),
    height: text * 3,
    anchor: 'start',
    stands: 'top',
  };
  const airTop = pad + (has('finish') ? text * 3.2 : 0);
  if (has('finish')) marks.push(...words('finish', labels.in('finish'), right, { bold: true }));
  if (has('moistureTakenUp')) marks.push(...words('air', labels.in('moistureTakenUp'), { ...right, y: airTop }, {}));
  if (labels.bath !== '')
    marks.push(
      ...words(
        'bath',
        labels.bath,
        textWidth(labels.bath, text, { italic: true }) + 13 < bath.width * 0.53 && layout.wide
          ? {
              x: bath.x + bath.width * 0.475,
              // Under the slip of the air, which may take two lines.
              y: Math.max(band.y - text, has('moistureTakenUp') ? airTop + text * 2.5 + 8 : 0),
              width: bath.width * 0.53,
              height: text * 1.65,
              anchor: 'start',
              stands: 'top',
            }
          : {
              x: bath.x,
              y: band.y + band.px * 0.62,
              width: bath.width * 0.8,
              height: text * 1.65,
              anchor: 'start',
              stands: 'top',
            },
        { italic: true },
      ),
    );
  return [...marks, ...partNames(scene, layout)];
}

function partNames({ labels, knit }: WeavingScene, { loom, band, text }: WeavingLayout): Mark[] {
  const { names } = labels;
  const line = text * 1.65;
  const name = (key: string, said: string, x: number, y: number, width: number, anchor: Slot['anchor']): Mark[] =>
    slip(
      `weaving/name/${key}`,
      said,
      {
        x: anchor === 'end' ? x - width : anchor === 'middle' ? x - width / 2 : x,
        y,
        width,
        height: line,
        anchor,
        stands: 'top',
      },
      { size: text, italic: true },
    );
  if (knit) {
    const { cones } = cylinderPlaces(loom);
    return [
      // Ends where the machine does, clear of the name of the bath.
      ...name('needles', names.needles, loom.x + loom.width, loom.y + loom.height - line - 2, loom.width * 0.45, 'end'),
      ...name('cones', names.cones, cones[0]![0] + text, loom.y + 2, loom.width * 0.3, 'start'),
    ];
  }
  const at = loomPlaces(loom);
  return [
    ...name('warpBeam', names.warpBeam, loom.x + loom.width * 0.05, band.y + band.px / 2 + 4, loom.width * 0.5, 'end'),
    ...name('shafts', names.shafts, at.shaftsX - at.shaftPitch * 3, loom.y + 2, loom.width * 0.26, 'end'),
    ...name('reed', names.reed, at.reedX + 2, at.level + at.lift * 1.25, loom.width * 0.2, 'middle'),
    ...name('clothBeam', names.clothBeam, at.clothBeam[0] + at.beamPx, at.level - line - 16, loom.width * 0.4, 'end'),
  ];
}
