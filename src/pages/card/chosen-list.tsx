import { decidedValue, decisionPlaces } from '../../compare/changed-decisions.ts';
import { useWords } from '../../language/words.ts';
import { farmOf } from '../../model/farms.ts';
import type { Scenario } from '../../model/scenario.ts';
import { decidedText, decisionName } from '../compare/decision-text.ts';
import { ownFarm } from '../farm/shelf.ts';
import { cardWords } from './card-words.ts';

/** All that was decided otherwise than the farm does itself; nothing where this device does not know the farm. */
export function ChosenList({ scenario }: { readonly scenario: Scenario }) {
  const words = useWords();
  const said = cardWords(words.language);
  const farm = ownFarm(scenario.id)?.scenario ?? farmOf(scenario.id);
  if (!farm) return null;
  const chosen = decisionPlaces.filter(
    (place) => decidedValue(scenario.decisions, place) !== decidedValue(farm.decisions, place),
  );
  if (chosen.length === 0) return <div class="chosen-list">{said.choseNothing}</div>;
  return (
    <div class="chosen-list">
      {said.chose}
      <ul>
        {chosen.map((place) => (
          <li key={`${place.station}/${place.key}`}>
            {decisionName(place, words)}: <b>{decidedText(place, decidedValue(scenario.decisions, place), words)}</b>
          </li>
        ))}
      </ul>
    </div>
  );
}
