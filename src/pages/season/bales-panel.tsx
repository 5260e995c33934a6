import { Fragment } from 'preact';
import { useState } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import type { ClassedBale } from '../../model/classing/class-bales.ts';
import type { Season } from '../../model/season.ts';
import { kilogramsFromPounds } from '../../model/units.ts';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingRow } from '../../ui/working-place.tsx';
import type { BaleKey } from '../../workings/bale.ts';
import { workingSource } from './working-source.ts';

const baleKeys: readonly BaleKey[] = [
  'net',
  'gross',
  'color',
  'leaf',
  'staple',
  'micronaire',
  'strength',
  'premium',
  'value',
];

/** Rows shown before the rest is folded away. */
const firstRows = 6;

/** The class record of every bale: what is on the tag, what was read, what it is worth. */
export function BalesPanel({ season }: { readonly season: Season }) {
  const { messages, formats } = useWords();
  const [unfolded, setUnfolded] = useState(false);
  const bales = season.classing?.classed ?? [];
  if (bales.length === 0) return null;
  const { bale: words } = messages.cloth;
  const rest = bales.slice(firstRows);
  return (
    <section class="bales-panel" aria-label={words.heading}>
      <h2>{words.heading}</h2>
      <BaleTable
        season={season}
        bales={bales.slice(0, firstRows)}
        caption={formats.plural(bales.length, words.bales)}
      />
      {rest.length > 0 ? (
        <details onToggle={({ currentTarget }) => setUnfolded(currentTarget.open)}>
          <summary>
            {messages.common.more} ({formats.count(rest.length)})
          </summary>
          {/* Sixty rows of numbers are half of the page's elements: they come when they are asked for. */}
          {unfolded ? <BaleTable season={season} bales={rest} caption={words.heading} /> : null}
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

interface BaleTableProps {
  readonly season: Season;
  readonly bales: readonly ClassedBale[];
  readonly caption: string;
}

/** The tag, nine numbers and the calls. */
const columnCount = 11;

function BaleTable({ season, bales, caption }: BaleTableProps) {
  const all = useWords();
  const { messages, formats } = all;
  const { bale: words } = messages.cloth;
  const { readings } = messages.fibre;
  const pounds = (lb: number) => formats.mass(kilogramsFromPounds(lb), 0).text;
  const names: Readonly<Record<BaleKey, string>> = {
    net: words.net,
    gross: words.gross,
    color: words.color,
    leaf: words.leaf,
    staple: words.staple,
    micronaire: readings.micronaire,
    strength: readings.strength,
    premium: words.premium,
    value: words.value,
  };
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
          {bales.map((bale) => {
            const source = (key: BaleKey) =>
              workingSource(
                season,
                all,
                { topic: 'bale', number: bale.number, key },
                `${names[key]}, ${bale.tag ?? bale.mark}`,
              );
            const cell = (key: BaleKey, text: string) => (
              <td class="number">
                <WorkingNumber text={text} source={source(key)} />
              </td>
            );
            return (
              <Fragment key={bale.number}>
                <tr>
                  <th scope="row">{bale.tag ?? bale.mark}</th>
                  {cell('net', pounds(bale.netLb))}
                  {cell('gross', pounds(bale.grossLb))}
                  {cell('color', bale.byEye ? bale.byEye.colorName : bale.color)}
                  {cell('leaf', formats.count(bale.leaf))}
                  {cell('staple', bale.byEye ? bale.byEye.staple.sixteenthsName : `${bale.staple32nds}/32`)}
                  {cell('micronaire', formats.micronaire(bale.reading.micronaire).text)}
                  {cell('strength', formats.number(bale.reading.strengthGPerTex, 1))}
                  <td>
                    {bale.extraneous
                      .map(
                        ({ kind, level }) =>
                          `${words.extraneous[kind]}, ${words.levels[level === 1 ? 'light' : 'heavy']}`,
                      )
                      .join('; ')}
                  </td>
                  {cell('premium', formats.number(bale.premiumPoints, 0))}
                  {cell('value', formats.money(bale.valueUsd))}
                </tr>
                <WorkingRow sources={baleKeys.map(source)} columns={columnCount} />
              </Fragment>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}
