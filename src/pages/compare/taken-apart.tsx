import { Fragment } from 'preact';
import { useState } from 'preact/hooks';
import { type TakenApart as Apart, type Run, toldOutcomes } from '../../compare/what-made-the-difference.ts';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import type { OutcomeKey } from '../../model/season-outcomes.ts';
import { ChoiceRow } from '../../ui/choice-row.tsx';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingRow } from '../../ui/working-place.tsx';
import { changeKey, changeText } from './change-text.ts';
import { compareWords } from './compare-words.ts';
import { partCells } from './part-cells.ts';
import { useTakenApart } from './use-taken-apart.ts';

/** The outcomes that are offered, in this order; those that nothing moved are left out. */
const offered: readonly OutcomeKey[] = [
  'leftToFarmUsd',
  'usdPerBale',
  'lintKg',
  'staple32nds',
  'shortFibrePercent',
  'leafGrade',
  'clothSquareMetres',
  'patchInches',
];

const bar = { width: 110, height: 22 };

/** A tongue of cloth from a seam in the middle: more to the right, less to the left. */
function PartBar({ value, most }: { readonly value: number; readonly most: number }) {
  const middle = bar.width / 2;
  const px = most > 0 ? (value / most) * (middle - 4) : 0;
  return (
    <svg viewBox={`0 0 ${bar.width} ${bar.height}`} width={bar.width} height={bar.height} aria-hidden="true">
      <path
        class={value < 0 ? 'bar-less' : 'bar-more'}
        d={`M${middle} 4l${px.toFixed(1)} 1v12l${(-px).toFixed(1)} 1z`}
      />
      <path class="bar-seam" d={`M${middle} 0V${bar.height}`} />
    </svg>
  );
}

interface PartsTableProps {
  readonly apart: Apart;
  readonly outcome: OutcomeKey;
  readonly season: Season;
}

function PartsTable({ apart, outcome, season }: PartsTableProps) {
  const words = useWords();
  const { apart: said, outcomes } = compareWords(words.language);
  const cells = partCells(apart, outcome, season, words);
  // What prints as nought in its turn and alone takes no row.
  const moves = (at: number) => /[1-9]/.test(`${cells.parts[at]!.inTurn.text} ${cells.parts[at]!.alone.text}`);
  const still = apart.parts.filter((_, at) => !moves(at)).length;
  const most = Math.max(...apart.parts.map(({ inTurn }) => Math.abs(inTurn[outcome] ?? 0)));
  return (
    <table class="parts-table">
      <caption>{outcomes[outcome]}</caption>
      <thead>
        <tr>
          <th scope="col">{said.part}</th>
          <th scope="col" class="bar-cell">
            <span class="unseen">{said.inTurn}</span>
          </th>
          <th scope="col" class="number">
            {said.inTurn}
          </th>
          <th scope="col" class="number">
            {said.alone}
          </th>
        </tr>
      </thead>
      <tbody>
        {apart.parts.map(({ change, inTurn }, at) => {
          if (!moves(at)) return null;
          const { inTurn: turn, alone } = cells.parts[at]!;
          return (
            <Fragment key={changeKey(change)}>
              <tr>
                <th scope="row">{changeText(change, words)}</th>
                <td class="bar-cell">
                  <PartBar value={inTurn[outcome] ?? 0} most={most} />
                </td>
                <td class="number">
                  <WorkingNumber {...turn} />
                </td>
                <td class="number">
                  <WorkingNumber {...alone} />
                </td>
              </tr>
              <WorkingRow sources={[turn.source, alone.source]} columns={4} />
            </Fragment>
          );
        })}
        {still > 0 ? (
          <tr>
            <td class="still-parts" colSpan={4}>
              {words.formats.plural(still, said.still)}
            </td>
          </tr>
        ) : null}
        <tr>
          <th scope="row">{said.together}</th>
          <td class="bar-cell" />
          <td class="number" />
          <td class="number">
            <WorkingNumber {...cells.together} />
          </td>
        </tr>
        <WorkingRow sources={[cells.together.source]} columns={4} />
      </tbody>
      <tfoot>
        <tr class="sum">
          <th scope="row">{said.whole}</th>
          <td class="bar-cell" />
          <td class="number">
            <WorkingNumber {...cells.whole} />
          </td>
          <td class="number">
            <WorkingNumber {...cells.wholeAlone} />
          </td>
        </tr>
        <WorkingRow sources={[cells.whole.source, cells.wholeAlone.source]} columns={4} />
      </tfoot>
    </table>
  );
}

export interface TakenApartProps {
  /** Changes when other runs are compared. */
  readonly runsKey: string;
  readonly before: Run;
  readonly after: Run;
  /** The second of the two seasons: what its numbers are computed from. */
  readonly season: Season;
}

/** The whole difference taken apart, one change at a time: bars and numbers that add up. */
export function TakenApart({ runsKey, before, after, season }: TakenApartProps) {
  const words = useWords();
  const { apart: said, outcomes } = compareWords(words.language);
  const { result, done, of } = useTakenApart(runsKey, before, after);
  const [chosen, setChosen] = useState<OutcomeKey>('leftToFarmUsd');
  const body = () => {
    if (!result) {
      const counts = { done: words.formats.count(done), of: words.formats.count(of) };
      return <p role="status">{fill(said.progress, counts)}</p>;
    }
    if (result.parts.length === 0) return <p>{said.none}</p>;
    const tellable = toldOutcomes(result);
    const moved = offered.filter((key) => tellable.includes(key) && Math.abs(result.whole[key] ?? 0) > 1e-9);
    const outcome = moved.includes(chosen) ? chosen : moved[0];
    if (outcome === undefined) return <p>{said.untold}</p>;
    return (
      <>
        <p class="caption">{said.caption}</p>
        <ChoiceRow
          label={said.outcome}
          options={moved.map((value) => ({ value, label: outcomes[value] }))}
          value={outcome}
          onChoose={setChosen}
        />
        <PartsTable apart={result} outcome={outcome} season={season} />
        <p class="caption">{result.parts.length === 1 ? said.one : said.togetherMeans}</p>
      </>
    );
  };
  return (
    <section class="taken-apart" aria-labelledby="apart">
      <h2 id="apart">{said.heading}</h2>
      {body()}
    </section>
  );
}
