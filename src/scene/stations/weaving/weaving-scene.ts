import { bandMarks } from '../../cloth/band.ts';
import { textWidth } from '../../cloth/letter-widths.ts';
import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { letter, slip } from '../../cloth/slot-words.ts';
import { type DisplayList, group, type Mark, type Point } from '../../display-list.ts';
import type { MovingPiece, SceneFrame } from '../../scene-frame.ts';
import { captionHem } from '../flow/caption-hem.ts';
import { type FlowLegend, massOf, type OutAccount, stripsOf } from '../flow/flow-input.ts';
import { legendOf } from '../flow/piece-mass.ts';
import { pocketed, pocketMarks, riding } from '../flow/pocket.ts';
import { sceneGround } from '../scene-ground.ts';
import { slowed } from '../slowed.ts';
import { yarnRuler } from '../spinning/drafting.ts';
import { bathMarks } from './bath.ts';
import { knittingParts, knittingStill } from './knitting.ts';
import { beams, loomParts, loomStill } from './loom.ts';
import { machineWords } from './machine-words.ts';
import { loomOutline, magnificationOf, PX_PER_INCH, swatch } from './swatch.ts';
import type { WeavingScene } from './weaving-input.ts';
import { captionSize, layWeaving, type WeavingLayout } from './weaving-layout.ts';

/** Snips and hanks, and bits of size or finish, that can be told apart. */
const room = { mostTufts: 50, mostBits: 14 };
const LAP_SECONDS = 26;
/** Share of the work in which the cloth is made; in the rest it is finished. */
const MADE_BY = 0.72;
const MM = 25.4;

const madeAt = (progress: number): number => Math.min(1, progress / MADE_BY);
const finishedAt = (progress: number): number => Math.max(0, Math.min(1, (progress - MADE_BY) / (0.96 - MADE_BY)));

/** What pieces stand for in the weaving mill. */
export const weavingLegend = ({
  inflow,
  outflow,
  unitKg,
}: Pick<WeavingScene, 'inflow' | 'outflow' | 'unitKg'>): FlowLegend =>
  legendOf(
    {
      inflow: inflow.map(({ account, masses }) => ({ account, ...masses })),
      outflow: outflow.map(({ account, masses }) => ({ account, ...masses })),
      unitKg,
    },
    room,
  );

/** Where the cloth lies in its zone, under its words and over its ruler. */
function clothBox({ zone, text }: WeavingLayout): Box {
  const head = text * 1.75;
  return { x: zone.x + 13, y: zone.y + head + 4, width: zone.width - 26, height: zone.height - head - text * 2.3 - 14 };
}

/**
 * The weaving mill: a loom from its side, or a knitting machine from above; the finishing bath; below, the cloth thread by
 * thread, made and then drawn in by the finish. Laid out once; the function gives the frame at a share of the work done.
 */
