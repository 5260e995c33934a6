import type { Fact, Mark } from '../model/fact.ts';
import { allFacts, allTables, type FactLink } from '../model/fact-list.ts';

/** A fact that was not read in print and may lie anywhere in its stated range. */
export interface UncertainFact {
  /** Its names, file and keys; several where it is shared. The first one stands for it. */
  readonly names: readonly string[];
  readonly link: FactLink;
  readonly fact: Fact & { readonly range: readonly [low: number, high: number] };
  /** It counts whole things, so that only whole numbers make sense. */
  readonly whole: boolean;
}

/**
 * Why a fact of unsure origin is not moved:
 * - readAtLoad: the model works with it once, as it loads; moving it afterwards would change nothing, or only half.
 * - afterTheBale: it bears on yarn, cloth or a project only, which come after the bale is sold.
 * - noWidth: its range holds its value alone.
 */
export type HeldReason = 'readAtLoad' | 'afterTheBale' | 'noWidth';

/** A fact of unsure origin that stays at its value, and why. */
export interface HeldFact {
  readonly names: readonly string[];
  readonly reason: HeldReason;
  readonly mark: Mark;
}

const unsureMarks: readonly Mark[] = ['assumption', 'memory', 'common practice'];
const linksAfterTheBale: readonly FactLink[] = ['mill', 'cloth', 'trace'];
const wholeUnits: readonly string[] = ['year', 'count', 'day', 'days', 'day of year', 'branch'];

/** Facts that the model reads once, as it loads. A test holds this list true, both ways. */
export const readAtLoad: readonly string[] = [
  'field/record-facts.recordFacts.mostFilledDays',
  'gin/facts.dryingFacts.seedDryingShare',
  'gin/facts.dryingFacts.trashDryingShare',
  'length/facts.breakageLaw.referenceLengthMm',
  'length/facts.machineBreakagePerMm.sawLintCleaner',
  'length/facts.machineBreakagePerMm.rollerLintCleaner',
  'length/lattice-facts.latticeFacts.lengthCount',
  'length/reading-facts.beardFacts.weightExponent',
  'length/reading-facts.beardFacts.lengthScale',
  'length/reading-facts.beardFacts.startMm',
  'module/facts.storageFacts.restingSeedRegain',
  'module/facts.storageFacts.restingTrashRegain',
  'problem-facts.problemFacts.longestPiece',
  'rounding-facts.roundingFacts.hair',
  'timeline-facts.timelineFacts.workSteps',
];

interface Sorted {
  readonly moved: readonly UncertainFact[];
  readonly held: readonly HeldFact[];
  /** Tables of unsure numbers that bear on the bale. They have no range, so they stay as they are. */
  readonly heldTables: number;
}

/** Facts of unsure origin, each once however many names it has, in order of the list of facts. */
function unsureFacts(): UncertainFact[] {
  const byFact = new Map<Fact, { names: string[]; link: FactLink }>();
  for (const { name, link, fact } of allFacts()) {
    if (!unsureMarks.includes(fact.mark)) continue;
    const known = byFact.get(fact);
    if (known) known.names.push(name);
    else byFact.set(fact, { names: [name], link });
  }
  return [...byFact].map(([fact, { names, link }]) => {
    const { value, unit, range } = fact;
    if (!range) throw new Error(`${names[0]} has no range`);
    return {
      names,
      link,
      fact: fact as UncertainFact['fact'],
      whole: wholeUnits.includes(unit) && [value, ...range].every(Number.isInteger),
    };
  });
}

function heldReason({ names, link, fact }: UncertainFact): HeldReason | null {
  if (linksAfterTheBale.includes(link)) return 'afterTheBale';
  if (names.some((name) => readAtLoad.includes(name))) return 'readAtLoad';
  return fact.range[0] === fact.range[1] ? 'noWidth' : null;
}

/** The facts of unsure origin: those that are moved, and those that stay and why. */
export function sortUnsureFacts(): Sorted {
  const facts = unsureFacts();
  return {
    moved: facts.filter((fact) => heldReason(fact) === null),
    held: facts.flatMap((unsure) => {
      const reason = heldReason(unsure);
      return reason ? [{ names: unsure.names, reason, mark: unsure.fact.mark }] : [];
    }),
    heldTables: allTables().filter(
      ({ link, table }) => unsureMarks.includes(table.mark) && !linksAfterTheBale.includes(link),
    ).length,
  };
}
