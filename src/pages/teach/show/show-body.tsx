import { questionOf } from '../../../compare/questions/all-questions.ts';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { decodeRun } from '../../../statechart/saved-run.ts';
import type { Plan } from '../../../teach/plan/plan.ts';
import { stopOf } from '../../../teach/plan/stop-list.ts';
import type { ShowStep } from '../../../teach/show/show-steps.ts';
import { answerText } from '../../season/predict-text.ts';
import { PlanStrip } from '../plan-strip.tsx';
import { stopText } from '../stop-text.ts';
import type { TeachWords } from '../use-teach-words.ts';
import { ScrapPicture } from './scrap-picture.tsx';
import { seasonOfPlan } from './season-of-plan.ts';
import { ShowAnswer } from './show-answer.tsx';
import { AskBlock, ShowAsk } from './show-ask.tsx';
import { showWords } from './show-words.ts';

export interface ShowBodyProps {
  readonly plan: Plan;
  readonly step: ShowStep;
  readonly teach: TeachWords;
  /** What the class guessed, by stop. */
  readonly guesses: Readonly<Record<string, number>>;
  readonly onGuess: (stop: string, value: number) => void;
  readonly onNext: () => void;
}

/** A question longer than this gets smaller letters, characters. */
const longQuestion = 48;
/** No more answers are listed at the end, so that they can be read. */
const mostAnswers = 5;

/** What a plan is about, before it begins. */
function TitleStep({ plan, teach }: Pick<ShowBodyProps, 'plan' | 'teach'>) {
  const { language, formats } = useWords();
  const said = showWords(language);
  const { scenario, seed } = decodeRun(plan.season).run;
  return (
    <>
      <h1 class="show-title">{teach.said.focuses[plan.focus]}</h1>
      <PlanStrip plan={plan} />
      <p>{formats.plural(plan.minutes, said.minutes)}</p>
      <p>{fill(said.farm, { farm: scenario.name[language], seed: formats.plain(seed).text })}</p>
    </>
  );
}

/** The answers that the season gave to what was asked, for the end. */
function Answers({ plan }: Pick<ShowBodyProps, 'plan'>) {
  const words = useWords();
  const said = showWords(words.language);
  const season = seasonOfPlan(plan.season);
  const lines = plan.stops.flatMap(({ id }) => {
    const aim = stopOf(id)?.aim;
    const answer = aim?.kind === 'station' ? answerText(season, aim.station, words) : null;
    return aim?.kind === 'station' && answer ? [{ name: words.messages.stations[aim.station].name, answer }] : [];
  });
  if (lines.length === 0) return null;
  return (
    <>
      <h2>{said.answers}</h2>
      <dl class="show-answers">
        {lines.slice(-mostAnswers).map(({ name, answer }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{answer.text}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}

/** One step on the wall. */
export function ShowBody({ plan, step, teach, guesses, onGuess, onNext }: ShowBodyProps) {
  const words = useWords();
  const said = showWords(words.language);
  if (step.phase === 'title') return <TitleStep plan={plan} teach={teach} />;
  const stop = stopOf(step.stop.id)!;
  const { aim } = stop;
  const text = stopText(stop, plan.season, words, teach);
  return (
    <>
      <h1 data-long={text.ask.length > longQuestion ? '' : undefined}>{text.ask}</h1>
      {aim.kind === 'hands' ? (
        <div class="show-hands">
          <ol class="show-do">
            {text.steps.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ol>
          <div class="show-have">
            <h2>{said.have}</h2>
            <ul>
              {stop.materials.map((id) => (
                <li key={id}>{teach.said.stops.materials[id]}</li>
              ))}
            </ul>
          </div>
        </div>
      ) : null}
      {aim.kind === 'talk' && aim.talk === 'recap' ? <Answers plan={plan} /> : null}
      {aim.kind === 'lesson' && text.opens ? (
        <p>
          <a
            class="patch show-lesson"
            data-cut="1"
            data-ink="weld"
            href={text.opens.href}
            target="_blank"
            rel="noopener"
          >
            {said.openLesson}
          </a>
        </p>
      ) : null}
      {step.phase === 'ask' && aim.kind === 'station' ? (
        <ShowAsk
          station={aim.station}
          guess={guesses[stop.id] ?? null}
          onGuess={(value) => onGuess(stop.id, value)}
          onNext={onNext}
        />
      ) : null}
      {step.phase === 'ask' && aim.kind === 'question' ? (
        <AskBlock station={questionOf(aim.question)!.station} />
      ) : null}
      {step.phase === 'ask' && aim.kind === 'bench' ? <AskBlock station="weaving" /> : null}
      {aim.kind === 'talk' && aim.talk === 'opening' ? <ScrapPicture /> : null}
      {step.phase === 'see' ? (
        <ShowAnswer key={stop.id} stop={stop} season={plan.season} teach={teach} guess={guesses[stop.id] ?? null} />
      ) : null}
    </>
  );
}
