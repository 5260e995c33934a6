import { useWords } from '../../../../language/words.ts';
import { lessonSeason } from '../../../../lessons/lesson-season.ts';
import { kilogramsFromPounds } from '../../../../model/units.ts';
import type { HandoutProps } from './handout-words.ts';

/** Digits of the gin's code on a tag; the bale's own follow. */
const ginDigits = 5;

/** A bale's tag and its class record, taken apart. */
export function TagHandout({ words: { own }, told }: HandoutProps) {
  const { formats } = useWords();
  const { tag } = own;
  const first = told.season.classing?.classed[0];
  // Bales of the thirties had no tag.
  const bale = first?.tag ? first : lessonSeason().classing!.classed[0]!;
  const { reading } = bale;
  const digits = bale.tag ?? '';
  const rows = [
    [tag.net, formats.mass(kilogramsFromPounds(bale.netLb), 0).text, tag.meansNet],
    [tag.color, bale.color, tag.meansColor],
    [tag.leaf, formats.count(bale.leaf), tag.meansLeaf],
    [tag.staple, formats.count(bale.staple32nds), tag.meansStaple],
    [tag.micronaire, formats.micronaire(reading.micronaire).text, tag.meansMicronaire],
    [tag.strength, formats.strength(reading.strengthGPerTex).text, tag.meansStrength],
    [tag.uniformity, formats.percent(reading.uniformityPercent), tag.meansUniformity],
  ] as const;
  return (
    <>
      <p>{tag.lead}</p>
      <div class="bale-tag-drawn">
        <p>
          <span class="bale-tag-digits">{digits.slice(0, ginDigits)}</span>
          {tag.gin}
        </p>
        <p>
          <span class="bale-tag-digits">{digits.slice(ginDigits)}</span>
          {tag.bale}
        </p>
      </div>
      <h3>{tag.record}</h3>
      <table class="handout-table">
        <thead>
          <tr>
            <th scope="col">{tag.field}</th>
            <th scope="col">{tag.read}</th>
            <th scope="col">{tag.means}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, read, means]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td class="no-wrap">
                <b>{read}</b>
              </td>
              <td>{means}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <h3>{tag.questions}</h3>
      <ol class="handout-asks">
        {tag.asks.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ol>
      <p class="handout-note">{tag.source}</p>
    </>
  );
}
