import { useWords } from '../../language/words.ts';
import { crushSeed, type OilMillSplit } from '../../model/gin/seed.ts';
import { totalKg } from '../../model/lot.ts';
import type { Season } from '../../model/season.ts';
import { TrustMark } from '../../ui/trust-mark.tsx';
import { oneBaleShare } from './ledger-panel.tsx';

/** What an oil mill makes of the seed that came with one bale. */
export function SeedPanel({ season }: { readonly season: Season }) {
  const { messages, formats } = useWords();
  if (!season.ginning) return null;
  const { seed: words } = messages.cloth;
  const seedKg = totalKg(season.ginning.seedHouse) * oneBaleShare(season);
  const split = crushSeed(seedKg);
  const rows: readonly [string, keyof OilMillSplit][] = [
    [words.oil, 'oilKg'],
    [words.meal, 'mealKg'],
    [words.hulls, 'hullsKg'],
    [words.linters, 'lintersKg'],
    [words.loss, 'lossKg'],
  ];
  return (
    <section class="seed-panel" aria-label={words.heading}>
      <h2>
        {words.heading}
        <TrustMark trust={{ mark: 'memory', source: messages.readings.oilMillShares }} label={words.heading} />
      </h2>
      <table>
        <caption class="caption">{messages.readings.seedOfOneBale}</caption>
        <tbody>
          {rows.map(([name, key]) => (
            <tr key={key}>
              <th scope="row">{name}</th>
              <td class="number">{formats.mass(split[key]).text}</td>
            </tr>
          ))}
          <tr class="sum">
            <th scope="row">{messages.parts.seed}</th>
            <td class="number">{formats.mass(seedKg).text}</td>
          </tr>
        </tbody>
      </table>
    </section>
  );
}
