import { fill } from '../../../language/fill.ts';
import type { Words } from '../../../language/words.ts';
import { handGinDays } from '../../../model/gin/hand-gin.ts';
import { handGinFacts, turningFacts } from '../../../model/gin/speed-facts.ts';
import type { Season } from '../../../model/season.ts';
import { KG_PER_POUND, kilogramsFromPounds } from '../../../model/units.ts';
import type { InAccount, Masses, OutAccount } from '../../../scene/stations/flow/flow-input.ts';
import type { CleanerInput, GinningInput, NamedMass } from '../../../scene/stations/ginning/ginning-input.ts';
import { ginningScene } from '../../../scene/stations/ginning/ginning-scene.ts';
import { above, atStation, exact } from '../../../workings/steps.ts';
import { flowText } from './flow-text.ts';
import { ginningWords } from './ginning-words.ts';
import type { PictureSize, StationPicture, TwinRow } from './picture.ts';
import { baleMasses, pictureLedger } from './picture-ledger.ts';
import { accountSteps, drawnStep, factStep, type LedgerAccount, said } from './row-steps.ts';

type Turning = keyof typeof turningFacts;
/** How many times slower than true the wheels are drawn; all of a stand alike, so that they compare. */
const slowedBy = { saw: 100, roller: 30 } as const;

/** Which wheels turn at a season's gin. */
function turningIn({ scenario, ginning }: Season): Turning[] {
  const { stand, lintCleaner } = scenario.decisions.ginning;
  const cleaners = ginning?.lintCleaners.inLine ?? 0;
  return [
    ...(stand === 'saw' ? (['saws', 'brush'] as const) : (['roller', 'rotaryKnife'] as const)),
    ...(cleaners > 0 && lintCleaner !== 'air' ? (['lintCleaner'] as const) : []),
  ];
}

const rateText = (season: Season, wheel: Turning, words: Words): string =>
  fill(ginningWords(words.language).turning, {
    turns: words.formats.count(turningFacts[wheel].value),
    slowed: words.formats.count(slowedBy[season.scenario.decisions.ginning.stand]),
  });

/** The hand-cranked gin's day, and its days for the lint that leaves the stand for one bale. */
function handGin(lint: Masses, { formats }: Words) {
  const perDay = formats.mass(kilogramsFromPounds(handGinFacts.lintLbPerDay.value), 0).text;
  return { perDay, days: formats.days(handGinDays(lint.dryKg.lint)).text };
}

/** The scene of a season: null where it never came to the gin. */
export function ginningInput(season: Season, words: Words, size: PictureSize): GinningInput | null {
  const { ginning, scenario } = season;
  const own = ginningWords(words.language);
  const ledger = pictureLedger(season, 'ginning', words);
  const came = (account: InAccount, name: string): NamedMass | null => {
    const masses = ledger?.inflow.get(account);
    return ledger && masses ? { masses, name, amount: (share) => ledger.massIn(account, share) } : null;
  };
  const went = (account: OutAccount, name: string): NamedMass | null => {
    const masses = ledger?.outflow.get(account);
    return ledger && masses ? { masses, name, amount: (share) => ledger.massOut(account, share) } : null;
  };
  const seedCotton = came('lot', own.in);
  const seed = went('seedHouse', own.seed);
  const trash = went('ginTrash', own.trash);
  const lint = went('lot', own.lint);
  const stand = ginning?.machines.find(({ machine }) => machine.endsWith('Stand'));
  if (!ginning || !stand || !seedCotton || !seed || !trash || !lint) return null;
  const lintAtStand = baleMasses(season, stand.out);
  const cleaners = ginning.machines.flatMap(({ machine, removed }): CleanerInput[] => {
    const waste = removed.find(({ account }) => account === 'lintCleanerWaste');
    return waste ? [{ id: machine, thrownOut: baleMasses(season, waste.masses) }] : [];
  });
  const unitKg = words.unitSystem === 'us' ? KG_PER_POUND : 1;
  const decisions = scenario.decisions.ginning;
  const shows = (wheel: Turning) => fill(own.shows, { part: own.parts[wheel], rate: rateText(season, wheel, words) });
  const piecesText = ({ tuftKg, bitKg }: { tuftKg: number; bitKg: number }) => ({
    tuft: words.formats.mass(tuftKg, 0).text,
    bit: words.formats.mass(bitKg, bitKg > unitKg * 0.99 ? 0 : 1).text,
  });
  const wheels = Object.keys(turningFacts) as Turning[];
  return {
    stand: decisions.stand,
    lintCleaner: decisions.lintCleaner,
    cleaners,
    seedCotton,
    water: came('moistureAdded', own.water),
    seed,
    trash,
    motes: went('lintCleanerWaste', own.motes),
    lint,
    lintAtStand,
    unitKg,
    size,
    turning: {
      ...(Object.fromEntries(wheels.map((wheel) => [wheel, turningFacts[wheel].value])) as Record<Turning, number>),
      slowedBy: slowedBy[decisions.stand],
    },
    labels: {
      ...own,
      cleaners:
        cleaners.length === 0
          ? own.noCleaners
          : fill(own.cleaners[decisions.lintCleaner], { count: words.formats.count(cleaners.length) }),
      front: decisions.stand === 'saw' ? own.frontSaw : own.frontRoller,
      handGin: fill(own.handGin, handGin(lintAtStand, words)),
      handGinShort: fill(own.handGinShort, handGin(lintAtStand, words)),
      shows: Object.fromEntries(wheels.map((wheel) => [wheel, shows(wheel)])) as Record<Turning, string>,
      caption: (pieces) => fill(own.caption, { ...piecesText(pieces), rate: shows(turningIn(season)[0]!) }),
      captionShort: (pieces) =>
        fill(own.captionShort, {
          ...piecesText(pieces),
          slowed: words.formats.count(slowedBy[decisions.stand]),
        }),
    },
  };
}

