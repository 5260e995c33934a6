import type { WeatherYear } from '../model/field/weather.ts';

const keys = new WeakMap<WeatherYear, string>();

/**
 * A short name for a year of real weather, the same for the same days: FNV-1a in 32 bits over every value, in base 36. It
 * lets a link say which record its numbers rest on without holding the record.
 */
export function weatherKey(year: WeatherYear): string {
  const known = keys.get(year);
  if (known) return known;
  const text = [year.latitudeDegrees, ...year.days.flatMap((day) => [day.maxF, day.minF, day.rainInches])].join(' ');
  let sum = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) sum = Math.imul(sum ^ text.charCodeAt(i), 0x01000193);
  const key = (sum >>> 0).toString(36);
  keys.set(year, key);
  return key;
}
