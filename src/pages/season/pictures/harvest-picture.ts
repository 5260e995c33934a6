import { fill } from '../../../language/fill.ts';
import { harvestWords as en } from '../../../language/messages/en/pictures/harvest.ts';
import { harvestWords as es } from '../../../language/messages/es/pictures/harvest.ts';
import type { Words } from '../../../language/words.ts';
import { harvestFacts } from '../../../model/harvest/facts.ts';
import { harvestMachineFacts } from '../../../model/harvest/machine-facts.ts';
import { rowFeetPerSecond } from '../../../model/harvest/row-speed.ts';
import type { Season } from '../../../model/season.ts';
import { INCHES_PER_FOOT, KG_PER_POUND, METRES_PER_FOOT, MINUTES_PER_HOUR } from '../../../model/units.ts';
import { harvestScene } from '../../../scene/stations/harvest/harvest.ts';
import { HARVEST_LAP_SECONDS, type HarvestInput, type Labour } from '../../../scene/stations/harvest/harvest-input.ts';
import { oneBaleShare } from '../ledger-panel.tsx';
import { baleEntries, entryRows, roundMassText } from './bale-entries.ts';
import type { PictureSize, StationPicture } from './picture.ts';
import { seeText } from './see-text.ts';

/** How many times slower than in the field the rolls and the saw are drawn. */
const TIMES_SLOWER = 100;
const SECONDS_PER_MINUTE = 60;
/** From tick to tick of a metric tape along the sack. */
const TICK_METRES = 0.5;

/** The size whose rates the sentences tell: the picture on a desk. */
const SEEN_AT = { width: 808, height: 430 };

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

/** Turns, rates and names of the parts, in words. */
function partWords({ scenario }: Season, words: Words) {
  const own = wordsOf(words);
  const { formats } = words;
  const { rowsAtOnce, stripperRollTurnsPerMinute, fieldCleanerTurnsPerMinute } = harvestMachineFacts;
  const feet = rowFeetPerSecond(
    harvestFacts.pickerAcresPerHour.value,
    rowsAtOnce.value,
    scenario.decisions.planting.rowInches,
  );
  const speed = formats.length(feet * INCHES_PER_FOOT).text;
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

/** The field, the hand or the machine that gathers it, and what becomes of every pound. */
export const harvestPicture: StationPicture = {
  layOut(season, words, size) {
    const input = harvestInput(season, words, size);
    if (!input) return () => null;
    const scene = harvestScene(input);
    return ({ progress }) => scene(progress);
  },
  see(season, words, { dayOfYear, progress }) {
    const own = wordsOf(words);
    const { formats } = words;
    const { method } = season.scenario.decisions.harvest;
    const ledger = seeText(season, 'harvest', dayOfYear, words);
    const frame = this.layOut(season, words, SEEN_AT)({ dayOfYear, progress });
    if (!frame) return ledger;
    const sack = fill(own.seeHand, { feet: sackTicks(words).at(-1)?.text ?? '' });
    return [
      method === 'hand' ? sack : method === 'spindle' ? own.seeSpindle : own.seeStripper,
      ...(method === 'stripperFieldCleaner' ? [own.seeCleaner] : []),
      ...new Set(frame.parts.map(({ shows }) => shows)),
      fill(own.seeFar, { share: formats.percent(100 * progress, 0) }),
      ...ledger,
    ];
  },
  rows(season, words, { progress }) {
    const entries = baleEntries(season, 'harvest', words);
    const labour = labourOf(season);
    if (!entries || !labour) return [];
    return [
      { key: 'labour', label: wordsOf(words).work, text: labourText(labour, progress, words) },
      ...entryRows(entries, progress),
    ];
  },
};
