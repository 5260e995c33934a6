import { useWords } from '../../language/words.ts';
import type { SweepInput } from '../../model/bench/sweep.ts';
import type { SweepLimit } from '../../model/bench/sweep-limits.ts';
import { benchSides, type SavedBench } from '../../statechart/saved-bench.ts';
import { limitCrossed } from '../../workings/bench/sweep-readings.ts';
import { benchWords } from './bench-words.ts';
import { SaidText } from './said-text.tsx';
import type { Swept } from './use-sweep.ts';

/** The limits that each bench's curve crosses. */
export type LimitsOfBoth = Readonly<Record<keyof SavedBench, readonly SweepLimit[]>>;

export interface SweepLimitLinesProps {
  readonly swept: Swept;
  readonly limits: LimitsOfBoth;
  readonly input: SweepInput;
}

/** The limits of the curves in words, each place opening its working. */
export function SweepLimitLines({ swept, limits, input }: SweepLimitLinesProps) {
  const { language } = useWords();
  const { sides, sweep: said } = benchWords(language);
  const lines = benchSides.flatMap((side) => limits[side].map((limit) => ({ side, limit })));
  if (lines.length === 0) return <p class="caption">{said.noLimit}</p>;
  return (
    <ul class="sweep-limits">
      {lines.map(({ side, limit }) => (
        <li key={`${side}${limit.bounds}${limit.at}`}>
          {sides[side]}: <b>{said.limits[limit.bounds][limit.reason]}</b>,{' '}
          <SaidText
            template={said.limitAt}
            numbers={{ at: limitCrossed(input, limit, swept[side]) }}
            where={`sweep/limit/${side}/${limit.bounds}/${limit.at.toFixed(3)}`}
          />
        </li>
      ))}
    </ul>
  );
}
