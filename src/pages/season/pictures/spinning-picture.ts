import { fill } from '../../../language/fill.ts';
import type { Words } from '../../../language/words.ts';
import { yarnDiameterMm } from '../../../model/cloth/diameter.ts';
import type { Fact } from '../../../model/fact.ts';
import { lengthArrayMm } from '../../../model/length/statistics.ts';
import { fewestFibres, twistTable } from '../../../model/mill/facts.ts';
import { millSpeeds } from '../../../model/mill/speed-facts.ts';
import type { SpinningOutcome } from '../../../model/mill/spin.ts';
import type { Yarn } from '../../../model/mill/yarn.ts';
import type { Scenario } from '../../../model/scenario.ts';
import type { Season } from '../../../model/season.ts';
import { MM_PER_INCH } from '../../../model/units.ts';
import type { OutAccount } from '../../../scene/stations/flow/flow-input.ts';
import { legendOf } from '../../../scene/stations/flow/piece-mass.ts';
import { slowed } from '../../../scene/stations/slowed.ts';
import type { PrepareId, SpinningScene, TurningId } from '../../../scene/stations/spinning/spinning-input.ts';
import { spinningScene } from '../../../scene/stations/spinning/spinning-scene.ts';
import { above, atStation, decided, exact, read, step } from '../../../workings/steps.ts';
import type { Step } from '../../../workings/working.ts';
import type { PictureMoment, PictureSize, StationPicture, TwinRow } from './picture.ts';
import { type PictureLedger, pictureLedger } from './picture-ledger.ts';
import { drawnStep, factStep, said } from './row-steps.ts';
import { type SpinningWords, spinningWords } from './spinning-words.ts';

const mmPerCm = 10;
/** Fibres laid out for their lengths: enough to give every line of the picture its own. */
const lengthsShown = 200;
/** Divisions of the ruler: a 32nd of an inch, or half a millimetre. */
const rulerDivisions = 32;

/** 3 of 32 parts of an inch as a sewist reads them: 3/32, 1/8, 1. */
export function inchFraction(parts: number, of: number): string {
  const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));
  const by = divisor(parts, of);
  const [over, under] = [parts / by, of / by];
  return under === 1 ? String(over) : `${over}/${under}`;
}

const turnsText = (perInch: number, { unitSystem, formats, language }: Words): string => {
  const own = spinningWords(language);
  return unitSystem === 'us'
    ? fill(own.twistInch, { turns: formats.number(perInch, 1) })
    : fill(own.twistCm, { turns: formats.number((perInch * mmPerCm) / MM_PER_INCH, 1) });
};

function brokenText({ verdict, stopped }: SpinningOutcome, { language, formats }: Words): string {
  const own = spinningWords(language);
  return stopped?.reason === 'rotorCount'
    ? fill(own.brokenRotor, {
        limit: formats.count(Math.floor(verdict.ceilingNe)),
        count: formats.count(stopped.countNe),
      })
    : fill(own.brokenFibres, {
        fewest: formats.count(verdict.fewestFibres),
        fibers: formats.count(Math.floor(verdict.fibresInSection)),
      });
}

/** Turns a minute of every machine, as the era had them. */
function speedsOf(era: Scenario['era']): Readonly<Record<TurningId, number>> {
  const speeds = { ...millSpeeds.present, ...(era === 'thirties' ? millSpeeds.thirties : {}) };
  const of = (id: TurningId) => speeds[id].value;
  return {
    beater: of('beater'),
    card: of('card'),
    comber: of('comber'),
    spindle: of('spindle'),
    openingRoller: of('openingRoller'),
    rotor: of('rotor'),
  };
}

/** What turns in the picture of a season. */
function turningOf({ scenario, spinning }: Season): readonly TurningId[] {
  const { system } = scenario.decisions.spinning;
  const frame: readonly TurningId[] =
    system === 'rotor' ? ['openingRoller', 'rotor'] : spinning?.yarn ? ['spindle'] : [];
  return ['beater', 'card', ...(system === 'ringCombed' ? (['comber'] as const) : []), ...frame];
}

const outName = (account: OutAccount, own: SpinningWords): string =>
  (own.out as Readonly<Partial<Record<OutAccount, string>>>)[account] ?? '{mass}';

const entriesOf = (ledger: PictureLedger) => ({
  inflow: [...ledger.inflow].map(([account, masses]) => ({ account, masses })),
  outflow: [...ledger.outflow].map(([account, masses]) => ({ account, masses })),
});

