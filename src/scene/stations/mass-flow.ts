import type { StationId } from '../../model/station.ts';
import { bandMarks, bandWidth } from '../cloth/band.ts';
import { patch } from '../cloth/patch.ts';
import type { LintForm } from '../cloth/piece.ts';
import { type Box, pathLength, rectangle } from '../cloth/point.ts';
import { group, type Mark, type Point } from '../display-list.ts';
import type { MovingPiece, SceneFrame } from '../scene-frame.ts';
import { type FlowLegend, type MassFlow, massOf, stripsOf } from './flow/flow-input.ts';
import { type FlowLayout, layFlow } from './flow/flow-layout.ts';
import { legendOf } from './flow/piece-mass.ts';
import { ridingPieces, type Track } from './flow/ride.ts';
import { drawMachine } from './machines/draw-machine.ts';

/** Every piece goes the whole of its path in this time, seconds. */
const LAP_SECONDS = 26;

/** Where lint stops being loose. */
const lintForms: Readonly<Partial<Record<StationId, { readonly in: LintForm; readonly out: LintForm }>>> = {
  spinning: { in: 'tuft', out: 'yarn' },
  weaving: { in: 'yarn', out: 'cloth' },
  sewing: { in: 'cloth', out: 'cloth' },
};

export interface MassFlowFrame extends SceneFrame {
  readonly pxPerKg: number;
  readonly legend: FlowLegend;
}

/**
 * The picture of a station's ledger: what comes in, the machines it passes, what goes on and what folds away to its account.
 * Band widths are masses on one scale; pieces are counted, each for a stated mass.
 */
export function massFlowScene(flow: MassFlow): MassFlowFrame {
  const layout = layFlow(flow);
  const legend = legendOf(flow);
  const { width, height } = flow.size;
  const rowPx = legend.rowKg * layout.pxPerKg;
  const still: Mark[] = [];
  layout.main.forEach((stretch, i) => {
    const strips = stripsOf(stretch.masses, layout.pxPerKg);
    const y = layout.bandTop + bandWidth(strips) / 2;
    const last = i === layout.main.length - 1;
    const name = i === 0 ? `in/${layout.mainIn}` : last && layout.mainOut ? `out/${layout.mainOut}` : `between/${i}`;
    still.push(
      group(
        `band/${name}`,
        bandMarks(
          `${flow.station}/${name}`,
          [
            [stretch.from, y],
            [stretch.to, y],
          ],
          strips,
          { rowPx },
        ),
      ),
    );
  });
  for (const band of layout.inBands)
    still.push(
      group(
        `band/in/${band.account}`,
        bandMarks(`${flow.station}/in/${band.account}`, band.path, stripsOf(band.masses, layout.pxPerKg), { rowPx }),
      ),
    );
  layout.side.forEach((band, i) => {
    const name = `${flow.station}/${band.account}/${i}`;
    still.push(
      group(
        `band/out/${band.account}/${flow.machines[band.machine]!.id}`,
        bandMarks(name, band.path, stripsOf(band.masses, layout.pxPerKg), { rowPx }),
      ),
    );
  });
  return {
    width,
    height,
    still,
    parts: [],
    moving: flowPieces(flow, layout, legend),
    over: [...machineMarks(flow, layout), ...labelMarks(flow, layout, legend)],
    lapSeconds: LAP_SECONDS,
    pxPerKg: layout.pxPerKg,
    legend,
  };
}

function machineMarks(flow: MassFlow, layout: FlowLayout): Mark[] {
  const order = flow.machines.map((_, i) => i).sort((a, b) => Number(a === layout.loud) - Number(b === layout.loud));
  return order.map((i) => {
    const machine = flow.machines[i]!;
    const box = layout.boxes[i]!;
    const bandPx = bandWidth(stripsOf(layout.main[i]!.masses, layout.pxPerKg));
    const space = {
      name: `${flow.station}/${machine.id}`,
      box,
      bandTop: layout.bandTop,
      bandBottom: layout.bandTop + bandPx,
    };
    return group(`machine/${machine.id}`, drawMachine(machine.kind)(space));
  });
}

