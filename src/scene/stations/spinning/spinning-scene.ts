import { type BandStrip, bandMarks } from '../../cloth/band.ts';
import { lettered, linesHeight, linesOf } from '../../cloth/lettering.ts';
import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { slipAt } from '../../cloth/slot-words.ts';
import { type DisplayList, group, type Mark, type Point } from '../../display-list.ts';
import type { MovingPiece, SceneFrame } from '../../scene-frame.ts';
import { captionHem } from '../flow/caption-hem.ts';
import { type Masses, type OutAccount, shownKg, shownParts } from '../flow/flow-input.ts';
import { legendOf } from '../flow/piece-mass.ts';
import { pocketed, pocketMarks, riding } from '../flow/pocket.ts';
import { sceneGround } from '../scene-ground.ts';
import { fibresPerLine } from './drafting.ts';
import { draftingZone, runningYarn } from './drafting-zone.ts';
import { prepared } from './prepare.ts';
import type { SpinningScene } from './spinning-input.ts';
import { accountOf, captionSize, laySpinning, type SpinningLayout } from './spinning-layout.ts';
import { ringCop, rotorCheese } from './yarn-package.ts';

const LAP_SECONDS = 26;

/**
 * The spinning mill: the bale opened, carded and perhaps combed in a row, then the drafting zone seen large, with every fibre of
 * one section of the yarn drawn, and the yarn with its turns on a ruler.
 * Laid out once; the function gives the frame at a share of the work done.
 */
export function spinningScene(scene: SpinningScene): (progress: number) => SceneFrame {
  const { width, height } = scene.size;
  const legend = legendOf({
    inflow: scene.inflow.map(entryOf),
    outflow: scene.outflow.map(entryOf),
    unitKg: scene.unitKg,
  });
  const caption = scene.labels.caption({ ...legend, lineFibres: fibresPerLine(scene.fibres) });
  const layout = laySpinning(scene, caption);
  const machines = scene.machines.map((id, i) => prepared(scene, id, layout.machines[i]!));
  const zone = draftingZone(scene, layout);
  const boxes = pocketBoxes(scene, layout);
  const still: DisplayList = [
    ...sceneGround('spinning/ground', scene.size, ['indigoWarm', 'mid', 'indigoWarm', 'indigo'], 5, 'faded'),
    zone.ground,
    ...bandDown(scene, layout),
    ...machines.flatMap((machine) => machine.still),
    ...zone.still,
    ...[...boxes].map(([account, box]) =>
      group(
        `pocket/${account}`,
        pocketMarks(`spinning/pocket/${account}`, box, 'calico', account === 'lot' ? 'madder' : 'walnut'),
      ),
    ),
    ...rowWords(scene, layout),
    ...captionHem('spinning', caption, scene.size, captionSize(layout.text, layout.roomy)),
  ];
  const parts = [...machines.flatMap((machine) => machine.parts), ...zone.parts];
  const ride = mainPath(layout, layout.nipX + 14, layout.text * 0.7);
  const moving = (progress: number): MovingPiece[] => {
    const work = scene.yarn ? progress : 0;
    return [
      ...scene.inflow.flatMap(({ account, masses }) =>
        account === 'lot'
          ? riding({ band: 'in/lot', masses, form: 'tuft' }, ride, layout.bandPx * 0.84, legend, work)
          : riding({ band: `in/${account}`, masses, form: 'tuft' }, moisturePath(layout), layout.text, legend, work),
      ),
      ...scene.outflow.flatMap(({ account, masses }) => {
        const form = account === 'lot' || account === 'hardWaste' ? 'yarn' : 'tuft';
        const box = boxes.get(account) ?? airBox(layout);
        return scene.yarn ? pocketed({ band: `out/${account}`, masses, form }, box, legend, progress) : [];
      }),
    ];
  };
  const over = (progress: number): DisplayList => [
    ...zone.over,
    ...runningYarn(scene, layout, progress),
    ...(scene.yarn && scene.system === 'ring' ? ringCop(layout.packageBox, progress) : []),
    ...(scene.system === 'rotor' ? rotorCheese(layout.packageBox, scene.yarn ? progress : 0) : []),
    ...outWords(scene, layout, boxes, progress),
  ];
  return (progress) => ({
    width,
    height,
    still,
    parts,
    moving: moving(progress),
    over: over(progress),
    lapSeconds: LAP_SECONDS,
  });
}

const entryOf = <Account extends string>({
  account,
  masses,
}: {
  readonly account: Account;
  readonly masses: Masses;
}) => ({
  account,
  ...masses,
});

/** Middle line of the band: along the row, down at the right, back to the rollers. */
const mainPath = ({ rowY, foldX, axisY }: SpinningLayout, toX: number, fromX = -4): Point[] => [
  [fromX, rowY],
  [foldX, rowY],
  [foldX, axisY],
  [toX, axisY],
];

/** Accounts that have no pocket are named at the lower right of the zone, one a line; their pieces are counted above the names. */
const LOOSE_LINES = 2;
const looseTop = ({ zone, text, pad, roomy }: SpinningLayout): number =>
  zone.y + zone.height - pad - (roomy ? linesHeight(LOOSE_LINES, text) : 0);

/** Where the drops of the air's moisture are counted. */
const moisturePath = (layout: SpinningLayout): Point[] => {
  const { zone, text, pad } = layout;
  const [right, y] = [zone.x + zone.width - pad, looseTop(layout) - text];
  return [
    [right - text * 8, y],
    [right - text * 4, y],
  ];
};

