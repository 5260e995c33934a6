import { type ComponentChildren, createContext, Fragment } from 'preact';
import { useCallback, useContext, useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { fill } from '../language/fill.ts';
import { useWords } from '../language/words.ts';

/** One step or input of a working, in words and units. */
export interface WorkingLine {
  readonly symbol?: string;
  readonly name: string;
  readonly value: string;
  readonly from: string;
  /** Where it was read, as the source is called in print, whatever the reader's language. */
  readonly source?: string;
}

/** A working in words: a formula and what goes in, or steps; and what comes out. */
export interface WorkingText {
  /** MathML made when the app was built; null for a number that many steps lead to. */
  readonly formula: null | {
    readonly shown: string;
    readonly filled: string;
    readonly exact: string;
    readonly headings: { readonly shown: string; readonly filled: string };
  };
  readonly lines: readonly WorkingLine[];
  readonly result: string;
  readonly headings: {
    readonly lines: string;
    readonly step: string;
    readonly value: string;
    readonly result: string;
  };
}

/** What a number needs to open its working. */
export interface WorkingSource {
  /** One for each number on the page. */
  readonly key: string;
  /** What the number is called. */
  readonly name: string;
  /** What it was computed from: when this changes, an open working is worked out again. */
  readonly on: unknown;
  readonly load: () => Promise<WorkingText | null>;
}

interface OpenWorking {
  readonly key: string | null;
  readonly toggle: (key: string, opener: HTMLElement) => void;
  readonly close: () => void;
}
const OpenWorkingContext = createContext<OpenWorking | null>(null);
const panelId = 'working-panel';

/** Keeps at most one working open among the numbers below it. Escape closes it and goes back to its number. */
export function OneWorkingOpen({ children }: { readonly children: ComponentChildren }) {
  const [key, setKey] = useState<string | null>(null);
  const opener = useRef<HTMLElement | null>(null);
  const toggle = useCallback((asked: string, element: HTMLElement) => {
    opener.current = element;
    setKey((open) => (open === asked ? null : asked));
  }, []);
  const close = useCallback(() => {
    setKey(null);
    opener.current?.focus({ preventScroll: true });
  }, []);
  useEffect(() => {
    if (key === null) return;
    const leave = (event: KeyboardEvent) => {
      if (event.key === 'Escape' && !event.defaultPrevented) close();
    };
    document.addEventListener('keydown', leave);
    return () => document.removeEventListener('keydown', leave);
  }, [key, close]);
  const open = useMemo(() => ({ key, toggle, close }), [key, toggle, close]);
  return <OpenWorkingContext.Provider value={open}>{children}</OpenWorkingContext.Provider>;
}

export interface WorkingNumberProps {
  /** The number as it is printed. */
  readonly text: string;
  /** Absent where the page has no working to show; then the number is plain text. */
  readonly source?: WorkingSource | undefined;
}

/** A number that opens its working: a button that looks like the number, with a dashed line under it. */
export function WorkingNumber({ text, source }: WorkingNumberProps) {
  const { messages } = useWords();
  const open = useContext(OpenWorkingContext);
  if (!source || !open) return <Fragment>{text}</Fragment>;
  const isOpen = open.key === source.key;
  return (
    <button
      type="button"
      class="working-number"
      data-working={source.key}
      aria-expanded={isOpen}
      aria-controls={isOpen ? panelId : undefined}
      aria-label={fill(messages.workings.show, { value: text, name: source.name })}
      onClick={(event) => open.toggle(source.key, event.currentTarget)}
    >
      {text}
    </button>
  );
}

type Sources = readonly (WorkingSource | undefined)[];

/** The one of these numbers whose working is open. */
function useOpenSource(sources: Sources): WorkingSource | null {
  const open = useContext(OpenWorkingContext);
  if (!open || open.key === null) return null;
  return sources.find((source) => source?.key === open.key) ?? null;
}

/** The place below a line for the working of one of its numbers; nothing while none is open. */
export function WorkingPlace({ sources }: { readonly sources: Sources }) {
  const source = useOpenSource(sources);
  return source ? <WorkingPanel source={source} /> : null;
}

/** The same below a row of a table, as a row over all its columns. */
export function WorkingRow({ sources, columns }: { readonly sources: Sources; readonly columns: number }) {
  const source = useOpenSource(sources);
  if (!source) return null;
  return (
    <tr class="working-row">
      <td colSpan={columns}>
        <WorkingPanel source={source} />
      </td>
    </tr>
  );
}

function WorkingPanel({ source }: { readonly source: WorkingSource }) {
  const words = useWords();
  const { messages } = words;
  const open = useContext(OpenWorkingContext);
  const [text, setText] = useState<WorkingText | null>(null);
  const { key, on, load } = source;
  useEffect(() => {
    let left = false;
    load().then((loaded) => {
      if (!left) setText(loaded);
    });
    return () => {
      left = true;
    };
  }, [key, on, words]);
  return (
    <section
      id={panelId}
      class="patch working-panel"
      data-cut="3"
      aria-label={fill(messages.workings.heading, { name: source.name })}
    >
      <button type="button" class="working-close" onClick={open?.close}>
        {messages.workings.close}
      </button>
      {text ? <WorkingBody text={text} /> : null}
    </section>
  );
}

/** 'c_1' as a letter with its index. */
function Letter({ name }: { readonly name: string }) {
  const [letter, index] = name.split('_');
  return (
    <i class="working-symbol">
      {letter}
      {index === undefined ? null : <sub>{index}</sub>}
    </i>
  );
}

function WorkingBody({ text }: { readonly text: WorkingText }) {
  const { formula, lines, headings } = text;
  return (
    <>
      {formula ? (
        <>
          <Formula heading={formula.headings.shown} mathml={formula.shown} />
          <Formula heading={formula.headings.filled} mathml={formula.filled} after={`= ${formula.exact}`} />
        </>
      ) : null}
      <table>
        <caption>{headings.lines}</caption>
        <thead>
          <tr>
            <th scope="col">{headings.step}</th>
            <th scope="col" class="number">
              {headings.value}
            </th>
          </tr>
        </thead>
        <tbody>
          {lines.map(({ symbol, name, value, from, source }, at) => (
            <tr key={at}>
              <th scope="row">
                {symbol === undefined ? null : <Letter name={symbol} />} {name}
                <span class="working-from">
                  {from}
                  {source === undefined ? null : <span lang="en">{source}</span>}
                </span>
              </th>
              <td class="number">{value}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr class="sum">
            <th scope="row">{headings.result}</th>
            <td class="number working-result">{text.result}</td>
          </tr>
        </tfoot>
      </table>
    </>
  );
}

function Formula({
  heading,
  mathml,
  after,
}: {
  readonly heading: string;
  readonly mathml: string;
  readonly after?: string;
}) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a long formula that scrolls sideways must be scrollable by keyboard
    <section class="working-formula" aria-label={heading} tabIndex={0}>
      <p class="caption">{heading}</p>
      {/* The MathML comes from our own formulas, made when the app was built. */}
      <div class="working-math">
        <span dangerouslySetInnerHTML={{ __html: mathml }} />
        {after === undefined ? null : <span>{after}</span>}
      </div>
    </section>
  );
}