function rowsOf(season: Season, words: Words, progress: number): TwinRow[] {
  const own = ginningWords(words.language);
  const input = ginningInput(season, words, { width: 1, height: 1 });
  if (!input) return [];
  const perDay = { as: 'mass', value: kilogramsFromPounds(handGinFacts.lintLbPerDay.value), decimals: 0 } as const;
  const mass = (key: string, held: NamedMass | null, side: 'in' | 'out', account: LedgerAccount): TwinRow[] => {
    const share = side === 'in' ? 1 : progress;
    const steps = accountSteps(season, 'ginning', side, account, share, words);
    return held ? [{ key, label: held.name, text: held.amount(share), steps }] : [];
  };
  return [
    ...mass('in', input.seedCotton, 'in', 'lot'),
    ...mass('water', input.water, 'in', 'moistureAdded'),
    ...mass('lint', input.lint, 'out', 'lot'),
    ...mass('seed', input.seed, 'out', 'seedHouse'),
    ...mass('motes', input.motes, 'out', 'lintCleanerWaste'),
    ...mass('trash', input.trash, 'out', 'ginTrash'),
    {
      key: 'handGin',
      label: own.handGinLabel,
      text: handGin(input.lintAtStand, words).days,
      steps: [
        said(own.lintAtStand, { as: 'mass', value: input.lintAtStand.dryKg.lint }, atStation('ginning')),
        factStep(own.handGinDay, perDay, handGinFacts.lintLbPerDay),
        said(own.handGinLabel, exact(Math.round(handGinDays(input.lintAtStand.dryKg.lint)), 'days'), above),
      ],
    },
    {
      key: 'handGinDay',
      label: own.handGinDay,
      text: handGin(input.lintAtStand, words).perDay,
      steps: [factStep(own.handGinDay, perDay, handGinFacts.lintLbPerDay)],
    },
    ...turningIn(season).map((wheel) => ({
      key: wheel,
      label: own.parts[wheel],
      text: rateText(season, wheel, words),
      steps: [
        factStep(own.turns, { as: 'count', value: turningFacts[wheel].value }, turningFacts[wheel]),
        drawnStep(own.slower, { as: 'count', value: slowedBy[season.scenario.decisions.ginning.stand] }),
      ],
    })),
  ];
}

/** The gin stand at work: lint over the saws or the roller, seed down, motes out. */
export const ginningPicture: StationPicture = {
  layOut(season, words, size) {
    const input = ginningInput(season, words, size);
    if (!input) return () => null;
    const frameAt = ginningScene(input);
    return ({ progress }) => frameAt(progress);
  },
  see(season, words) {
    const input = ginningInput(season, words, { width: 1, height: 1 });
    if (!input) return [];
    const own = ginningWords(words.language);
    return [...flowText(season, 'ginning', words), fill(own.handGinSee, handGin(input.lintAtStand, words))];
  },
  rows: (season, words, { progress }) => rowsOf(season, words, progress),
};