function layOut(season: Season, words: Words, size: PictureSize) {
  const ledger = pictureLedger(season, 'spinning', words);
  const { spinning, scenario } = season;
  if (!ledger || !spinning) return () => null;
  const own = spinningWords(words.language);
  const { formats, unitSystem, messages } = words;
  const { system } = scenario.decisions.spinning;
  const { yarn, verdict } = spinning;
  const machines: PrepareId[] = [
    'blowroom',
    'card',
    ...(system === 'ringCombed' ? (['comber'] as const) : []),
    ...(size.width > 700 ? (['drawing'] as const) : []),
  ];
  const fibre = spinning.fibreAfter.at(-1)?.fibre ?? spinning.lot.fibre;
  const us = unitSystem === 'us';
  const slower = turningOf(season).map((id) => slowed(speedsOf(scenario.era)[id]).times);
  // A yarn that breaks never has a fibre more than the fewest.
  const fibres = yarn ? Math.round(verdict.fibresInSection) : Math.floor(verdict.fibresInSection);
  const scene: SpinningScene = {
    size,
    system: system === 'rotor' ? 'rotor' : 'ring',
    machines,
    fibres,
    fibreLengthsMm: lengthArrayMm(fibre.lengths, lengthsShown),
    yarn: yarn ? { diameterMm: yarnDiameterMm(yarn.tex), turnsPerMm: yarn.turnsPerInch / MM_PER_INCH } : null,
    ...entriesOf(ledger),
    unitKg: ledger.unitKg,
    rulerTickMm: us ? MM_PER_INCH / rulerDivisions : 0.5,
    speeds: speedsOf(scenario.era),
    labels: {
      in: (account) =>
        fill((own.in as Readonly<Record<string, string>>)[account] ?? '{mass}', { mass: ledger.massIn(account) }),
      out: (account, progress) => fill(outName(account, own), { mass: ledger.massOut(account, yarn ? progress : 1) }),
      machines: own.machines,
      count: formats.count(fibres),
      counted: system === 'rotor' ? own.countedRotor : own.counted,
      twist: yarn ? turnsText(yarn.turnsPerInch, words) : '',
      rulerMark: (mm) => {
        if (mm === 0) return '0';
        return us
          ? `${inchFraction(Math.round((mm / MM_PER_INCH) * rulerDivisions), rulerDivisions)}\u00a0${messages.units.inches.sign}`
          : `${formats.number(mm, Number.isInteger(mm) ? 0 : 1)}\u00a0${messages.units.millimetres.sign}`;
      },
      broken: brokenText(spinning, words),
      shows: (what, perMinute, times) =>
        fill(own.shows[what], { turns: formats.count(perMinute), times: formats.count(times) }),
      caption: ({ tuftKg, bitKg, lineFibres }) =>
        [
          fill(size.width > 700 ? own.caption : own.captionShort, {
            tuft: formats.mass(tuftKg, 0).text,
            bit: formats.mass(bitKg, 1).text,
            times: formats.count(Math.min(...slower)),
            most: formats.count(Math.max(...slower)),
          }),
          ...(lineFibres > 1 ? [fill(own.captionLines, { n: formats.count(lineFibres) })] : []),
        ].join(' '),
    },
  };
  const frameAt = spinningScene(scene);
  return ({ progress }: PictureMoment) => frameAt(progress);
}

