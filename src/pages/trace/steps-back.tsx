import { useWords } from '../../language/words.ts';
import { type TraceCase, traceCases } from '../../model/trace/chain-averages.ts';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingPlace } from '../../ui/working-place.tsx';
import type { WorkingSource } from '../../ui/working-source.ts';
import type { TraceKey } from '../../workings/trace-back.ts';
import { hashOf } from '../route.ts';
import type { Traced } from './trace-of.ts';
import { traceSource } from './trace-source.ts';
import { backText, traceFormats } from './trace-text.ts';
import type { TraceWords } from './use-trace-words.ts';

/** The steps of the way back, each with its figures: the first always in sight. */
const backSteps = {
  cloth: ['cloth', 'clothArea', 'batting'],
  yarn: ['yarn', 'yarnLength'],
  lint: ['lint', 'bale', 'fibres'],
  seedCotton: ['seedCotton'],
  bolls: ['bolls'],
  plants: ['plants'],
  field: ['field', 'familiar', 'row'],
  water: ['rain', 'irrigation'],
  seed: ['seed', 'oil', 'meal', 'hulls', 'linters'],
  ginWaste: ['ginWaste'],
  work: ['handDays', 'machineMinutes'],
} as const satisfies Readonly<Record<string, readonly TraceKey[]>>;
type BackStep = keyof typeof backSteps;
const backStepIds = Object.keys(backSteps) as readonly BackStep[];

interface StepProps {
  readonly traced: Traced;
  readonly said: TraceWords;
}

/** One figure: its name, the stated case large, the other two beside it, and the place for a working. */
function Figure({ traced, said, figure }: StepProps & { readonly figure: TraceKey }) {
  const words = useWords();
  const formats = traceFormats(words, said);
  const { account, familiar } = traced;
  const textOf = (at: TraceCase) =>
    figure === 'familiar' && at !== 'middle'
      ? formats.times(account.cases[at].squareMetres, familiar.id)
      : backText(figure, account.cases[at], familiar.id, formats);
  const name = said.figures[figure];
  const sourceOf = (at: TraceCase): WorkingSource =>
    traceSource(`${figure}/${at}`, name, traced, words, async () => {
      const { traceWorking } = await import('../../workings/trace-back.ts');
      return traceWorking(account, at, figure, familiar.id, textOf(at));
    });
  const sources = Object.fromEntries(traceCases.map((at) => [at, sourceOf(at)])) as Record<TraceCase, WorkingSource>;
  const ranged = textOf('low') !== textOf('high');
  return (
    <div class="trace-figure">
      <p class="trace-figure-name">{name}</p>
      <p class="trace-value">
        <WorkingNumber text={textOf('middle')} source={sources.middle} />
      </p>
      {ranged ? (
        <p class="trace-range">
          <WorkingNumber text={textOf('low')} source={sources.low} />
          <span>{said.rangeJoin}</span>
          <WorkingNumber text={textOf('high')} source={sources.high} />
        </p>
      ) : null}
      <WorkingPlace sources={traceCases.map((at) => sources[at])} />
    </div>
  );
}

function Step({ traced, said, id }: StepProps & { readonly id: BackStep }) {
  const [first, ...others] = (backSteps[id] as readonly TraceKey[]).filter(
    (figure) => figure !== 'batting' || traced.account.cases.middle.battingKg > 0,
  );
  const { name, line } = said.steps[id];
  return (
    <li class="trace-step" data-step={id}>
      <h3>{name}</h3>
      <p class="trace-line">{line}</p>
      <Figure traced={traced} said={said} figure={first!} />
      {id === 'water' || id === 'field' || id === 'work'
        ? others.map((figure) => <Figure key={figure} traced={traced} said={said} figure={figure} />)
        : null}
      {others.length > 0 && !(id === 'water' || id === 'field' || id === 'work') ? (
        <details>
          <summary>{said.more}</summary>
          {others.map((figure) => (
            <Figure key={figure} traced={traced} said={said} figure={figure} />
          ))}
        </details>
      ) : null}
    </li>
  );
}

/** The way from the cloth to the field, step by step. */
export function StepsBack({ traced, said, run }: StepProps & { readonly run: string | null }) {
  return (
    <section class="trace-back" aria-labelledby="trace-back">
      <h2 id="trace-back">{said.back}</h2>
      <p class="caption">{said.backNote}</p>
      {traced.season && run ? (
        <p class="caption no-print">
          {said.ownNote} <a href={hashOf({ page: 'season', station: 'classing', query: run })}>{said.ownDoubt}</a>.
        </p>
      ) : null}
      <ol class="trace-steps">
        {backStepIds.map((id) => (
          <Step key={id} traced={traced} said={said} id={id} />
        ))}
      </ol>
    </section>
  );
}
