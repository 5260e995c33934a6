import { type Language, languages, localeOf } from '../language/language.ts';
import { type UnitSystem, unitSystems } from '../language/unit-system.ts';
import { useWords } from '../language/words.ts';

export interface LanguageUnitsBarProps {
  readonly theme: 'day' | 'projector';
  readonly onLanguage: (language: Language) => void;
  readonly onUnitSystem: (unitSystem: UnitSystem) => void;
  readonly onTheme: (theme: 'day' | 'projector') => void;
  readonly motion: 'moving' | 'still';
  readonly onMotion: (motion: 'moving' | 'still') => void;
}

interface Side<Value extends string> {
  readonly value: Value;
  readonly text: string;
  readonly spoken?: string;
  readonly lang?: string;
}

/** Two words of which one is underlined with basting: the one in force. */
function Pair<Value extends string>(props: {
  readonly label: string;
  readonly value: Value;
  readonly sides: readonly Side<Value>[];
  readonly onChoose: (value: Value) => void;
}) {
  return (
    <fieldset class="bar-pair">
      <legend class="unseen">{props.label}</legend>
      {props.sides.map((side) => (
        <button
          key={side.value}
          type="button"
          lang={side.lang}
          aria-pressed={side.value === props.value}
          aria-label={side.spoken}
          onClick={() => props.onChoose(side.value)}
        >
          {side.text}
        </button>
      ))}
    </fieldset>
  );
}

/** Language, units and screen. Each language is named in itself. */
export function LanguageUnitsBar(props: LanguageUnitsBarProps) {
  const { theme, motion, onLanguage, onUnitSystem, onTheme, onMotion } = props;
  const { messages, language, unitSystem } = useWords();
  const { common } = messages;
  return (
    <div class="bar">
      <Pair
        label={common.language}
        value={language}
        onChoose={onLanguage}
        sides={languages.map((value) => ({ value, text: common.languages[value], lang: localeOf(value) }))}
      />
      <Pair
        label={common.unitSystem}
        value={unitSystem}
        onChoose={onUnitSystem}
        sides={unitSystems.map((value) => ({
          value,
          text: common.unitSystemsShort[value],
          spoken: common.unitSystems[value],
        }))}
      />
      <Pair
        label={common.theme}
        value={theme}
        onChoose={onTheme}
        sides={(['day', 'projector'] as const).map((value) => ({ value, text: common.themes[value] }))}
      />
      <Pair
        label={common.motion}
        value={motion}
        onChoose={onMotion}
        sides={(['moving', 'still'] as const).map((value) => ({ value, text: common.motions[value] }))}
      />
    </div>
  );
}
