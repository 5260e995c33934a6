import type { NumberDecision } from '../model/decisions.ts';
import type { Formats } from './formats.ts';
import type { Quantity } from './quantity-formats.ts';

/**
 * A decided number with its unit. Inches mean three things in this trade, so the key tells water and seams from distances.
 * @param key the decision's key in its station
 * @param decision its row in the table, for the unit
 * @param value the decided value, in the table's unit
 */
export function decisionQuantity(formats: Formats, key: string, decision: NumberDecision, value: number): Quantity {
  switch (decision.unit) {
    case 'dayOfYear': {
      const date = formats.day(value);
      return { number: date, unit: '', text: date, spoken: date };
    }
    case 'inches':
      if (key === 'irrigationInches') return formats.rain(value, 0);
      return key === 'seamInches' ? formats.seam(value) : formats.length(value);
    case 'perFoot':
      return formats.seeds(value);
    case 'percent': {
      const decimals = Number.isInteger(decision.step) ? 0 : 1;
      return key === 'moistureAddedPoints' ? formats.points(value, decimals) : formats.percentage(value, decimals);
    }
    case 'days':
      return formats.days(value);
    case 'fahrenheit':
      return formats.temperature(value);
    case 'pounds':
      return formats.pounds(value);
    case 'Ne':
      return formats.yarnCount(value);
    case 'perInch':
      return formats.threads(value);
    case 'count':
      return formats.plain(value);
  }
}
