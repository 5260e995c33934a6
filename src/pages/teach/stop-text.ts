import { benchQuestionOf } from '../../compare/bench-questions.ts';
import type { Words } from '../../language/words.ts';
import { encodeBench } from '../../statechart/saved-bench.ts';
import type { Stop } from '../../teach/plan/stop.ts';
import { hashOf } from '../route.ts';
import type { TeachWords } from './use-teach-words.ts';

/** A stop in words: what it is called, what to do and ask, and the page it opens. */
export interface StopText {
  readonly title: string;
  readonly kind: string;
  readonly steps: readonly string[];
  readonly ask: string;
  readonly usual: string;
  readonly opens: { readonly href: string; readonly label: string } | null;
}

/**
 * Words of a stop.
 * @param season the link's query of the plan's season
 */
export function stopText({ aim }: Stop, season: string, { messages }: Words, teach: TeachWords): StopText {
  const { said } = teach;
  const kind = said.kinds[aim.kind];
  switch (aim.kind) {
    case 'talk':
      return { ...said.stops.talk[aim.talk], kind, opens: null };
    case 'hands':
      return { ...said.stops.hands[aim.hands], kind, opens: null };
    case 'station': {
      const href = hashOf({ page: 'season', station: aim.station, query: season });
      return {
        title: messages.stations[aim.station].name,
        kind,
        steps: said.stops.steps.station,
        ask: teach.predict.asked[aim.station].question,
        usual: said.stops.station[aim.station],
        opens: { href, label: said.openStation },
      };
    }
    case 'question': {
      const { title } = teach.asked.questions[aim.question]!;
      return {
        title,
        kind,
        steps: said.stops.steps.question,
        ask: title,
        usual: said.stops.question[aim.question]!,
        opens: { href: hashOf({ page: 'ask', id: aim.question }), label: said.openQuestion },
      };
    }
    case 'bench': {
      const { name } = teach.bench[aim.bench];
      const { a, b } = benchQuestionOf[aim.bench];
      return {
        title: name,
        kind,
        steps: said.stops.steps.bench,
        ask: name,
        usual: said.stops.bench[aim.bench],
        opens: {
          href: hashOf({ page: 'bench', query: `${encodeBench({ a, b })}&ask=${aim.bench}` }),
          label: said.openBench,
        },
      };
    }
    case 'lesson':
      return {
        ...said.stops.lesson[aim.lesson]!,
        kind,
        steps: said.stops.steps.lesson,
        opens: { href: hashOf({ page: 'lessons', id: aim.lesson }), label: said.openLesson },
      };
  }
}
