import { useId, useState } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import { textLimits } from '../../model/input-facts.ts';
import type { Problem } from '../../model/problem.ts';
import type { Scenario } from '../../model/scenario.ts';
import { ProblemList } from '../../ui/problem-list.tsx';
import { farmWords } from './farm-words.ts';

type Texts = Scenario['name'];

export interface FarmTextsProps {
  readonly scenario: Scenario;
  /** The farm it began as: its words are nobody's own. */
  readonly base: Scenario;
  readonly onTexts: (texts: Partial<Pick<Scenario, 'name' | 'story'>>) => void;
}

const limitOf = (field: 'name' | 'story', language: 'en' | 'es') =>
  textLimits[`${field}${language === 'en' ? 'En' : 'Es'}`];

/** The farm's name and what is said of it: typed once for both languages, and in the other one where that differs. */
export function FarmTexts({ scenario, base, onTexts }: FarmTextsProps) {
  const { language } = useWords();
  const words = farmWords(language);
  const other = language === 'en' ? 'es' : 'en';
  const [problems, setProblems] = useState<Readonly<Record<string, Problem>>>({});
  const type = (field: 'name' | 'story', written: typeof language, label: string) => (text: string) => {
    const texts: Texts = scenario[field];
    // What is typed here holds for both languages until the other one is given words of its own.
    const isOneText = written === language && [texts[language], base[field][other]].includes(texts[other]);
    const longest = Math.min(limitOf(field, written), limitOf(field, isOneText ? other : written));
    const key = `${field}/${written}`;
    const { [key]: _, ...rest } = problems;
    if (text.length > longest) {
      const rule = { kind: 'type', expected: `text of at most ${longest} characters` } as const;
      setProblems({ ...rest, [key]: { field: label, value: text, rule } });
      return false;
    }
    setProblems(rest);
    onTexts({ [field]: { ...texts, [written]: text, ...(isOneText ? { [other]: text } : {}) } });
    return true;
  };
  return (
    <div class="farm-texts">
      <TextField label={words.name} text={scenario.name[language]} onType={type('name', language, words.name)} />
      <TextField
        label={words.story}
        text={scenario.story[language]}
        onType={type('story', language, words.story)}
        rows={3}
      />
      <details>
        <summary>{words.otherLanguage}</summary>
        <p class="caption">{words.otherHelp}</p>
        <TextField
          label={`${words.name}, ${words.otherLanguage}`}
          text={scenario.name[other]}
          onType={type('name', other, `${words.name}, ${words.otherLanguage}`)}
        />
        <TextField
          label={`${words.story}, ${words.otherLanguage}`}
          text={scenario.story[other]}
          onType={type('story', other, `${words.story}, ${words.otherLanguage}`)}
          rows={3}
        />
      </details>
      <ProblemList problems={Object.values(problems)} untouched={words.untouched} />
    </div>
  );
}

interface TextFieldProps {
  readonly label: string;
  readonly text: string;
  /** Takes the text, or refuses it; what was typed stays in the field either way. */
  readonly onType: (text: string) => boolean;
  readonly rows?: number;
}

function TextField({ label, text, onType, rows }: TextFieldProps) {
  const id = useId();
  const [refused, setRefused] = useState<string | null>(null);
  const shared = {
    id,
    class: 'typed',
    autoComplete: 'off',
    value: refused ?? text,
    'aria-invalid': refused === null ? undefined : true,
    onInput: (event: { readonly currentTarget: { readonly value: string } }) => {
      const { value } = event.currentTarget;
      setRefused(onType(value) ? null : value);
    },
  } as const;
  return (
    <div class="typed-field">
      <label class="control-label" for={id}>
        {label}
      </label>
      {rows ? <textarea {...shared} rows={rows} /> : <input {...shared} />}
    </div>
  );
}
