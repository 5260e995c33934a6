import { fill } from '../language/fill.ts';
import { type Formats, makeFormats } from '../language/formats.ts';
import { en } from '../language/messages/en.ts';
import type { UnitSystem } from '../language/unit-system.ts';
import { roundingFacts } from '../model/rounding-facts.ts';
import type { Season, SeasonStop } from '../model/season.ts';
import { kilogramsFromPounds } from '../model/units.ts';
import { seasonReport } from './season-report.ts';

/** A season in words, for whoever runs the command by hand. */
export function seasonText(season: Season, units: UnitSystem): string {
  const report = seasonReport(season);
  const show = makeFormats('en', units, en);
  const account = (name: string): string =>
    (({ ...en.accounts.sources, ...en.accounts.destinations }) as Record<string, string>)[name] ?? name;
  const lines = [`${season.scenario.name.en}, season number ${season.seed} (an invented farm)`];
  if (season.stopped) lines.push(stopLine(season.stopped, show));
  const { field, gin, cloth, yarn } = report;
  if (field.lintLbPerAcre !== null) {
    lines.push(
      `Field: ${show.fieldYield(field.lintLbPerAcre).text} of lint, first flower day ${field.firstFlowerDay}, first open boll day ${field.openBollDay}, ${show.heatUnits(field.dd60PlantingToHarvest!).text}`,
    );
  }
  if (gin) {
    const { wanted, inLine } = gin.lintCleaners;
    if (gin.standVerdict === 'chokes')
      lines.push(`Gin: ${show.percent(gin.standMoisturePercent)} of water in the lint chokes the stand`);
    if (inLine < wanted) lines.push(`Gin: ${inLine} of ${wanted} lint cleaners, the most of this kind in line`);
    lines.push(
      `Gin: turnout ${show.percent(gin.turnout * 100)}, ${show.mass(kilogramsFromPounds(gin.seedCottonLbPer480LbBale), 0).text} of seed cotton for a 480-pound bale`,
    );
  }
  const last = report.fibre?.filter(({ after }) => after !== 'card' && after !== 'comber').at(-1);
  if (last) {
    lines.push(
      `Fiber: ${show.fibreLength(last.upperHalfMeanMm).text}, uniformity ${show.percent(last.uniformityPercent)}, micronaire ${show.micronaire(last.micronaire).text}`,
    );
  }
  if (report.bales) {
    const value = report.bales.reduce((sum, bale) => sum + bale.valueUsd, 0);
    const remnants = report.bales.filter(({ remnant }) => remnant).length;
    const light = remnants > 0 ? ', the last a remnant' : '';
    lines.push(
      `Bales: ${report.bales.length}${light}, worth ${show.money(value, 0)} in all, ${yearsOf(report.bales.map(({ priceYear }) => priceYear))}`,
    );
    if (report.bales.some(({ filled }) => filled.length > 0)) {
      lines.push('  Some of the points are not quoted by this market; they were filled in.');
    }
  }
  if (report.money) {
    lines.push(
      `Left to the farm: ${show.money(report.money.netToFarmUsd, 0)} with the seed sold, ginning and fees paid, ${yearsOf(report.money.years)}`,
    );
  }
  if (yarn)
    lines.push(`Yarn: ${show.yarnCount(yarn.ne).text}, ${show.count(yarn.fibresInSection)} fibers in a section`);
  if (cloth?.patchInchesPerBoll) {
    lines.push(
      `Cloth: ${show.clothWeight(cloth.gramsPerSquareMetre).text}; one boll makes a patch ${show.length(cloth.patchInchesPerBoll, 2).text} square`,
    );
  }
  lines.push('Where it went:');
  for (const { account: name, kg } of report.ledger.destinations) {
    // What rounding leaves of nothing is no place where cotton went.
    if (kg < roundingFacts.hair.value * report.ledger.inKg) continue;
    lines.push(`  ${account(name).padEnd(32)} ${show.mass(kg).text.padStart(14)}`);
  }
  lines.push(
    `In ${show.mass(report.ledger.inKg).text}, out ${show.mass(report.ledger.outKg).text}, closing error ${report.ledger.closingErrorRelative.toExponential(1)}`,
  );
  return lines.join('\n');
}

/** Where the season stopped and why, in the words of the page. */
function stopLine({ station, reason, dd60, dd60Needed }: SeasonStop, show: Formats): string {
  const heat = (units: number | null) => (units === null ? '' : show.heatUnits(units).text);
  const sentence = (en.verdicts.stopped as Readonly<Record<string, string>>)[reason] ?? '';
  const filled = fill(sentence, { dd60: heat(dd60), needed: heat(dd60Needed) });
  return `Stopped at ${en.stations[station].name}. ${filled}`.trim();
}

/** The years prices come from; more than one is said. */
function yearsOf(years: readonly number[]): string {
  const different = [...new Set(years)].sort((a, b) => a - b);
  return different.length > 1 ? `at prices of mixed years (${different.join(', ')})` : `at prices of ${different[0]}`;
}
