import { expect, test } from 'vitest';
import { outcomesOf } from '../../src/doubt/outcomes.ts';
import { runSeason } from '../../src/model/chain.ts';
import { farms } from '../../src/model/farms.ts';
import { chainLedger } from '../../src/model/ledger.ts';
import { totalDryKg } from '../../src/model/lot.ts';
import { outcomeKeys, seasonOutcomes, usualColour } from '../../src/model/season-outcomes.ts';
import { millimetresFromInches } from '../../src/model/units.ts';

test.each(farms)(
  '$id: the outcomes are those of the ledgers, the settlement and the other readers of a season',
  (each) => {
    const season = runSeason(each, 11, null);
    const ours = seasonOutcomes(season);
    const others = outcomesOf(season);
    expect(ours.staple32nds).toBeCloseTo(others.staple32nds!, 9);
    expect(ours.turnoutPercent).toBeCloseTo(others.turnoutPercent!, 9);
    expect(ours.usdPerBale).toBeCloseTo(others.usdPerBale!, 9);
    expect(ours.lintUsd! / each.acres).toBeCloseTo(others.usdPerAcre, 9);
    expect(ours.leftToFarmUsd).toBe(season.payments!.netToFarmUsd);
    expect(ours.lengthMm).toBeCloseTo(millimetresFromInches(season.classing!.lotReading.lengthIn), 9);
    // What the chain as a whole sends to an account, from the function that joins its ledgers.
    const sent = (account: string) =>
      chainLedger(season.ledgers)
        .out.filter((entry) => entry.account === account)
        .reduce((sum, { dryKg, waterKg }) => sum + totalDryKg(dryKg) + waterKg, 0);
    expect(ours.ginTrashKg).toBeCloseTo(sent('ginTrash'), 6);
    expect(ours.leftInFieldKg).toBeCloseTo(sent('leftInField'), 6);
    expect(ours.seedKg).toBeCloseTo(sent('seedHouse'), 6);
    expect(ours.millWasteKg).toBeCloseTo(
      ['millTrash', 'cardStrips', 'comberNoil', 'hardWaste', 'invisibleLoss'].reduce(
        (sum, name) => sum + sent(name),
        0,
      ),
      6,
    );
  },
);

test('a crop that failed weighs nothing and has no staple, no price and no color', () => {
  const { decisions } = farms[0]!;
  const planting = { ...decisions.planting, plantingDayOfYear: 300 };
  const season = runSeason({ ...farms[0]!, decisions: { ...decisions, planting } }, 3, null);
  expect(season.stopped).not.toBeNull();
  const outcomes = seasonOutcomes(season);
  const absent = outcomeKeys.filter((key) => outcomes[key] === null);
  expect(absent).toContain('staple32nds');
  expect(absent).toContain('usdPerBale');
  expect([outcomes.lintKg, outcomes.bales, outcomes.leftToFarmUsd]).toEqual([0, 0, 0]);
  expect(usualColour(season)).toBeNull();
});
