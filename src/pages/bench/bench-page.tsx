import { useEffect } from 'preact/hooks';
import { problemText } from '../../language/problem-text.ts';
import { useWords } from '../../language/words.ts';
import { benchSides } from '../../statechart/saved-bench.ts';
import { InTurn } from '../../ui/in-turn.tsx';
import { OneWorkingOpen } from '../../ui/open-working.tsx';
import { Steady } from '../../ui/steady.tsx';
import type { Theme } from '../preferences.ts';
import { ClothPart, FibrePart, YarnPart } from './bench-parts.tsx';
import { benchWords } from './bench-words.ts';
import { DifferenceLines, DifferenceNow } from './difference-lines.tsx';
import { KeepIt } from './keep-it.tsx';
import { QuestionAnswer, QuestionDoors } from './question-answer.tsx';
import { SweepPanel } from './sweep-panel.tsx';
import { TrueSize } from './true-size.tsx';
import { useBenches } from './use-benches.ts';
import { usePxPerMm } from './use-scale.ts';
import '../season/workings.css';
import './bench.css';
import './bench-pictures.css';

export interface BenchPageProps {
  /** The query of the benches' link. */
  readonly query: string;
  readonly theme: Theme;
}

const parts = { fibre: FibrePart, yarn: YarnPart, cloth: ClothPart } as const;
const partNames = ['fibre', 'yarn', 'cloth'] as const;

/** Fibre, yarn and cloth on two benches side by side. */
export default function BenchPage({ query, theme }: BenchPageProps) {
  const words = useWords();
  const { messages, formats, language, unitSystem } = words;
  const said = benchWords(language);
  const { saved, view, ask, problems, link, change, open } = useBenches(query);
  const { product } = messages.common;
  const [pxPerMm, setPxPerMm] = usePxPerMm();
  const isMetric = unitSystem === 'metric';
  const scale = { pxPerMm, isMetric, unit: messages.units[isMetric ? 'centimetres' : 'inches'].sign };
  useEffect(() => {
    document.title = `${said.title}: ${product}`;
  }, [said, product]);
  const spoken = {
    ...messages,
    problems: { ...messages.problems, phrases: { ...messages.problems.phrases, ...said.problems.phrases } },
  };
  return (
    <OneWorkingOpen>
      <main id="main" class="bench-page" tabIndex={-1}>
        <h1>{said.title}</h1>
        <p class="bench-lead">{said.lead}</p>
        {problems.length > 0 ? (
          <section class="patch problem-list" data-state="basted" data-cut="2" role="alert">
            <h2>{said.problems.heading}</h2>
            <ul>
              {problems.slice(0, 8).map((problem) => (
                <li key={problem.field + problem.value}>{problemText(problem, spoken, formats)}</li>
              ))}
            </ul>
            <p>{said.problems.kept}</p>
          </section>
        ) : null}
        <QuestionDoors open={ask} />
        {ask ? <QuestionAnswer id={ask} {...view} onClose={() => open(saved, null)} /> : null}
        <div class="bench-top">
          {partNames.map((part) => {
            const Part = parts[part];
            return (
              <section key={part} class="bench-row" aria-labelledby={`bench-${part}`}>
                <h2 id={`bench-${part}`}>{said.parts[part]}</h2>
                {benchSides.map((side, at) => (
                  <section
                    key={side}
                    class="patch bench-cell"
                    data-side={side}
                    data-cut={String(at + 1)}
                    aria-label={`${said.sides[side]}: ${said.parts[part]}`}
                  >
                    <p class="bench-name" data-side={side} aria-hidden="true">
                      {said.sides[side]}
                    </p>
                    <InTurn as="div" class="bench-turn" scene={theme}>
                      <Steady on={[view[side], pxPerMm, words, theme]}>
                        <Part
                          side={side}
                          view={view[side]}
                          scale={scale}
                          theme={theme}
                          onChange={(setUp) => change({ [side]: setUp })}
                        />
                      </Steady>
                    </InTurn>
                  </section>
                ))}
              </section>
            );
          })}
        </div>
        <InTurn as="div" class="bench-turn" scene={theme}>
          <DifferenceLines {...view} />
        </InTurn>
        <SweepPanel a={view.a.bench} b={view.b.bench} />
        <TrueSize pxPerMm={pxPerMm} onChange={setPxPerMm} />
        <KeepIt view={view} link={link} />
        <DifferenceNow {...view} />
      </main>
    </OneWorkingOpen>
  );
}
