import { useWords } from '../../language/words.ts';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingPlace } from '../../ui/working-place.tsx';
import { workOut } from '../../workings/work-out.ts';
import type { Traced } from './trace-of.ts';
import { traceSource } from './trace-source.ts';
import type { TraceWords } from './use-trace-words.ts';

/** The patch that one boll of the season makes, with its working; nothing where the season wove no cloth. */
export function BollPatch({ traced, said }: { readonly traced: Traced; readonly said: TraceWords }) {
  const words = useWords();
  const { season } = traced;
  const inches = season?.sewing?.patchInchesPerBoll ?? null;
  if (!season || inches === null) return null;
  const text = words.formats.length(inches, 2).text;
  const source = traceSource('patch', said.forward.figures.side, traced, words, () => {
    const working = workOut(season, { topic: 'reading', station: 'sewing', key: 'patch' });
    if (!working) throw new RangeError('no patch in this season');
    return working;
  });
  return (
    <div class="trace-patch">
      <p>
        {said.headlineStart} <WorkingNumber text={text} source={source} /> {said.headlineEnd}
      </p>
      <WorkingPlace sources={[source]} />
    </div>
  );
}
