import { expect, test } from 'vitest';
import { uplandColour } from '../../src/model/classing/colour.ts';
import { describeCloth } from '../../src/model/cloth/describe-cloth.ts';
import { weave } from '../../src/model/cloth/weave.ts';
import { yarnVariationPercent } from '../../src/model/mill/evenness.ts';
import { fibresInSection } from '../../src/model/mill/limits.ts';
import { spin } from '../../src/model/mill/spin.ts';
import { asNe, nominalMtexFromMicronaire, texFromNe } from '../../src/model/units.ts';
import { single, yarnLot, yarnOf } from '../model/cloth/yarn-lot.ts';
import { meanOver, ordinary } from '../model/field/plans.ts';
import { baledLint } from '../model/mill/lint-lot.ts';

test('rain takes brightness: nearly every desert crop is at color 41/32 or better, not every humid one — USDA-AMS 1997-2011 for the humid belt', () => {
  const better = ['11', '21', '31', '41', '12', '22', '32'];
  // The trash left in the bale darkens it by about 1.1 Rd.
  const bright = (climate: 'lowDesert' | 'coastalPlain') =>
    meanOver(ordinary[climate], 40, ({ crop }) => {
      const { reflectanceRd, yellownessB } = crop!.grown.fibre;
      return better.includes(uplandColour(reflectanceRd - 1.1, yellownessB)) ? 1 : 0;
    });
  expect(bright('lowDesert')).toBeGreaterThan(0.97);
  expect(bright('lowDesert')).toBeGreaterThan(bright('coastalPlain'));
});

test('unevenness rises with short fibre — Thibodeaux et al., J. Cotton Sci. 12:368, 2008', () => {
  const at = (shortFibrePercent: number) => yarnVariationPercent('ringCarded', 116, shortFibrePercent, 0);
  expect(at(12)).toBeGreaterThan(at(8));
});

test('combed yarn is more even, stronger and has fewer fibre ends — Rieter encyclopaedia, combing section', () => {
  const at = (system: 'ringCarded' | 'ringCombed') =>
    spin(baledLint(0.02), { system, countNe: 30, noilPercent: 14 }).yarn!;
  expect(at('ringCombed').cvPercent).toBeLessThan(at('ringCarded').cvPercent);
  expect(at('ringCombed').tenacityCnPerTex).toBeGreaterThan(at('ringCarded').tenacityCnPerTex);
  expect(at('ringCombed').fibreEndsPerCm).toBeLessThan(at('ringCarded').fibreEndsPerCm);
});

test('a finer Pima puts more fibres in the section of one count — count over fineness', () => {
  const fibres = (micronaire: number) => fibresInSection(texFromNe(asNe(30)), nominalMtexFromMicronaire(micronaire));
  expect(fibres(3.9)).toBeGreaterThan(fibres(4.3));
});

test('a tighter cloth is heavier and covers more — Peirce', () => {
  const cloth = (endsPerInch: number) =>
    describeCloth({
      warp: single(30),
      weft: single(30),
      endsPerInch,
      picksPerInch: 60,
      weave: 'plain',
      warpCrimpPercent: null,
      weftCrimpPercent: null,
    });
  expect(cloth(76).gramsPerSquareMetre).toBeGreaterThan(cloth(60).gramsPerSquareMetre);
  expect(cloth(76).clothCover).toBeGreaterThan(cloth(60).clothCover);
});

test('finer fibre makes softer cloth — Cotton Guide, International Trade Centre', () => {
  const rigidity = (linearDensityMtex: number) => {
    const lot = { ...yarnLot, fibre: { ...yarnLot.fibre, linearDensityMtex } };
    const decisions = { structure: 'plain', endsPerInch: 68, picksPerInch: 68, finish: 'bleached' } as const;
    return weave(lot, yarnOf(30), decisions).cloth!.drape.rigidity;
  };
  expect(rigidity(140)).toBeLessThan(rigidity(190));
});
