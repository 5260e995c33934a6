import { fill } from '../../../language/fill.ts';
import { machineName } from '../../../language/machine-name.ts';
import { cleaningWords as en } from '../../../language/messages/en/pictures/cleaning.ts';
import { cleaningWords as es } from '../../../language/messages/es/pictures/cleaning.ts';
import type { Words } from '../../../language/words.ts';
import type { MachineStep } from '../../../model/gin/machine-step.ts';
import { cleaningTurningFacts } from '../../../model/gin/speed-facts.ts';
import { totalKg } from '../../../model/lot.ts';
import type { Season } from '../../../model/season.ts';
import { KG_PER_POUND } from '../../../model/units.ts';
import type {
  CleaningInput,
  LineKind,
  LineMachine,
  Taken,
  Wheel,
} from '../../../scene/stations/cleaning/cleaning-input.ts';
import { cleaningLegend, cleaningScene } from '../../../scene/stations/cleaning/cleaning-scene.ts';
import { type Masses, massOf } from '../../../scene/stations/flow/flow-input.ts';
import { entryOf } from '../../../scene/stations/flow/labelled-entry.ts';
import { ledgerRows } from '../../../ui/ledger-rows.ts';
import { roundToAdd } from '../../../ui/round-to-add.ts';
import { baleShare } from '../../../workings/seed.ts';
import { above, atStation, mass, percent, step } from '../../../workings/steps.ts';
import type { Step } from '../../../workings/working.ts';
import { ledgerOf } from '../ledger-panel.tsx';
import { baleEntries, roundMass, roundMassText } from './bale-entries.ts';
import { flowText } from './flow-text.ts';
import type { PictureSize, StationPicture, TwinRow } from './picture.ts';
import { baleMasses } from './picture-ledger.ts';
import { accountSteps, drawnStep, factStep, type LedgerAccount, said } from './row-steps.ts';

/** How many times slower than true the wheels are drawn; all alike, so that they compare. */
const SLOWED_BY = 20;
/** The picture on a desk, whose pieces the table tells. */
const SEEN_AT: PictureSize = { width: 808, height: 388 };

const wordsOf = ({ language }: Words) => (language === 'es' ? es : en);
const wheels = Object.keys(cleaningTurningFacts) as Wheel[];

const rateText = (wheel: Wheel, words: Words): string =>
  fill(wordsOf(words).turning, {
    turns: words.formats.count(cleaningTurningFacts[wheel].value),
    slowed: words.formats.count(SLOWED_BY),
  });
const showsText = (wheel: Wheel, words: Words): string => {
  const own = wordsOf(words);
  return fill(own.shows, { part: own.wheels[wheel], rate: rateText(wheel, words) });
};

/** A machine's number left off: 'dryer2' is a dryer. */
const baseOf = (machine: string): string => machine.replace(/\d+$/, '');
const kindOf = (machine: string, { scenario }: Season): LineKind =>
  machine === 'moduleFeeder' && scenario.decisions.module.kind === 'wagon'
    ? 'suctionPipe'
    : (baseOf(machine) as LineKind);

/** What a machine took, and that as it is rounded, kg. */
interface TakenAsShown extends Taken {
  readonly shown: { readonly as: 'mass'; readonly value: number; readonly decimals: number };
}

/** Trash by the machine that took it, the numbers rounded so that they add to the ledger's. */
function trashTaken(season: Season, { formats, messages, unitSystem }: Words): Map<string, TakenAsShown> {
  const ledger = ledgerOf(season, 'cleaning', 'bale');
  const steps = season.cleaning?.machines ?? [];
  if (!ledger) return new Map();
  const rows = ledgerRows(ledger, unitSystem);
  const { sign } = messages.units[unitSystem === 'us' ? 'pounds' : 'kilograms'];
  const perKg = unitSystem === 'us' ? 1 / KG_PER_POUND : 1;
  const taken = steps.flatMap(({ machine, removed }) =>
    removed.flatMap(({ account, masses }) =>
      account === 'ginTrash' ? [{ machine, masses: baleMasses(season, masses) }] : [],
    ),
  );
  const total = rows.out.find(({ account }) => account === 'ginTrash')?.all ?? 0;
  const rounded = roundToAdd(
    taken.map(({ masses }) => [massOf(masses) * perKg]),
    [total],
    rows.decimals,
  );
  return new Map(
    taken.map(({ machine, masses }, i): [string, TakenAsShown] => [
      machine,
      {
        masses,
        amount: (share) => `${formats.number(rounded[i]![0]! * share, rows.decimals)}\u00a0${sign}`,
        shown: { as: 'mass', value: rounded[i]![0]! / perKg, decimals: rows.decimals },
      },
    ]),
  );
}

