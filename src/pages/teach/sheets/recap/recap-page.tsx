import { useEffect, useState } from 'preact/hooks';
import type { Language } from '../../../../language/language.ts';
import { useWords } from '../../../../language/words.ts';
import { ChoiceRow } from '../../../../ui/choice-row.tsx';
import { cutOf } from '../../../../ui/cut-of.ts';
import { PatchButton } from '../../../../ui/patch-button.tsx';
import { loadLessonCards } from '../../../lessons/lesson-cards.ts';
import { useLoaded } from '../../../lessons/use-loaded.ts';
import type { SheetWords } from '../question-text.ts';
import { RecapAnswer, type RecapId, RecapQuestion, type RecapWords } from './recap-question.tsx';
import './recap.css';

const whats = ['questions', 'answers'] as const;
type What = (typeof whats)[number];

/** The questions in the order of the lessons, each with its lesson's title. */
async function loadRecap(language: Language) {
  const [{ recap }, cards] = await Promise.all([
    language === 'es'
      ? import('../../../../language/messages/es/recap.ts')
      : import('../../../../language/messages/en/recap.ts'),
    loadLessonCards(language),
  ]);
  const words: RecapWords = recap;
  const lessons = cards.flatMap(({ name, matter }) =>
    name in words.questions ? [{ id: name as RecapId, title: matter.title }] : [],
  );
  return { words, lessons };
}

/** Questions to come back to days after the lessons, on the screen and on paper. Nothing is sent and nothing kept. */
export function RecapPage({ page }: { readonly page: SheetWords['page'] }) {
  const { language, messages, formats } = useWords();
  const loaded = useLoaded(() => loadRecap(language), [language]);
  const [left, setLeft] = useState<readonly RecapId[]>([]);
  const [what, setWhat] = useState<What>('questions');
  useEffect(() => {
    if (loaded) document.title = `${loaded.words.title}: ${messages.common.product}`;
  }, [loaded, messages]);
  if (!loaded) return <p role="status">{messages.common.loading}</p>;
  const { words, lessons } = loaded;
  const asked = lessons.filter(({ id }) => !left.includes(id));
  const toggle = (id: RecapId) => setLeft(left.includes(id) ? left.filter((each) => each !== id) : [...left, id]);
  const Question = what === 'questions' ? RecapQuestion : RecapAnswer;
  return (
    <>
      <div class="sheets-choose no-print">
        <h1>{words.title}</h1>
        <p>{words.lead}</p>
        <fieldset class="choice-row">
          <legend class="control-label">{words.lessons}</legend>
          <div class="recap-lessons">
            {lessons.map(({ id, title }) => (
              <label
                key={id}
                class="patch choice"
                data-state={left.includes(id) ? 'chalked' : 'sewn'}
                data-cut={cutOf(title)}
              >
                <input type="checkbox" checked={!left.includes(id)} onChange={() => toggle(id)} />
                <span>{title}</span>
              </label>
            ))}
          </div>
        </fieldset>
        <ChoiceRow
          label={words.what}
          options={whats.map((value) => ({ value, label: words.whats[value] }))}
          value={what}
          onChoose={setWhat}
        />
        <PatchButton ink="madder" primary refusal={asked.length === 0 ? words.none : undefined} onPress={() => print()}>
          {words.print}
        </PatchButton>
      </div>
      <section class="sheets-shown" aria-label={words.heading}>
        <div class="sheet-set">
          <article class="paper-sheet recap-sheet">
            <header class="sheet-head">
              <h2>{words.heading}</h2>
              {what === 'questions' ? (
                <p class="sheet-name paper-only">
                  {page.name} <span class="sheet-blank" />
                </p>
              ) : (
                <p>
                  <b>{page.forTeacher}</b>
                </p>
              )}
            </header>
            {asked.map(({ id }, i) => (
              <Question key={id} id={id} number={formats.count(i + 1)} words={words} />
            ))}
            <footer class="sheet-foot">{page.freeWords}</footer>
          </article>
        </div>
      </section>
    </>
  );
}
