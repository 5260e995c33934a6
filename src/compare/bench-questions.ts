import type { BenchOutcomeKey } from '../model/bench/outcomes.ts';
import { type SetUp, startingSetUp } from '../model/bench/set-up.ts';
import { feelFacts } from '../model/cloth/facts.ts';
import { washTable } from '../model/cloth/wash-facts.ts';
import type { Fact } from '../model/fact.ts';
import { benchFacts } from '../model/mill/bench-limit-facts.ts';
import { fewestFibres, limitFacts, strengthFacts } from '../model/mill/facts.ts';
import { yarnNumberFacts } from '../model/mill/yarn-number-facts.ts';

/** What decides an answer, and where it is from. */
export type Deciding = Pick<Fact, 'source' | 'mark'>;

/** A question that the bench answers by two set-ups: which figures to look at, and what decides. */
export interface BenchQuestion {
  readonly a: SetUp;
  readonly b: SetUp;
  readonly looksAt: readonly BenchOutcomeKey[];
  readonly decidedBy: readonly Deciding[];
}

export const benchQuestionIds = ['pilling', 'lawn', 'thread', 'flannel'] as const;
export type BenchQuestionId = (typeof benchQuestionIds)[number];

const noil = benchFacts.usualNoilPercent.value;

export const benchQuestionOf: Readonly<Record<BenchQuestionId, BenchQuestion>> = {
  pilling: {
    a: startingSetUp('uplandShort', 'quilting', noil),
    b: startingSetUp('pima', 'quilting', noil),
    looksAt: ['fibreEnds', 'shortFibre', 'tenacity', 'cover'],
    decidedBy: [
      feelFacts.fuzzEndsPerCm,
      { source: 'fraying: sett, twist and finish, as sewists and mills know it', mark: 'common practice' },
    ],
  },
  lawn: {
    a: startingSetUp('uplandMedium', 'muslin', noil),
    b: startingSetUp('uplandLong', 'lawn', noil),
    looksAt: ['fibresInSection', 'realisation', 'turns', 'spindleTime', 'lintPerYard', 'weight'],
    decidedBy: [fewestFibres.ringCarded, limitFacts.stapleSlopePerInch, benchFacts.usualNoilPercent],
  },
  thread: {
    a: { ...startingSetUp('uplandLong', 'quilting', noil), system: 'ringCombed', use: 'semiWarp', warp: '50/2Ne' },
    b: { ...startingSetUp('uplandLong', 'quilting', noil), system: 'ringCombed', use: 'semiWarp', warp: '50/3Ne' },
    looksAt: ['evenness', 'fibreEnds'],
    decidedBy: [yarnNumberFacts.ticketPerNm, strengthFacts.leaStrands],
  },
  flannel: {
    a: startingSetUp('uplandMedium', 'quilting', noil),
    b: startingSetUp('uplandMedium', 'flannel', noil),
    looksAt: ['shrinkLength', 'cover', 'weight', 'turns'],
    decidedBy: [washTable],
  },
};
