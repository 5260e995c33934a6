import type { InstrumentReading } from '../classing/reading.ts';
import { type ClothName, catalogue, type ListedCloth, type Structure } from '../cloth/catalogue-facts.ts';
import { usualLoopLengthMm } from '../cloth/describe-jersey.ts';
import type { CottonKind } from '../fibre.ts';
import { type CottonName, cottons } from '../mill/cotton-facts.ts';
import type { SpinningSystem, YarnUse } from '../mill/facts.ts';
import { noGrades, type PrintedGrades } from './printed-grades.ts';

/** A bale's class card, as typed at the bench. */
export interface FibreCard extends InstrumentReading {
  readonly kind: CottonKind;
  readonly leaf: number;
}

/** One bale of a lay-down: its card and how much of it goes in. */
export interface LaidBale extends FibreCard {
  readonly netLb: number;
}

export const benchFinishes = ['grey', 'scoured', 'mercerised', 'dyed', 'printed'] as const;
export type BenchFinish = (typeof benchFinishes)[number];

/** Everything that is chosen on one bench. Yarn numbers are kept as they are written. */
export interface SetUp {
  /** The kind of cotton the card began as. */
  readonly cotton: CottonName;
  readonly card: FibreCard;
  /** Grades that the card prints beside its readings. */
  readonly printed: PrintedGrades;
  /** Bales blended into one mix; where there are any, they stand for the card. */
  readonly bales: readonly LaidBale[];
  readonly system: SpinningSystem;
  readonly noilPercent: number;
  readonly warp: string;
  readonly weft: string;
  /** What the first yarn is twisted for. */
  readonly use: YarnUse;
  /** Twist multiplier of one's own; null takes the table's. */
  readonly twist: number | null;
  /** The cloth the threads began as. */
  readonly cloth: ClothName;
  readonly structure: Structure;
  readonly endsPerInch: number;
  readonly picksPerInch: number;
  readonly loopMm: number;
  /** Percent; null takes the usual crimp of the weave. */
  readonly warpCrimpPercent: number | null;
  readonly weftCrimpPercent: number | null;
  readonly finish: BenchFinish;
  readonly preshrunk: boolean;
}

export const isKnit = (structure: Structure): structure is 'jersey' | 'interlock' =>
  structure === 'jersey' || structure === 'interlock';

/** The listed cloth that a bench began as. */
export const listedCloth = (name: ClothName): ListedCloth => catalogue[name];

/** A kind of cotton's card alone. */
export function cardOf(name: CottonName): FibreCard {
  const { unit: _unit, source: _source, mark: _mark, ...card } = cottons[name];
  return card;
}

/** The same bench with another kind of cotton. */
export const withCotton = (setUp: SetUp, cotton: CottonName): SetUp => ({
  ...setUp,
  cotton,
  card: cardOf(cotton),
  printed: noGrades,
  bales: [],
});

/** The threads of a cloth and how its yarn is usually spun. */
function threadsOf(cloth: ClothName): Omit<SetUp, 'cotton' | 'card' | 'printed' | 'bales' | 'noilPercent' | 'twist'> {
  const { structure, warp, weft, endsPerInch, picksPerInch, loopMm, crimpPercent, combed, dyedWarp } =
    listedCloth(cloth);
  return {
    cloth,
    structure,
    warp,
    weft,
    endsPerInch,
    picksPerInch,
    loopMm,
    warpCrimpPercent: crimpPercent?.[0] ?? null,
    weftCrimpPercent: crimpPercent?.[1] ?? null,
    system: combed ? 'ringCombed' : 'ringCarded',
    use: isKnit(structure) ? 'knitting' : 'warp',
    finish: dyedWarp ? 'dyed' : 'scoured',
    preshrunk: false,
  };
}

/** The same bench with another cloth: threads, yarn numbers and spinning follow it, the cotton stays. */
export const withCloth = (setUp: SetUp, cloth: ClothName): SetUp => ({ ...setUp, ...threadsOf(cloth), twist: null });

/** The same bench woven or knitted another way; what the new way wants and the old one lacked is filled in. */
export function withStructure(setUp: SetUp, structure: Structure, warpTex: number): SetUp {
  if (isKnit(structure))
    return { ...setUp, structure, use: 'knitting', loopMm: setUp.loopMm || usualLoopLengthMm(warpTex) };
  const { endsPerInch, picksPerInch } = catalogue.quilting;
  return {
    ...setUp,
    structure,
    use: setUp.use === 'knitting' ? 'warp' : setUp.use,
    endsPerInch: setUp.endsPerInch || endsPerInch,
    picksPerInch: setUp.picksPerInch || picksPerInch,
  };
}

/** A bench as it stands when nothing is chosen. */
export function startingSetUp(cotton: CottonName, cloth: ClothName, noilPercent: number): SetUp {
  return { cotton, card: cardOf(cotton), printed: noGrades, bales: [], noilPercent, twist: null, ...threadsOf(cloth) };
}
