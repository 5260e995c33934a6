import { makeFormats } from '../language/formats.ts';
import { en } from '../language/messages/en.ts';
import type { UnitSystem } from '../language/unit-system.ts';
import type { Season } from '../model/season.ts';
import { kilogramsFromPounds } from '../model/units.ts';
import { seasonReport } from './season-report.ts';

/** A season in words, for whoever runs the command by hand. */
export function seasonText(season: Season, units: UnitSystem): string {
  const report = seasonReport(season);
  const show = makeFormats('en', units, en);
  const account = (name: string): string =>
    (({ ...en.accounts.sources, ...en.accounts.destinations }) as Record<string, string>)[name] ?? name;
  const lines = [`${season.scenario.name.en}, season number ${season.seed} (an invented farm)`];
  if (report.stopped) lines.push(stopLine(season));
  const { field, gin, cloth, yarn } = report;
  if (field.lintLbPerAcre !== null) {
    lines.push(
      `Field: ${show.fieldYield(field.lintLbPerAcre).text} of lint, first flower day ${field.firstFlowerDay}, first open boll day ${field.openBollDay}, ${show.heatUnits(field.dd60PlantingToHarvest!).text}`,
    );
  }
  if (gin) {
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
    lines.push(`Bales: ${report.bales.length}, worth ${show.money(value, 0)} in all`);
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
    lines.push(`  ${account(name).padEnd(32)} ${show.mass(kg).text.padStart(14)}`);
  }
  lines.push(
    `In ${show.mass(report.ledger.inKg).text}, out ${show.mass(report.ledger.outKg).text}, closing error ${report.ledger.closingErrorRelative.toExponential(1)}`,
  );
  return lines.join('\n');
}

function stopLine({ stopped }: Season): string {
  const heat = stopped?.dd60 === null || !stopped ? '' : `: ${Math.round(stopped.dd60)} heat units (DD60)`;
  const needed = stopped?.dd60Needed ? `, ${Math.round(stopped.dd60Needed)} needed` : '';
  return `Stopped at ${stopped?.station}: ${stopped?.reason}${heat}${needed}`;
}
