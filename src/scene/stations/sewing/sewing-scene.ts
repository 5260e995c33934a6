import { partMasses } from '../../../model/lot.ts';
import { lettered, linesHeight, linesOf } from '../../cloth/lettering.ts';
import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import { slipAt, slipHeight } from '../../cloth/slot-words.ts';
import { type DisplayList, group, type Mark, type Point } from '../../display-list.ts';
import type { SceneFrame } from '../../scene-frame.ts';
import { captionHem } from '../flow/caption-hem.ts';
import { type FlowLegend, type Masses, massOf, type OutAccount } from '../flow/flow-input.ts';
import { roundMass } from '../flow/piece-mass.ts';
import { type Account, pocketed, pocketMarks, riding } from '../flow/pocket.ts';
import { sceneGround } from '../scene-ground.ts';
import { grainArrow, printMarks } from './cut-patch.ts';
import { matMarks } from './mat.ts';
import { machineNeedle, shears, spool } from './notions.ts';
import type { SewingScene } from './sewing-input.ts';
import { afterWords, captionSize, laySewing, measureWidth, type SewingLayout, SLIP_GAP } from './sewing-layout.ts';

/** About so many snips of cloth can be told apart. One stands for cloth with its moisture and finish. */
export const MOST_SNIPS = 56;
const LAP_SECONDS = 24;

/**
 * The sewing table: one boll beside the patch its lint makes; below them the cloth of one bale, cut into pieces and offcuts.
 * Laid out once; the function gives the frame at a share of the work done.
 */
export function sewingScene(scene: SewingScene): (progress: number) => SceneFrame {
  const { width, height } = scene.size;
  const snipKg = roundMass(massOf(scene.inflow) / MOST_SNIPS, scene.unitKg);
  const caption = scene.labels.caption(snipKg);
  const layout = laySewing(scene, caption);
  const legend: FlowLegend = { tuftKg: snipKg, bitKg: snipKg, rowKg: snipKg };
  const [main, ...side] = scene.outflow;
  const boxes = new Map<OutAccount, Box>();
  if (main) boxes.set(main.account, layout.pockets.main);
  for (const [i, { account }] of side.entries()) boxes.set(account, layout.pockets.side[i]!);
  const still: DisplayList = [
    ...sceneGround('sewing/ground', scene.size, ['indigoWarm', 'mid', 'indigo'], layout.wide ? 4 : 6, 'faded'),
    ...matMarks(scene, layout),
    ...statementMarks(scene, layout),
    ...notionMarks(scene, layout),
    ...clothMarks(scene, layout),
    ...captionHem('sewing', caption, scene.size, captionSize(layout.text, layout.roomy)),
  ];
  const accounts = scene.outflow.map(
    ({ account, masses }): Account => ({ band: `out/${account}`, masses: whole(masses, account), form: 'cloth' }),
  );
  const { band } = layout;
  const ride: Point[] = [
    [0, band.y],
    [band.cutX - 8, band.y],
  ];
  return (progress) => ({
    width,
    height,
    still,
    parts: [],
    moving: [
      ...riding(
        { band: 'in/lot', masses: whole(scene.inflow), form: 'cloth' },
        ride,
        band.height * 0.86,
        legend,
        progress,
      ),
      ...accounts.flatMap((account, i) => pocketed(account, boxes.get(scene.outflow[i]!.account)!, legend, progress)),
    ],
    over: scene.outflow.flatMap(({ account }) =>
      pocketLabel(account, scene.labels.out(account, progress), boxes.get(account)!, layout),
    ),
    lapSeconds: LAP_SECONDS,
  });
}

/** Cloth is counted with all that is in it; what the wash takes, starch and water, as drops. */
const whole = (masses: Masses, account?: OutAccount): Masses => {
  const kg = massOf(masses);
  return account === 'effluent'
    ? { dryKg: partMasses({}), waterKg: kg }
    : { dryKg: partMasses({ lint: kg }), waterKg: 0 };
};

function statementMarks({ labels }: SewingScene, { statement, words, measure }: SewingLayout): Mark[] {
  const pad = words * 0.6;
  const x = statement.x + pad;
  const wide = statement.width - pad * 2;
  const display = { display: true } as const;
  const top = statement.y + words * 0.35;
  const after = afterWords(labels, words, measure, wide);
  const lines = after.lines.length;
  const rows = after.beside ? Math.max(0, linesHeight(lines, words) - measure * 0.86) : 0;
  const measureY =
    top + linesHeight(linesOf(labels.before, words, wide, display).length, words) + measure * 0.86 + rows;
  const afterAt: Point = after.beside
    ? [x + measureWidth(labels.measure, measure) + words * 0.3, measureY - linesHeight(lines - 1, words)]
    : [x, measureY + words * 1.2];
  return [
    patch('sewing/statement', rectangle(statement.x, statement.y, statement.width, statement.height), 'muslin', {
      shadow: 4,
      seam: 6,
      thread: 'madder',
    }),
    ...lettered(linesOf(labels.before, words, wide, display), [x, top + words], { size: words, ...display }),
    ...lettered([labels.measure], [x, measureY], { size: measure, ink: 'madder', ...display }),
    ...lettered(after.lines, afterAt, { size: words, ...display }),
  ];
}

