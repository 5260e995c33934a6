import type { Fact } from '../model/fact.ts';

/** A fact and the value to give it for a while. */
export interface Move {
  readonly fact: Fact;
  readonly to: number;
}

type Movable = { -readonly [Key in keyof Fact]: Fact[Key] };

/**
 * Runs something with some facts moved, and puts every one back, also when it throws. The model reads its facts when it
 * runs, so this changes what every part of it computes meanwhile: only for a copy of the model that nobody else uses.
 */
export function withFactsMoved<Result>(moves: readonly Move[], run: () => Result): Result {
  const before = moves.map(({ fact }) => fact.value);
  try {
    for (const { fact, to } of moves) (fact as Movable).value = to;
    return run();
  } finally {
    // Backwards, so that a fact moved twice ends where it began.
    for (let i = moves.length - 1; i >= 0; i--) (moves[i]!.fact as Movable).value = before[i]!;
  }
}