/** The spinning mill: opened, carded, perhaps combed; drafted to a counted section of fibres, twisted, wound. */
export const spinningPicture: StationPicture = {
  layOut,
  see(season, words, { progress }) {
    const ledger = pictureLedger(season, 'spinning', words);
    const { spinning, scenario } = season;
    if (!ledger || !spinning) return [];
    const own = spinningWords(words.language);
    const { formats } = words;
    const { system, countNe } = scenario.decisions.spinning;
    const how = system === 'ringCombed' ? own.combed : own.carded;
    const count = formats.yarnCount(countNe).text;
    if (!spinning.yarn) return [fill(own.seeBroken, { how, count }), brokenText(spinning, words)];
    return [
      fill(own.see, {
        how,
        count,
        fibers: formats.count(spinning.yarn.fibresInSection),
        twist: turnsText(spinning.yarn.turnsPerInch, words),
        package: own.packages[system === 'rotor' ? 'rotor' : 'ring'],
      }),
      fill(own.soFar, { done: formats.percent(100 * progress, 0), yarn: ledger.massOut('lot', progress) }),
      `${turningOf(season)
        .map((id) => showsText(id, scenario.era, words))
        .join('. ')}.`,
    ];
  },
  rows(season, words, { progress }) {
    const ledger = pictureLedger(season, 'spinning', words);
    const { spinning, scenario } = season;
    if (!ledger || !spinning) return [];
    const own = spinningWords(words.language);
    const { formats } = words;
    const { system, countNe } = scenario.decisions.spinning;
    const fewest = fewestFibres[system];
    const fullFibres = Math.floor(spinning.verdict.fibresInSection);
    const legend = legendOf({ ...masses(ledger), unitKg: ledger.unitKg });
    const row = (key: keyof typeof own.rows, text: string, steps: TwinRow['steps']): TwinRow => ({
      key,
      label: own.rows[key],
      text,
      steps,
    });
    return [
      row(
        'fibres',
        formats.count(spinning.yarn ? spinning.verdict.fibresInSection : fullFibres),
        spinning.yarn
          ? { reading: 'fibresInSection' }
          : [
              step('fibresInSection', exact(spinning.verdict.fibresInSection, 'fibres'), atStation('spinning')),
              said(own.rows.fibres, { as: 'count', value: fullFibres }, above),
            ],
      ),
      row('fewest', formats.count(fewest.value), [
        factStep(own.rows.fewest, { as: 'count', value: fewest.value }, fewest),
      ]),
      row('count', formats.yarnCount(countNe).text, [
        said(own.rows.count, { as: 'yarnCount', value: countNe }, decided('spinning')),
      ]),
      ...(spinning.yarn
        ? [row('twist', turnsText(spinning.yarn.turnsPerInch, words), twistSteps(spinning.yarn, own.rows.twist, words))]
        : []),
      ...(spinning.stopped?.reason === 'rotorCount'
        ? [
            row('limit', formats.count(Math.floor(spinning.verdict.ceilingNe)), [
              said(
                own.rows.limit,
                { as: 'count', value: Math.floor(spinning.verdict.ceilingNe) },
                atStation('spinning'),
              ),
            ]),
          ]
        : []),
      row('in', ledger.massIn('lot'), ledger.steps('in', 'lot')),
      ...[...ledger.outflow.keys()].map((account): TwinRow => {
        const name = fill(outName(account, own), { mass: '' }).trim();
        return {
          key: account,
          label: spinning.yarn ? fill(own.rows.so, { name }) : name,
          text: ledger.massOut(account, spinning.yarn ? progress : 1),
          steps: ledger.steps('out', account, spinning.yarn ? progress : 1),
        };
      }),
      row('piece', formats.mass(legend.tuftKg, 0).text, [
        drawnStep(own.rows.piece, { as: 'mass', value: legend.tuftKg, decimals: 0 }),
      ]),
      row('bit', formats.mass(legend.bitKg, 1).text, [
        drawnStep(own.rows.bit, { as: 'mass', value: legend.bitKg, decimals: 1 }),
      ]),
      ...(spinning.yarn ? turningOf(season).flatMap((id) => turningRows(id, scenario.era, words)) : []),
    ];
  },
};

const masses = (ledger: PictureLedger) => ({
  inflow: [...ledger.inflow].map(([account, each]) => ({ account, ...each })),
  outflow: [...ledger.outflow].map(([account, each]) => ({ account, ...each })),
});

/** How fast a machine of the mill turns, and how much slower it is drawn. */
function turningRows(id: TurningId, era: Scenario['era'], { language, formats }: Words): TwinRow[] {
  const own = spinningWords(language);
  const fact: Fact = { ...millSpeeds.present, ...(era === 'thirties' ? millSpeeds.thirties : {}) }[id];
  const { times } = slowed(fact.value);
  const turns = fill(own.turns, { machine: own.machineNames[id] });
  const slower = fill(own.slower, { machine: own.machineNames[id] });
  return [
    {
      key: id,
      label: turns,
      text: formats.count(fact.value),
      steps: [factStep(turns, { as: 'count', value: fact.value }, fact)],
    },
    {
      key: `${id}/slower`,
      label: slower,
      text: formats.count(times),
      steps: [drawnStep(slower, { as: 'count', value: times })],
    },
  ];
}

/** Turns in the picture's unit from the yarn's twist. */
function twistSteps({ turnsPerInch, twistMultiplier }: Yarn, label: string, { unitSystem }: Words): Step[] {
  const perCm = (turnsPerInch * mmPerCm) / MM_PER_INCH;
  return [
    step('twistMultiplier', exact(twistMultiplier), read(twistTable)),
    step('turnsInInch', exact(turnsPerInch, 'turnsPerInch'), atStation('spinning')),
    said(label, { as: 'number', value: unitSystem === 'us' ? turnsPerInch : perCm, decimals: 1 }, above),
  ];
}

function showsText(id: TurningId, era: Scenario['era'], { language, formats }: Words): string {
  const perMinute = speedsOf(era)[id];
  return fill(spinningWords(language).shows[id], {
    turns: formats.count(perMinute),
    times: formats.count(slowed(perMinute).times),
  });
}
