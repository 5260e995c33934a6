import { Fragment } from 'preact';
import { useWords } from '../../language/words.ts';
import { crushSeed, type OilMillSplit } from '../../model/gin/seed.ts';
import { totalKg } from '../../model/lot.ts';
import type { Season } from '../../model/season.ts';
import { Filled } from '../../ui/filled.tsx';
import { TrustMark } from '../../ui/trust-mark.tsx';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingPlace, WorkingRow } from '../../ui/working-place.tsx';
import type { SeedKey } from '../../workings/seed.ts';
import { hashOf } from '../route.ts';
import { followWords } from './follow-words.ts';
import { oneBaleShare } from './ledger-panel.tsx';
import { answerText } from './predict-text.ts';
import { workingSource } from './working-source.ts';

/** What an oil mill makes of the seed that came with one bale. */
export function SeedPanel({ season }: { readonly season: Season }) {
  const all = useWords();
  const { messages, formats } = all;
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
  const said = followWords(all.language);
  const cameSource = workingSource(season, all, { topic: 'seed', key: 'seedKg' }, messages.parts.seed, 'came/');
  const share = answerText(season, 'ginning', all, 'came/share/');
  if (!share) return null;
  const line = (name: string, key: SeedKey, kg: number) => {
    const source = workingSource(season, all, { topic: 'seed', key }, name);
    return (
      <Fragment key={key}>
        <tr class={key === 'seedKg' ? 'sum' : undefined}>
          <th scope="row">{name}</th>
          <td class="number">
            <WorkingNumber text={formats.mass(kg).text} source={source} />
          </td>
        </tr>
        <WorkingRow sources={[source]} columns={2} />
      </Fragment>
    );
  };
  return (
    <section class="seed-panel" aria-label={words.heading}>
      <h2>
        {words.heading}
        <TrustMark trust={{ mark: 'memory', source: messages.readings.oilMillShares }} label={words.heading} />
      </h2>
      <p>
        <Filled
          template={said.seedCame}
          parts={{
            mass: <WorkingNumber text={formats.mass(seedKg).text} source={cameSource} />,
            share: <WorkingNumber text={share.text} source={share.source} />,
          }}
        />{' '}
        <a href={hashOf({ page: 'ask', id: 'where-the-seed-goes' })}>{said.seedAsk}</a>
      </p>
      <WorkingPlace sources={[cameSource, share.source]} />
      <table>
        <caption class="caption">{messages.readings.seedOfOneBale}</caption>
        <tbody>
          {rows.map(([name, key]) => line(name, key, split[key]))}
          {line(messages.parts.seed, 'seedKg', seedKg)}
        </tbody>
      </table>
    </section>
  );
}
