import { type ClothDescription, describeCloth } from '../model/cloth/describe-cloth.ts';
import { type Tightness, tightnessOf } from '../model/cloth/tightness.ts';
import { weaveIds } from '../model/cloth/weaves.ts';
import { badInput, InputError } from './input-error.ts';
import type { Io } from './main.ts';
import { readChoice, readOptions, textOf } from './options.ts';
import { percentUnits, perInchUnits, readQuantity, readYarn } from './quantity.ts';

const kinds = {
  warp: 'value',
  weft: 'value',
  ends: 'value',
  picks: 'value',
  weave: 'value',
  'warp-crimp': 'value',
  'weft-crimp': 'value',
  json: 'flag',
} as const;

const sett = { low: 5, high: 400, unit: 'per inch' };
const crimp = { low: 0, high: 40, unit: '%' };

/** Describes a woven cloth from its yarns, setts and weave. */
export function clothCommand(args: readonly string[], io: Io): void {
  const options = readOptions(args, kinds);
  const needed = (name: 'warp' | 'weft' | 'ends' | 'picks', example: string) => {
    const text = textOf(options, name);
    if (text === undefined) throw badInput(`--${name}`, 'nothing', `a value such as ${example}`);
    return text;
  };
  const crimpOf = (name: 'warp-crimp' | 'weft-crimp') => {
    const text = textOf(options, name);
    return text === undefined ? null : readQuantity(name, text, percentUnits, crimp);
  };
  const cloth = describeCloth({
    warp: readYarn('warp', needed('warp', '30Ne')),
    weft: readYarn('weft', needed('weft', '30Ne')),
    endsPerInch: readQuantity('ends', needed('ends', '68/in'), perInchUnits, sett),
    picksPerInch: readQuantity('picks', needed('picks', '68/in'), perInchUnits, sett),
    weave: readChoice('weave', textOf(options, 'weave') ?? 'plain', weaveIds),
    warpCrimpPercent: crimpOf('warp-crimp'),
    weftCrimpPercent: crimpOf('weft-crimp'),
  });
  const status = tightnessOf(cloth.construction);
  if (status === 'jammed') throw new InputError(jammedLine(cloth));
  io.out(options.json ? JSON.stringify(clothReport(cloth, status), null, 2) : clothText(cloth, status));
}

/** The setts at which round threads would just lie beside one another. */
function roomFor({ jamming }: ClothDescription): string {
  const most = [
    jamming.highestEndsPerInch === null ? '' : `at most ${jamming.highestEndsPerInch.toFixed(0)} ends`,
    jamming.highestPicksPerInch === null ? '' : `at most ${jamming.highestPicksPerInch.toFixed(0)} picks`,
  ].filter(Boolean);
  return most.length > 0 ? `${most.join(', or ')} with the other as given` : 'fewer of both';
}

const tightLine = (cloth: ClothDescription): string =>
  `Tight: round threads have room for ${roomFor(cloth)}; these must be pressed flat.`;

function jammedLine(cloth: ClothDescription): string {
  const { endsPerInch, picksPerInch } = cloth.construction;
  return `--ends, --picks: ${endsPerInch.toFixed(1)} x ${picksPerInch.toFixed(1)} per inch do not fit these yarns, even pressed flat; allowed: ${roomFor(cloth)}`;
}

/** The keys that other programs read. */
const clothReport = (cloth: ClothDescription, status: Tightness) => ({
  status,
  gramsPerSquareMetre: cloth.gramsPerSquareMetre,
  ouncesPerSquareYard: cloth.ouncesPerSquareYard,
  warpCover: cloth.warpCover,
  weftCover: cloth.weftCover,
  clothCover: cloth.clothCover,
  tariffClass: cloth.tariffClass,
  maximumSettPerInch: cloth.maximumSettPerInch,
  threadCount: cloth.threadCount,
  averageYarnNumber: cloth.averageYarnNumber,
  thicknessMm: cloth.thicknessMm,
});

const clothText = (cloth: ClothDescription, status: Tightness): string =>
  [
    ...(status === 'tight' ? [tightLine(cloth)] : []),
    `${cloth.ouncesPerSquareYard.toFixed(2)} oz/yd2, ${cloth.gramsPerSquareMetre.toFixed(1)} g/m2`,
    `Cover (28 is full): warp ${cloth.warpCover.toFixed(1)}, weft ${cloth.weftCover.toFixed(1)}, cloth ${cloth.clothCover.toFixed(1)}`,
    `Thread count ${cloth.threadCount.toFixed(0)}, each yarn counted once`,
    `At customs: ${cloth.tariffClass}, average yarn number ${cloth.averageYarnNumber}`,
    `Highest equal sett for these yarns ${cloth.maximumSettPerInch.toFixed(0)} per inch; thickness ${cloth.thicknessMm.toFixed(2)} mm`,
  ].join('\n');
