import { useState } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import type { BenchOutcomeKey } from '../../model/bench/outcomes.ts';
import { inputOf, type SweepInput } from '../../model/bench/sweep.ts';
import { sweepLimits } from '../../model/bench/sweep-limits.ts';
import type { WorkedBench } from '../../model/bench/work-bench.ts';
import { benchWords } from './bench-words.ts';
import { optionsOf, SelectField } from './select-field.tsx';
import { SweepChart } from './sweep-chart.tsx';
import { SweepLimitLines } from './sweep-limit-lines.tsx';
import { SweepTable } from './sweep-table.tsx';
import { useSweep } from './use-sweep.ts';

/** What a curve can be drawn of, by the name of the figure that prints it. */
const outcomes = ['comfortable', 'fibreEnds', 'tenacity', 'evenness', 'realisation', 'turns', 'lintPerYard'] as const;
const keyOf = (name: (typeof outcomes)[number]): BenchOutcomeKey => (name === 'comfortable' ? 'finestNe' : name);

export interface SweepPanelProps {
  readonly a: WorkedBench;
  readonly b: WorkedBench;
}

/** One input changed from end to end, the rest of each bench as it stands: a curve for each, and the same as a table. */
export function SweepPanel({ a, b }: SweepPanelProps) {
  const { language } = useWords();
  const said = benchWords(language);
  const [isOpen, setOpen] = useState(false);
  const [input, setInput] = useState<SweepInput>('staple');
  const [name, setName] = useState<(typeof outcomes)[number]>('comfortable');
  const swept = useSweep(a.setUp, b.setUp, isOpen ? input : null);
  const names = Object.fromEntries(outcomes.map((key) => [key, said.numbers[key] ?? key])) as Record<
    (typeof outcomes)[number],
    string
  >;
  const limits = swept && { a: sweepLimits(swept.a), b: sweepLimits(swept.b) };
  return (
    <details class="patch bench-sweep" data-cut="1" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{said.sweep.heading}</summary>
      <div class="bench-pair">
        <SelectField
          label={said.sweep.input}
          value={input}
          options={optionsOf(said.sweep.inputs)}
          onChoose={setInput}
        />
        <SelectField label={said.sweep.outcome} value={name} options={optionsOf(names)} onChoose={setName} />
      </div>
      {swept && limits ? (
        <>
          <p class="sweep-key">
            <span data-side="a">{said.sides.a}</span> <span data-side="b">{said.sides.b}</span>{' '}
            <span class="caption">
              ○ {said.sweep.strained} · × {said.sweep.limit} · ▲ {said.sweep.here}
            </span>
          </p>
          <SweepChart
            swept={swept}
            input={input}
            outcome={keyOf(name)}
            here={{ a: inputOf(a, input), b: inputOf(b, input) }}
            limits={limits}
          />
          <SweepLimitLines swept={swept} limits={limits} input={input} />
          <SweepTable a={swept.a} b={swept.b} input={input} outcome={keyOf(name)} name={names[name]} />
        </>
      ) : (
        <p role="status">{said.sweep.working}</p>
      )}
    </details>
  );
}
