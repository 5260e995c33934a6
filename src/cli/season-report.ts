import { readFibre } from '../model/fibre.ts';
import { summariseGin } from '../model/gin/byproducts.ts';
import { chainLedger, closingErrorRelative, type MassEntry } from '../model/ledger.ts';
import { totalDryKg } from '../model/lot.ts';
import type { Season } from '../model/season.ts';
import { stationIds } from '../model/station.ts';
import { POUNDS_PER_STATISTICAL_BALE, poundsFromKilograms } from '../model/units.ts';

const entryKg = (entry: MassEntry) => totalDryKg(entry.dryKg) + entry.waterKg;

/** Entries added up by account, in the order they first appear, kg with water. */
function byAccount(entries: readonly MassEntry[]) {
  const sums = new Map<string, number>();
  for (const entry of entries) sums.set(entry.account, (sums.get(entry.account) ?? 0) + entryKg(entry));
  return [...sums].map(([account, kg]) => ({ account, kg }));
}

const sumKg = (entries: readonly MassEntry[]) => entries.reduce((sum, entry) => sum + entryKg(entry), 0);

/** How far the season came: stations before the stop, or all twelve. */
const stationsPassed = ({ stopped }: Season) => (stopped ? stationIds.indexOf(stopped.station) : stationIds.length);

/**
 * A season as data for other programs. Each key names its unit: trade figures in trade units, masses in kg. What lies past
 * the stop is null.
 */
export function seasonReport(season: Season) {
  const { field, cleaning, ginning, pressing, classing, spinning, weaving, sewing, scenario } = season;
  const whole = chainLedger(season.ledgers);
  const gin = cleaning && ginning && pressing ? summariseGin(cleaning.ledger, ginning.ledger, pressing.ledger) : null;
  const bales = classing?.classed ?? null;
  const netLb = bales?.reduce((sum, bale) => sum + bale.netLb, 0) ?? null;
  const firstFlower = field.events.firstFlower;
  const firstOpen = field.events.firstOpenBoll;
  const passed = stationsPassed(season);
  return {
    scenario: scenario.id,
    seed: season.seed,
    weather: season.weather.year === null ? 'generated' : `record ${season.weather.year}`,
    stopped: season.stopped,
    stations: stationIds.map((id, index) => ({ id, reached: index <= passed, done: index < passed })),
    ledger: {
      inKg: sumKg(whole.in),
      outKg: sumKg(whole.out),
      closingErrorRelative: closingErrorRelative(whole),
      sources: byAccount(whole.in),
      destinations: byAccount(whole.out),
      stations: season.ledgers.map((ledger) => ({
        id: ledger.station,
        closingErrorRelative: closingErrorRelative(ledger),
        in: byAccount(ledger.in),
        out: byAccount(ledger.out),
      })),
    },
    field: {
      lintLbPerAcre: netLb === null ? null : netLb / scenario.acres,
      firstFlowerDay: firstFlower === null ? null : firstFlower - field.plantedDay,
      openBollDay: firstOpen === null ? null : firstOpen - field.plantedDay,
      harvestDay: field.harvestDays.length > 0 ? field.harvestDays.at(-1)! - field.plantedDay : null,
      dd60PlantingToHarvest: field.crop ? field.dd60PlantingToHarvest : null,
      nodesAboveWhiteFlowerAtFirstFlower: field.nodesAboveWhiteFlowerAtFirstFlower,
      yieldShareFirstPosition: field.crop ? field.yieldShares.first : null,
      yieldShares: field.crop ? field.yieldShares : null,
      bollsPerPlant: field.crop ? field.bollsPerPlant : null,
      plantsPerAcre: field.plantsPerAcre,
      lintGramsPerBoll: field.crop ? field.lintGramsPerBoll : null,
    },
    gin: gin && {
      turnout: gin.turnout,
      seedCottonLbPer480LbBale: gin.seedCottonLbPer480LbBale,
      seedLbPer500LbBale: gin.seedLbPer500LbBale,
      wasteLbPer480LbBale: gin.wasteLbPer480LbBale,
      standMoisturePercent: ginning!.standMoisturePercent,
      standVerdict: ginning!.standRun.verdict,
      standPaceShare: ginning!.standRun.paceShare,
      lintCleaners: ginning!.lintCleaners,
      baleMoisturePercent: pressing!.moisturePercent,
    },
    fibre:
      season.fibreTrail.length === 0
        ? null
        : season.fibreTrail.map(({ after, fibre }) => ({
            after,
            ...readFibre(fibre),
          })),
    bales:
      bales?.map((bale, index) => ({
        tag: bale.tag,
        mark: bale.mark,
        remnant: pressing!.bales[index]!.remnant,
        netLb: bale.netLb,
        grossLb: bale.grossLb,
        color: bale.color,
        leaf: bale.leaf,
        staple32nds: bale.staple32nds,
        byEye: bale.byEye && { grade: bale.byEye.colorName, staple: bale.byEye.staple },
        micronaire: bale.reading.micronaire,
        strengthGPerTex: bale.reading.strengthGPerTex,
        uniformityPercent: bale.reading.uniformityPercent,
        premiumPoints: bale.premiumPoints,
        filled: bale.filled,
        paidLb: bale.paidLb,
        waterRule: bale.waterRule,
        valueUsd: bale.valueUsd,
        priceYear: bale.priceYear,
        basis: bale.basis,
      })) ?? null,
    money: season.payments && {
      lines: season.payments.lines,
      netToFarmUsd: season.payments.netToFarmUsd,
      waterDeductedLb: season.payments.waterDeductedLb,
      balesRefusedForLoan: season.payments.balesRefusedForLoan,
      mixedYears: season.payments.mixedYears,
      years: season.payments.years,
    },
    yarn: spinning?.yarn
      ? {
          ne: spinning.yarn.ne,
          fibresInSection: spinning.yarn.fibresInSection,
          cvPercent: spinning.yarn.cvPercent,
          tenacityCnPerTex: spinning.yarn.tenacityCnPerTex,
          turnsPerInch: spinning.yarn.turnsPerInch,
          realisation: spinning.yarnRealisation,
        }
      : null,
    cloth:
      weaving?.cloth && sewing
        ? {
            gramsPerSquareMetre: weaving.cloth.gramsPerSquareMetre,
            yardsPerBale: sewing.yardsPerBale,
            patchInchesPerBoll: sewing.patchInchesPerBoll,
            squareMetres: weaving.cloth.squareMetres,
          }
        : null,
    baleEquivalents: pressing
      ? pressing.bales.reduce((sum, bale) => sum + poundsFromKilograms(bale.netKg), 0) / POUNDS_PER_STATISTICAL_BALE
      : null,
  };
}
