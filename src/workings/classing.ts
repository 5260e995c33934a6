import type { ClassedBale, ClassingOutcome } from '../model/classing/class-bales.ts';
import { colourSteps, pimaColourSteps } from '../model/classing/colour-chart-facts.ts';
import { leafEdges } from '../model/classing/facts.ts';
import { stapleChart } from '../model/classing/staple-facts.ts';
import type { Fact } from '../model/fact.ts';
import type { Season } from '../model/season.ts';
import { above, atStation, count, exact, procedure, read, type StationWorkings, step } from './steps.ts';
import type { Name, Printed, ProcedureWorking } from './working.ts';

const at = atStation('classing');
const classed = (working: (classing: ClassingOutcome, season: Season) => ProcedureWorking | null) => {
  return (season: Season) => (season.classing ? working(season.classing, season) : null);
};
type Source = Pick<Fact, 'source' | 'mark'>;

/** How many bales got each grade, most first; the result is the grade that turns up most. */
function usualWorking(
  bales: readonly ClassedBale[],
  gradeOf: (bale: ClassedBale) => string,
  source: Source,
  write: (grade: string) => Printed,
): ProcedureWorking | null {
  const counts = new Map<string, number>();
  for (const bale of bales) counts.set(gradeOf(bale), (counts.get(gradeOf(bale)) ?? 0) + 1);
  const sorted = [...counts].sort((a, b) => b[1] - a[1]);
  const usual = sorted[0]?.[0];
  if (usual === undefined) return null;
  const coded = (code: string): Name => ({ code });
  return procedure(
    sorted.map(([grade, number], index) => step(coded(grade), exact(number, 'bales'), index === 0 ? read(source) : at)),
    write(usual),
  );
}

const text = (grade: string): Printed => ({ as: 'text', text: grade });
const netLb = ({ classed: bales }: ClassingOutcome) => bales.reduce((sum, bale) => sum + bale.netLb, 0);
const valueUsd = ({ classed: bales }: ClassingOutcome) => bales.reduce((sum, bale) => sum + bale.valueUsd, 0);

export const classingWorkings: StationWorkings = {
  colorGrade: classed(({ classed: bales, lot }) =>
    usualWorking(
      bales,
      (bale) => (bale.byEye ? bale.colorName : `${bale.color} ${bale.colorName}`),
      lot.fibre.kind === 'pima' ? pimaColourSteps : colourSteps,
      text,
    ),
  ),
  leafGrade: classed(({ classed: bales, lot }) =>
    usualWorking(
      bales,
      (bale) => String(bale.leaf),
      leafEdges[lot.fibre.kind],
      (leaf) => count(Number(leaf)),
    ),
  ),
  staple: classed(({ classed: bales, lot }) =>
    usualWorking(bales, (bale) => `${bale.staple32nds}/32`, stapleChart[lot.fibre.kind], text),
  ),
  price: classed((classing) =>
    procedure(
      [
        step('valueOfBales', { as: 'money', value: valueUsd(classing), decimals: 2 }, at),
        step('netOfBales', exact(netLb(classing), 'pounds'), at),
      ],
      { as: 'centsPerPound', value: (100 * valueUsd(classing)) / netLb(classing) },
    ),
  ),
  value: classed((classing) => {
    const values = classing.classed.map((bale) => bale.valueUsd);
    const usd = (value: number): Printed => ({ as: 'money', value, decimals: 2 });
    return procedure(
      [
        step('balesPressed', count(values.length), at),
        step('leastBale', usd(Math.min(...values)), at),
        step('dearestBale', usd(Math.max(...values)), at),
        step('meanBale', usd(valueUsd(classing) / values.length), above),
      ],
      { as: 'money', value: valueUsd(classing), decimals: 0 },
    );
  }),
  left: (season) => leftWorking(season),
};

/** What the farm is paid: every line of the settlement, added up. */
export function leftWorking({ payments }: Season): ProcedureWorking | null {
  if (!payments) return null;
  return procedure(
    payments.lines.map(({ item, usd }) =>
      step({ paid: item }, { as: 'money', value: usd, decimals: 2 }, { at: 'sale' }),
    ),
    { as: 'money', value: payments.lines.reduce((sum, { usd }) => sum + usd, 0), decimals: 0 },
  );
}
