import { describe, expect, test } from 'vitest';
import { questionOf } from '../../../src/compare/questions/all-questions.ts';
import { fewSeeds } from '../../../src/compare/questions/many-seasons.ts';
import { type Amount, runAsked } from '../../../src/compare/questions/question.ts';
import { dryAfterOpening } from '../../../src/compare/questions/rain.ts';
import { withFactsMoved } from '../../../src/doubt/move-facts.ts';
import { runSeason } from '../../../src/model/chain.ts';
import { colourOf } from '../../../src/model/classing/colour.ts';
import { leafGrade } from '../../../src/model/classing/leaf.ts';
import { markets } from '../../../src/model/classing/markets.ts';
import { presentMoney } from '../../../src/model/classing/money-facts.ts';
import { farmOf } from '../../../src/model/farms.ts';
import type { Season } from '../../../src/model/season.ts';
import {
  accountKg,
  baleUsd,
  dryOf,
  entriesOf,
  fibreAfter,
  kgOf,
  lbPerKg,
  leftUsd,
  mean,
  micronaireByHalving,
  netLb,
  paidSeedLb,
  settlementUsd,
  shortPercent,
  sum,
  usdPerBale,
  verdictOf,
  waterOf,
} from './season-arithmetic.ts';

/** An answer with its seasons; said and told are its numbers by name. */
function answered(id: string) {
  const question = questionOf(id)!;
  const seasons = question.runs.map(runAsked);
  const answer = question.answer(seasons);
  const said = (name: string): number => {
    const amount: Amount | undefined = answer.said[name];
    return amount && 'value' in amount ? Number(amount.value) : Number.NaN;
  };
  const text = (name: string): string => {
    const amount = answer.said[name];
    return amount?.as === 'text' ? amount.text : '';
  };
  return { seasons, answer, said, text, verdict: answer.verdict };
}

/** The first and the second of each pair, and the second less the first. */
function pairs(seasons: readonly Season[]) {
  const firsts = seasons.filter((_, i) => i % 2 === 0);
  const seconds = seasons.filter((_, i) => i % 2 === 1);
  const gain = (read: (season: Season) => number) => seconds.map((season, i) => read(season) - read(firsts[i]!));
  return { firsts, seconds, gain };
}

/** To a millionth of the larger. */
const expectNear = (ours: number, theirs: number) =>
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(1e-6 * Math.max(1, Math.abs(theirs)));

const lintKg = (season: Season) => sum(season.pressing!.bales.map(({ netKg }) => netKg));
const harvested = (season: Season) => entriesOf(season, 'harvest', 'out', 'lot')[0]!;
/** Burs, sticks, leaf, motes and dirt, per cent of all that is dry. */
const dirtPercent = (season: Season) => {
  const { dryKg } = harvested(season);
  return (
    (100 * sum(['burs', 'sticks', 'leaf', 'motes', 'dirt'].map((part) => dryKg[part]!))) / dryOf(harvested(season))
  );
};
const moisturePercent = (season: Season) => (100 * waterOf(harvested(season))) / kgOf(harvested(season));
const micronaireInBale = ({ classing }: Season) => {
  const { linearDensityMtex, maturityRatio } = classing!.lot.fibre;
  return micronaireByHalving(linearDensityMtex * maturityRatio);
};
/** The color that most bales were given. */
function usualColor({ classing }: Season): string {
  const colors = classing!.classed.map(({ color }) => color);
  const times = (color: string) => colors.filter((each) => each === color).length;
  return colors.reduce((most, color) => (times(color) > times(most) ? color : most));
}
/** The upper half mean as tangents to the beard give it: the steepest line from half the amount down to the beard's curve. */
function upperHalfMeanMm(lengths: ArrayLike<number>): number {
  const start = 3.8;
  const fibres = Array.from(lengths, (n, i) => ({ x: (i + 1) * 0.5 * 0.83, caught: n * ((i + 1) * 0.5) ** 1.7 }));
  const left = (x: number) => sum(fibres.filter((fibre) => fibre.x > x).map((fibre) => fibre.caught * (fibre.x - x)));
  const half = left(start) / 2;
  const slopes = fibres.filter(({ x }) => x > start).map(({ x }) => (half - left(x)) / (x - start));
  return start + half / Math.max(...slopes);
}

