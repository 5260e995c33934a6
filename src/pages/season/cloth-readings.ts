import { fill } from '../../language/fill.ts';
import { fahrenheitFromCelsius } from '../../model/units.ts';
import type { Printed } from '../../workings/working.ts';
import { readingsIn, type StationReadings } from './reading.ts';

type Shown = Exclude<Printed, { as: 'exact' }>;
const percent = (value: number): Shown => ({ as: 'percent', value });
const count = (value: number): Shown => ({ as: 'count', value });

export const spinningReadings: StationReadings = ({ spinning }, words) => {
  if (!spinning) return [];
  const { readings, cloth } = words.messages;
  const reading = readingsIn(words);
  const { yarn, verdict, yarnRealisation } = spinning;
  return [
    ...reading('verdict', readings.verdict, { as: 'word', list: 'spinVerdicts', word: verdict.status }),
    ...reading('limit', cloth.yarn.limit, { as: 'yarnCount', value: Math.floor(verdict.ceilingNe) }),
    ...reading('fibresInSection', cloth.yarn.fibresInSection, count(verdict.fibresInSection)),
    ...reading('evenness', cloth.yarn.evenness, yarn ? percent(yarn.cvPercent) : null),
    ...reading('tenacity', cloth.yarn.tenacity, yarn ? { as: 'yarnStrength', value: yarn.tenacityCnPerTex } : null),
    ...reading('twist', cloth.yarn.twist, yarn ? { as: 'threads', value: yarn.turnsPerInch } : null),
    ...reading('fuzz', readings.fuzz, yarn ? count(yarn.fibreEndsPerCm) : null),
    ...reading('realisation', readings.realisation, yarnRealisation === null ? null : percent(100 * yarnRealisation)),
  ];
};

export const weavingReadings: StationReadings = ({ weaving, scenario }, words) => {
  const made = weaving?.cloth;
  if (!made) return [];
  const { readings, cloth } = words.messages;
  const reading = readingsIn(words);
  const { description, finishShrinkPercent } = made;
  const woven = description.kind === 'woven' ? description : null;
  return [
    ...reading('weight', cloth.fabric.weight, { as: 'clothWeight', value: made.gramsPerSquareMetre }),
    ...reading(
      'threadCount',
      cloth.fabric.threadCount,
      woven ? count(scenario.decisions.weaving.endsPerInch + scenario.decisions.weaving.picksPerInch) : null,
    ),
    ...reading('threadCountFinished', readings.threadCountFinished, woven ? count(woven.threadCount) : null),
    ...reading('cover', cloth.fabric.cover, woven ? { as: 'number', value: woven.clothCover, decimals: 1 } : null),
    ...reading(
      'shrinkage',
      cloth.fabric.shrinkage,
      { as: 'both', ...finishShrinkPercent },
      { mark: 'memory', source: words.messages.limits.threadCount },
    ),
    ...reading('drape', readings.drape, { as: 'word', list: 'drapes', word: made.drape.word }),
    ...reading('fuzziness', readings.fuzziness, { as: 'word', list: 'fuzzes', word: made.fuzz }),
  ];
};

export const sewingReadings: StationReadings = ({ sewing, weaving }, words) => {
  if (!sewing || !weaving?.cloth) return [];
  const { readings, cloth } = words.messages;
  const reading = readingsIn(words);
  const left = sewing.shrinkLeftPercent;
  return [
    ...reading(
      'patch',
      cloth.sewing.patch,
      sewing.patchInchesPerBoll === null ? null : { as: 'length', value: sewing.patchInchesPerBoll, decimals: 2 },
    ),
    ...reading(
      'yards',
      fill(cloth.fabric.yards, { width: words.formats.length(weaving.cloth.widthInches, 0).text }),
      sewing.yardsPerBale === null ? null : { as: 'clothLength', value: sewing.yardsPerBale, decimals: 0 },
    ),
    ...reading(
      'prewashLeft',
      readings.prewashLeft,
      left.length === 0 && left.width === 0 ? { as: 'word', list: 'amounts', word: 'none' } : { as: 'both', ...left },
    ),
    ...reading('needle', cloth.sewing.needle, { as: 'text', text: sewing.needle.needles.join(' – ') }),
    ...reading('iron', readings.iron, { as: 'temperature', value: fahrenheitFromCelsius(weaving.cloth.ironCelsius) }),
  ];
};
