import { Fragment } from 'preact';
import { useWords } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import { TrustMark } from '../../ui/trust-mark.tsx';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingRow } from '../../ui/working-place.tsx';
import { workingSource } from '../season/working-source.ts';
import { cardFigures } from './card-content.ts';
import { cardWords } from './card-words.ts';

/** The card's figures as a table whose numbers open their workings. */
export function CardTable({ season }: { readonly season: Season }) {
  const all = useWords();
  const words = cardWords(all.language);
  return (
    <table class="card-table">
      <caption>{words.rests}</caption>
      <tbody>
        {cardFigures(season, all).map(({ station, key, label, text, trust }) => {
          const source = workingSource(season, all, { topic: 'reading', station, key }, label, 'card/');
          return (
            <Fragment key={`${station}/${key}`}>
              <tr>
                <th scope="row">{label}</th>
                <td class="number">
                  <WorkingNumber text={text} source={source} />
                  {trust ? <TrustMark trust={trust} label={label} /> : null}
                </td>
              </tr>
              <WorkingRow sources={[source]} columns={2} />
            </Fragment>
          );
        })}
      </tbody>
    </table>
  );
}