const nameOf = (machine: string, season: Season, words: Words): string =>
  kindOf(machine, season) === 'suctionPipe' ? wordsOf(words).suctionPipe : machineName(machine, words.messages);

function driedOff({ removed }: MachineStep, season: Season): Masses | null {
  const vapour = removed.find(({ account }) => account === 'evaporated');
  return vapour ? baleMasses(season, vapour.masses) : null;
}

/** The scene of a season: null where nothing came to the gin. */
export function cleaningInput(season: Season, words: Words, size: PictureSize): CleaningInput | null {
  const { cleaning } = season;
  const entries = baleEntries(season, 'cleaning', words);
  const seedCotton = entries && entryOf(entries.inflow, 'lot');
  const trash = entries && entryOf(entries.outflow, 'ginTrash');
  const cleaned = entries && entryOf(entries.outflow, 'lot');
  const taken = trashTaken(season, words);
  const feederTook = taken.get('extractorFeeder');
  if (!cleaning || !entries || !seedCotton || !trash || !cleaned || !feederTook) return null;
  const own = wordsOf(words);
  const { formats, messages, unitSystem } = words;
  const passed = cleaning.machines.filter(({ machine }) => machine !== 'distributor' && machine !== 'extractorFeeder');
  const overflow = baleMasses(season, cleaning.overflow.returned);
  const caption = (template: string) => (legend: { tuftKg: number; bitKg: number }) =>
    fill(template, {
      tuft: roundMassText(legend.tuftKg, words),
      bit: roundMassText(legend.bitKg, words),
      slowed: formats.count(SLOWED_BY),
      rate: showsText('cylinder', words),
    });
  return {
    line: passed.map(
      (step): LineMachine => ({
        id: step.machine,
        kind: kindOf(step.machine, season),
        name: nameOf(baseOf(step.machine), season, words),
        took: taken.get(step.machine) ?? null,
        driedOff: driedOff(step, season),
        wentOn: baleMasses(season, step.out),
      }),
    ),
    feeder: { name: machineName('extractorFeeder', messages), took: feederTook },
    distributor: { name: machineName('distributor', messages) },
    seedCotton,
    evaporated: entryOf(entries.outflow, 'evaporated') ?? null,
    trash,
    cleaned,
    overflow: {
      masses: overflow,
      name: own.overflow,
      amount: formats.mass(massOf(overflow), 0).text,
    },
    unitKg: unitSystem === 'us' ? KG_PER_POUND : 1,
    size,
    turning: {
      ...(Object.fromEntries(wheels.map((wheel) => [wheel, cleaningTurningFacts[wheel].value])) as Record<
        Wheel,
        number
      >),
      slowedBy: SLOWED_BY,
    },
    labels: {
      outShare: formats.percent(100 * cleaning.trashRemovedFraction, 0),
      outWords: own.outWords,
      short: own.short,
      shows: Object.fromEntries(wheels.map((wheel) => [wheel, showsText(wheel, words)])) as Record<Wheel, string>,
      caption: caption(own.caption),
      captionShort: caption(own.captionShort),
    },
  };
}

/** What ran round in the whole field, and one bale's worth of it. */
function overflowSteps(season: Season, label: string): Step[] {
  const { overflow } = season.cleaning!;
  return [
    step('wholeField', mass(totalKg(overflow.returned)), atStation('cleaning')),
    ...baleShare(season).steps,
    said(label, mass(massOf(baleMasses(season, overflow.returned)), 0), above),
  ];
}

