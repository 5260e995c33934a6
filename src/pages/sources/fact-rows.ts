import { factUses } from 'virtual:fact-uses';
import type { Mark } from '../../model/fact.ts';
import { allFacts, type ListedFact } from '../../model/fact-list.ts';

/** The marks in the order of trust. */
export const markOrder: readonly Mark[] = ['published', 'derived', 'common practice', 'memory', 'assumption'];

/** How many facts bear each mark. */
export function coverage(facts: readonly ListedFact[]): ReadonlyMap<Mark, number> {
  const counts = new Map<Mark, number>(markOrder.map((mark) => [mark, 0]));
  for (const { fact } of facts) counts.set(fact.mark, (counts.get(fact.mark) ?? 0) + 1);
  return counts;
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

/**
 * Facts in which every word asked for is found: in the name, the unit, the source or the note.
 * @param mark only facts of this mark; null for all
 */
export function findFacts(asked: string, mark: Mark | null): readonly ListedFact[] {
  const words = asked.toLocaleLowerCase('en').split(/\s+/).filter(Boolean);
  return allFacts().filter(({ name, fact }) => {
    if (mark !== null && fact.mark !== mark) return false;
    const text = `${spaced(name)} ${name} ${fact.unit} ${fact.source} ${fact.note ?? ''}`.toLocaleLowerCase('en');
    return words.every((word) => text.includes(word));
  });
}

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
