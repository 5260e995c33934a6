import { decidedValue, decisionPlaces } from '../../compare/changed-decisions.ts';
import { useWords } from '../../language/words.ts';
import type { Scenario } from '../../model/scenario.ts';
import { compareWords } from './compare-words.ts';
import { decidedText, decisionName } from './decision-text.ts';

export interface DecisionsBesideProps {
  readonly before: Scenario;
  readonly after: Scenario;
}

/** Two columns of decisions: those that differ stand out, the rest lie folded below. */
export function DecisionsBeside({ before, after }: DecisionsBesideProps) {
  const words = useWords();
  const { messages, formats } = words;
  const said = compareWords(words.language);
  const rows = decisionPlaces.map((place) => ({
    place,
    from: decidedValue(before.decisions, place),
    to: decidedValue(after.decisions, place),
  }));
  const differing = rows.filter(({ from, to }) => from !== to);
  const same = rows.filter(({ from, to }) => from === to);
  const head = (columns: readonly string[]) => (
    <thead>
      <tr>
        {columns.map((name) => (
          <th key={name} scope="col">
            {name}
          </th>
        ))}
      </tr>
    </thead>
  );
  return (
    <section class="decisions-beside" aria-labelledby="decided">
      <h2 id="decided">{said.decisions.heading}</h2>
      <p>{differing.length > 0 ? formats.plural(differing.length, said.decisions.differ) : said.decisions.none}</p>
      {differing.length > 0 ? (
        <table class="loud-decisions" aria-labelledby="decided">
          {head([said.decisions.decision, said.sides.before, said.sides.after])}
          <tbody>
            {differing.map(({ place, from, to }) => (
              <tr key={`${place.station}/${place.key}`}>
                <th scope="row">
                  {decisionName(place, words)}
                  <span class="caption">{messages.stations[place.station].name}</span>
                </th>
                <td>
                  <span class="side-slip" data-side="before">
                    {decidedText(place, from, words)}
                  </span>
                </td>
                <td>
                  <span class="side-slip" data-side="after">
                    {decidedText(place, to, words)}
                  </span>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      ) : null}
      <details>
        <summary>{formats.plural(same.length, said.decisions.rest)}</summary>
        <table class="quiet-decisions">
          {head([said.decisions.decision, messages.common.value])}
          <tbody>
            {same.map(({ place, from }) => (
              <tr key={`${place.station}/${place.key}`}>
                <th scope="row">
                  {decisionName(place, words)} <span class="caption">{messages.stations[place.station].name}</span>
                </th>
                <td>{decidedText(place, from, words)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </section>
  );
}
