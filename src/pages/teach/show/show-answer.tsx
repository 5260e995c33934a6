import { useMemo } from 'preact/hooks';
import { type BenchQuestionId, benchQuestionOf } from '../../../compare/bench-questions.ts';
import { questionOf } from '../../../compare/questions/all-questions.ts';
import { type Question, runAsked } from '../../../compare/questions/question.ts';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { workBench } from '../../../model/bench/work-bench.ts';
import type { StationId } from '../../../model/station.ts';
import { predictions } from '../../../predict/predictions.ts';
import type { Stop } from '../../../teach/plan/stop.ts';
import { answerText as askAnswerText } from '../../ask/answer-text.ts';
import { useSeasons } from '../../compare/use-seasons.ts';
import { answerText, guessQuantity } from '../../season/predict-text.ts';
import type { TeachWords } from '../use-teach-words.ts';
import { BenchSide } from './bench-side.tsx';
import { seasonOfPlan } from './season-of-plan.ts';
import { ShowScene } from './show-scene.tsx';
import { showWords } from './show-words.ts';
import { SideBars } from './side-bars.tsx';
import { firstWhy } from './why-line.ts';

export interface ShowAnswerProps {
  readonly stop: Stop;
  readonly season: string;
  readonly teach: TeachWords;
  /** What the class guessed; null where nobody put it in. */
  readonly guess: number | null;
}

/** The answer of a stop on the wall: worked out here and now, with its scene or picture. */
export function ShowAnswer({ stop: { aim }, season, teach, guess }: ShowAnswerProps) {
  if (aim.kind === 'station') return <StationAnswer station={aim.station} season={season} guess={guess} />;
  if (aim.kind === 'question') return <QuestionAnswer question={questionOf(aim.question)!} teach={teach} />;
  return aim.kind === 'bench' ? <BenchAnswer question={aim.bench} teach={teach} /> : null;
}

/** A longer number gets smaller letters, characters with its unit. */
const shortNumber = 5;

interface StationAnswerProps {
  readonly station: StationId;
  readonly season: string;
  readonly guess: number | null;
}

function StationAnswer({ station, season: query, guess }: StationAnswerProps) {
  const words = useWords();
  const said = showWords(words.language);
  const season = seasonOfPlan(query);
  const answer = answerText(season, station, words);
  return (
    <div class="show-see">
      <div class="show-said">
        <p class="show-number" data-long={answer && answer.text.length > shortNumber ? '' : undefined}>
          {answer?.text ?? said.noAnswer}
        </p>
        {guess === null ? null : (
          <p class="show-guess">
            {fill(said.guessed, { guess: guessQuantity(predictions[station].quantity, guess, words).text })}
          </p>
        )}
        <p>{firstWhy(season, station, words)}</p>
      </div>
      <ShowScene season={season} station={station} />
    </div>
  );
}

function QuestionAnswer({ question, teach: { asked } }: { readonly question: Question; readonly teach: TeachWords }) {
  const words = useWords();
  const { formats } = words;
  const { seasons, done } = useSeasons(
    question.id,
    question.runs.map((run) => () => runAsked(run)),
  );
  const answer = useMemo(() => (seasons ? question.answer(seasons) : null), [seasons, question]);
  if (!answer)
    return (
      <p role="status">{fill(asked.working, { done: formats.count(done), of: formats.count(question.runs.length) })}</p>
    );
  const said = asked.questions[question.id]!;
  const { sentences } = askAnswerText(answer, question.runs[0]!, said, words, asked);
  return (
    <>
      <p class="show-verdict">{sentences[0]}</p>
      <SideBars answer={answer} asked={asked} question={question.id} />
    </>
  );
}

function BenchAnswer({ question, teach }: { readonly question: BenchQuestionId; readonly teach: TeachWords }) {
  const { a, b } = benchQuestionOf[question];
  const benches = useMemo(() => [workBench(a), workBench(b)], [a, b]);
  return (
    <>
      <p class="show-verdict">{teach.bench[question].answer}</p>
      <div class="show-sides">
        {benches.map((bench) => (
          <BenchSide key={bench === benches[0]} question={question} bench={bench} />
        ))}
      </div>
    </>
  );
}
