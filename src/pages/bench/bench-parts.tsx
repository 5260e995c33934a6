import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import type { SetUp } from '../../model/bench/set-up.ts';
import type { WorkedBench } from '../../model/bench/work-bench.ts';
import type { Scale } from '../../scene/bench/true-scale.ts';
import type { BenchSide } from '../../statechart/saved-bench.ts';
import { TrustMark } from '../../ui/trust-mark.tsx';
import type { BenchReading } from '../../workings/bench/bench-reading.ts';
import type { Theme } from '../preferences.ts';
import { benchWords } from './bench-words.ts';
import { ClothControls } from './cloth-controls.tsx';
import { FibreControls } from './fibre-controls.tsx';
import { ClothPictures, FibrePicture, YarnPictures } from './part-pictures.tsx';
import { ReadingsTable } from './readings-table.tsx';
import type { BenchView } from './use-benches.ts';
import { YarnControls } from './yarn-controls.tsx';

export interface PartProps {
  readonly side: BenchSide;
  readonly view: BenchView;
  readonly onChange: (setUp: SetUp) => void;
  readonly scale: Scale;
  readonly theme: Theme;
}

/** Figures that stand in the open; the others lie folded. */
const shownFirst: Readonly<Record<'fibre' | 'yarn' | 'cloth', readonly string[]>> = {
  fibre: ['staple', 'shortFibre', 'fineness', 'stapleLimit'],
  yarn: ['fibresInSection', 'comfortable', 'turns', 'evenness', 'tenacity', 'fibreEnds', 'realisation'],
  cloth: [
    'weight',
    'threadCount',
    'cover',
    'courses',
    'wales',
    'customs',
    'drape',
    'fuzz',
    'shrink',
    'washedWeight',
    'needle',
  ],
};

interface FiguresProps {
  readonly part: 'fibre' | 'yarn' | 'cloth';
  readonly side: BenchSide;
  readonly readings: readonly BenchReading[];
  readonly weft?: readonly BenchReading[];
}

function Figures({ part, side, readings, weft = [] }: FiguresProps) {
  const { language } = useWords();
  const said = benchWords(language);
  const isFirst = ({ key }: BenchReading) => shownFirst[part].includes(key);
  const caption = `${said.sides[side]}: ${said.parts[part]}`;
  const isWaste = ({ key }: BenchReading) => key.startsWith('waste.');
  const waste = readings.filter(isWaste);
  return (
    <>
      <ReadingsTable readings={readings.filter(isFirst)} where={`${side}/${part}`} caption={caption} captionUnseen />
      <details>
        <summary>{said.more}</summary>
        <ReadingsTable
          readings={readings.filter((reading) => !isFirst(reading) && !isWaste(reading))}
          where={`${side}/${part}`}
          caption={caption}
          captionUnseen
        />
        {waste.length > 0 ? (
          <ReadingsTable readings={waste} where={`${side}/${part}`} caption={said.yarn.wasteHeading} />
        ) : null}
        {weft.length > 0 ? <ReadingsTable readings={weft} where={`${side}/weft`} caption={said.yarn.weft} /> : null}
      </details>
    </>
  );
}

export function FibrePart({ side, view, onChange, scale, theme }: PartProps) {
  return (
    <>
      <FibreControls setUp={view.bench.setUp} onChange={onChange} />
      <FibrePicture bench={view.bench} side={side} scale={scale} theme={theme} />
      <Figures part="fibre" side={side} readings={view.readings.fibre} />
    </>
  );
}

/** Whether a yarn can be spun, and what binds. */
function Verdict({ bench, isWeft }: { readonly bench: WorkedBench; readonly isWeft: boolean }) {
  const { language, formats } = useWords();
  const { yarn: said } = benchWords(language);
  const { spinning, singleNe } = isWeft ? bench.weft : bench.warp;
  const { status, reason, nearestFeasibleNe } = spinning.verdict;
  const line = fill(said.verdicts[status], {
    count: formats.yarnCount(Number(singleNe.toFixed(1))).text,
    reason: reason ? said.reasons[reason] : '',
    nearest: formats.count(nearestFeasibleNe),
  });
  return (
    <p class="bench-verdict" data-status={status}>
      {isWeft ? `${said.weft}. ` : ''}
      {line}
    </p>
  );
}

export function YarnPart({ side, view, onChange, scale, theme }: PartProps) {
  const { bench, readings } = view;
  return (
    <>
      <YarnControls setUp={bench.setUp} bench={bench} onChange={onChange} />
      <Verdict bench={bench} isWeft={false} />
      {bench.setUp.weft !== bench.setUp.warp && readings.weft.length > 0 ? <Verdict bench={bench} isWeft /> : null}
      <YarnPictures bench={bench} side={side} scale={scale} theme={theme} />
      <Figures part="yarn" side={side} readings={readings.yarn} weft={readings.weft} />
    </>
  );
}

/** What a sewist does with the cloth, in sentences. */
function InUse({ bench }: { readonly bench: WorkedBench }) {
  const { language, formats } = useWords();
  const { cloth: said } = benchWords(language);
  const { needle, napped, flameExempt, ironDots, description, tightness } = bench.cloth;
  const numbers = needle.threadNumbers;
  return (
    <div class="bench-use">
      {tightness === 'fits' ? null : <p class={tightness === 'jammed' ? 'refusal' : 'caption'}>{said[tightness]}</p>}
      <p>
        {numbers
          ? fill(said.thread, { from: formats.count(numbers[0]), to: formats.count(numbers[1]) })
          : said.threadFine}
        . {fill(said.ironDots, { n: formats.count(ironDots) })}.
      </p>
      <p>
        {description.kind === 'woven' ? said.grain : said.grainKnit}{' '}
        <TrustMark trust={{ mark: 'common practice', source: said.grainSource }} label={said.grainName} />
      </p>
      <p>
        {napped ? said.flame.napped : flameExempt ? said.flame.exempt : said.flame.light} {said.sleepwear}
      </p>
      <p>{said.yarnKept}</p>
    </div>
  );
}

export function ClothPart({ side, view, onChange, scale, theme }: PartProps) {
  const { bench, readings } = view;
  return (
    <>
      <ClothControls setUp={bench.setUp} bench={bench} onChange={onChange} />
      <ClothPictures bench={bench} side={side} scale={scale} theme={theme} />
      <Figures part="cloth" side={side} readings={readings.cloth} />
      <InUse bench={bench} />
    </>
  );
}
