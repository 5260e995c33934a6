import { fill } from '../../language/fill.ts';
import { reading, type StationReadings } from './reading.ts';

export const spinningReadings: StationReadings = ({ spinning }, { messages, formats }) => {
  if (!spinning) return [];
  const { readings, cloth } = messages;
  const { yarn, verdict, yarnRealisation } = spinning;
  return [
    ...reading(readings.verdict, readings.spinVerdicts[verdict.status]),
    ...reading(cloth.yarn.limit, formats.yarnCount(Math.floor(verdict.ceilingNe)).text),
    ...reading(cloth.yarn.fibresInSection, formats.count(verdict.fibresInSection)),
    ...reading(cloth.yarn.evenness, yarn ? formats.percent(yarn.cvPercent) : null),
    ...reading(cloth.yarn.tenacity, yarn ? formats.yarnStrength(yarn.tenacityCnPerTex).text : null),
    ...reading(cloth.yarn.twist, yarn ? formats.threads(yarn.turnsPerInch).text : null),
    ...reading(readings.fuzz, yarn ? formats.count(yarn.fibreEndsPerCm) : null),
    ...reading(readings.realisation, yarnRealisation === null ? null : formats.percent(100 * yarnRealisation)),
  ];
};

export const weavingReadings: StationReadings = ({ weaving, scenario }, { messages, formats }) => {
  const made = weaving?.cloth;
  if (!made) return [];
  const { readings, cloth } = messages;
  const { description, finishShrinkPercent } = made;
  const woven = description.kind === 'woven' ? description : null;
  return [
    ...reading(cloth.fabric.weight, formats.clothWeight(made.gramsPerSquareMetre).text),
    ...reading(
      cloth.fabric.threadCount,
      woven ? formats.count(scenario.decisions.weaving.endsPerInch + scenario.decisions.weaving.picksPerInch) : null,
    ),
    ...reading(readings.threadCountFinished, woven ? formats.count(woven.threadCount) : null),
    ...reading(cloth.fabric.cover, woven ? formats.number(woven.clothCover, 1) : null),
    ...reading(
      cloth.fabric.shrinkage,
      fill(readings.perLength, {
        length: formats.percent(finishShrinkPercent.length),
        width: formats.percent(finishShrinkPercent.width),
      }),
      { mark: 'memory', source: messages.limits.threadCount },
    ),
    ...reading(readings.drape, readings.drapes[made.drape.word]),
    ...reading(readings.fuzziness, readings.fuzzes[made.fuzz]),
  ];
};

export const sewingReadings: StationReadings = ({ sewing, weaving }, { messages, formats }) => {
  if (!sewing || !weaving?.cloth) return [];
  const { readings, cloth } = messages;
  const left = sewing.shrinkLeftPercent;
  return [
    ...reading(
      cloth.sewing.patch,
      sewing.patchInchesPerBoll === null ? null : formats.length(sewing.patchInchesPerBoll, 2).text,
    ),
    ...reading(
      fill(cloth.fabric.yards, { width: formats.length(weaving.cloth.widthInches, 0).text }),
      sewing.yardsPerBale === null ? null : formats.clothLength(sewing.yardsPerBale, 0).text,
    ),
    ...reading(
      readings.prewashLeft,
      left.length === 0 && left.width === 0
        ? readings.none
        : fill(readings.perLength, { length: formats.percent(left.length), width: formats.percent(left.width) }),
    ),
    ...reading(cloth.sewing.needle, sewing.needle.needles.join(' – ')),
    ...reading(readings.iron, formats.temperature(weaving.cloth.ironCelsius * 1.8 + 32).text),
  ];
};