/** The inflow rides as far as the loud machine, what goes on rides from there; each account's pieces ride its own bands. */
function flowPieces(flow: MassFlow, layout: FlowLayout, legend: FlowLegend): MovingPiece[] {
  const pieces: MovingPiece[] = [];
  const loudBox = layout.boxes[layout.loud]!;
  const forms = lintForms[flow.station] ?? { in: 'tuft', out: 'tuft' };
  const main = (
    name: string,
    masses: FlowLayout['main'][number]['masses'],
    from: number,
    to: number,
    hidden: readonly Box[],
    form: LintForm,
  ) => {
    const y = layout.bandTop + bandWidth(stripsOf(masses, layout.pxPerKg)) / 2;
    const track: Track = {
      name: `${flow.station}/${name}`,
      band: name,
      path: [
        [from, y],
        [to, y],
      ],
      visible: gapsBetween(from, to, hidden),
      pxPerKg: layout.pxPerKg,
    };
    pieces.push(...ridingPieces(track, masses, legend, form));
  };
  const before = layout.boxes.slice(0, layout.loud);
  const after = layout.boxes.slice(layout.loud + 1);
  main(`in/${layout.mainIn}`, layout.main[0]!.masses, 0, loudBox.x + 6, before, forms.in);
  // Where the lint changes its form, that happens at the last machine: up to there it is still loose.
  const last = layout.boxes.at(-1)!;
  const changes = forms.in !== forms.out && after.length > 0 && flow.station === 'spinning';
  const right = loudBox.x + loudBox.width - 6;
  if (changes) main('between', layout.main.at(-2)!.masses, right, last.x, after.slice(0, -1), forms.in);
  if (layout.mainOut !== null) {
    const from = changes ? last.x + last.width : right;
    main(`out/${layout.mainOut}`, layout.main.at(-1)!.masses, from, flow.size.width, changes ? [] : after, forms.out);
  }
  for (const row of layout.rows) pieces.push(...rowPieces(flow, layout, legend, row.account));
  for (const band of layout.inBands) {
    const length = pathLength(band.path);
    const track: Track = {
      name: `${flow.station}/in/${band.account}`,
      band: `in/${band.account}`,
      path: band.path,
      visible: [[wordsEnd(flow.labels.in[band.account]), length - 34]],
      pxPerKg: layout.pxPerKg,
    };
    pieces.push(...ridingPieces(track, band.masses, legend));
  }
  return pieces;
}

const wordsEnd = (text: string | undefined): number => Math.min(40, (text?.length ?? 0) * 2);

/** The pieces of an account are counted on its whole mass and ride the band of the machine that gave it most. */
function rowPieces(
  flow: MassFlow,
  layout: FlowLayout,
  legend: FlowLegend,
  account: FlowLayout['rows'][number]['account'],
): MovingPiece[] {
  const entry = flow.outflow.find((candidate) => candidate.account === account);
  const bands = layout.side.filter((band) => band.account === account);
  const row = layout.rows.find((candidate) => candidate.account === account);
  if (!entry || !row || bands.length === 0) return [];
  const biggest = bands.reduce((most, band) => (massOf(band.masses) > massOf(most.masses) ? band : most));
  const box = layout.boxes[biggest.machine]!;
  const [start, corner, end] = biggest.path as [Point, Point, Point];
  const edge = row.rises ? box.y + 8 : box.y + box.height - 8;
  const path: Point[] = [
    [start[0], edge],
    [corner[0], row.y],
    [end[0], row.y],
  ];
  const track: Track = {
    name: `${flow.station}/${account}`,
    band: `out/${account}`,
    path,
    visible: [[16, pathLength(path) - 12]],
    pxPerKg: layout.pxPerKg,
  };
  return ridingPieces(
    track,
    entry,
    legend,
    account === 'hardWaste' ? 'yarn' : account === 'offcuts' || account === 'cloth' ? 'cloth' : 'tuft',
  );
}

