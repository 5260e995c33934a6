import { createRequire } from 'node:module';
import { ifInstalled } from './if-installed.ts';

const require = createRequire(import.meta.url);

/** The part of PsychroLib that is asked; the package has no types of its own. */
interface Psychrolib {
  readonly SI: number;
  SetUnitSystem(system: number): void;
  /** Saturation pressure of water vapour, Pa. */
  GetSatVapPres(celsius: number): number;
  /** Pressure of the vapour in moist air, Pa; humidity as a fraction. */
  GetVapPresFromRelHum(celsius: number, humidity: number): number;
  /** Humidity, as a fraction, of air with so much vapour. */
  GetRelHumFromVapPres(celsius: number, pascal: number): number;
}
const calls = ['GetSatVapPres', 'GetVapPresFromRelHum', 'GetRelHumFromVapPres'] as const;

/**
 * Asks PsychroLib, the public code of the ASHRAE Handbook's formulas, in SI units.
 * @returns the tool's figure; null where the tool is not installed
 * @throws RangeError for a function that is not asked here
 */
export function askPsychrolib(call: string, args: readonly number[]): number | null {
  const name = calls.find((known) => known === call);
  if (name === undefined) throw new RangeError(`cannot ask PsychroLib for ${call}`);
  const tool = ifInstalled<Psychrolib>(() => require('psychrolib'));
  if (tool === null) return null;
  tool.SetUnitSystem(tool.SI);
  return tool[name](...(args as [number, number]));
}
