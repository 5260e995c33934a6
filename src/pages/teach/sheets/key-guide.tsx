import { fill } from '../../../language/fill.ts';
import type { Language } from '../../../language/language.ts';
import { useWords } from '../../../language/words.ts';
import { useLoaded } from '../../lessons/use-loaded.ts';
import type { SheetWords } from './question-text.ts';
import type { SheetChoice } from './sheet-choice.ts';

const loadGuide = async (language: Language) =>
  (language === 'es'
    ? await import('../../../language/messages/es/sheet-guide.ts')
    : await import('../../../language/messages/en/sheet-guide.ts')
  ).sheetGuide;

export interface KeyGuideProps {
  readonly choice: SheetChoice;
  readonly words: SheetWords;
}

/** Before the keys: how to mark, what to have ready, and for each kind at this level what to look for. */
export function KeyGuide({ choice, words: { page, questions } }: KeyGuideProps) {
  const { language } = useWords();
  const guide = useLoaded(() => loadGuide(language), [language]);
  if (!guide) return null;
  const { kinds, level, first, pupils, units } = choice;
  const ready = [...guide.always, ...kinds.map((kind) => guide.for[kind]).filter(Boolean)];
  return (
    <section class="paper-sheet key-guide">
      <header class="sheet-head">
        <h2>{guide.title}</h2>
        <p>
          {fill(guide.set, {
            from: String(first),
            to: String(first + pupils - 1),
            level: page.levels[level].name,
            units: page.unitNames[units],
          })}
        </p>
      </header>
      <p class="sheet-rule">{page.rule}</p>
      <div class="key-guide-lists">
        <div>
          <h3>{guide.marking}</h3>
          <ul>
            {guide.marks.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
          <p>{guide.carried}</p>
        </div>
        <div>
          <h3>{guide.materials}</h3>
          <ul>
            {ready.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </div>
      </div>
      <h3>{guide.look}</h3>
      <dl class="key-looks">
        {kinds.map((kind) => (
          <div key={kind}>
            <dt>{questions.kinds[kind]}</dt>
            <dd>{guide.looks[kind][level]}</dd>
          </div>
        ))}
      </dl>
      <p class="sheet-foot">
        {guide.practice} {page.free}
      </p>
    </section>
  );
}
