import { useEffect, useId, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { fill } from '../language/fill.ts';
import { useWords } from '../language/words.ts';
import { useOpenWorking, workingPanelId } from './open-working.tsx';
import { WorkingBody } from './working-body.tsx';
import type { WorkingSource, WorkingText } from './working-source.ts';

type Sources = readonly (WorkingSource | undefined)[];

/** The one of these numbers whose working is open. */
function useOpenSource(sources: Sources): WorkingSource | null {
  const open = useOpenWorking();
  if (!open || open.key === null) return null;
  return sources.find((source) => source?.key === open.key) ?? null;
}

/** The place below a line for the working of one of its numbers; nothing while none is open. */
export function WorkingPlace({ sources }: { readonly sources: Sources }) {
  const source = useOpenSource(sources);
  return source ? <WorkingPanel key={source.key} source={source} /> : null;
}

/** The same below an entry of a list of terms. */
export function WorkingDefinition({ source: asked }: { readonly source: WorkingSource | undefined }) {
  const source = useOpenSource([asked]);
  if (!source) return null;
  return (
    <dd class="working-beside">
      <WorkingPanel key={source.key} source={source} />
    </dd>
  );
}

/** The same below a row of a table, as a row over all its columns. */
export function WorkingRow({ sources, columns }: { readonly sources: Sources; readonly columns: number }) {
  const source = useOpenSource(sources);
  if (!source) return null;
  return (
    <tr class="working-row">
      <td colSpan={columns}>
        <WorkingPanel key={source.key} source={source} />
      </td>
    </tr>
  );
}

function WorkingPanel({ source }: { readonly source: WorkingSource }) {
  const words = useWords();
  const { messages } = words;
  const open = useOpenWorking();
  const [text, setText] = useState<WorkingText | null>(null);
  const { key, on, load } = source;
  const place = useRef<HTMLElement>(null);
  const isShown = text !== null;
  const titleId = useId();
  const heading = fill(messages.workings.heading, { name: source.name });
  useEffect(() => {
    let left = false;
    load().then((loaded) => {
      if (left) return;
      setText(loaded);
      if (loaded) open?.say(`${heading}. ${loaded.headings.result}: ${loaded.result}`);
    });
    return () => {
      left = true;
    };
  }, [key, on, words]);
  // The foot of the page may lie over what has just been opened.
  useLayoutEffect(() => {
    if (isShown) place.current?.scrollIntoView({ block: 'nearest' });
  }, [isShown]);
  return (
    <section ref={place} id={workingPanelId} class="patch working-panel" data-cut="3" aria-labelledby={titleId}>
      <div class="working-head">
        <p id={titleId} class="working-title">
          {heading}
        </p>
        <button type="button" class="working-close" onClick={open?.close}>
          {messages.workings.close}
        </button>
      </div>
      {text ? <WorkingBody text={text} /> : null}
    </section>
  );
}