/** Where drops that leave as vapour, and fly that nobody sweeps up, are counted: at the lower right of the zone. */
const airBox = (layout: SpinningLayout): Box => ({
  x: layout.zone.x + layout.zone.width - layout.text * 3.4,
  y: looseTop(layout) - layout.text * 2.2,
  width: layout.text * 2.6,
  height: layout.text * 2,
});

const strips = (masses: Masses, pxPerKg: number): BandStrip[] =>
  shownParts.map((part) => ({ part, width: shownKg(masses, part) * pxPerKg }));

/** The band: the bale in its ties, the lint as wide as what is left of it, the strips that each machine takes. */
function bandDown(scene: SpinningScene, layout: SpinningLayout): Mark[] {
  const { pxPerKg, bandPx, rowY, machines, pockets } = layout;
  const lot = scene.inflow.find(({ account }) => account === 'lot');
  if (!lot) return [];
  const rowPx = bandPx / 4;
  const marks: Mark[] = [
    group(
      'band/in/lot',
      bandMarks('spinning/in', mainPath(layout, layout.backX), strips(lot.masses, pxPerKg), { rowPx }),
    ),
  ];
  const ties: Mark[] = [0.25, 0.5, 0.75].map((share, i) =>
    patch(
      `spinning/tie${i}`,
      rectangle(layout.machines[0]!.x * share - 3, rowY - bandPx / 2 - 3, 6, bandPx + 6),
      'madder',
      {
        shadow: 1.2,
        seam: 0,
        grain: null,
        scissors: { miss: 0.6 },
      },
    ),
  );
  scene.machines.forEach((id, i) => {
    const account = accountOf[id];
    const taken = scene.outflow.find((entry) => entry.account === account);
    if (account === null || !taken) return;
    const x = machines[i]!.x + machines[i]!.width / 2;
    marks.push(
      group(
        `band/out/${account}`,
        bandMarks(
          `spinning/${account}`,
          [
            [x, rowY],
            [x, pockets[i]!.y + 8],
          ],
          strips(taken.masses, pxPerKg),
          { rowPx },
        ),
      ),
    );
  });
  return [...marks, ...ties];
}

function pocketBoxes(scene: SpinningScene, layout: SpinningLayout): Map<OutAccount, Box> {
  const boxes = new Map<OutAccount, Box>();
  const has = (account: OutAccount) => scene.outflow.some((entry) => entry.account === account);
  scene.machines.forEach((id, i) => {
    const account = accountOf[id];
    if (account !== null && has(account)) boxes.set(account, layout.pockets[i]!);
  });
  if (has('hardWaste')) boxes.set('hardWaste', layout.hardPocket);
  if (has('lot')) boxes.set('lot', layout.yarnPocket);
  return boxes;
}

/** What comes in, and the names of the machines, on slips above the band. */
function rowWords(scene: SpinningScene, { text, machines, rowY, bandPx, pad, roomy }: SpinningLayout): Mark[] {
  const { labels } = scene;
  const y = Math.max(4, rowY - bandPx / 2 - text * 1.75);
  const marks: Mark[] = slipAt('spinning/in', labels.in('lot'), [pad, roomy ? y : rowY + bandPx / 2 + 5], {
    size: text,
    bold: true,
    ...(roomy ? {} : { width: machines[0]!.x + 14 }),
  });
  if (!roomy) return marks;
  scene.machines.forEach((id, i) => {
    const box = machines[i]!;
    marks.push(
      ...slipAt(`spinning/name/${id}`, labels.machines[id], [box.x + box.width + 5, y], { size: text, italic: true }),
    );
  });
  return marks;
}

/** Each account's name and mass so far, beside or under its pocket. */
function outWords(
  scene: SpinningScene,
  layout: SpinningLayout,
  boxes: ReadonlyMap<OutAccount, Box>,
  progress: number,
): Mark[] {
  const { text, wordsBeside, wordsWide, zone, pad, roomy } = layout;
  const loose: string[] = [];
  const marks = scene.outflow.flatMap(({ account }): Mark[] => {
    const said = scene.labels.out(account, progress);
    const box = boxes.get(account);
    if (!box) {
      loose.push(said);
      return [];
    }
    if (account === 'lot' || account === 'hardWaste') {
      const width = zone.width * (account === 'lot' ? (roomy ? 0.19 : 0.3) : roomy ? 0.2 : 0.33);
      return lettered(
        linesOf(said, text, width, { bold: true }),
        [box.x + box.width + text * 0.5, box.y + text * 1.1],
        { size: text, ink: 'lint', bold: true },
      );
    }
    const at: Point = wordsBeside ? [box.x + box.width + 6, box.y + 2] : [box.x, box.y + box.height + 4];
    return slipAt(`spinning/out/${account}`, said, at, { size: text, bold: true, width: wordsWide });
  });
  for (const { account } of scene.inflow) if (account !== 'lot') loose.push(scene.labels.in(account));
  if (!roomy) return marks;
  const x = zone.x + zone.width - pad;
  const from = zone.y + zone.height - pad - linesHeight(loose.length - 1, text);
  return [...marks, ...lettered(loose, [x, from], { size: text, ink: 'lint', anchor: 'end' })];
}
