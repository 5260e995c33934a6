import { useWords } from '../../language/words.ts';
import type { SetUp } from '../../model/bench/set-up.ts';
import type { WorkedBench } from '../../model/bench/work-bench.ts';
import { bindingFact } from '../../model/mill/limits.ts';
import type { Scale } from '../../scene/bench/true-scale.ts';
import type { BenchSide } from '../../statechart/saved-bench.ts';
import { TrustMark } from '../../ui/trust-mark.tsx';
import type { BenchReading } from '../../workings/bench/bench-reading.ts';
import { ironDots, nearestCount, threadNumbers, wantedCount } from '../../workings/bench/sentence-readings.ts';
import type { Theme } from '../preferences.ts';
import { benchWords } from './bench-words.ts';
import { ClothControls } from './cloth-controls.tsx';
import { FibreControls } from './fibre-controls.tsx';
import { ClothPictures, FibrePicture, YarnPictures } from './part-pictures.tsx';
import { ReadingsTable } from './readings-table.tsx';
import { RestsOn } from './rests-on.tsx';
import { SaidText } from './said-text.tsx';
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
      <FibreControls setUp={view.bench.setUp} side={side} onChange={onChange} />
      <FibrePicture bench={view.bench} side={side} scale={scale} theme={theme} />
      <Figures part="fibre" side={side} readings={view.readings.fibre} />
    </>
  );
}

interface VerdictProps {
  readonly bench: WorkedBench;
  readonly side: BenchSide;
  readonly isWeft: boolean;
}

/** Whether a yarn can be spun, what binds, and what that limit rests on. */
function Verdict({ bench, side, isWeft }: VerdictProps) {
  const { language } = useWords();
  const { yarn: said } = benchWords(language);
  const yarn = isWeft ? bench.weft : bench.warp;
  const { verdict } = yarn.spinning;
  const { status, reason } = verdict;
  const binding = bindingFact(bench.setUp.system, verdict);
  const line = said.verdicts[status].replace('{reason}', reason ? said.reasons[reason] : '');
  return (
    <>
      <div class="bench-verdict" data-status={status}>
        {isWeft ? `${said.weft}. ` : ''}
        <SaidText
          template={line}
          numbers={{ count: wantedCount(bench, yarn), nearest: nearestCount(bench, yarn) }}
          where={`${side}/verdict/${isWeft ? 'weft' : 'warp'}`}
        />
      </div>
      {binding ? <RestsOn mark={binding.mark} source={binding.source} /> : null}
    </>
  );
}

export function YarnPart({ side, view, onChange, scale, theme }: PartProps) {
  const { bench, readings } = view;
  return (
    <>
      <YarnControls setUp={bench.setUp} side={side} bench={bench} onChange={onChange} />
      <Verdict bench={bench} side={side} isWeft={false} />
      {bench.setUp.weft !== bench.setUp.warp && readings.weft.length > 0 ? (
        <Verdict bench={bench} side={side} isWeft />
      ) : null}
      <YarnPictures bench={bench} readings={readings} side={side} scale={scale} theme={theme} />
      <Figures part="yarn" side={side} readings={readings.yarn} weft={readings.weft} />
    </>
  );
}

/** What a sewist does with the cloth, in sentences. */
function InUse({ bench, side }: { readonly bench: WorkedBench; readonly side: BenchSide }) {
  const { language } = useWords();
  const { cloth: said } = benchWords(language);
  const { napped, flameExempt, description, tightness } = bench.cloth;
  const numbers = threadNumbers(bench);
  return (
    <div class="bench-use">
      {tightness === 'fits' ? null : <p class={tightness === 'jammed' ? 'refusal' : 'caption'}>{said[tightness]}</p>}
      <div>
        <SaidText
          template={`${numbers ? said.thread : said.threadFine} ${said.ironDots}`}
          numbers={{ ...(numbers ? { from: numbers[0], to: numbers[1] } : {}), n: ironDots(bench) }}
          where={`${side}/use`}
        />
      </div>
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
      <ClothControls setUp={bench.setUp} side={side} bench={bench} onChange={onChange} />
      <ClothPictures bench={bench} side={side} scale={scale} theme={theme} />
      <Figures part="cloth" side={side} readings={readings.cloth} />
      <InUse bench={bench} side={side} />
    </>
  );
}
