import { createRequire } from 'node:module';
import { type LengthSample, lengthSamples } from '../checks/fixtures/length-samples.ts';
import { ifInstalled } from './if-installed.ts';

const require = createRequire(import.meta.url);
const form = /^(\w+)\((\w+|[\d.]+)(?:, ([\d.]+))?\)$/;

/**
 * Asks simple-statistics about a sample of fibre lengths, or about a number.
 * @param call a function of the tool with its input: 'mean(medium)', 'quantile(pima, 0.25)', 'errorFunction(1.2)'; a weighted
 * function takes the lengths themselves as weights
 * @returns the tool's figure; null where the tool is not installed
 * @throws RangeError for a call of another form
 */
export function askSimpleStatistics(call: string): number | null {
  const tool = ifInstalled<typeof import('simple-statistics')>(() => require('simple-statistics'));
  if (tool === null) return null;
  const [, name, input = '', share] = form.exec(call) ?? [];
  if (name === 'errorFunction') return tool.errorFunction(Number(input));
  if (!(input in lengthSamples)) throw new RangeError(`cannot ask simple-statistics for ${call}`);
  const lengths = lengthSamples[input as LengthSample]();
  switch (name) {
    case 'mean':
    case 'standardDeviation':
      return tool[name](lengths);
    case 'quantile':
      return tool.quantile(lengths, Number(share));
    case 'weightedMean':
    case 'weightedStandardDeviation':
      return tool[name](lengths, lengths);
    case 'weightedQuantile':
      return tool.weightedQuantile(lengths, lengths, Number(share));
    default:
      throw new RangeError(`cannot ask simple-statistics for ${call}`);
  }
}
