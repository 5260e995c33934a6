import { useId, useState } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { addStop, stopsLeftOut } from '../../teach/plan/change-plan.ts';
import { stopOf } from '../../teach/plan/stop-list.ts';
import { PatchButton } from '../../ui/patch-button.tsx';
import { stopText } from './stop-text.ts';
import type { PlanHand } from './use-plan.ts';
import type { TeachWords } from './use-teach-words.ts';

export interface AddStopProps {
  readonly hand: PlanHand;
  readonly teach: TeachWords;
  readonly onTold: (line: string) => void;
}

/** Another stop of the list, put in before the recap. */
export function AddStop({ hand: { plan, set }, teach, onTold }: AddStopProps) {
  const words = useWords();
  const { said } = teach;
  const id = useId();
  const [chosen, setChosen] = useState('');
  const left = stopsLeftOut(plan).map((stop) => ({
    id: stop,
    text: stopText(stopOf(stop)!, plan.season, words, teach),
  }));
  const kinds = [...new Set(left.map(({ text }) => text.kind))];
  const found = left.find((each) => each.id === chosen);
  const put = () => {
    if (!found) return onTold(said.addChoose);
    const next = addStop(plan, found.id);
    if (next) set(next);
    onTold(next ? fill(said.added, { stop: found.text.title }) : said.cannot);
  };
  return (
    <div class="teach-add">
      <div class="teach-field">
        <label class="control-label" for={id}>
          {said.addLabel}
        </label>
        <select id={id} class="teach-typed" onChange={(event) => setChosen(event.currentTarget.value)}>
          <option value="" selected={!found}>
            {said.addChoose}
          </option>
          {kinds.map((kind) => (
            <optgroup key={kind} label={kind}>
              {left
                .filter(({ text }) => text.kind === kind)
                .map((each) => (
                  <option key={each.id} value={each.id} selected={each.id === chosen}>
                    {each.text.title}
                  </option>
                ))}
            </optgroup>
          ))}
        </select>
      </div>
      <PatchButton onPress={put}>{said.add}</PatchButton>
    </div>
  );
}
