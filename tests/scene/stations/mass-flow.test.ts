import { describe, expect, test } from 'vitest';
import { trashParts } from '../../../src/model/lot.ts';
import { bandWidth } from '../../../src/scene/cloth/band.ts';
import type { Shown } from '../../../src/scene/cloth/part-cloth.ts';
import { boundsOf } from '../../../src/scene/cloth/point.ts';
import { flatMarks, groupsOf } from '../../../src/scene/display-list.ts';
import { frameAtRest, pieceAt } from '../../../src/scene/scene-frame.ts';
import { type MassFlow, massOf, shownKg, shownParts, stripsOf } from '../../../src/scene/stations/flow/flow-input.ts';
import { layFlow } from '../../../src/scene/stations/flow/flow-layout.ts';
import { pieceCount, roundMass } from '../../../src/scene/stations/flow/piece-mass.ts';
import { drawMachine, loudestOf, type MachineKind } from '../../../src/scene/stations/machines/draw-machine.ts';
import { massFlowScene } from '../../../src/scene/stations/mass-flow.ts';
import { flowStations, sampleFlow } from '../sample-flows.ts';

const sizes = [
  [860, 560],
  [390, 420],
] as const;
const all = flowStations.flatMap((station) => sizes.map(([width, height]) => [station, width, height] as const));

/** Mass that stands for each part on a picture, counted piece by piece. */
function countPieces(frame: ReturnType<typeof massFlowScene>, band: string): Map<Shown, number> {
  const counts = new Map<Shown, number>();
  for (const piece of frame.moving) if (piece.band === band) counts.set(piece.part, (counts.get(piece.part) ?? 0) + 1);
  return counts;
}

describe.each(all)('%s at %i x %i', (station, width, height) => {
  const flow = sampleFlow(station, width, height);
  const frame = massFlowScene(flow);
  const layout = layFlow(flow);
  const tuftParts: readonly Shown[] = ['lint', 'seed', 'water'];
  const kgOf = (part: Shown) => (tuftParts.includes(part) ? frame.legend.tuftKg : frame.legend.bitKg);

  test('pieces agree with the ledger, entry by entry and part by part, rounded half up', () => {
    const expectCounts = (band: string, masses: (typeof flow.inflow)[number] | (typeof flow.outflow)[number]) => {
      const counts = countPieces(frame, band);
      for (const part of shownParts)
        expect(counts.get(part) ?? 0, `${band} ${part}`).toBe(Math.round(shownKg(masses, part) / kgOf(part) + 1e-9));
    };
    for (const entry of flow.inflow) expectCounts(`in/${entry.account}`, entry);
    for (const entry of flow.outflow) expectCounts(`out/${entry.account}`, entry);
  });
  test('every piece says what it stands for', () => {
    for (const piece of frame.moving) expect(piece.standsForKg).toBe(kgOf(piece.part));
  });
  test('bands are as wide as their mass on one scale', () => {
    const groups = [...groupsOf(frame.still)];
    const depth = (name: string) =>
      boundsOf(
        [...flatMarks(groups.find((found) => found.name === name)!.marks)].flatMap((mark) =>
          mark.kind === 'patch' ? mark.points : [],
        ),
      );
    expect(depth(`band/in/${layout.mainIn}`).height).toBeCloseTo(
      massOf(flow.inflow.find(({ account }) => account === layout.mainIn)!) * frame.pxPerKg,
      6,
    );
    if (layout.mainOut !== null)
      expect(depth(`band/out/${layout.mainOut}`).height).toBeCloseTo(
        massOf(flow.outflow.find(({ account }) => account === layout.mainOut)!) * frame.pxPerKg,
        6,
      );
    for (const row of layout.rows)
      expect(row.width).toBeCloseTo(
        massOf(flow.outflow.find(({ account }) => account === row.account)!) * frame.pxPerKg,
        6,
      );
  });
  test('what leaves the machines and what goes on are all that came in', () => {
    const into = flow.inflow.reduce((sum, entry) => sum + massOf(entry), 0) * frame.pxPerKg;
    const side = layout.side.reduce((sum, band) => sum + bandWidth(stripsOf(band.masses, frame.pxPerKg)), 0);
    const on = bandWidth(stripsOf(layout.main.at(-1)!.masses, frame.pxPerKg));
    expect(side + on).toBeCloseTo(into, 6);
  });
  test('pieces at rest lie on the page and pieces in motion on their paths', () => {
    for (const piece of frame.moving) {
      for (const seconds of [0, 3.7, 31]) {
        const [x, y] = pieceAt(piece, seconds, frame.lapSeconds);
        expect(Number.isFinite(x) && Number.isFinite(y)).toBe(true);
        const box = boundsOf(piece.path);
        expect(x).toBeGreaterThanOrEqual(box.x - 1e-6);
        expect(x).toBeLessThanOrEqual(box.x + box.width + 1e-6);
      }
      const [x, y] = pieceAt(piece, 0, frame.lapSeconds);
      expect(x).toBeGreaterThan(0);
      expect(x).toBeLessThan(width);
      expect(y).toBeGreaterThan(0);
      expect(y).toBeLessThan(height);
    }
  });
  test('nothing is drawn with a number that is not one', () => {
    for (const mark of flatMarks(frameAtRest(frame))) {
      const numbers =
        mark.kind === 'patch' ? mark.points.flat() : mark.kind === 'stitches' ? mark.stitches.flat() : [mark.x, mark.y];
      expect(numbers.every(Number.isFinite)).toBe(true);
    }
  });
  test('the same ledger gives the same picture', () => {
    expect(JSON.stringify(massFlowScene(flow))).toBe(JSON.stringify(frame));
  });
});

