import { decidedValue, decisionPlaces } from '../../compare/changed-decisions.ts';
import { changedLand } from '../../compare/changed-land.ts';
import { useWords } from '../../language/words.ts';
import type { Scenario } from '../../model/scenario.ts';
import { landText } from './change-text.ts';
import { compareWords } from './compare-words.ts';
import { decidedText, decisionName } from './decision-text.ts';
import { useSideNames } from './side-names.ts';

/** Rows that stand open; the differences of two farms are many more than anybody reads at once. */
const mostOpen = 10;

interface LoudRow {
  readonly key: string;
  readonly name: string;
  readonly where: string;
  readonly before: string;
  readonly after: string;
}

export interface DecisionsBesideProps {
  readonly before: Scenario;
  readonly after: Scenario;
}

/** Two columns of decisions, and of the land where two farms differ: what differs stands out, the rest lies folded below. */
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
  const loud: LoudRow[] = [
    ...changedLand(before, after).map(({ land, from, to }) => ({
      key: land,
      name: said.land.names[land],
      where: said.land.heading,
      before: landText({ land }, from, words),
      after: landText({ land }, to, words),
    })),
    ...differing.map(({ place, from, to }) => ({
      key: `${place.station}/${place.key}`,
      name: decisionName(place, words),
      where: messages.stations[place.station].name,
      before: decidedText(place, from, words),
      after: decidedText(place, to, words),
    })),
  ];
  const folded = loud.slice(mostOpen);
  return (
    <section class="decisions-beside" aria-labelledby="decided">
      <h2 id="decided">{said.decisions.heading}</h2>
      <p>{differing.length > 0 ? formats.plural(differing.length, said.decisions.differ) : said.decisions.none}</p>
      {loud.length > 0 ? <LoudTable rows={loud.slice(0, mostOpen)} /> : null}
      {folded.length > 0 ? (
        <details>
          <summary>{formats.plural(folded.length, said.decisions.more)}</summary>
          <LoudTable rows={folded} />
        </details>
      ) : null}
      <details>
        <summary>{formats.plural(same.length, said.decisions.rest)}</summary>
        <table class="quiet-decisions">
          <Head columns={[said.decisions.decision, messages.common.value]} />
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

const Head = ({ columns }: { readonly columns: readonly string[] }) => (
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

/** What differs, each side on a slip of its own cloth. */
function LoudTable({ rows }: { readonly rows: readonly LoudRow[] }) {
  const { decisions } = compareWords(useWords().language);
  const sides = useSideNames();
  return (
    <table class="loud-decisions" aria-labelledby="decided">
      <Head columns={[decisions.decision, sides.before, sides.after]} />
      <tbody>
        {rows.map(({ key, name, where, before, after }) => (
          <tr key={key}>
            <th scope="row">
              {name}
              <span class="caption">{where}</span>
            </th>
            <td>
              <span class="side-slip" data-side="before">
                {before}
              </span>
            </td>
            <td>
              <span class="side-slip" data-side="after">
                {after}
              </span>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
