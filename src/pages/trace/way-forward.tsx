import { Fragment } from 'preact';
import { useWords } from '../../language/words.ts';
import { countLimits } from '../../model/trace/facts.ts';
import { startIds } from '../../model/trace/trace-forward.ts';
import { ChoiceRow } from '../../ui/choice-row.tsx';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingRow } from '../../ui/working-place.tsx';
import { forwardKeys } from '../../workings/trace-forward.ts';
import type { TraceAsked } from './trace-link.ts';
import type { Traced } from './trace-of.ts';
import { traceSource } from './trace-source.ts';
import { forwardText, traceFormats } from './trace-text.ts';
import { TypedNumber } from './typed-number.tsx';
import type { TraceWords } from './use-trace-words.ts';

export interface WayForwardProps {
  readonly traced: Traced;
  readonly asked: TraceAsked;
  readonly said: TraceWords;
  readonly onAsk: (some: Partial<TraceAsked>) => void;
}

/** From something that can be counted in the field forward to cloth, and what its lint makes. */
export function WayForward({ traced, asked, said, onAsk }: WayForwardProps) {
  const words = useWords();
  const formats = traceFormats(words, said);
  const { account, forward, pieceLintKg } = traced;
  const { season, averages } = account;
  const row = (key: string, name: string, text: string, source: ReturnType<typeof traceSource>) => (
    <Fragment key={key}>
      <tr>
        <th scope="row">{name}</th>
        <td class="number">
          <WorkingNumber text={text} source={source} />
        </td>
      </tr>
      <WorkingRow sources={[source]} columns={2} />
    </Fragment>
  );
  return (
    <section class="trace-forward" aria-labelledby="trace-forward">
      <h2 id="trace-forward">{said.forward.heading}</h2>
      <p>{said.forward.lead}</p>
      <div class="trace-start">
        <ChoiceRow
          label={said.forward.start}
          options={startIds.map((value) => ({ value, label: said.forward.starts[value] }))}
          value={asked.start}
          onChoose={(start) => onAsk({ start })}
        />
        <TypedNumber
          label={said.forward.count}
          value={asked.startCount}
          limits={{ ...countLimits, unit: '' }}
          whole
          onValue={(startCount) => onAsk({ startCount })}
        />
      </div>
      <div class="trace-tables">
        <table aria-labelledby="trace-forward">
          <tbody>
            {forwardKeys.map((key) => {
              const text = forwardText(key, forward, words, formats);
              const name = said.forward.figures[key];
              return row(
                key,
                name,
                text,
                traceSource(`forward/${key}`, name, traced, words, async () => {
                  const { forwardWorking } = await import('../../workings/trace-forward.ts');
                  return forwardWorking({ season, averages, forward }, key, text);
                }),
              );
            })}
          </tbody>
        </table>
        <table>
          <caption>
            <b>{said.forward.made}</b> <span class="caption">{said.forward.madeNote}</span>
          </caption>
          <tbody>
            {pieceLintKg.map(({ project, kg }) => {
              const pieces = forward.lintKg / kg;
              const text = formats.pieces(pieces);
              const name = said.projects[project];
              return row(
                project,
                name,
                text,
                traceSource(`made/${project}`, name, traced, words, async () => {
                  const { piecesWorking } = await import('../../workings/trace-forward.ts');
                  return piecesWorking(forward.lintKg, kg, text);
                }),
              );
            })}
          </tbody>
        </table>
      </div>
    </section>
  );
}
