import { celsiusFromFahrenheit } from '../units.ts';
import { dryingFacts as facts } from './facts.ts';

/** Saturation pressure of water vapour over water, kPa: Magnus form, a few percent high near boiling. */
export function saturationKPa(celsius: number): number {
  return (
    facts.magnusScaleKPa.value * Math.exp((facts.magnusSlope.value * celsius) / (celsius + facts.magnusOffsetC.value))
  );
}

/** Humidity of outside air after heating to a temperature, fraction; the vapour in it stays the same. */
export function heatedHumidity(outsideF: number, outsideHumidity: number, heatedF: number): number {
  const vapour = outsideHumidity * saturationKPa(celsiusFromFahrenheit(outsideF));
  return Math.min(outsideHumidity, vapour / saturationKPa(celsiusFromFahrenheit(heatedF)));
}

/** Regain of lint in air of a humidity, dry fraction (absorption side; lint that dries ends a little higher). */
export function lintRegain(humidity: number): number {
  const h = Math.min(facts.dampestHumidity.value, Math.max(0, humidity));
  return facts.regainScale.value * (h / (1 - h)) ** facts.regainExponent.value;
}

/** Wet-basis moisture from regain, both fractions. */
export const wetBasisFromRegain = (regain: number): number => regain / (1 + regain);
