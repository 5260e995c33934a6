import { useEffect, useMemo, useState } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { problemText } from '../../language/problem-text.ts';
import { useWords } from '../../language/words.ts';
import { farms } from '../../model/farms.ts';
import type { Problem } from '../../model/problem.ts';
import { traceScene } from '../../scene/trace/trace-scene.ts';
import { encodeRun } from '../../statechart/saved-run.ts';
import { InTurn } from '../../ui/in-turn.tsx';
import { OneWorkingOpen } from '../../ui/open-working.tsx';
import { Steady } from '../../ui/steady.tsx';
import { ElsewhereNotes } from '../farm/elsewhere-notes.tsx';
import { lastRun } from '../last-run.ts';
import type { Theme } from '../preferences.ts';
import { hashOf } from '../route.ts';
import { ChooseProject } from './choose-project.tsx';
import { ChooseThrough } from './choose-through.tsx';
import { KeepTrace } from './keep-trace.tsx';
import { StepsBack } from './steps-back.tsx';
import { TraceAnswer } from './trace-answer.tsx';
import { TraceFigure } from './trace-figure.tsx';
import { decodeTrace, encodeTrace, type TraceAsked } from './trace-link.ts';
import { type Traced, throughOf, traceOf } from './trace-of.ts';
import { traceDrawing } from './trace-picture.ts';
import { type TraceWords, useTraceWords } from './use-trace-words.ts';
import { WayForward } from './way-forward.tsx';
import { WhyDiffers } from './why-differs.tsx';
import '../season/workings.css';
import './trace.css';

export interface TracePageProps {
  /** The query of the link. */
  readonly query: string;
  readonly theme: Theme;
}

/** What a sewn thing cost the field, and how far a boll goes. */
export default function TracePage(props: TracePageProps) {
  const { language, messages } = useWords();
  const said = useTraceWords(language);
  return (
    <OneWorkingOpen>
      <main id="main" class="trace-page columns-page" tabIndex={-1}>
        {said ? <TraceView {...props} said={said} /> : <p role="status">{messages.common.loading}</p>}
      </main>
    </OneWorkingOpen>
  );
}

/** What was asked, kept in the address; and the season that is traced through. */
function useAsked(query: string) {
  const decoded = useMemo(() => decodeTrace(query), [query]);
  const open = useMemo(lastRun, []);
  const first = useMemo(() => encodeRun({ scenario: farms[0]!, seed: 1 }), []);
  const [asked, setAsked] = useState<TraceAsked>(() => ({ ...decoded.asked, run: decoded.asked.run ?? open ?? first }));
  const through = useMemo(() => throughOf(asked.run!), [asked.run]);
  const linked = decoded.asked.run !== null || asked.run !== (open ?? first);
  const from = asked.run === open ? 'open' : linked ? 'link' : 'default';
  const link = encodeTrace({ ...asked, run: encodeRun(through.opened.run) });
  const hash = hashOf({ page: 'trace', query: link });
  useEffect(() => {
    if (location.hash !== hash) history.replaceState(history.state, '', hash);
  }, [hash]);
  return {
    asked,
    through,
    from: from as 'open' | 'link' | 'default',
    link: `${location.href.split('#')[0]}${hash}`,
    problems: decoded.problems,
    ask: (some: Partial<TraceAsked>) => setAsked((before) => ({ ...before, ...some })),
  };
}

/** What is traced, by name: '3 × Tote bag', or a length of cloth. */
function nameOf({ project, count, own }: TraceAsked, said: TraceWords, words: ReturnType<typeof useWords>): string {
  const { formats } = words;
  if (project === 'own') return fill(said.ownName, { length: formats.clothLength(own.yards).text });
  const name = said.projects[project];
  return count === 1 ? name : fill(said.many, { n: formats.count(count), project: name });
}

function TraceView({ query, theme, said }: TracePageProps & { readonly said: TraceWords }) {
  const words = useWords();
  const { messages, formats: plain } = words;
  const { asked, through, from, link, problems, ask } = useAsked(query);
  const traced = useMemo(() => traceOf(asked, asked.stated ? null : through.season), [asked, through]);
  const name = nameOf(asked, said, words);
  useEffect(() => {
    document.title = `${said.title}: ${messages.common.product}`;
  }, [said, messages]);
  const isTraced = (found: Traced | readonly Problem[]): found is Traced => 'account' in found;
  return (
    <>
      <div class="trace-head">
        <h1 class="page-title">{said.title}</h1>
        <p class="page-lead">{said.lead}</p>
      </div>
      {problems.length > 0 ? (
        <div role="status" class="address-note">
          <p>{messages.problems.address}</p>
          {problems.map((problem) => (
            <p key={problem.field}>{problemText(problem, messages, plain)}</p>
          ))}
        </div>
      ) : null}
      {asked.stated ? null : <ElsewhereNotes opened={through.opened} />}
      <section class="patch trace-choose" data-cut="2" aria-label={said.choose}>
        <ChooseProject asked={asked} said={said} onAsk={ask} />
        <ChooseThrough through={through} asked={asked} from={from} said={said} onAsk={ask} />
      </section>
      {isTraced(traced) ? (
        <TraceResult traced={traced} asked={asked} name={name} said={said} theme={theme} link={link} onAsk={ask} />
      ) : (
        traced.map((problem) => (
          <p key={problem.field} role="status">
            {problemText(problem, messages, plain)}
          </p>
        ))
      )}
    </>
  );
}

interface TraceResultProps {
  readonly traced: Traced;
  readonly asked: TraceAsked;
  readonly name: string;
  readonly said: TraceWords;
  readonly theme: Theme;
  readonly link: string;
  readonly onAsk: (some: Partial<TraceAsked>) => void;
}

/** Width that the picture is saved in, px. */
const savedWidth = 720;

/** The answer, the picture, the steps beside it, and what is below them. */
function TraceResult({ traced, asked, name, said, theme, link, onAsk }: TraceResultProps) {
  const words = useWords();
  const drawingAt = useMemo(
    () => (width: number, letters: number) => traceDrawing(traced, asked, name, words, said, letters)(width),
    [traced, asked, name, words, said],
  );
  return (
    <>
      <TraceAnswer traced={traced} name={name} said={said} />
      <TraceFigure traced={traced} name={name} said={said} theme={theme} drawingAt={drawingAt} />
      <InTurn as="div" class="trace-turn" scene={theme} of={traced}>
        <Steady on={[traced, said, words, asked.run]}>
          <StepsBack traced={traced} said={said} run={asked.run} />
        </Steady>
      </InTurn>
      <KeepTrace
        traced={traced}
        said={said}
        theme={theme}
        link={link}
        sceneOf={() => traceScene(drawingAt(savedWidth, 1), savedWidth)}
      />
      <InTurn as="div" class="trace-turn" scene={theme}>
        <WayForward traced={traced} asked={asked} said={said} onAsk={onAsk} />
      </InTurn>
      <InTurn as="div" class="trace-turn" scene={theme} of={traced}>
        <Steady on={[traced, said, words]}>
          <WhyDiffers traced={traced} said={said} />
        </Steady>
      </InTurn>
    </>
  );
}
