import type { Cloth } from '../model/cloth/cloth.ts';
import { feelFacts, needleTable, shrinkFacts } from '../model/cloth/facts.ts';
import type { SewingOutcome } from '../model/cloth/sew.ts';
import type { Season } from '../model/season.ts';
import { fahrenheitFromCelsius } from '../model/units.ts';
import { bollSteps } from './planting.ts';
import {
  atStation,
  exact,
  formula,
  inLedger,
  input,
  percent,
  procedure,
  read,
  type StationWorkings,
  step,
} from './steps.ts';
import type { Working } from './working.ts';

const at = atStation('sewing');
const sewn = (working: (sewing: SewingOutcome, cloth: Cloth, season: Season) => Working | null) => (season: Season) =>
  season.sewing && season.weaving?.cloth ? working(season.sewing, season.weaving.cloth, season) : null;

export const sewingWorkings: StationWorkings = {
  patch: sewn(({ patchInchesPerBoll }, { squareMetres }, season) => {
    if (patchInchesPerBoll === null) return null;
    return formula(
      'patch',
      [
        input('A', 'clothArea', exact(squareMetres, 'squareMetres'), atStation('weaving')),
        input('n', 'bollsInField', exact(bollSteps(season).bolls, 'bolls'), atStation('boll')),
      ],
      exact(patchInchesPerBoll, 'inches'),
      { as: 'length', value: patchInchesPerBoll, decimals: 2 },
    );
  }),
  yards: sewn(({ yardsPerBale }, { runningYards }, { pressing }) => {
    if (yardsPerBale === null || !pressing) return null;
    const netKg = pressing.bales.reduce((sum, bale) => sum + bale.netKg, 0);
    return formula(
      'yardsPerBale',
      [
        input('Y', 'runningYards', exact(runningYards, 'yards'), atStation('weaving')),
        input('W', 'lintInBales', exact(netKg, 'kilograms'), inLedger('pressing')),
      ],
      exact(yardsPerBale, 'yards'),
      { as: 'clothLength', value: yardsPerBale, decimals: 0 },
    );
  }),
  prewashLeft: sewn(({ shrinkLeftPercent }, cloth, { scenario }) => {
    const { length, width } = shrinkLeftPercent;
    const both = (each: { readonly length: number; readonly width: number }) => ({ as: 'both', ...each }) as const;
    const facts =
      cloth.description.kind === 'woven'
        ? [
            step('leftLength', percent(shrinkFacts.leftLength.value), read(shrinkFacts.leftLength)),
            step('leftWidth', percent(shrinkFacts.leftWidth.value), read(shrinkFacts.leftWidth)),
          ]
        : [];
    const washed = scenario.decisions.sewing.prewash;
    return procedure(
      [
        ...facts,
        step('clothLeft', both(cloth.shrinkLeftPercent), atStation('weaving')),
        ...(washed ? [step('takenByWash', both(cloth.shrinkLeftPercent), { at: 'decision', station: 'sewing' })] : []),
      ],
      length === 0 && width === 0 ? { as: 'word', list: 'amounts', word: 'none' } : both({ length, width }),
    );
  }),
  needle: sewn(({ gramsPerSquareMetre, needle }) =>
    procedure(
      [
        step('cutWeight', exact(gramsPerSquareMetre, 'gramsPerSquareMetre'), at),
        step('needleTable', { as: 'text', text: needle.needles.join(' – ') }, read(needleTable)),
      ],
      {
        as: 'text',
        text: needle.needles.join(' – '),
      },
    ),
  ),
  iron: sewn((_, { ironCelsius }) =>
    procedure([step('ironHottest', exact(ironCelsius, 'celsius'), read(feelFacts.ironCelsius))], {
      as: 'temperature',
      value: fahrenheitFromCelsius(ironCelsius),
    }),
  ),
};
