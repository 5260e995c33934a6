import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { useWords } from '../language/words.ts';

/**
 * A page whose script is fetched when it is first opened; until it has come, a word stands in its place. A script that does not
 * come is thrown to the error boundary around, which offers to try again, and then it is asked for again.
 */
export function laterPage<Props extends object>(load: () => Promise<{ readonly default: ComponentType<Props> }>) {
  let fetched: ComponentType<Props> | null = null;
  return function LaterPage(props: Props) {
    const { messages } = useWords();
    const [Page, setPage] = useState(() => fetched);
    const [failed, setFailed] = useState<{ readonly error: unknown } | null>(null);
    useEffect(() => {
      if (Page) return;
      let left = false;
      load().then(
        (script) => {
          fetched = script.default;
          if (!left) setPage(() => fetched);
        },
        (error: unknown) => {
          if (!left) setFailed({ error });
        },
      );
      return () => {
        left = true;
      };
    }, []);
    if (failed) throw failed.error;
    return Page ? (
      <Page {...props} />
    ) : (
      <main id="main" class="loading">
        {messages.common.loading}
      </main>
    );
  };
}
