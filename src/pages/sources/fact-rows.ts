import { factUses } from 'virtual:fact-uses';
import type { Mark } from '../../model/fact.ts';
import { allFacts, allTables, type CitedTable, type ListedFact, type ListedTable } from '../../model/fact-list.ts';

/** The marks in the order of trust. */
export const markOrder: readonly Mark[] = ['published', 'derived', 'common practice', 'memory', 'assumption'];

/** How many of the facts, or of the tables, bear each mark, and how many there are. */
export function coverage(cited: readonly { readonly mark: Mark }[]) {
  const counts: Record<Mark, number> = { published: 0, derived: 0, 'common practice': 0, memory: 0, assumption: 0 };
  for (const { mark } of cited) counts[mark] += 1;
  return { counts, all: cited.length };
}

/** Files of the model that use a fact; empty where only its own table's reader does. */
export function usesOf({ name }: ListedFact): readonly string[] {
  const keys = name.split('.');
  // A fact of a group inside a table is found by its own key or by that of its group.
  for (let last = keys.length - 1; last >= 2; last--) {
    const files = factUses[`${keys[0]}.${keys[1]}.${keys[last]}`];
    if (files) return files;
  }
  return [];
}

/** Whether every word asked for is in the name, the unit, the source or the note, and the mark is the one asked for. */
function matches(asked: string, mark: Mark | null, name: string, cited: CitedTable): boolean {
  if (mark !== null && cited.mark !== mark) return false;
  const words = asked.toLocaleLowerCase('en').split(/\s+/).filter(Boolean);
  const text = `${spaced(name)} ${name} ${cited.unit ?? ''} ${cited.source} ${cited.note ?? ''}`.toLocaleLowerCase(
    'en',
  );
  return words.every((word) => text.includes(word));
}

/**
 * Facts in which every word asked for is found: in the name, the unit, the source or the note.
 * @param mark only facts of this mark; null for all
 */
export const findFacts = (asked: string, mark: Mark | null): readonly ListedFact[] =>
  allFacts().filter(({ name, fact }) => matches(asked, mark, name, fact));

/** Tables found in the same way. */
export const findTables = (asked: string, mark: Mark | null): readonly ListedTable[] =>
  allTables().filter(({ name, table }) => matches(asked, mark, name, table));

/** 'gin/facts.ginFacts.moistureAtStand' as words: 'moisture at stand'. */
export function spaced(name: string): string {
  const keys = name.split('.');
  return keys
    .slice(Math.min(2, keys.length - 1))
    .map((key) => key.replace(/([a-z0-9])([A-Z])/g, '$1 $2').toLocaleLowerCase('en'))
    .join(', ');
}

/** The constants as rows of a file. */
export function factCsv(): (string | number)[][] {
  return [
    ['name', 'link', 'value', 'unit', 'low', 'high', 'mark', 'source', 'note', 'used in'],
    ...allFacts().map((listed) => {
      const { name, link, fact } = listed;
      const [low, high] = fact.range ?? ['', ''];
      return [
        name,
        link,
        fact.value,
        fact.unit,
        low,
        high,
        fact.mark,
        fact.source,
        fact.note ?? '',
        usesOf(listed).join(' '),
      ];
    }),
  ];
}
