import { condition } from '../conditioning.ts';
import type { DecisionsOf } from '../decisions.ts';
import { type Fibre, readFibre } from '../fibre.ts';
import { type DestinationAccount, type MassEntry, type MassLedger, massEntry, waterEntry } from '../ledger.ts';
import { type Lot, type PartMasses, parts, splitLot, totalDryKg } from '../lot.ts';
import { inchesFromMillimetres, KILO, TEX_TIMES_NE } from '../units.ts';
import { blowroomShares, cleaningShares, type Masses } from './blowroom.ts';
import { card } from './card.ts';
import { comb } from './comber.ts';
import { millRegain, type YarnUse } from './facts.ts';
import { judgeCount, type SpinningVerdict } from './limits.ts';
import { wasteFacts } from './waste-facts.ts';
import { describeYarn, type Yarn } from './yarn.ts';

/** One machine or group of machines of the mill: what went in, what it took out and where that goes, what went on. */
interface MillStep {
  readonly machine: 'blowroom' | 'card' | 'comber' | 'spinningFrame';
  readonly in: Masses;
  readonly removed: readonly { readonly account: DestinationAccount; readonly masses: Masses }[];
  readonly out: Masses;
}

/** What the spinning station gives. */
export interface SpinningOutcome {
  /** Yarn at the mill's regain; the lint unchanged where the count cannot be spun. */
  readonly lot: Lot;
  readonly ledger: MassLedger;
  readonly verdict: SpinningVerdict;
  readonly fibreAfter: readonly { readonly after: 'card' | 'comber'; readonly fibre: Fibre }[];
  readonly steps: readonly MillStep[];
  /** Null where the count cannot be spun. */
  readonly yarn: Yarn | null;
  /** Dry yarn for dry lint bought, fraction; null where nothing was spun. */
  readonly yarnRealisation: number | null;
  /** Length of yarn, km. */
  readonly yarnKilometres: number;
  readonly stopped: null | {
    readonly reason: Exclude<SpinningVerdict['reason'], 'staple' | null>;
    readonly countNe: number;
    readonly nearestFeasibleNe: number;
  };
}

const everyPart = (share: number): PartMasses => Object.fromEntries(parts.map((part) => [part, share])) as PartMasses;

function step(
  machine: MillStep['machine'],
  input: Masses,
  takes: readonly { readonly account: DestinationAccount; readonly shares: PartMasses }[],
): MillStep {
  let left = input;
  const removed = takes.map(({ account, shares }) => {
    const split = splitLot(left, shares);
    left = split.kept;
    return { account, masses: split.removed };
  });
  return { machine, in: input, removed, out: left };
}

/**
 * Spins a lot of baled lint. Water follows its dry mass through the machines; the yarn is then left in the mill's air
 * until it holds the standard regain.
 * @param use what the yarn is twisted for
 * @returns yarn and ledger; where the section would hold too few fibres the lot comes back unspun, entered as bale
 */
export function spin(lot: Lot, decisions: DecisionsOf<'spinning'>, use: YarnUse = 'warp'): SpinningOutcome {
  const { system, countNe, noilPercent } = decisions;
  const reading = readFibre(lot.fibre);
  const meanInches = inchesFromMillimetres((reading.upperHalfMeanMm * reading.uniformityPercent) / 100);
  const verdict = judgeCount(system, countNe, lot.fibre.linearDensityMtex, meanInches);
  if (verdict.status === 'impossible') {
    const reason = verdict.reason === 'rotorCount' ? 'rotorCount' : 'fibresInSection';
    return {
      lot,
      ledger: { station: 'spinning', in: [massEntry('lot', lot)], out: [massEntry('bale', lot)] },
      verdict,
      fibreAfter: [],
      steps: [],
      yarn: null,
      yarnRealisation: null,
      yarnKilometres: 0,
      stopped: { reason, countNe, nearestFeasibleNe: verdict.nearestFeasibleNe },
    };
  }

  const opened = step('blowroom', lot, [{ account: 'millTrash', shares: blowroomShares(lot.dryKg) }]);
  const carded = card(lot.fibre);
  const carding = step('card', opened.out, [
    { account: 'cardStrips', shares: cleaningShares(wasteFacts.cardTrash.value, carded.removedFraction) },
  ]);
  const combed = system === 'ringCombed' ? comb(carded.fibre, noilPercent) : null;
  const combing = combed
    ? step('comber', carding.out, [
        { account: 'comberNoil', shares: cleaningShares(wasteFacts.comberTrash.value, combed.removedFraction) },
      ])
    : null;
  const spinning = step('spinningFrame', (combing ?? carding).out, [
    { account: 'invisibleLoss', shares: everyPart(wasteFacts.invisibleLoss.value) },
    { account: 'hardWaste', shares: everyPart(wasteFacts.sweepings.value + wasteFacts.yarnWaste.value) },
  ]);
  const conditioned = condition(spinning.out, millRegain.value);
  const drawn = (combed ?? carded).fibre;
  const steps = [opened, carding, ...(combing ? [combing] : []), spinning];
  const yarnDryKg = totalDryKg(spinning.out.dryKg);
  const boughtDryKg = totalDryKg(lot.dryKg);
  return {
    lot: { ...conditioned.masses, fibre: drawn },
    ledger: ledgerOf(lot, steps, conditioned),
    verdict,
    fibreAfter: [
      { after: 'card', fibre: carded.fibre },
      ...(combed ? [{ after: 'comber', fibre: combed.fibre } as const] : []),
    ],
    steps,
    yarn: describeYarn(system, countNe, use, carded.fibre, drawn, combed ? noilPercent : 0),
    yarnRealisation: boughtDryKg > 0 ? yarnDryKg / boughtDryKg : null,
    // kg x 1000 g / (g in a km).
    yarnKilometres: (yarnDryKg * (1 + millRegain.value) * KILO * countNe) / TEX_TIMES_NE,
    stopped: null,
  };
}

function ledgerOf(lot: Lot, steps: readonly MillStep[], conditioned: ReturnType<typeof condition>): MassLedger {
  const out: MassEntry<DestinationAccount | 'lot'>[] = steps.flatMap(({ removed }) =>
    removed.map(({ account, masses }) => massEntry(account, masses)),
  );
  const { takenUpKg, evaporatedKg, masses } = conditioned;
  if (evaporatedKg > 0) out.push(waterEntry('evaporated', evaporatedKg));
  return {
    station: 'spinning',
    in: [massEntry('lot', lot), ...(takenUpKg > 0 ? [waterEntry('moistureTakenUp', takenUpKg)] : [])],
    out: [...out, massEntry('lot', masses)],
  };
}
