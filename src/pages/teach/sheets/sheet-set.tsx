import { Component, type ComponentType } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import type { SavedRun } from '../../../statechart/saved-run.ts';
import { makeQuestion } from '../../../teach/sheets/make-question.ts';
import { type SheetWords, type WrittenQuestion, writeQuestion } from './question-text.ts';
import type { SheetChoice } from './sheet-choice.ts';

/** What a sheet, or its key, is made of. */
export interface PaperSheetProps {
  /** Of the sheet, as it is written. */
  readonly number: string;
  /** What was chosen, in a line at the foot. */
  readonly label: string;
  readonly written: readonly WrittenQuestion[];
  readonly words: SheetWords;
  /** The paper is printed on both sides: a sheet of an odd number of sides is followed by an empty one. */
  readonly bothSides: boolean;
}

/** a, b, c: the asks of a question. */
export const askLetter = (place: number): string => String.fromCodePoint(97 + place);

interface OneSheetProps {
  readonly pupil: number;
  /** The class's season; null for farms in turn. */
  readonly run: SavedRun | null;
  readonly choice: SheetChoice;
  readonly words: SheetWords;
  readonly Sheet: ComponentType<PaperSheetProps>;
}

function WrittenSheet({ pupil, run, choice, words, Sheet }: OneSheetProps) {
  const { formats } = useWords();
  const { kinds, level, units } = choice;
  const written = useMemo(
    () => kinds.map((kind) => writeQuestion(makeQuestion(kind, level, pupil, units, run), words, formats)),
    [kinds, level, pupil, units, run, words, formats],
  );
  const { page } = words;
  const number = String(pupil);
  const label = fill(page.chosen, {
    sheet: fill(page.sheet, { n: number }),
    level: page.levels[level].name,
    units: page.unitNames[units],
  });
  return <Sheet number={number} label={label} written={written} words={words} bothSides={choice.paper === 'both'} />;
}

/** A sheet once written stays as it is while its neighbors come. */
class OneSheet extends Component<OneSheetProps> {
  override shouldComponentUpdate(next: OneSheetProps): boolean {
    const { pupil, run, choice, words } = this.props;
    return next.pupil !== pupil || next.run !== run || next.choice !== choice || next.words !== words;
  }
  override render(props: OneSheetProps) {
    return <WrittenSheet {...props} />;
  }
}

/**
 * How many of so many sheets are made: one more in each task, so that no task is long.
 * @param wanted changes when the set is another one, which begins anew
 */
export function useMadeCount(pupils: number, wanted: SheetChoice): number {
  const [made, setMade] = useState({ count: 1, wanted });
  const count = made.wanted === wanted ? Math.min(made.count, pupils) : 1;
  useEffect(() => {
    if (count >= pupils && made.wanted === wanted) return;
    const timer = setTimeout(() => setMade({ count: count + 1, wanted }), 0);
    return () => clearTimeout(timer);
  }, [count, pupils, made, wanted]);
  return count;
}

export interface SheetSetProps {
  readonly run: SavedRun | null;
  readonly choice: SheetChoice;
  readonly words: SheetWords;
  /** How many of them are made by now. */
  readonly count: number;
  readonly Sheet: ComponentType<PaperSheetProps>;
  /** Pupils' sheets begin on paper of their own; keys run on. */
  readonly forPupils: boolean;
}

/** All sheets of a class, each on paper of its own. On the screen the first stands for all. */
export function SheetSet({ run, choice, words, count, Sheet, forPupils }: SheetSetProps) {
  return (
    <div class={forPupils ? 'sheet-set' : 'sheet-set key-set'}>
      {Array.from({ length: count }, (_, i) => (
        <section key={choice.first + i} class="paper-sheet" data-only-paper={i > 0 ? '' : undefined}>
          <OneSheet pupil={choice.first + i} run={run} choice={choice} words={words} Sheet={Sheet} />
        </section>
      ))}
    </div>
  );
}
