import { INCHES_PER_YARD, KILO, MM_PER_INCH, OUNCES_PER_POUND, ouncesPerSquareYardFromGsm } from '../units.ts';
import type { WovenConstruction } from './construction.ts';
import { clothCover, coverFactor, coverFraction } from './cover.ts';
import { thicknessMm, usualCrimpPercent, weftCrimpFromWarp } from './crimp.ts';
import { yarnDiameterMm } from './diameter.ts';
import { geometryFacts } from './facts.ts';
import { type Jamming, jamming, maximumSettPerInch } from './sett.ts';
import { averageYarnNumber, isSquare, type TariffClass, tariffClass } from './tariff-class.ts';
import type { WeaveId } from './weaves.ts';
import { meanLinearDensity, yarnGramsPerSquareMetre } from './weight.ts';

/** A yarn in a cloth: its single, and how many are plied. */
interface ClothThread {
  readonly singleTex: number;
  readonly singles: number;
}

/** A woven cloth to be described. */
export interface ClothSpecification {
  readonly warp: ClothThread;
  readonly weft: ClothThread;
  readonly endsPerInch: number;
  readonly picksPerInch: number;
  readonly weave: WeaveId;
  /** Null takes the usual crimp of the weave. */
  readonly warpCrimpPercent: number | null;
  /** Null takes the usual crimp, or 'balanced' the crimp that round yarns leave it. */
  readonly weftCrimpPercent: number | 'balanced' | null;
  /** Width of the goods; 45 in where not given. */
  readonly widthInches?: number;
  readonly combed?: boolean;
  readonly napped?: boolean;
  readonly tapedWarp?: boolean;
  readonly dyedWarp?: boolean;
}

/** What a woven cloth is: weight, cover, limits and its name at customs. */
export interface ClothDescription {
  readonly kind: 'woven';
  readonly construction: WovenConstruction;
  readonly gramsPerSquareMetre: number;
  readonly ouncesPerSquareYard: number;
  /** Peirce cover factors; 28 is full. */
  readonly warpCover: number;
  readonly weftCover: number;
  readonly clothCover: number;
  /** Share of the area covered, 0 to 1. */
  readonly coverFraction: number;
  /** Handweaver's highest equal sett for these yarns and this weave. */
  readonly maximumSettPerInch: number;
  readonly jamming: Jamming;
  readonly warpDiameterMm: number;
  readonly weftDiameterMm: number;
  readonly thicknessMm: number;
  /** Ends plus picks in a square inch, each yarn counted once. */
  readonly threadCount: number;
  /** Ends plus picks in a square centimetre, every single counted. */
  readonly singlesPerSquareCm: number;
  readonly averageYarnNumber: number;
  readonly squareConstruction: boolean;
  readonly tariffClass: TariffClass;
  readonly meanTex: number;
  readonly widthInches: number;
  readonly gramsPerMetre: number;
  readonly metresPerKilogram: number;
  readonly squareMetresPerKilogram: number;
  readonly yardsPerPound: number;
}

const mmPerCm = 10;
const perCm = (perInch: number): number => (perInch * mmPerCm) / MM_PER_INCH;

/** Describes a woven cloth from its yarns, setts and weave. Any positive numbers are answered; `jamming` says whether it could be woven. */
export function describeCloth(cloth: ClothSpecification): ClothDescription {
  const { warp, weft, endsPerInch, picksPerInch, weave } = cloth;
  const warpTex = warp.singleTex * warp.singles;
  const weftTex = weft.singleTex * weft.singles;
  const warpDiameterMm = yarnDiameterMm(warpTex);
  const weftDiameterMm = yarnDiameterMm(weftTex);
  const usual = usualCrimpPercent(weave);
  const warpCrimpPercent = cloth.warpCrimpPercent ?? usual.warp;
  const weftCrimpPercent =
    cloth.weftCrimpPercent === 'balanced'
      ? weftCrimpFromWarp(
          MM_PER_INCH / endsPerInch,
          MM_PER_INCH / picksPerInch,
          warpDiameterMm + weftDiameterMm,
          warpCrimpPercent,
        )
      : (cloth.weftCrimpPercent ?? usual.weft);
  const construction = { weave, warpTex, weftTex, endsPerInch, picksPerInch, warpCrimpPercent, weftCrimpPercent };
  const grams = yarnGramsPerSquareMetre(construction);
  const gramsPerSquareMetre = grams.warp + grams.weft;
  const ouncesPerSquareYard = ouncesPerSquareYardFromGsm(gramsPerSquareMetre);
  const warpCover = coverFactor(endsPerInch, warpTex);
  const weftCover = coverFactor(picksPerInch, weftTex);
  const endsPerCm = perCm(endsPerInch);
  const picksPerCm = perCm(picksPerInch);
  const singlesPerSquareCm = endsPerCm * warp.singles + picksPerCm * weft.singles;
  const number = averageYarnNumber(singlesPerSquareCm, gramsPerSquareMetre);
  const widthInches = cloth.widthInches ?? geometryFacts.clothWidthInches.value;
  const gramsPerMetre = (gramsPerSquareMetre * widthInches * MM_PER_INCH) / KILO;
  const ouncesPerYard = (ouncesPerSquareYard * widthInches) / INCHES_PER_YARD;
  return {
    kind: 'woven',
    construction,
    gramsPerSquareMetre,
    ouncesPerSquareYard,
    warpCover,
    weftCover,
    clothCover: clothCover(warpCover, weftCover),
    coverFraction: coverFraction(warpCover, weftCover),
    maximumSettPerInch: maximumSettPerInch(warpTex, weftTex, weave),
    jamming: jamming(construction),
    warpDiameterMm,
    weftDiameterMm,
    thicknessMm: thicknessMm(construction),
    threadCount: endsPerInch + picksPerInch,
    singlesPerSquareCm,
    averageYarnNumber: number,
    squareConstruction: isSquare(endsPerCm, picksPerCm),
    tariffClass: tariffClass({
      weave,
      gramsPerSquareMetre,
      endsPerCm,
      picksPerCm,
      averageYarnNumber: number,
      plied: warp.singles > 1 || weft.singles > 1,
      combed: cloth.combed ?? false,
      napped: cloth.napped ?? false,
      tapedWarp: cloth.tapedWarp ?? false,
      dyedWarp: cloth.dyedWarp ?? false,
    }),
    meanTex: meanLinearDensity([
      { density: warpTex, mass: grams.warp },
      { density: weftTex, mass: grams.weft },
    ]),
    widthInches,
    gramsPerMetre,
    metresPerKilogram: KILO / gramsPerMetre,
    squareMetresPerKilogram: KILO / gramsPerSquareMetre,
    yardsPerPound: OUNCES_PER_POUND / ouncesPerYard,
  };
}