/** Needle and thread as advised for this cloth. */
function notionMarks({ labels }: SewingScene, { notions, text }: SewingLayout): Mark[] {
  if (!notions) return [];
  const { spool: half, wordsX, wordsWidth: width } = notions;
  const y = notions.y + notions.height / 2;
  const needleTall = slipHeight(labels.needle, text, width);
  const top = y - (needleTall + SLIP_GAP + slipHeight(labels.thread, text, width)) / 2;
  return [
    ...spool('sewing/spool', notions.x + half * 0.7, y, half),
    ...machineNeedle('sewing/machineNeedle', notions.x + half * 1.75, y - half * 0.95, half * 1.9, 0.06),
    ...slipAt('sewing/needleWords', labels.needle, [wordsX, top], { size: text, width }),
    ...slipAt('sewing/threadWords', labels.thread, [wordsX, top + needleTall + SLIP_GAP], { size: text, width }),
  ];
}

/** The cloth of one bale: a band as wide as its mass, selvages at both edges, up to the cut; then pieces and offcuts. */
function clothMarks(scene: SewingScene, { band, pockets, text, roomy }: SewingLayout): Mark[] {
  const pxPerKg = band.height / Math.max(1e-9, massOf(scene.inflow));
  const { cloth, labels } = scene;
  const top = band.y - band.height / 2;
  const box: Box = { x: -4, y: top, width: band.cutX + 4, height: band.height };
  const selvage = (y: number, name: string): Mark => ({
    kind: 'stitches',
    stitches: runningStitches([[0, y] as Point, [band.cutX - 2, y] as Point], name, {
      on: 5,
      off: 3,
      closed: false,
      uneven: 0.1,
    }),
    ink: 'mid',
    width: 2.2,
  });
  const marks: Mark[] = [];
  const shearsPx = Math.min(band.height, (pockets.main.y + pockets.main.height - band.y - band.height * 0.22) / 0.86);
  let from = top;
  const strips: Mark[] = scene.outflow.map(({ account, masses }, i) => {
    const tall = massOf(masses) * pxPerKg;
    const to = i === 0 ? pockets.main.x + 10 : pockets.side[i - 1]!.x + 10;
    const strip = patch(
      `sewing/out/${account}`,
      rectangle(band.cutX + 6, from + (i ? 3 * i : 0), to - band.cutX - 6, tall),
      cloth.ink,
      {
        shadow: 2.6,
        seam: 0,
        grain: tall > 16 ? 0 : null,
        scissors: 'asDrawn',
      },
    );
    from += tall;
    return group(`band/out/${account}`, [strip]);
  });
  marks.push(
    group('band/in/lot', [
      patch('sewing/cloth', rectangle(box.x, box.y, box.width, box.height), cloth.ink, {
        shadow: 2.6,
        seam: 0,
        grain: 0,
        scissors: 'asDrawn',
      }),
      ...(cloth.printed ? printMarks('sewing/cloth', box, Math.max(11, band.height / 3.4)) : []),
      ...(labels.selvage === null
        ? []
        : [selvage(top + 3.5, 'sewing/selvage1'), selvage(top + band.height - 3.5, 'sewing/selvage2')]),
    ]),
    ...strips,
    ...scene.outflow.map(({ account }, i) =>
      group(
        `pocket/${account}`,
        pocketMarks(
          `sewing/pocket/${account}`,
          i === 0 ? pockets.main : pockets.side[i - 1]!,
          'calico',
          i === 0 ? 'madder' : 'walnut',
        ),
      ),
    ),
    ...shears('sewing/shears', band.cutX + 3, band.y + band.height * 0.22, shearsPx, 0.16),
    ...slipAt('sewing/in', labels.inflow, [roomy ? 14 : 9, top - text * 1.8], { size: text, bold: true }),
  );
  if (roomy) marks.push(grainArrow([band.cutX * 0.58, band.y], [band.cutX * 0.84, band.y], 'indigo'));
  if (roomy && labels.selvage !== null)
    marks.push(
      ...slipAt('sewing/selvageWords', labels.selvage, [band.cutX - 18, top - text * 1.7], {
        size: text,
        italic: true,
        anchor: 'end',
      }),
    );
  return marks;
}

function pocketLabel(account: OutAccount, text: string, box: Box, { text: size }: SewingLayout): Mark[] {
  const width = box.width + 8;
  return [
    group(
      `label/out/${account}`,
      slipAt(`sewing/label/${account}`, text, [box.x, box.y - slipHeight(text, size, width) - 4], {
        size,
        bold: true,
        width,
      }),
    ),
  ];
}
