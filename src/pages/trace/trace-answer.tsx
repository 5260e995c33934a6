import { useWords } from '../../language/words.ts';
import { Filled } from '../../ui/filled.tsx';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingPlace } from '../../ui/working-place.tsx';
import type { TraceKey } from '../../workings/trace-back.ts';
import { BollPatch } from './boll-patch.tsx';
import type { Traced } from './trace-of.ts';
import { traceSource } from './trace-source.ts';
import { backText, traceFormats } from './trace-text.ts';
import type { TraceWords } from './use-trace-words.ts';

interface TraceAnswerProps {
  readonly traced: Traced;
  readonly name: string;
  readonly said: TraceWords;
}

/** The answer in one line, and the patch of one boll below it. */
export function TraceAnswer({ traced, name, said }: TraceAnswerProps) {
  const words = useWords();
  const formats = traceFormats(words, said);
  const { account, familiar } = traced;
  const number = (key: TraceKey) => {
    const text = backText(key, account.cases.middle, familiar.id, formats);
    const source = traceSource(`answer/${key}`, said.figures[key], traced, words, async () => {
      const { traceWorking } = await import('../../workings/trace-back.ts');
      return traceWorking(account, 'middle', key, familiar.id, text);
    });
    return { source, node: <WorkingNumber text={text} source={source} /> };
  };
  const [bolls, field] = [number('bolls'), number('field')];
  return (
    <div class="trace-answer">
      <p class="trace-headline">
        <Filled template={said.headline} parts={{ project: name, bolls: bolls.node, field: field.node }} />
      </p>
      <WorkingPlace sources={[bolls.source, field.source]} />
      <BollPatch traced={traced} said={said} />
    </div>
  );
}