export function weavingScene(scene: WeavingScene): (progress: number) => SceneFrame {
  const { width, height } = scene.size;
  const legend = weavingLegend(scene);
  const times = slowed(scene.perMinute).times;
  const told = { pieceKg: legend.tuftKg, bitKg: legend.bitKg, times };
  // The room left by the caption decides how large the cloth is drawn, and the caption says it: laid out with a number as long.
  const layout = layWeaving(scene, scene.labels.caption({ ...told, magnified: 10 }));
  const magnified = scene.cloth ? magnificationOf(scene.cloth, clothBox(layout)) : 1;
  const caption = scene.labels.caption({ ...told, magnified });
  const still: DisplayList = [
    ...sceneGround('weaving/ground', scene.size, ['walnutPale', 'calico', 'walnutPale'], layout.wide ? 4 : 6, 'walnut'),
    patch('weaving/zone', rectangle(layout.zone.x, layout.zone.y, layout.zone.width, layout.zone.height), 'ink', {
      shadow: 2.6,
      seam: 5,
      thread: 'mid',
      scissors: { miss: 1.2, snip: 90, bow: 0.002 },
    }),
    ...bands(scene, layout),
    ...(scene.knit ? knittingStill(layout.loom) : loomStill(scene, layout.loom)),
    ...bathMarks(scene, layout),
    ...zoneStill(scene, layout),
    ...pocketsOf(scene, layout).map(({ account, box }, i) =>
      group(`pocket/${account}`, pocketMarks(`weaving/pocket${i}`, box, 'calico', i === 0 ? 'madder' : 'walnut')),
    ),
    ...captionHem('weaving', caption, scene.size, captionSize(layout.text, layout.roomy)),
  ];
  const parts = scene.cloth === null ? [] : (scene.knit ? knittingParts : loomParts)(scene, layout.loom);
  const words = machineWords(scene, layout);
  return (progress) => ({
    width,
    height,
    still,
    parts,
    moving: pieces(scene, layout, legend, progress),
    over: [
      ...(scene.knit ? [] : beams(layout.loom, scene.cloth ? madeAt(progress) : 0, scene.cloth !== null)),
      ...clothMarks(scene, layout, progress),
      ...words,
      ...pocketWords(scene, layout, progress),
    ],
    lapSeconds: LAP_SECONDS,
  });
}

const inOf = ({ inflow }: WeavingScene, account: string) => inflow.find((entry) => entry.account === account);

/** The pockets that a season fills: what goes on first, then what is lost. */
function pocketsOf({ outflow }: WeavingScene, { pockets }: WeavingLayout) {
  const order: readonly OutAccount[] = ['lot', 'yarn', 'effluent', 'hardWaste'];
  const here = order.filter((account) => outflow.some((entry) => entry.account === account));
  return here.slice(0, pockets.length).map((account, i) => ({ account, ...pockets[i]! }));
}

const bandEndX = ({ loom }: WeavingLayout): number => loom.x + loom.width * 0.045;
const yarnPath = (layout: WeavingLayout): Point[] => [
  [-4, layout.band.y],
  [bandEndX(layout), layout.band.y],
];
const sizePath = ({ loom, band }: WeavingLayout): Point[] => [
  [loom.x - loom.width * 0.03, -4],
  [loom.x - loom.width * 0.03, band.y - band.px / 2 - 4],
];
const finishPath = ({ bath }: WeavingLayout): Point[] => [
  [bath.x + bath.width * 0.16, -4],
  [bath.x + bath.width * 0.16, bath.y + bath.height * 0.62],
];
const clothPath = ({ loom, band, clothX, pockets }: WeavingLayout): Point[] => [
  [loom.x + loom.width * 0.97, band.y],
  [clothX, band.y],
  [clothX, pockets[0]!.box.y + 9],
];

/** Yarn in, size and finish from above, cloth out and down: all to one scale. */
function bands(scene: WeavingScene, layout: WeavingLayout): Mark[] {
  const lot = inOf(scene, 'lot');
  if (!lot) return [];
  const pxPerKg = layout.band.px / massOf(lot.masses);
  const rowPx = layout.band.px / 3;
  const out = scene.outflow.find(({ account }) => account === 'lot');
  const band = (side: string, account: string, path: readonly Point[], masses: typeof lot.masses): Mark =>
    group(
      `band/${side}/${account}`,
      bandMarks(`weaving/${side}/${account}`, path, stripsOf(masses, pxPerKg), { rowPx }),
    );
  return [
    band('in', 'lot', yarnPath(layout), lot.masses),
    ...scene.inflow.flatMap(({ account, masses }) => {
      if (account === 'warpSize') return [band('in', account, sizePath(layout), masses)];
      return account === 'finish' ? [band('in', account, finishPath(layout), masses)] : [];
    }),
    ...(out ? [band('out', 'lot', clothPath(layout), out.masses)] : []),
  ];
}

