import { questionOf } from '../../../compare/questions/all-questions.ts';
import { type Question, runAsked } from '../../../compare/questions/question.ts';
import { useWords } from '../../../language/words.ts';
import type { Stop } from '../../../teach/plan/stop.ts';
import { answerText as askAnswerText } from '../../ask/answer-text.ts';
import { useSeasons } from '../../compare/use-seasons.ts';
import { answerText } from '../../season/predict-text.ts';
import type { TeachWords } from '../use-teach-words.ts';
import { seasonOfPlan } from './season-of-plan.ts';
import { showWords } from './show-words.ts';
import { whyLines } from './why-line.ts';

export interface AnswerNoteProps {
  readonly stop: Stop;
  readonly season: string;
  readonly teach: TeachWords;
}

/** The answer of a stop with its reasons, for the speaker; nothing where a stop has none. */
export function AnswerNote({ stop: { aim }, season, teach }: AnswerNoteProps) {
  const words = useWords();
  const said = showWords(words.language);
  if (aim.kind === 'question') return <QuestionNote question={questionOf(aim.question)!} teach={teach} />;
  if (aim.kind === 'bench') {
    const { answer, why } = teach.bench[aim.bench];
    return <Lines lines={[answer, ...why]} />;
  }
  if (aim.kind !== 'station') return null;
  const { station } = aim;
  const run = seasonOfPlan(season);
  return <Lines lines={[answerText(run, station, words)?.text ?? said.noAnswer, ...whyLines(run, station, words)]} />;
}

function QuestionNote({ question, teach: { asked } }: { readonly question: Question; readonly teach: TeachWords }) {
  const words = useWords();
  const { seasons } = useSeasons(
    question.id,
    question.runs.map((run) => () => runAsked(run)),
  );
  if (!seasons) return null;
  const said = asked.questions[question.id]!;
  return <Lines lines={askAnswerText(question.answer(seasons), question.runs[0]!, said, words, asked).sentences} />;
}

function Lines({ lines }: { readonly lines: readonly string[] }) {
  const said = showWords(useWords().language);
  return (
    <>
      <dt>{said.answer}</dt>
      <dd>{lines.map((line, at) => (at === 0 ? <b key={line}>{line}</b> : <p key={line}>{line}</p>))}</dd>
    </>
  );
}