describe('each answer worked out a second time, from the ledgers and the bales of its seasons', () => {
  test('a settlement added up line by line is the one that the seasons hold', () => {
    for (const id of ['coastal-plain', 'high-plains-dryland', 'long-staple-valley', 'river-bottom'])
      for (const seed of [1, 2]) {
        const season = runSeason(farmOf(id)!, seed, null);
        expectNear(leftUsd(season), season.payments!.netToFarmUsd);
      }
  });

  test('a planted bug is seen: with seed paid at another price the money is not the arithmetic’s', () => {
    const season = runSeason(farmOf('coastal-plain')!, 1, null);
    const wrong = withFactsMoved([{ fact: presentMoney.seedUsdPerTon, to: 250 }], () =>
      runSeason(season.scenario, 1, null),
    );
    expect(() => expectNear(leftUsd(season), wrong.payments!.netToFarmUsd)).toThrow();
  });

  test('good and bad years: the best and the worst of twelve', () => {
    const dryland = farmOf('high-plains-dryland')!;
    const paid = Array.from({ length: 12 }, (_, i) => leftUsd(runSeason(dryland, i + 1, null)));
    const { said, answer, seasons } = answered('good-and-bad-years');
    const ordered = [...paid].sort((a, b) => a - b);
    expectNear(said('best'), ordered[11]!);
    expectNear(said('worst'), ordered[0]!);
    expectNear(said('middle'), (ordered[5]! + ordered[6]!) / 2);
    expectNear(said('times'), ordered[11]! / ordered[0]!);
    expect(paid[answer.compare!.after.seed - 1]).toBe(ordered[11]);
    const rain = ({ field, weather }: Season) =>
      sum(
        weather.days
          .filter(({ dayOfYear }) => dayOfYear >= field.plantedDay && dayOfYear <= field.harvestDays.at(-1)!)
          .map(({ rainInches }) => rainInches),
      );
    expectNear(said('bestRain'), rain(seasons[paid.indexOf(ordered[11]!)]!));
    expectNear(said('worstRain'), rain(seasons[paid.indexOf(ordered[0]!)]!));
  });

  test('40 or 80 percent open: money, lint and micronaire of eight pairs', () => {
    const { seasons, said, verdict } = answered('forty-or-eighty');
    const { gain, firsts, seconds } = pairs(seasons);
    expect(firsts).toHaveLength(fewSeeds.length);
    for (const [i, early] of firsts.entries()) {
      expect(early.scenario.decisions.boll.openPercent).toBe(40);
      expect(seconds[i]!.scenario.decisions.boll.openPercent).toBe(80);
    }
    const money = gain(leftUsd);
    expectNear(said('money'), Math.abs(mean(money)));
    expectNear(said('least'), Math.min(...money));
    expectNear(said('most'), Math.max(...money));
    expect(said('late')).toBe(money.filter((usd) => usd > 0).length);
    expect(said('cheaper')).toBe(gain(usdPerBale).filter((usd) => usd <= 0).length);
    expectNear(said('lint'), Math.abs(mean(gain(lintKg))));
    expectNear(said('micronaire'), Math.abs(mean(gain(micronaireInBale))));
    expect(Math.sign(said('micronaireWay'))).toBe(Math.sign(mean(gain(micronaireInBale))));
    expect(verdict).toBe(verdictOf(money.map((usd) => usd > 0)));
  });

  test('the rain: no drop falls on an open boll of the dry year, all else of its weather is the same, and the cost is the difference', () => {
    const farm = farmOf('coastal-plain')!;
    const season = runSeason(farm, 1, null);
    const dry = dryAfterOpening(farm, season.weather);
    const from = season.field.events.firstOpenBoll!;
    expect(runSeason(farm, 1, dry).field.crop!.rainAfterOpeningInches).toBe(0);
    for (const [i, day] of season.weather.days.entries())
      expect(dry.days[i]).toEqual(day.dayOfYear < from ? day : { ...day, rainInches: 0 });
    const { seasons, said, verdict } = answered('rain');
    const { gain, firsts } = pairs(seasons);
    const cost = gain(leftUsd).map((usd) => -usd);
    expectNear(said('cost'), mean(cost));
    expectNear(said('least'), Math.min(...cost));
    expectNear(said('most'), Math.max(...cost));
    expectNear(said('share'), (100 * sum(cost)) / sum(firsts.map(leftUsd)));
    expectNear(said('bale'), Math.abs(mean(gain(usdPerBale))));
    expect(verdict).toBe(verdictOf(cost.map((usd) => usd >= 0)));
  });

  test('stripper or picker: money, lint and dirt of eight pairs', () => {
    const { seasons, said, verdict } = answered('stripper-or-picker');
    const { gain, firsts, seconds } = pairs(seasons);
    expect(firsts.every(({ scenario }) => scenario.decisions.harvest.method === 'spindle')).toBe(true);
    expect(seconds.every(({ scenario }) => scenario.decisions.harvest.method === 'stripperFieldCleaner')).toBe(true);
    const money = gain(leftUsd);
    expectNear(said('money'), Math.abs(mean(money)));
    expect(said('stripper')).toBe(money.filter((usd) => usd > 0).length);
    expectNear(said('lint'), Math.abs(mean(gain(lintKg))));
    expectNear(said('bale'), Math.abs(mean(gain(usdPerBale))));
    expect(Math.sign(said('baleWay'))).toBe(Math.sign(mean(gain(usdPerBale))));
    expectNear(said('pickedDirt'), mean(firsts.map(dirtPercent)));
    expectNear(said('strippedDirt'), mean(seconds.map(dirtPercent)));
    const airDryLintLb = (season: Season) => {
      const { dryKg, waterKg } = season.field.crop!.grown;
      return ((dryKg.lint + waterKg.lint) * lbPerKg) / season.scenario.acres;
    };
    expectNear(said('lintPerAcre'), mean(seasons.map(airDryLintLb)));
    expect(verdict).toBe(verdictOf(money.map((usd) => usd > 0)));
  });

  test('by hand: pounds picked over pounds a day, and the pay by the hundred pounds', () => {
    const { seasons, said, verdict } = answered('by-hand');
    const [then, now] = [seasons[0]!, seasons[1]!];
    const pounds = kgOf(harvested(then)) * lbPerKg;
    const bales = then.pressing!.bales.length;
    // 200 lb a day: plantation and labor records; 75 cents a hundred pounds: pickers of Hickman County in the Depression.
    expectNear(said('days'), pounds / 200 / bales);
    expectNear(said('balePay'), (0.75 * pounds) / 100 / bales);
    expectNear(said('dayPay'), 1.5);
    const share = (0.75 * pounds) / 100 / sum(then.classing!.classed.map(({ valueUsd }) => valueUsd));
    expectNear(said('share'), 100 * share);
    expect(verdict).toBe(share > 0.25 ? 'muchOfIt' : 'littleOfIt');
    const { personDays, machineHours } = now.harvest!.labour;
    expect(personDays).toBeNull();
    expectNear(said('minutes'), (60 * machineHours!) / now.pressing!.bales.length);
  });

  test('a wet module: moisture, yellowing and money of eight pairs', () => {
    const { seasons, said, text, verdict } = answered('wet-module');
    const { gain, firsts, seconds } = pairs(seasons);
    const money = gain(leftUsd);
    expectNear(said('dry'), mean(firsts.map(moisturePercent)));
    expectNear(said('wet'), mean(seconds.map(moisturePercent)));
    expectNear(said('money'), Math.abs(mean(money)));
    expect(said('costs')).toBe(money.filter((usd) => usd <= 0).length);
    expectNear(said('bale'), Math.abs(mean(gain(usdPerBale))));
    // Nothing before the gin but storage touches the color of the lint.
    const yellowed = (season: Season) =>
      fibreAfter(season, 'seedCottonCleaning').yellownessB / fibreAfter(season, 'harvest').yellownessB - 1;
    expectNear(said('yellowing'), 100 * mean(seconds.map(yellowed)));
    expect(mean(seconds.map(yellowed))).toBeGreaterThan(mean(firsts.map(yellowed)));
    expect([text('dryColor'), text('wetColor')]).toEqual([usualColor(firsts[0]!), usualColor(seconds[0]!)]);
    expect(said('days')).toBe(21);
    expect(verdict).toBe(verdictOf(money.map((usd) => usd <= 0)));
  });

  test('seed and lint: what stays on the seed, what breaks, and what grew on one', () => {
    const { seasons, said, verdict } = answered('seed-and-lint');
    const [sawn, rolled] = [seasons[0]!, seasons[1]!];
    const lintIn = entriesOf(sawn, 'ginning', 'in', 'lot')[0]!.dryKg.lint!;
    const lintOnSeed = sum(entriesOf(sawn, 'ginning', 'out', 'seedHouse').map(({ dryKg }) => dryKg.lint!));
    expectNear(said('onSeed'), (100 * lintOnSeed) / lintIn);
    const short = (season: Season, place: string) => shortPercent(fibreAfter(season, place).lengths);
    expectNear(said('before'), short(sawn, 'seedCottonCleaning'));
    expectNear(said('behindSaw'), short(sawn, 'stand'));
    expectNear(said('behindRoller'), short(rolled, 'stand'));
    expect(verdict).toBe(short(sawn, 'stand') > short(rolled, 'stand') ? 'sawBreaksMore' : 'rollerBreaksMore');
    const stand = sawn.ginning!.machines.find(({ machine }) => machine === 'sawStand')!.in;
    expectNear(said('moisture'), (100 * stand.waterKg.lint) / (stand.waterKg.lint + stand.dryKg.lint));
    // Air-dry lint over air-dry seed of the whole field, times the seed's own weight: 9.8 g a hundred (Sumner, Mississippi 1994).
    const { dryKg, waterKg } = sawn.field.crop!.grown;
    const lintOverSeed = (dryKg.lint + waterKg.lint) / (dryKg.seed + waterKg.seed);
    expect(Math.abs(said('milligrams') / (98 * lintOverSeed) - 1)).toBeLessThan(0.02);
    expect(said('fibres') % 100).toBe(0);
  });

  test('saw or roller: length by tangents, short fiber by weight, lint and money of one crop', () => {
    const { seasons, said, verdict } = answered('saw-or-roller');
    const [sawn, rolled] = [seasons[0]!, seasons[1]!];
    const lengthMm = (season: Season) => upperHalfMeanMm(season.classing!.lot.fibre.lengths);
    expect(said('sawLength')).toBeCloseTo(lengthMm(sawn), 6);
    expect(said('rollerLength')).toBeCloseTo(lengthMm(rolled), 6);
    expectNear(said('sawShort'), shortPercent(sawn.classing!.lot.fibre.lengths));
    expectNear(said('rollerShort'), shortPercent(rolled.classing!.lot.fibre.lengths));
    const [lint, money] = [lintKg(rolled) - lintKg(sawn), leftUsd(rolled) - leftUsd(sawn)];
    expectNear(said('lint'), Math.abs(lint));
    expectNear(said('money'), Math.abs(money));
    const longer = lengthMm(rolled) > lengthMm(sawn);
    expect(verdict).toBe(longer && money > 0 ? 'roller' : !longer && money <= 0 ? 'saw' : 'mixed');
    // The sentence gives all of it to the weight: the loan rate is one price for every bale.
    expect(
      new Set([sawn, rolled].flatMap(({ classing }) => classing!.classed.map((b) => b.priceCentsPerLb))).size,
    ).toBe(1);
  });

  test('a third lint cleaning: money, lint, leaf and short fiber of eight pairs', () => {
    const { seasons, said, verdict } = answered('third-lint-cleaning');
    const { gain } = pairs(seasons);
    const money = gain(leftUsd);
    expect(said('pays')).toBe(money.filter((usd) => usd > 0).length);
    expectNear(said('money'), Math.abs(mean(money)));
    expectNear(said('bale'), Math.abs(mean(gain(usdPerBale))));
    expectNear(said('lint'), Math.abs(mean(gain(lintKg))));
    expectNear(said('leaf'), Math.abs(mean(gain(({ classing }) => mean(classing!.classed.map(({ leaf }) => leaf))))));
    expectNear(said('short'), Math.abs(mean(gain(({ pressing }) => shortPercent(pressing!.lot.fibre.lengths)))));
    expect(verdict).toBe(verdictOf(money.map((usd) => usd > 0)));
  });

  test('the seed of a bale: by weight and by what it fetches; oil, meal, hulls, linters and loss make up the whole', () => {
    const { seasons, said, answer, verdict } = answered('where-the-seed-goes');
    const season = seasons[0]!;
    const perBale = 480 / netLb(season);
    const seedKg = accountKg(season, 'ginning', 'seedHouse') * perBale;
    expectNear(said('seed'), seedKg);
    expectNear(said('times'), (seedKg * lbPerKg) / 480);
    const { seed, ginning } = settlementUsd(season);
    expectNear(said('credit'), seed * perBale);
    expectNear(said('charge'), ginning * perBale);
    expectNear(said('paid'), (paidSeedLb(season) / lbPerKg) * perBale);
    expect(verdict).toBe(seed >= ginning ? 'paysGin' : 'fallsShort');
    // 320 lb of oil in a short ton of seed: an oil mill, farmprogress.com.
    expectNear(said('oil'), (seedKg * 320) / 2000);
    const kgOfLine = (name: string) => {
      const cell = answer.shown.find((line) => line.name === name)!.cells[0]!.value;
      return 'value' in cell ? Number(cell.value) : Number.NaN;
    };
    const products = ['oilKg', 'mealKg', 'hullsKg', 'lintersKg', 'lossKg'].map(kgOfLine);
    expectNear(sum(products), seedKg);
    expectNear(sum(['oil', 'meal', 'hulls', 'linters'].map(said)) + kgOfLine('lossKg'), seedKg);
  });

  test('who gets the money: each line of the settlement over the bales, and over the bolls', () => {
    const { seasons, said, verdict } = answered('who-gets-the-money');
    const season = seasons[0]!;
    const bales = season.pressing!.bales.length;
    const usd = settlementUsd(season);
    expect(said('bales')).toBe(bales);
    for (const line of ['lint', 'seed', 'ginning', 'classing', 'left'] as const)
      expectNear(said(line), usd[line] / bales);
    // All the lint that grew, over what a mean boll held.
    const { dryKg, waterKg } = season.field.crop!.grown;
    const bolls = (1000 * (dryKg.lint + waterKg.lint)) / season.field.lintGramsPerBoll;
    expectNear(said('centsPerBoll'), (100 * sum(baleUsd(season))) / bolls);
    expectNear(said('patch'), Math.sqrt(season.weaving!.cloth!.squareMetres / bolls) / 0.0254);
    expect(verdict).toBe(usd.seed >= usd.ginning ? 'seedPays' : 'seedFallsShort');
  });

  test('one staple: the markets’ own quotations at two staples, and the old rule for the finest yarn', () => {
    const { seasons, said, text, verdict } = answered('one-staple');
    const { classing } = seasons[0]!;
    const { lotReading } = classing!;
    const { color } = colourOf('upland', lotReading.reflectanceRd, lotReading.yellownessB);
    const leaf = leafGrade('upland', lotReading.trashAreaPercent);
    const staple = Math.round(lotReading.lengthIn * 32);
    expect(text('staple')).toBe(`${staple}/32`);
    const worth = Object.values(markets).map(({ grades, staples }) => {
      const row = grades.rows.find(
        ({ colours, leaf: [from, to] }) => colours.includes(color) && leaf >= from && leaf <= to,
      )!;
      const points = (code: number) => row.points[staples.indexOf(code)]!;
      // A point is a hundredth of a cent a pound.
      return (480 * (points(staple + 1) - points(staple))) / 100 / 100;
    });
    expect(said('least')).toBeCloseTo(Math.min(...worth), 6);
    expect(said('most')).toBeCloseTo(Math.max(...worth), 6);
    expect(said('none')).toBe(worth.filter((usd) => usd < 1).length);
    expect(verdict).toBe(Math.max(...worth) < 1 ? 'nothing' : Math.min(...worth) < 1 ? 'somewhere' : 'everywhere');
    // Highest standard count: 78.2 L - 79.2 W - 24.8, L in inches, W in millionths of an ounce to the inch (Indian Central Cotton
    // Committee); 28.349523125 g are an ounce.
    const ounces = ((classing!.lot.fibre.linearDensityMtex / 1e6) * 0.0254) / 28.349523125;
    const finest = (lengthIn: number) =>
      (78.2 * lengthIn * lotReading.uniformityPercent) / 100 - 79.2 * 1e6 * ounces - 24.8;
    expect(said('finestNow')).toBe(Math.round(finest(lotReading.lengthIn)));
    expect(said('finestThen')).toBe(Math.round(finest(lotReading.lengthIn + 1 / 32)));
  });
});
