import { baleValueUsd } from '../../src/model/classing/class-card.ts';
import { presentMoney, thirtiesMoney } from '../../src/model/classing/money-facts.ts';
import { type PaymentLine, settle, settleSeed } from '../../src/model/classing/payments.ts';
import { kilogramsFromPounds } from '../../src/model/units.ts';
import { always, type FormulaModel, from, letters, oneOf, whole } from './formula-model.ts';

const bale = (netLb: number) => ({ netLb, paidLb: netLb, waterRule: 'none' as const, valueUsd: 0, priceYear: 2000 });

/** What the farm pays on a line of a sale, USD. */
function paidUsd(
  item: PaymentLine['item'],
  era: 'present' | 'thirties',
  netLb: readonly number[],
  handPickedSeedCottonKg: number | null = null,
): number {
  const { lines } = settle({ era, bales: netLb.map(bale), seedKg: 0, storageMonths: 0, handPickedSeedCottonKg });
  return -(lines.find((line) => line.item === item)?.usd ?? Number.NaN);
}

const ginCharges = {
  present: presentMoney.ginChargeUsdPer480Lb.value,
  thirties: thirtiesMoney.ginChargeUsdPer480Lb.value,
};

/** The formulas of the settlement. */
export const moneyFormulas = {
  baleValue: {
    // Prices come to the hundredth of a cent. A weight that ends in 3 never makes half a cent, which either may round its own way.
    inputs: letters({
      W: whole(200_000, 520_000).map((n) => (10 * n + 3) / 10_000),
      B: whole(500, 12_000).map((n) => n / 100),
      P: whole(-4000, 1500),
    }),
    compute: ({ W, B, P }) => baleValueUsd(W!, B!, P!),
  },
  seedCredit: {
    inputs: letters({ S: from(0, 9e5), p: from(20, 400) }),
    compute: ({ S, p }) => settleSeed(S!, p!, 0).seedCreditUsd,
  },
  ginCharge: {
    inputs: letters({ W: from(100, 9e5), c: oneOf([ginCharges.present, ginCharges.thirties]) }),
    compute: ({ W, c }) => paidUsd('ginning', c === ginCharges.present ? 'present' : 'thirties', [W!]),
  },
  classFee: {
    inputs: letters({ n: whole(1, 400), c: always(presentMoney.classFeeUsdPerBale) }),
    compute: ({ n }) => paidUsd('classing', 'present', Array<number>(n!).fill(480)),
  },
  pickingPay: {
    inputs: letters({ S: from(1, 9e5), c: always(thirtiesMoney.pickingUsdPerCwt) }),
    compute: ({ S }) => paidUsd('picking', 'thirties', [480], kilogramsFromPounds(S!)),
  },
} satisfies Readonly<Record<string, FormulaModel>>;
