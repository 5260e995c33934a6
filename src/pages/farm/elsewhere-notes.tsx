import { useWords } from '../../language/words.ts';
import { farmWords } from './farm-words.ts';
import type { OpenedRun } from './open-run.ts';

/** What of a link could not be read, and what of its season stayed where it was made. */
export function ElsewhereNotes({ opened }: { readonly opened: OpenedRun }) {
  const { messages, language } = useWords();
  const words = farmWords(language).elsewhere;
  const { ignored, elsewhere } = opened;
  if (ignored.length === 0 && elsewhere.length === 0) return null;
  return (
    <div role="status">
      {ignored.length > 0 ? (
        <p class="address-note">
          {messages.problems.address} <code>{ignored.join(' ')}</code>
        </p>
      ) : null}
      {elsewhere.map((what) => (
        <p key={what} class="address-note">
          {words[what]}
        </p>
      ))}
    </div>
  );
}
