import type { BothWays } from '../cloth/cloth.ts';
import { areaKept } from '../cloth/cloth-in-use.ts';
import { relax } from '../cloth/crimp.ts';
import { type ClothDescription, type ClothSpecification, describeCloth } from '../cloth/describe-cloth.ts';
import { describeInterlock } from '../cloth/describe-interlock.ts';
import { describeJersey, type JerseyDescription } from '../cloth/describe-jersey.ts';
import { feelFacts, geometryFacts } from '../cloth/facts.ts';
import { type Drape, drapeOf, flameExempt, fuzzOf } from '../cloth/feel.ts';
import { type NeedleHint, needleFor } from '../cloth/needle.ts';
import { stripNewtons, stripTenacity } from '../cloth/strip.ts';
import { type Tightness, tightnessOf } from '../cloth/tightness.ts';
import { stripFacts, type WashClass, washTable } from '../cloth/wash-facts.ts';
import { interlacing } from '../cloth/weaves.ts';
import { yarnKilometresPerSquareMetre } from '../cloth/weight.ts';
import type { Fibre } from '../fibre.ts';
import type { YarnNumber } from '../mill/yarn-number.ts';
import { INCHES_PER_YARD, KILO, MM_PER_INCH } from '../units.ts';
import type { BenchYarn } from './bench-yarn.ts';
import { isKnit, listedCloth, type SetUp } from './set-up.ts';

export type AnyCloth = ClothDescription | JerseyDescription;

/** A cloth of a bench: as its threads are counted, and after its first wash. */
export interface BenchCloth {
  readonly description: AnyCloth;
  readonly washed: AnyCloth;
  /** 'jammed' where the threads do not fit, even pressed flat; a knit always fits. */
  readonly tightness: Tightness;
  readonly widthInches: number;
  readonly washClass: WashClass;
  /** What the first wash takes. */
  readonly shrinkPercent: BothWays;
  readonly drape: Drape;
  /** Null where the yarn cannot be spun. */
  readonly fuzz: 'little' | 'some' | 'much' | null;
  readonly napped: boolean;
  /** Plain surface and heavy enough: no flame test under the general rule for clothing. */
  readonly flameExempt: boolean;
  readonly needle: NeedleHint;
  readonly ironDots: number;
  readonly ironCelsius: number;
  /** Breaking force of a strip of 5 cm, N; null for a knit or where the yarn cannot be spun. */
  readonly warpNewtons: number | null;
  readonly weftNewtons: number | null;
  /** Strength along the warp over the mass of the strip, cN/tex. */
  readonly warpStripTenacity: number | null;
  /** Yarn in a square metre, km, as it lies. */
  readonly yarnKilometres: { readonly warp: number; readonly weft: number };
  readonly gramsPerRunningYard: number;
  /** Picks laid in for a running yard; 0 for a knit. */
  readonly picksPerYard: number;
}

/** The cloth as the rules of woven cloth take it; null for a knit. */
export function specificationOf(setUp: SetUp, warp: YarnNumber, weft: YarnNumber): ClothSpecification | null {
  const { structure, endsPerInch, picksPerInch, warpCrimpPercent, weftCrimpPercent, system } = setUp;
  if (isKnit(structure)) return null;
  const { napped, tapedWarp, dyedWarp } = listedCloth(setUp.cloth);
  return {
    warp,
    weft,
    weave: structure,
    endsPerInch,
    picksPerInch,
    warpCrimpPercent,
    weftCrimpPercent,
    combed: system === 'ringCombed',
    napped,
    tapedWarp,
    dyedWarp,
  };
}

function describeKnit(setUp: SetUp, tex: number): JerseyDescription {
  return setUp.structure === 'interlock'
    ? describeInterlock(tex, setUp.loopMm)
    : describeJersey(tex, setUp.loopMm, setUp.finish === 'grey' ? 'dry' : 'wet');
}

/** The cloth of a set-up from its threads alone, whatever they are spun of. */
export function clothOfThreads(setUp: SetUp, warp: YarnNumber, weft: YarnNumber): AnyCloth {
  const specification = specificationOf(setUp, warp, weft);
  return specification ? describeCloth(specification) : describeKnit(setUp, warp.resultantTex);
}

