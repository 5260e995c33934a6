import { fill } from '../../../language/fill.ts';
import { harvestWords as en } from '../../../language/messages/en/pictures/harvest.ts';
import { harvestWords as es } from '../../../language/messages/es/pictures/harvest.ts';
import type { Words } from '../../../language/words.ts';
import type { Fact } from '../../../model/fact.ts';
import { harvestFacts } from '../../../model/harvest/facts.ts';
import { harvestMachineFacts } from '../../../model/harvest/machine-facts.ts';
import { rowFeetPerSecond } from '../../../model/harvest/row-speed.ts';
import type { Season } from '../../../model/season.ts';
import { INCHES_PER_FOOT, KG_PER_POUND, METRES_PER_FOOT, MINUTES_PER_HOUR } from '../../../model/units.ts';
import { harvestScene } from '../../../scene/stations/harvest/harvest.ts';
import { HARVEST_LAP_SECONDS, type HarvestInput, type Labour } from '../../../scene/stations/harvest/harvest-input.ts';
import { above, atStation, decided, exact, percent, read, step } from '../../../workings/steps.ts';
import type { Printed, Step } from '../../../workings/working.ts';
import { oneBaleShare } from '../ledger-panel.tsx';
import { printed } from '../printed.ts';
import { baleEntries, entryRows, roundMassText } from './bale-entries.ts';
import { flowText } from './flow-text.ts';
import type { PictureSize, StationPicture, TwinRow } from './picture.ts';
import { drawnStep, factStep, said } from './row-steps.ts';

/** How many times slower than in the field the rolls and the saw are drawn. */
const TIMES_SLOWER = 100;
const SECONDS_PER_MINUTE = 60;
/** From tick to tick of a metric tape along the sack. */
const TICK_METRES = 0.5;

/** The size whose rates the sentences tell: the picture on a desk. */
const SEEN_AT = { width: 808, height: 388 };

const wordsOf = ({ language }: Words) => (language === 'es' ? es : en);

/** Work for one bale; null where nothing was gathered. */
function labourOf(season: Season): Labour | null {
  if (!season.harvest) return null;
  const { personDays, machineHours } = season.harvest.labour;
  const share = oneBaleShare(season);
  return personDays === null
    ? { kind: 'machineMinutes', minutes: (machineHours ?? 0) * MINUTES_PER_HOUR * share }
    : { kind: 'personDays', days: personDays * share };
}

function labourText(labour: Labour, share: number, words: Words): string {
  const own = wordsOf(words);
  return labour.kind === 'personDays'
    ? words.formats.plural(labour.days * share, own.personDays, 1)
    : words.formats.plural(labour.minutes * share, own.minutes, 1);
}

/** How the work for one bale was come by: that of the whole field, and one bale's share. */
function labourSteps(season: Season, labour: Labour, share: number, words: Words): Step[] {
  const hand = labour.kind === 'personDays';
  const each = hand ? labour.days : labour.minutes;
  const bale = oneBaleShare(season);
  const name = wordsOf(words).work;
  const number = (value: number): Printed => ({ as: 'number', value, decimals: 1 });
  return [
    step(hand ? 'personDaysOfField' : 'machineMinutesOfField', number(each / bale), atStation('harvest')),
    step('shareOfBale', exact(bale, 'fraction'), { at: 'ledgers' }),
    ...(share < 1 ? [step('workDone', percent(100 * share, 2), { at: 'drawing' })] : []),
    said(name, number(each * share), above),
  ];
}

