import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { PatchButton } from '../../ui/patch-button.tsx';
import { farmWords } from './farm-words.ts';
import { holdsUnread, ownFarms } from './shelf.ts';
import type { DraftHand } from './use-draft.ts';

/** The visitor's own farms: open one, take one off, put it back. */
export function ShelfList({ hand }: { readonly hand: DraftHand }) {
  const { language } = useWords();
  const words = farmWords(language);
  const nameOf = (name: string) => name || words.unnamed;
  const { removed, draft } = hand;
  return (
    <section class="shelf" aria-label={words.shelf.heading}>
      <h2>{words.shelf.heading}</h2>
      {ownFarms().length === 0 ? <p class="caption">{words.shelf.empty}</p> : null}
      <ul>
        {ownFarms().map((own) => {
          const name = nameOf(own.scenario.name[language]);
          const isOpen = own.scenario.id === draft.scenario.id;
          return (
            <li key={own.scenario.id} data-open={isOpen ? '' : undefined}>
              <button
                type="button"
                class="shelf-open"
                aria-current={isOpen ? 'true' : undefined}
                aria-label={fill(words.shelf.open, { name })}
                onClick={() => hand.open(own)}
              >
                {name}
              </button>
              <button
                type="button"
                class="shelf-remove"
                aria-label={`${words.shelf.remove}: ${name}`}
                onClick={() => hand.remove(own)}
              >
                {words.shelf.remove}
              </button>
            </li>
          );
        })}
      </ul>
      <div role="status">
        {removed ? (
          <p class="caption">{fill(words.shelf.removed, { name: nameOf(removed.scenario.name[language]) })}</p>
        ) : null}
        {hand.keeping ? <p class="caption">{words.shelf[hand.keeping]}</p> : null}
      </div>
      {removed ? <PatchButton onPress={hand.putBack}>{words.shelf.putBack}</PatchButton> : null}
      {holdsUnread() ? <p class="caption">{words.shelf.unreadable}</p> : null}
    </section>
  );
}
