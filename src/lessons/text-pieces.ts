/**
 * Text of a lesson's head, where numbers stand in double brackets: a constant of the model by its name in the list of facts, a
 * computed quantity by its id, or a measure to take oneself. After a bar: the way it is written.
 */
export type TextPiece =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'fact'; readonly name: string; readonly as?: string }
  | { readonly kind: 'computed'; readonly id: string }
  | { readonly kind: 'measure'; readonly value: number; readonly unit: string };

/** 'Cut a square of [[4 in]]; [[fibers-per-boll]] fibers; [[trace/facts.chainFacts.bollGrams]]' in its pieces. */
export function textPieces(text: string): TextPiece[] {
  return text
    .split(/(\[\[[^\]]+\]\])/)
    .filter((part) => part !== '')
    .map((part): TextPiece => {
      const inside = /^\[\[(.+)\]\]$/.exec(part)?.[1];
      if (inside === undefined) return { kind: 'text', text: part };
      const [name = '', as] = inside.split('|');
      const measure = /^([\d.]+) ([a-z]+)$/.exec(name);
      if (measure) return { kind: 'measure', value: Number(measure[1]), unit: measure[2]! };
      if (!name.includes('.')) return { kind: 'computed', id: name };
      return as === undefined ? { kind: 'fact', name } : { kind: 'fact', name, as };
    });
}

/** Every text below a value, in order. */
export function textsBelow(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsBelow) : [];
}

/** Names of the facts that texts cite, each once. */
export const citedFacts = (texts: readonly string[]): string[] => [
  ...new Set(texts.flatMap(textPieces).flatMap((piece) => (piece.kind === 'fact' ? [piece.name] : []))),
];

/** Ids of the computed quantities in texts, each once. */
export const citedComputed = (texts: readonly string[]): string[] => [
  ...new Set(texts.flatMap(textPieces).flatMap((piece) => (piece.kind === 'computed' ? [piece.id] : []))),
];
