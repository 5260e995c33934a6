import { Fragment } from 'preact';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import { TrustMark } from '../../ui/trust-mark.tsx';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingRow } from '../../ui/working-place.tsx';
import type { MoneyKey } from '../../workings/money.ts';
import { workingSource } from './working-source.ts';

/** Who is paid what, line by line, with the year of each price. */
export function MoneyPanel({ season }: { readonly season: Season }) {
  const words = useWords();
  const { messages, formats } = words;
  const { payments, classing } = season;
  if (!payments || !classing) return null;
  const { money } = messages.cloth;
  const bales = classing.classed.length;
  const year = payments.years[0];
  const source = (key: MoneyKey, perBale: boolean) =>
    workingSource(season, words, { topic: 'money', key, perBale }, key === 'left' ? money.left : money.items[key]);
  const cells = (key: MoneyKey, usd: number) => (
    <>
      <td class="number">
        <WorkingNumber text={formats.money(usd, 0)} source={source(key, false)} />
      </td>
      <td class="number">
        <WorkingNumber text={formats.money(usd / bales)} source={source(key, true)} />
      </td>
    </>
  );
  const below = (key: MoneyKey) => <WorkingRow sources={[source(key, false), source(key, true)]} columns={3} />;
  return (
    <section class="money-panel" aria-label={money.heading}>
      <h2>{money.heading}</h2>
      <table>
        <caption class="unseen">{money.heading}</caption>
        <thead>
          <tr>
            <th scope="col">
              <span class="unseen">{money.heading}</span>
            </th>
            <th scope="col" class="number">
              {messages.readings.scales.field}
            </th>
            <th scope="col" class="number">
              {money.perBale}
            </th>
          </tr>
        </thead>
        <tbody>
          {payments.lines.map(({ item, usd, year: priced, mark }) => (
            <Fragment key={item}>
              <tr>
                <th scope="row">
                  {money.items[item]} <span class="caption">{fill(money.year, { year: String(priced) })}</span>
                  <TrustMark
                    trust={{ mark, source: fill(money.year, { year: String(priced) }) }}
                    label={money.items[item]}
                  />
                </th>
                {cells(item, usd)}
              </tr>
              {below(item)}
            </Fragment>
          ))}
          <tr class="sum">
            <th scope="row">{money.left}</th>
            {cells('left', payments.netToFarmUsd)}
          </tr>
          {below('left')}
        </tbody>
      </table>
      <p class="caption">
        {payments.seedAndGin.seedPaysGin ? money.seedPaysGin : money.seedFallsShort}{' '}
        {payments.mixedYears
          ? messages.limits.mixedYears
          : fill(messages.limits.oneYearPrices, { year: String(year ?? '') })}{' '}
        {classing.classed[0]?.basis === 'loanRate' ? messages.limits.pimaPrice : ''}
      </p>
    </section>
  );
}