/** How fast the parts move that are seen moving. */
function partRows(season: Season, words: Words): TwinRow[] {
  const own = wordsOf(words);
  const { method } = season.scenario.decisions.harvest;
  const { handSackFeet, stripperRollTurnsPerMinute, fieldCleanerTurnsPerMinute } = harvestMachineFacts;
  const turning = (key: string, label: string, fact: Fact): TwinRow => ({
    key,
    label,
    text: words.formats.count(fact.value),
    steps: [factStep(label, { as: 'count', value: fact.value }, fact)],
  });
  if (method === 'hand') {
    const text = sackTicks(words).at(-1)?.text ?? '';
    const feet: Printed = { as: 'length', value: handSackFeet.value * INCHES_PER_FOOT };
    return [
      {
        key: 'sack',
        label: own.sackLength,
        text,
        steps: [
          factStep(
            own.sackLength,
            words.unitSystem === 'us' ? { as: 'count', value: handSackFeet.value } : feet,
            handSackFeet,
          ),
        ],
      },
    ];
  }
  if (method === 'spindle') {
    const seen = movingSeen(season, words);
    const speed: Exclude<Printed, { as: 'exact' }> = { as: 'length', value: rowSpeedFeet(season) * INCHES_PER_FOOT };
    const { pickerAcresPerHour } = harvestFacts;
    const drawn = (key: string, label: string, seconds: number | null): TwinRow[] =>
      seconds === null
        ? []
        : [
            {
              key,
              label,
              text: words.formats.number(seconds, 0),
              steps: [drawnStep(label, { as: 'number', value: seconds, decimals: 0 })],
            },
          ];
    return [
      {
        key: 'rowSpeed',
        label: own.rowSpeed,
        text: printed(speed, words),
        steps: [
          step('machinePace', exact(pickerAcresPerHour.value, 'acresPerHour'), read(pickerAcresPerHour)),
          factStep(
            own.rowsAtOnce,
            { as: 'count', value: harvestMachineFacts.rowsAtOnce.value },
            harvestMachineFacts.rowsAtOnce,
          ),
          step('rowWidth', exact(season.scenario.decisions.planting.rowInches, 'inches'), decided('planting')),
          said(own.rowSpeed, speed, above),
        ],
      },
      ...drawn('drumSeconds', own.drumSeconds, seen?.drumSeconds ?? null),
      ...drawn('dofferSeconds', own.dofferSeconds, seen?.dofferSeconds ?? null),
    ];
  }
  return [
    turning('rolls', own.rollsTurn, stripperRollTurnsPerMinute),
    ...(method === 'stripperFieldCleaner' ? [turning('cleaner', own.cleanerTurns, fieldCleanerTurnsPerMinute)] : []),
    {
      key: 'slower',
      label: own.slower,
      text: words.formats.count(TIMES_SLOWER),
      steps: [drawnStep(own.slower, { as: 'count', value: TIMES_SLOWER })],
    },
  ];
}

/** How much of a row the picker passes in a second, feet. */
const rowSpeedFeet = ({ scenario }: Season): number =>
  rowFeetPerSecond(
    harvestFacts.pickerAcresPerHour.value,
    harvestMachineFacts.rowsAtOnce.value,
    scenario.decisions.planting.rowInches,
  );

/** Turns, rates and names of the parts, in words. */
function partWords(season: Season, words: Words) {
  const own = wordsOf(words);
  const { formats } = words;
  const { stripperRollTurnsPerMinute, fieldCleanerTurnsPerMinute } = harvestMachineFacts;
  const speed = formats.length(rowSpeedFeet(season) * INCHES_PER_FOOT).text;
  const slowly = (template: string, { value }: { readonly value: number }) => ({
    turnsPerSecond: value / SECONDS_PER_MINUTE / TIMES_SLOWER,
    shows: fill(template, { turns: formats.count(value), times: formats.count(TIMES_SLOWER) }),
  });
  return {
    drum: (seconds: number) => fill(own.drumShows, { speed, seconds: formats.number(seconds, 0) }),
    doffer: (seconds: number) => fill(own.dofferShows, { seconds: formats.number(seconds, 0) }),
    rolls: slowly(own.rollsShow, stripperRollTurnsPerMinute),
    cleaner: slowly(own.cleanerShows, fieldCleanerTurnsPerMinute),
  };
}

/** Feet along the sack, or half metres. */
function sackTicks(words: Words) {
  const { formats, unitSystem } = words;
  const feet = harvestMachineFacts.handSackFeet.value;
  if (unitSystem === 'us')
    return Array.from({ length: feet }, (_, i) => ({
      share: (i + 1) / feet,
      text: fill(wordsOf(words).feet, { n: formats.count(i + 1) }),
    }));
  const whole = feet * METRES_PER_FOOT;
  // The last tick leaves room for the length of the whole.
  const marks = Array.from({ length: Math.floor((whole * 0.9) / TICK_METRES) }, (_, i) => (i + 1) * TICK_METRES);
  return [...marks, whole].map((metres) => ({
    share: metres / whole,
    text: formats.length((metres / METRES_PER_FOOT) * INCHES_PER_FOOT).text,
  }));
}

