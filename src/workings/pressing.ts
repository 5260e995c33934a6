import type { Fact } from '../model/fact.ts';
import { type PressingOutcome, tareKg } from '../model/gin/press.ts';
import { baleTareLb, pressFacts } from '../model/gin/press-facts.ts';
import { totalKg } from '../model/lot.ts';
import type { Season } from '../model/season.ts';
import { poundsFromKilograms } from '../model/units.ts';
import { lintMoisture } from './cleaning.ts';
import {
  above,
  atStation,
  count,
  decided,
  exact,
  inLedger,
  mass,
  procedure,
  read,
  type StationWorkings,
  step,
} from './steps.ts';
import type { FormulaWorking, Printed, ProcedureWorking, Step } from './working.ts';

const at = atStation('pressing');
const pressed = (working: (pressing: PressingOutcome, season: Season) => FormulaWorking | ProcedureWorking | null) => {
  return (season: Season) => (season.pressing ? working(season.pressing, season) : null);
};

/** What the wrapping weighs and where that was read. */
export function tareSource(era: Season['scenario']['era']): {
  readonly lb: number;
  readonly from: Pick<Fact, 'source' | 'mark'>;
} {
  return era === 'present'
    ? { lb: poundsFromKilograms(tareKg('film', 'pet')), from: baleTareLb }
    : { lb: pressFacts.thirtiesTareLb.value, from: pressFacts.thirtiesTareLb };
}

/** From the lint that was pressed to the number of bales. */
export function baleCountSteps(pressing: PressingOutcome, { scenario }: Season): Step[] {
  return [
    step('lintPressed', mass(totalKg(pressing.lot)), inLedger('pressing')),
    step('netWanted', { as: 'pounds', value: scenario.decisions.pressing.netPounds }, decided('pressing')),
    step(
      'quotient',
      exact(poundsFromKilograms(totalKg(pressing.lot)) / scenario.decisions.pressing.netPounds, 'bales'),
      above,
    ),
    step('oddShare', exact(pressFacts.oddWeightShare.value, 'fraction'), read(pressFacts.oddWeightShare)),
  ];
}

const pounds = (lb: number): Printed => ({ as: 'pounds', value: lb });

export const pressingWorkings: StationWorkings = {
  balesPressed: pressed((pressing, season) =>
    procedure(baleCountSteps(pressing, season), count(pressing.bales.length)),
  ),
  baleWeight: pressed((pressing) => {
    const allLb = poundsFromKilograms(totalKg(pressing.lot));
    const { length } = pressing.bales;
    return procedure(
      [step('lintPressed', mass(totalKg(pressing.lot)), inLedger('pressing')), step('balesPressed', count(length), at)],
      pounds(allLb / length),
    );
  }),
  tare: pressed((_, { scenario }) => {
    const { lb, from } = tareSource(scenario.era);
    return procedure([step('wrapAndStraps', exact(lb, 'pounds'), read(from))], pounds(lb));
  }),
  baleMoisture: pressed((pressing) => lintMoisture(pressing.lot, pressing.moisturePercent, at)),
  tag: pressed(({ bales }) => {
    const first = bales[0];
    if (!first) return null;
    const digits = pressFacts.tagDigits;
    const shown = first.tag ?? first.mark ?? '';
    return procedure(
      [
        ...(first.tag
          ? [
              step('ginCode', { as: 'text', text: first.tag.slice(0, -digits.value) }, { at: 'definition' }),
              step('tagDigits', count(digits.value), read(digits)),
            ]
          : []),
        step('baleNumber', count(first.number), at),
      ],
      { as: 'text', text: shown },
    );
  }),
};
