import { useWords } from '../../language/words.ts';
import { Switch } from '../../ui/switch.tsx';
import { predictWords } from './predict-words.ts';

/** Turns the questions on and off; off for everyone until then. */
export function PredictSwitch({ on, onChange }: { readonly on: boolean; readonly onChange: (on: boolean) => void }) {
  const said = predictWords(useWords().language);
  return <Switch label={said.turnOn} help={said.turnOnHelp} on={on} onChange={onChange} />;
}