/** All that the scene is laid out from; null where nothing was gathered. */
export function harvestInput(season: Season, words: Words, size: PictureSize): HarvestInput | null {
  const entries = baleEntries(season, 'harvest', words);
  const labour = labourOf(season);
  if (!entries || !labour) return null;
  const own = wordsOf(words);
  const { formats, unitSystem } = words;
  const hand = labour.kind === 'personDays';
  return {
    method: season.scenario.decisions.harvest.method,
    ...entries,
    labour,
    unitKg: unitSystem === 'us' ? KG_PER_POUND : 1,
    size,
    turning: partWords(season, words),
    labels: {
      labour: (share) => labourText(labour, share, words),
      labourOf: hand ? own.personDaysOf : own.minutesOf,
      drum: own.drum,
      drumShort: own.drumShort,
      doffer: own.doffer,
      wetPad: own.wetPad,
      sack: own.sack,
      rolls: own.rolls,
      fieldCleaner: own.fieldCleaner,
      stalks: hand ? own.cutDown : own.shredded,
      sackTicks: sackTicks(words),
      caption: ({ tuftKg, bitKg }, short) =>
        [
          fill(short ? own.captionShort : own.captionPieces, {
            tuft: roundMassText(tuftKg, words),
            bit: roundMassText(bitKg, words),
          }),
          fill(short ? own.captionPace : own.captionField, {
            seconds: formats.count(HARVEST_LAP_SECONDS),
            work: labourText(labour, 1, words),
          }),
        ].join(' '),
    },
  };
}

/** What moves in the picture on a desk: its sentences, and the seconds of a turn as drawn; null where nothing was gathered. */
interface MovingSeen {
  readonly shows: readonly string[];
  readonly drumSeconds: number | null;
  readonly dofferSeconds: number | null;
}
/** Sentences are asked for at every step, and laying a picture out takes a while. */
const movingKnown = new WeakMap<Season, { readonly words: Words; readonly seen: MovingSeen }>();

function movingSeen(season: Season, words: Words): MovingSeen | null {
  const known = movingKnown.get(season);
  if (known?.words === words) return known.seen;
  const input = harvestInput(season, words, SEEN_AT);
  if (!input) return null;
  let drumSeconds: number | null = null;
  let dofferSeconds: number | null = null;
  const { turning } = input;
  const frame = harvestScene({
    ...input,
    turning: {
      ...turning,
      drum: (seconds) => {
        drumSeconds = seconds;
        return turning.drum(seconds);
      },
      doffer: (seconds) => {
        dofferSeconds = seconds;
        return turning.doffer(seconds);
      },
    },
  })(1);
  const seen = { shows: [...new Set(frame.parts.map(({ shows }) => shows))], drumSeconds, dofferSeconds };
  movingKnown.set(season, { words, seen });
  return seen;
}

/** The field, the hand or the machine that gathers it, and what becomes of every pound. */
export const harvestPicture: StationPicture = {
  layOut(season, words, size) {
    const input = harvestInput(season, words, size);
    if (!input) return () => null;
    const scene = harvestScene(input);
    return ({ progress }) => scene(progress);
  },
  see(season, words, { progress }) {
    const own = wordsOf(words);
    const { formats } = words;
    const { method } = season.scenario.decisions.harvest;
    const ledger = flowText(season, 'harvest', words);
    const seen = movingSeen(season, words);
    if (!seen) return ledger;
    const sack = fill(own.seeHand, { feet: sackTicks(words).at(-1)?.text ?? '' });
    return [
      method === 'hand' ? sack : method === 'spindle' ? own.seeSpindle : own.seeStripper,
      ...(method === 'stripperFieldCleaner' ? [own.seeCleaner] : []),
      ...seen.shows,
      fill(own.seeFar, { share: formats.percent(100 * progress, 0) }),
      ...ledger,
    ];
  },
  rows(season, words, { progress }) {
    const entries = baleEntries(season, 'harvest', words);
    const labour = labourOf(season);
    if (!entries || !labour) return [];
    return [
      {
        key: 'labour',
        label: wordsOf(words).work,
        text: labourText(labour, progress, words),
        steps: labourSteps(season, labour, progress, words),
      },
      ...entryRows(entries, progress, season, 'harvest', words),
      ...partRows(season, words),
    ];
  },
};
