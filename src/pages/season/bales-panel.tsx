import { useWords } from '../../language/words.ts';
import type { ClassedBale } from '../../model/classing/class-bales.ts';
import type { Season } from '../../model/season.ts';
import { kilogramsFromPounds } from '../../model/units.ts';

/** Rows shown before the rest is folded away. */
const firstRows = 6;

/** The class record of every bale: what is on the tag, what was read, what it is worth. */
export function BalesPanel({ season }: { readonly season: Season }) {
  const { messages, formats } = useWords();
  const bales = season.classing?.classed ?? [];
  if (bales.length === 0) return null;
  const { bale: words } = messages.cloth;
  const rest = bales.slice(firstRows);
  return (
    <section class="bales-panel" aria-label={words.heading}>
      <h2>{words.heading}</h2>
      <BaleTable bales={bales.slice(0, firstRows)} caption={formats.plural(bales.length, words.bales)} />
      {rest.length > 0 ? (
        <details>
          <summary>
            {messages.common.more} ({formats.count(rest.length)})
          </summary>
          <BaleTable bales={rest} caption={words.heading} />
        </details>
      ) : null}
      <p class="caption">
        {season.scenario.era === 'thirties'
          ? `${words.noTag}. ${messages.fibre.instrumentToday}: ${messages.fibre.readings.micronaire}, ${messages.fibre.readings.strength}.`
          : words.tagInvented}{' '}
        {words.pointsAre}
      </p>
    </section>
  );
}

function BaleTable({ bales, caption }: { readonly bales: readonly ClassedBale[]; readonly caption: string }) {
  const { messages, formats } = useWords();
  const { bale: words } = messages.cloth;
  const { readings } = messages.fibre;
  const pounds = (lb: number) => formats.mass(kilogramsFromPounds(lb), 0).text;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table that scrolls sideways must be scrollable by keyboard
    <section class="wide-table" aria-label={caption} tabIndex={0}>
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">{bales[0]?.tag === null ? words.gin : words.tag}</th>
            {[
              words.net,
              words.gross,
              words.color,
              words.leaf,
              words.staple,
              readings.micronaire,
              readings.strength,
            ].map((name) => (
              <th key={name} scope="col" class="number">
                {name}
              </th>
            ))}
            <th scope="col">{words.extraneousHead}</th>
            <th scope="col" class="number">
              {words.premium}
            </th>
            <th scope="col" class="number">
              {words.value}
            </th>
          </tr>
        </thead>
        <tbody>
          {bales.map((bale) => (
            <tr key={bale.number}>
              <th scope="row">{bale.tag ?? bale.mark}</th>
              <td class="number">{pounds(bale.netLb)}</td>
              <td class="number">{pounds(bale.grossLb)}</td>
              <td class="number">{bale.byEye ? bale.byEye.colorName : bale.color}</td>
              <td class="number">{formats.count(bale.leaf)}</td>
              <td class="number">{bale.byEye ? bale.byEye.staple.sixteenthsName : `${bale.staple32nds}/32`}</td>
              <td class="number">{formats.micronaire(bale.reading.micronaire).text}</td>
              <td class="number">{formats.number(bale.reading.strengthGPerTex, 1)}</td>
              <td>
                {bale.extraneous
                  .map(
                    ({ kind, level }) => `${words.extraneous[kind]}, ${words.levels[level === 1 ? 'light' : 'heavy']}`,
                  )
                  .join('; ')}
              </td>
              <td class="number">{formats.number(bale.premiumPoints, 0)}</td>
              <td class="number">{formats.money(bale.valueUsd)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
