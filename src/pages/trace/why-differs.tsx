import { Fragment } from 'preact';
import { useWords } from '../../language/words.ts';
import type { LinkDifference } from '../../model/trace/why-it-differs.ts';
import { Filled } from '../../ui/filled.tsx';
import { roundToAdd } from '../../ui/round-to-add.ts';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingPlace, WorkingRow } from '../../ui/working-place.tsx';
import type { WorkingSource } from '../../ui/working-source.ts';
import type { Traced } from './trace-of.ts';
import { traceSource } from './trace-source.ts';
import type { TraceWords } from './use-trace-words.ts';

const loadWorkings = () => import('../../workings/trace-differences.ts');

/** Why a season asks for more or fewer bolls than the stated averages: link by link, adding up. */
export function WhyDiffers({ traced, said }: { readonly traced: Traced; readonly said: TraceWords }) {
  const words = useWords();
  const { formats } = words;
  const { differences, account } = traced;
  const [first, last] = [differences[0], differences.at(-1)];
  if (!first || !last) return null;
  const signed = (bolls: number) => (bolls > 0 ? `+${formats.count(bolls)}` : formats.count(bolls));
  const total = Math.round(last.bollsAfter - first.bollsBefore);
  const whole = roundToAdd(
    differences.map(({ bollsBefore, bollsAfter }) => [bollsAfter - bollsBefore]),
    [total],
    0,
  );
  const textOf = (link: LinkDifference['link'], value: number) =>
    link === 'bollGrams' ? formats.smallMass(value, 2).text : formats.percent(100 * value);
  const sumText = signed(total);
  const sumSource = traceSource('differs/sum', said.differs.sum, traced, words, async () =>
    (await loadWorkings()).sumWorking(differences, sumText),
  );
  const endOf = (key: string, name: string, of: LinkDifference, bolls: number, side: 'bollsBefore' | 'bollsAfter') => {
    const text = formats.count(bolls);
    const source = traceSource(`differs/${key}`, name, traced, words, async () =>
      (await loadWorkings()).endWorking(of, side, text),
    );
    return { text, source };
  };
  const ends = [
    endOf('stated', said.differs.stated, first, first.bollsBefore, 'bollsBefore'),
    endOf('own', said.differs.own, last, last.bollsAfter, 'bollsAfter'),
  ] as const;
  return (
    <section class="trace-differs" aria-labelledby="trace-differs">
      <h2 id="trace-differs">{said.differs.heading}</h2>
      <p>
        <Filled
          template={said.differs.lead}
          parts={{
            stated: <WorkingNumber text={ends[0].text} source={ends[0].source} />,
            own: <WorkingNumber text={ends[1].text} source={ends[1].source} />,
          }}
        />
      </p>
      <WorkingPlace sources={ends.map(({ source }) => source)} />
      <table aria-labelledby="trace-differs">
        <thead>
          <tr>
            <th scope="col">{said.differs.link}</th>
            <th scope="col" class="number">
              {said.differs.stated}
            </th>
            <th scope="col" class="number">
              {said.differs.own}
            </th>
            <th scope="col" class="number">
              {said.differs.bolls}
            </th>
          </tr>
        </thead>
        <tbody>
          {differences.map((difference, i) => {
            const { link, stated, own } = difference;
            const name = said.differs.links[link];
            const texts = [textOf(link, stated), textOf(link, own), signed(whole[i]![0]!)] as const;
            const heads = [said.differs.stated, said.differs.own, said.differs.bolls] as const;
            const workings = [
              async () => (await loadWorkings()).statedWorking(difference, texts[0]),
              async () => (await loadWorkings()).ownWorking(account, difference, texts[1]),
              async () => (await loadWorkings()).differenceWorking(difference, texts[2]),
            ];
            const sources: WorkingSource[] = workings.map((working, at) =>
              traceSource(`differs/${link}/${at}`, `${name}, ${heads[at]}`, traced, words, working),
            );
            return (
              <Fragment key={link}>
                <tr>
                  <th scope="row">{name}</th>
                  {texts.map((text, at) => (
                    <td key={heads[at]} class="number">
                      <WorkingNumber text={text} source={sources[at]} />
                    </td>
                  ))}
                </tr>
                <WorkingRow sources={sources} columns={4} />
              </Fragment>
            );
          })}
        </tbody>
        <tfoot>
          <tr class="sum">
            <th scope="row" colSpan={3}>
              {said.differs.sum}
            </th>
            <td class="number">
              <WorkingNumber text={sumText} source={sumSource} />
            </td>
          </tr>
          <WorkingRow sources={[sumSource]} columns={4} />
        </tfoot>
      </table>
    </section>
  );
}
