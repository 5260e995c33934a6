import coastalPlain from '../../content/scenarios/coastal-plain.json' with { type: 'json' };
import handPicked from '../../content/scenarios/hand-picked-1930s.json' with { type: 'json' };
import highPlains from '../../content/scenarios/high-plains-dryland.json' with { type: 'json' };
import irrigatedDesert from '../../content/scenarios/irrigated-desert.json' with { type: 'json' };
import longStapleValley from '../../content/scenarios/long-staple-valley.json' with { type: 'json' };
import riverBottom from '../../content/scenarios/river-bottom.json' with { type: 'json' };
import { checkScenario, type Scenario } from './scenario.ts';

/** The six invented farms, the default first. The files are checked by a test, and again here so that a bad file is named. */
export const farms: readonly Scenario[] = [
  coastalPlain,
  riverBottom,
  highPlains,
  irrigatedDesert,
  longStapleValley,
  handPicked,
].map((file) => {
  const checked = checkScenario(file);
  if (!checked.ok) throw new Error(`${file.id}: ${checked.problems.map((p) => p.field).join(', ')}`);
  return checked.value;
});

/** The farm of an id, or undefined. */
export const farmOf = (id: string): Scenario | undefined => farms.find((farm) => farm.id === id);