/** A knit with its loops drawn together: no yarn is gained or lost. */
function drawnTogether(knit: JerseyDescription, shrink: BothWays): JerseyDescription {
  const kept = areaKept(shrink);
  return {
    ...knit,
    coursesPerInch: knit.coursesPerInch / (1 - shrink.length / 100),
    walesPerInch: knit.walesPerInch / (1 - shrink.width / 100),
    loopsPerSquareCm: knit.loopsPerSquareCm / kept,
    gramsPerSquareMetre: knit.gramsPerSquareMetre / kept,
    ouncesPerSquareYard: knit.ouncesPerSquareYard / kept,
  };
}

/** What a bench's cloth will lose, by its name, its finish and whether it was compacted. */
export function washClassOf({ cloth, finish, preshrunk }: SetUp): WashClass {
  const { wash } = listedCloth(cloth);
  if (preshrunk) return 'compacted';
  return finish === 'grey' && wash !== 'jersey' && wash !== 'interlock' ? 'loomState' : wash;
}

/** Weaves or knits a bench's yarns. */
export function benchCloth(setUp: SetUp, fibre: Fibre, warp: BenchYarn, weft: BenchYarn): BenchCloth {
  const specification = specificationOf(setUp, warp.number, weft.number);
  const { napped } = listedCloth(setUp.cloth);
  const washClass = washClassOf(setUp);
  const row = washTable.rows.find(({ wash }) => wash === washClass)!;
  const shrinkPercent = { length: row.lengthPercent, width: row.widthPercent };
  const warpTex = warp.number.resultantTex;
  const description = clothOfThreads(setUp, warp.number, weft.number);
  const woven = description.kind === 'woven' ? description : null;
  const { gramsPerSquareMetre } = description;
  const widthInches = (woven ? geometryFacts.clothWidthInches : geometryFacts.jerseyWidthInches).value;
  const squareMetresPerYard = (widthInches * INCHES_PER_YARD * MM_PER_INCH ** 2) / KILO ** 2;
  const strip = (threads: number, { number, spinning }: BenchYarn) =>
    spinning.yarn ? stripNewtons(threads, number.resultantTex, spinning.yarn.tenacityCnPerTex) : null;
  const { yarn } = warp.spinning;
  const warpNewtons = woven ? strip(setUp.endsPerInch, warp) : null;
  return {
    description,
    washed:
      woven && specification
        ? describeCloth({ ...specification, ...relax(woven.construction, shrinkPercent.length, shrinkPercent.width) })
        : drawnTogether(description as JerseyDescription, shrinkPercent),
    tightness: woven ? tightnessOf(woven.construction) : 'fits',
    widthInches,
    washClass,
    shrinkPercent,
    drape: drapeOf(
      gramsPerSquareMetre,
      woven?.coverFraction ?? 0,
      woven ? interlacing(woven.construction.weave) : 1,
      fibre.linearDensityMtex,
    ),
    fuzz: yarn && warp.fibreEndsPerCm !== null ? fuzzOf(warp.fibreEndsPerCm, yarn.shortFibrePercentByWeight) : null,
    napped,
    flameExempt: !napped && flameExempt(gramsPerSquareMetre),
    needle: needleFor(gramsPerSquareMetre),
    ironDots: feelFacts.ironDots.value,
    ironCelsius: feelFacts.ironCelsius.value,
    warpNewtons,
    warpStripTenacity:
      warpNewtons === null ? null : stripTenacity(warpNewtons, stripFacts.widthMm.value, gramsPerSquareMetre),
    weftNewtons: woven ? strip(setUp.picksPerInch, weft) : null,
    yarnKilometres: woven
      ? yarnKilometresPerSquareMetre(woven.construction)
      : { warp: gramsPerSquareMetre / warpTex, weft: 0 },
    gramsPerRunningYard: gramsPerSquareMetre * squareMetresPerYard,
    picksPerYard: woven ? setUp.picksPerInch * INCHES_PER_YARD : 0,
  };
}
