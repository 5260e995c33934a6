import type { ComponentChildren, ComponentType } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import type { SavedRun } from '../../../statechart/saved-run.ts';
import { givesQuestions } from '../../../teach/sheets/sheet-season.ts';
import { PatchButton } from '../../../ui/patch-button.tsx';
import { ChooseSheets } from './choose-sheets.tsx';
import { KeyGuide } from './key-guide.tsx';
import type { SheetWords } from './question-text.ts';
import { keepChoice, keptChoice, type SheetChoice } from './sheet-choice.ts';
import { type PaperSheetProps, SheetSet, useMadeCount } from './sheet-set.tsx';

export interface SetPageProps {
  readonly words: SheetWords;
  /** The season of the plan that led here; null for farms in turn. */
  readonly run: SavedRun | null;
  readonly title: string;
  readonly lead: string;
  /** Of the button, with the number of sheets in {n}. */
  readonly printing: { readonly one: string; readonly other: string };
  readonly Sheet: ComponentType<PaperSheetProps>;
  /** Pupils' sheets begin on paper of their own; keys run on. */
  readonly forPupils: boolean;
  /** What is told below the choice. */
  readonly children?: ComponentChildren;
}

/** A page that makes a set of sheets, or of their keys, from one choice kept on the device. */
export function SetPage({ words, run, title, lead, printing, Sheet, forPupils, children }: SetPageProps) {
  const { formats, messages, unitSystem, language } = useWords();
  const [choice, setChoice] = useState(() => keptChoice(unitSystem));
  const { page } = words;
  const pupils = choice.kinds.length > 0 ? choice.pupils : 0;
  const count = useMadeCount(pupils, choice);
  useEffect(() => {
    document.title = `${title}: ${messages.common.product}`;
  }, [title, messages]);
  const [sides, setSides] = useState(0);
  const shown = useRef<HTMLElement>(null);
  useEffect(() => {
    setSides(shown.current?.querySelectorAll('.paper-side').length ?? 0);
  }, [count, pupils, choice, words]);
  const change = (next: SheetChoice) => {
    setChoice(next);
    if (next.kinds.length > 0) keepChoice(next);
  };
  const making = fill(page.making, { n: formats.count(count), all: formats.count(pupils) });
  const refusal = pupils === 0 ? page.kindsNone : count < pupils ? making : undefined;
  return (
    <>
      <div class="sheets-choose no-print">
        <h1>{title}</h1>
        <p>{lead}</p>
        {run ? (
          <p>
            {fill(givesQuestions(run.scenario) ? page.fromClass : page.notFromClass, {
              farm: run.scenario.name[language],
              seed: String(run.seed),
            })}
          </p>
        ) : null}
        <ChooseSheets words={words} choice={choice} forPupils={forPupils} onChange={change} />
        <div class="sheets-print">
          <PatchButton ink="madder" primary refusal={refusal} onPress={() => print()}>
            {formats.plural(pupils, printing, 0)}
          </PatchButton>
          <p role="status" class="caption">
            {refusal ? '' : formats.plural(pupils, page.ready, 0)}
            {!refusal && sides > 0 ? ` ${formats.plural(sides, page.sides, 0)}` : null}
          </p>
        </div>
        {children}
      </div>
      {pupils > 0 ? (
        <section class="sheets-shown" ref={shown} aria-label={page.preview}>
          <h2 class="no-print sheets-preview">{page.preview}</h2>
          {forPupils ? null : <KeyGuide choice={choice} words={words} />}
          <SheetSet run={run} choice={choice} words={words} count={count} Sheet={Sheet} forPupils={forPupils} />
        </section>
      ) : null}
    </>
  );
}