test('pieces pass at a rate proportional to their mass: after one lap every piece is back where it began', () => {
  const frame = massFlowScene(sampleFlow('ginning', 860, 560));
  for (const piece of frame.moving) {
    const before = pieceAt(piece, 0, frame.lapSeconds);
    const after = pieceAt(piece, frame.lapSeconds, frame.lapSeconds);
    expect(after[0]).toBeCloseTo(before[0], 6);
    expect(after[1]).toBeCloseTo(before[1], 6);
  }
});

test('half a piece counts as one', () => {
  const legend = { tuftKg: 10, bitKg: 1, rowKg: 100 };
  const masses = { ...sampleFlow('ginning', 860, 560).inflow[0]!, waterKg: 0 };
  const withLint = (lint: number) => ({ ...masses, dryKg: { ...masses.dryKg, lint } });
  expect(pieceCount(withLint(44.9), 'lint', legend)).toBe(4);
  expect(pieceCount(withLint(45), 'lint', legend)).toBe(5);
  expect(pieceCount(withLint(54.9), 'lint', legend)).toBe(5);
});

test('pieces stand for round numbers of the unit: 1, 2 or 5 times a power of ten', () => {
  expect(roundMass(7.3, 1)).toBe(10);
  expect(roundMass(0.013, 1)).toBeCloseTo(0.02, 12);
  expect(roundMass(17, 1)).toBe(20);
  expect(roundMass(20, 1)).toBe(20);
  expect(roundMass(450, 0.45359237)).toBeCloseTo(1000 * 0.45359237, 9);
  expect(roundMass(0, 0.5)).toBe(0.5);
});

test('a scale given by the caller is the scale used', () => {
  const flow: MassFlow = { ...sampleFlow('ginning', 860, 560), pxPerKg: 0.25 };
  expect(massFlowScene(flow).pxPerKg).toBe(0.25);
});

test('a failed crop gives an empty page with its machine, and no piece', () => {
  const frame = massFlowScene({
    ...sampleFlow('ginning', 860, 560),
    inflow: [],
    outflow: [],
    machines: [{ id: 'stand', kind: 'sawStand', removedByAccount: {} }],
  });
  expect(frame.moving).toEqual([]);
  expect([...groupsOf(frame.over)].map(({ name }) => name)).toContain('machine/stand');
  expect(JSON.stringify(frame)).not.toContain('null');
});

test('a flow without a machine is refused, with the reason', () => {
  expect(() => massFlowScene({ ...sampleFlow('ginning', 860, 560), machines: [] })).toThrow(/machine/);
});

test('what no machine accounts for still leaves on the page, at the loud one', () => {
  const flow = sampleFlow('ginning', 860, 560);
  const silent = flow.machines.map((machine) => ({ ...machine, removedByAccount: {} }));
  const layout = layFlow({ ...flow, machines: silent });
  for (const entry of flow.outflow.filter(({ account }) => account !== 'lot')) {
    const bands = layout.side.filter(({ account }) => account === entry.account);
    expect(bands.map(({ machine }) => machine)).toEqual([layout.loud]);
    expect(massOf(bands[0]!.masses)).toBeCloseTo(massOf(entry), 9);
  }
});

test('eight destinations still fit on a phone: rows in order, none on another', () => {
  const base = sampleFlow('spinning', 390, 420);
  const some = base.outflow.find(({ account }) => account === 'millTrash')!;
  const accounts = [
    'ginTrash',
    'seedHouse',
    'effluent',
    'offcuts',
    'weathered',
    'leftInField',
    'moduleLoss',
    'classingSample',
  ] as const;
  const layout = layFlow({
    ...base,
    outflow: [...base.outflow.slice(-1), ...accounts.map((account) => ({ ...some, account }))],
    machines: [{ id: 'card', kind: 'card', removedByAccount: {} }],
  });
  expect(layout.pxPerKg).toBeGreaterThan(0);
  layout.rows.slice(1).forEach((row, i) => {
    expect(row.y).toBeLessThan(layout.rows[i]!.y - 12);
  });
});

test('one loud machine: the stand at the gin, the card at the mill', () => {
  expect(loudestOf(['feeder', 'sawStand', 'sawLintCleaner'] satisfies MachineKind[])).toBe(1);
  expect(loudestOf(['opener', 'card', 'comber', 'spindle'] satisfies MachineKind[])).toBe(1);
});

test('on the saw stand every rib lies between two saws: saw, rib, saw, rib, saw, and the front rib over the front saw', () => {
  const marks = drawMachine('sawStand')({
    name: 'stand',
    box: { x: 0, y: 0, width: 250, height: 260 },
    bandTop: 0,
    bandBottom: 260,
  });
  const order = marks.flatMap((mark) => {
    if (mark.kind !== 'patch') return [];
    if (mark.ink === 'weld' && mark.points.length > 14) return ['rib'];
    return mark.points.length > 50 ? ['saw'] : [];
  });
  expect(order).toEqual(['saw', 'rib', 'saw', 'rib', 'saw', 'rib']);
});

test('trash parts are bits, never tufts', () => {
  const { legend } = massFlowScene(sampleFlow('cleaning', 860, 560));
  expect(trashParts.length).toBe(5);
  expect(legend.bitKg).toBeLessThanOrEqual(legend.tuftKg);
});