/** The lengths of a straight track that no box covers. */
function gapsBetween(from: number, to: number, hidden: readonly Box[]): [number, number][] {
  const gaps: [number, number][] = [];
  let at = from;
  for (const box of hidden) {
    if (box.x - at > 4) gaps.push([at - from, box.x - from]);
    at = box.x + box.width;
  }
  if (to - at > 4) gaps.push([at - from, to - from]);
  return gaps;
}

function labelMarks(flow: MassFlow, layout: FlowLayout, legend: FlowLegend): Mark[] {
  const { width } = flow.size;
  const size = layout.roomy ? 17 : 14;
  const words: Mark[] = [];
  const say = (text: string | undefined, x: number, y: number, anchor: 'start' | 'end' | 'middle', bold = true) => {
    if (text) words.push({ kind: 'text', text, x, y, size, ink: 'ink', anchor, bold });
  };
  const edge = layout.roomy ? 14 : 8;
  say(flow.labels.in[layout.mainIn], edge, layout.bandTop - 10, 'start');
  if (layout.mainOut !== null) say(flow.labels.out[layout.mainOut], width - edge, layout.bandTop - 10, 'end');
  for (const row of layout.rows) {
    const text = flow.labels.out[row.account];
    const y = row.rises ? row.y - Math.max(row.width / 2, 2) - 7 : row.y - Math.max(row.width, 4) / 2 - 8;
    if (text && !row.rises) {
      const wide = text.length * size * 0.52;
      const box = { x: width - edge - wide - 4, y: y - size * 0.9, width: wide + 8, height: size * 1.2 };
      // Words over a band lie on a slip of muslin.
      if (layout.side.some((band) => dropsThrough(band, box, layout.pxPerKg)))
        words.push(
          patch(`${flow.station}/${row.account}/slip`, rectangle(box.x, box.y, box.width, box.height), 'muslin', {
            shadow: 1.2,
            seam: 0,
            grain: null,
            scissors: { miss: 0.8 },
          }),
        );
    }
    say(text, width - edge, y, 'end');
  }
  for (const band of layout.inBands)
    say(
      flow.labels.in[band.account],
      edge,
      band.path[0]![1] - Math.max(3, massOf(band.masses) * layout.pxPerKg) / 2 - 7,
      'start',
    );
  const caption = flow.labels.caption?.(legend);
  if (caption)
    words.push({
      kind: 'text',
      text: caption,
      x: edge,
      y: flow.size.height - 9,
      size: size - 2.5,
      ink: 'walnut',
      anchor: 'start',
      italic: true,
    });
  return [...(layout.roomy ? machineNames(flow, layout) : []), group('labels', words)];
}

/** Whether a side band, on its way down, passes behind a box. */
function dropsThrough({ path, masses }: FlowLayout['side'][number], box: Box, pxPerKg: number): boolean {
  const [start, corner] = path as [Point, Point];
  const half = (massOf(masses) * pxPerKg) / 2 + 2;
  return start[0] + half > box.x && start[0] - half < box.x + box.width && start[1] < box.y && corner[1] > box.y;
}

/** Machine names on slips of muslin hung under each machine, where there is room for the words. */
function machineNames(flow: MassFlow, layout: FlowLayout): Mark[] {
  const size = 14;
  return flow.machines.flatMap((machine, i): Mark[] => {
    const text = flow.labels.machines?.[machine.id];
    if (!text) return [];
    const box = layout.boxes[i]!;
    const wide = text.length * size * 0.53 + 12;
    const neighbours = [layout.boxes[i - 1], layout.boxes[i + 1]].flatMap((other) =>
      other ? [Math.abs(other.x + other.width / 2 - box.x - box.width / 2)] : [],
    );
    if (i !== layout.loud && wide > Math.min(...neighbours)) return [];
    const x = box.x + box.width / 2;
    const y = box.y + box.height + 4;
    return [
      patch(`${flow.station}/${machine.id}/name`, rectangle(x - wide / 2, y, wide, size * 1.45), 'muslin', {
        shadow: 1.2,
        seam: 0,
        grain: null,
        scissors: { miss: 0.8 },
      }),
      { kind: 'text', text, x, y: y + size, size, ink: 'ink', anchor: 'middle', italic: true },
    ];
  });
}
