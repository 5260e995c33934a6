import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import { TrustMark } from '../../ui/trust-mark.tsx';

/** Who is paid what, line by line, with the year of each price. */
export function MoneyPanel({ season }: { readonly season: Season }) {
  const { messages, formats } = useWords();
  const { payments, classing } = season;
  if (!payments || !classing) return null;
  const { money } = messages.cloth;
  const bales = classing.classed.length;
  const year = payments.years[0];
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
            <tr key={item}>
              <th scope="row">
                {money.items[item]} <span class="caption">{fill(money.year, { year: String(priced) })}</span>
                <TrustMark
                  trust={{ mark, source: fill(money.year, { year: String(priced) }) }}
                  label={money.items[item]}
                />
              </th>
              <td class="number">{formats.money(usd, 0)}</td>
              <td class="number">{formats.money(usd / bales)}</td>
            </tr>
          ))}
          <tr class="sum">
            <th scope="row">{money.left}</th>
            <td class="number">{formats.money(payments.netToFarmUsd, 0)}</td>
            <td class="number">{formats.money(payments.netToFarmUsd / bales)}</td>
          </tr>
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
