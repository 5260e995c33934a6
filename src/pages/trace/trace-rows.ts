import type { Trace } from '../../model/trace/trace-project.ts';
import type { TraceKey } from '../../workings/trace-back.ts';

interface TraceRow {
  readonly key: TraceKey;
  readonly unit: string;
  readonly of: (trace: Trace) => number;
}

/** The numbers of a trace in the model's own units, as a file holds them. */
export const traceRows: readonly TraceRow[] = [
  { key: 'clothArea', unit: 'yd2', of: (trace) => trace.clothSquareYards },
  { key: 'cloth', unit: 'kg', of: (trace) => trace.clothKg },
  { key: 'batting', unit: 'kg', of: (trace) => trace.battingKg },
  { key: 'yarn', unit: 'kg', of: (trace) => trace.yarnKg },
  { key: 'yarnLength', unit: 'km', of: (trace) => trace.yarnKilometres },
  { key: 'lint', unit: 'kg', of: (trace) => trace.lintKg },
  { key: 'bale', unit: '480 lb', of: (trace) => trace.baleShare },
  { key: 'fibres', unit: '', of: (trace) => trace.fibres },
  { key: 'seedCotton', unit: 'kg', of: (trace) => trace.seedCottonKg },
  { key: 'bolls', unit: '', of: (trace) => trace.bolls },
  { key: 'plants', unit: '', of: (trace) => trace.plants },
  { key: 'field', unit: 'm2', of: (trace) => trace.squareMetres },
  { key: 'row', unit: 'ft', of: (trace) => trace.rowFeet },
  { key: 'rain', unit: 'L', of: (trace) => trace.rainLitres },
  { key: 'irrigation', unit: 'L', of: (trace) => trace.irrigationLitres },
  { key: 'seed', unit: 'kg', of: (trace) => trace.seedKg },
  { key: 'oil', unit: 'kg', of: (trace) => trace.oilKg },
  { key: 'meal', unit: 'kg', of: (trace) => trace.mealKg },
  { key: 'hulls', unit: 'kg', of: (trace) => trace.hullsKg },
  { key: 'linters', unit: 'kg', of: (trace) => trace.lintersKg },
  { key: 'ginWaste', unit: 'kg', of: (trace) => trace.ginWasteKg },
  { key: 'handDays', unit: 'd', of: (trace) => trace.handPickingDays },
  { key: 'machineMinutes', unit: 'min', of: (trace) => trace.machinePickingMinutes },
];