/** Where the little that the air gives is counted. */
const airPath = ({ bath, text }: WeavingLayout): Point[] => [
  [bath.x + bath.width * 0.5, bath.y + text * 2.6],
  [bath.x + bath.width * 0.5, bath.y + bath.height * 0.5],
];

function pieces(scene: WeavingScene, layout: WeavingLayout, legend: FlowLegend, progress: number): MovingPiece[] {
  const work = scene.cloth ? progress : 1;
  const paths: Readonly<Record<string, Point[]>> = {
    // Pieces come in whole.
    lot: [[layout.text, layout.band.y], yarnPath(layout)[1]!],
    warpSize: sizePath(layout),
    finish: finishPath(layout),
  };
  const form = (account: OutAccount) => (account === 'lot' ? 'cloth' : account === 'effluent' ? 'tuft' : 'yarn');
  return [
    ...scene.inflow.flatMap(({ account, masses }) =>
      riding(
        { band: `in/${account}`, masses, form: 'yarn' },
        paths[account] ?? airPath(layout),
        account === 'lot' ? layout.band.px * 0.84 : layout.text,
        legend,
        work,
      ),
    ),
    ...pocketsOf(scene, layout).flatMap(({ account, box }) => {
      const masses = scene.outflow.find((entry) => entry.account === account)!.masses;
      return pocketed({ band: `out/${account}`, masses, form: form(account) }, box, legend, work);
    }),
  ];
}

/** The ruler under the cloth; where no cloth can be woven, why. */
function zoneStill(scene: WeavingScene, layout: WeavingLayout): Mark[] {
  const { cloth, labels } = scene;
  const box = clothBox(layout);
  if (!cloth)
    return slip(
      'weaving/stopped',
      labels.stopped,
      { ...box, anchor: 'middle', stands: 'middle' },
      { size: layout.text * 1.3, bold: true, ink: 'madder' },
    );
  const tickPx = (scene.rulerTickMm / MM) * magnificationOf(cloth, box) * PX_PER_INCH;
  const numberEach = [1, 2, 4, 8].find((each) => each * tickPx >= layout.text * 4.6) ?? 8;
  return yarnRuler(
    'weaving/ruler',
    // The ruler begins its scale a little way in: its nought lies under the edge of the cloth.
    [box.x - 6, box.y + box.height + 9],
    box.width - 2,
    tickPx,
    numberEach,
    (tick) => labels.rulerMark(tick * scene.rulerTickMm),
    layout.text,
  );
}

/** The cloth as far as it is made and finished, with its sett on the loom and after. */
function clothMarks({ cloth, labels }: WeavingScene, layout: WeavingLayout, progress: number): Mark[] {
  if (!cloth) return [];
  const { zone, text } = layout;
  const box = clothBox(layout);
  const finished = cloth.finish === 'grey' ? 0 : finishedAt(progress);
  const head = { x: zone.x + 13, y: zone.y + 9, width: zone.width - 26, height: text * 1.4 };
  const size = text * 1.1;
  const whole = `${labels.finished}, ${labels.shrunk}`;
  const drawnIn = textWidth(whole, size) < head.width ? whole : labels.finished;
  const said = finished > 0.5 ? drawnIn : labels.onLoom;
  return [
    ...swatch(cloth, box, madeAt(progress), finished),
    ...(finished > 0 ? [loomOutline(cloth, box)] : []),
    ...letter(said, { ...head, anchor: 'start', stands: 'middle' }, { size, bold: true, ink: 'lint' }),
  ];
}

function pocketWords(scene: WeavingScene, layout: WeavingLayout, progress: number): Mark[] {
  const share = scene.cloth ? progress : 1;
  return pocketsOf(scene, layout).flatMap(({ account, words }) =>
    slip(
      `weaving/out/${account}`,
      scene.labels.out(account, share),
      { ...words, anchor: 'start', stands: 'bottom' },
      { size: layout.text, bold: true },
    ),
  );
}