/** What a machine took of the whole field, one bale's worth of it, and that as it is rounded so that the machines add to the ledger. */
function takenSteps(season: Season, machine: string, share: number, words: Words): Step[] {
  const taken = season.cleaning?.machines
    .find((each) => each.machine === machine)
    ?.removed.find(({ account }) => account === 'ginTrash');
  const amount = trashTaken(season, words).get(machine);
  if (!taken || !amount) return [];
  return [
    step('wholeField', mass(totalKg(taken.masses)), { at: 'machine', machine }),
    ...baleShare(season).steps,
    step('roundedToAdd', amount.shown, { at: 'rounding' }),
    ...(share < 1
      ? [
          step('workDone', percent(100 * share, 2), { at: 'drawing' }),
          step('comeSoFar', { ...amount.shown, value: amount.shown.value * share }, above),
        ]
      : []),
  ];
}

/** Which kinds of wheel turn in a season's line. */
function turningIn(season: Season): Wheel[] {
  const machines = season.cleaning?.machines.map(({ machine }) => kindOf(machine, season)) ?? [];
  return wheels.filter((wheel) => wheel !== 'disperser' || machines.includes('moduleFeeder'));
}

/** The cleaning line: what each machine takes out, and the overflow that runs round. */
export const cleaningPicture: StationPicture = {
  layOut(season, words, size) {
    const input = cleaningInput(season, words, size);
    if (!input) return () => null;
    const frameAt = cleaningScene(input);
    return ({ progress }) => frameAt(progress);
  },
  see(season, words, { progress }) {
    const input = cleaningInput(season, words, SEEN_AT);
    if (!input) return [];
    const own = wordsOf(words);
    const taken = [...trashTaken(season, words)];
    const [machine, most] = taken.reduce((top, each) => (massOf(each[1].masses) > massOf(top[1].masses) ? each : top));
    return [
      ...flowText(season, 'cleaning', words),
      fill(own.see, { overflow: input.overflow.amount }),
      fill(own.seeMost, { machine: nameOf(baseOf(machine), season, words), mass: most.amount(progress) }),
    ];
  },
  rows(season, words, { progress }) {
    const input = cleaningInput(season, words, SEEN_AT);
    if (!input || !season.cleaning) return [];
    const own = wordsOf(words);
    const { seedCotton, evaporated, trash, cleaned, overflow } = input;
    const legend = cleaningLegend(input);
    const row = (key: string, label: string, text: string, steps: TwinRow['steps']): TwinRow => ({
      key,
      label,
      text,
      steps,
    });
    const account = (side: 'in' | 'out', name: LedgerAccount) =>
      accountSteps(season, 'cleaning', side, name, side === 'in' ? 1 : progress, words);
    const piece = (name: string, kg: number) => [drawnStep(name, roundMass(kg, words))];
    return [
      row('in', seedCotton.name, seedCotton.amount(1), account('in', 'lot')),
      ...[...trashTaken(season, words)].map(([machine, { amount }]) =>
        row(
          machine,
          fill(own.rows.took, { machine: nameOf(machine, season, words) }),
          amount(progress),
          takenSteps(season, machine, progress, words),
        ),
      ),
      row('ginTrash', trash.name, trash.amount(progress), account('out', 'ginTrash')),
      ...(evaporated
        ? [row('evaporated', evaporated.name, evaporated.amount(progress), account('out', 'evaporated'))]
        : []),
      row('lot', cleaned.name, cleaned.amount(progress), account('out', 'lot')),
      row('overflow', own.rows.overflow, overflow.amount, overflowSteps(season, own.rows.overflow)),
      row('share', own.rows.share, words.formats.percent(100 * season.cleaning.trashRemovedFraction, 0), {
        reading: 'trashTaken',
      }),
      ...turningIn(season).map((wheel) =>
        row(wheel, own.wheels[wheel], rateText(wheel, words), [
          factStep(
            own.wheels[wheel],
            { as: 'count', value: cleaningTurningFacts[wheel].value },
            cleaningTurningFacts[wheel],
          ),
          drawnStep(own.wheels[wheel], { as: 'count', value: SLOWED_BY }),
        ]),
      ),
      row('piece', own.rows.piece, roundMassText(legend.tuftKg, words), piece(own.rows.piece, legend.tuftKg)),
      row('bit', own.rows.bit, roundMassText(legend.bitKg, words), piece(own.rows.bit, legend.bitKg)),
    ];
  },
};
