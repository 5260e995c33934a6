import { cardLimits, checkCard } from '../model/classing/check-card.ts';
import { classOne } from '../model/classing/class-card.ts';
import { decisionTable } from '../model/decisions.ts';
import { limitNeOfClassCard } from '../model/mill/limits.ts';
import { problemsError } from './input-error.ts';
import type { Io } from './main.ts';
import { readChoice, readOptions, textOf } from './options.ts';
import { inchUnits, noUnits, percentUnits, poundUnits, readInteger, readQuantity, strengthUnits } from './quantity.ts';

const kinds = {
  length: 'value',
  uniformity: 'value',
  strength: 'value',
  micronaire: 'value',
  rd: 'value',
  b: 'value',
  leaf: 'value',
  kind: 'value',
  market: 'value',
  net: 'value',
  json: 'flag',
} as const;

/** Grades and prices one bale from the numbers on its class card. */
export function baleCommand(args: readonly string[], io: Io): void {
  const options = readOptions(args, kinds);
  const text = (name: string, otherwise: string) => textOf(options, name) ?? otherwise;
  const card = checkCard({
    kind: readChoice('kind', text('kind', 'upland'), ['upland', 'pima'] as const),
    lengthIn: readQuantity('length', text('length', '1.12'), inchUnits, cardLimits.lengthIn),
    uniformityPercent: readQuantity('uniformity', text('uniformity', '82'), percentUnits, cardLimits.uniformityPercent),
    strengthGPerTex: readQuantity('strength', text('strength', '30'), strengthUnits, cardLimits.strengthGPerTex),
    micronaire: readQuantity('micronaire', text('micronaire', '4.2'), noUnits, cardLimits.micronaire),
    reflectanceRd: readQuantity('rd', text('rd', '76'), noUnits, cardLimits.reflectanceRd),
    yellownessB: readQuantity('b', text('b', '8.5'), noUnits, cardLimits.yellownessB),
    leaf: readInteger('leaf', text('leaf', '3'), cardLimits.leaf.low, cardLimits.leaf.high),
    market: readChoice('market', text('market', 'southeast'), decisionTable.classing.market.options),
    netLb: readQuantity('net', text('net', '480'), poundUnits, cardLimits.netLb),
  });
  if (!card.ok) throw problemsError(card.problems);
  const classed = classOne(card.value);
  const limitNe = limitNeOfClassCard(card.value.micronaire);
  if (options.json) {
    io.out(
      JSON.stringify(
        {
          color: classed.color,
          leaf: classed.leaf,
          staple32nds: classed.staple32nds,
          premiumPoints: classed.premiumPoints,
          priceCentsPerLb: classed.priceCentsPerLb,
          priceYear: classed.priceYear,
          basis: classed.basis,
          filled: classed.filled,
          valueUsd: classed.valueUsd,
          limitNe,
        },
        null,
        2,
      ),
    );
    return;
  }
  const lines = [
    `Color ${classed.color} (${classed.colorName}), leaf ${classed.leaf}, staple ${classed.staple32nds}/32`,
    ...classed.points.map((line) => `  ${line.item.padEnd(11)} ${line.points} points`),
    `Premium or discount ${classed.premiumPoints} points, ${classed.priceCentsPerLb.toFixed(2)} cents a pound (${classed.priceYear}, ${classed.basis})`,
    `Value $${classed.valueUsd.toFixed(2)} at prices of ${classed.priceYear}`,
    ...(classed.filled.length > 0 ? ['Some of the points are not quoted by this market; they were filled in.'] : []),
    `Finest yarn by fibers in the section: ring combed Ne ${limitNe.ringCombed.toFixed(0)}, ring carded Ne ${limitNe.ringCarded.toFixed(0)}, rotor Ne ${limitNe.rotor.toFixed(0)}`,
    'The color chart is our simplification, not the official one.',
  ];
  io.out(lines.join('\n'));
}
