const msPerSecond = 1000;
const secondsPerMinute = 60;

/** A time in whole seconds: 3:07 of 187 000 ms. */
export function clockText(ms: number): string {
  const seconds = Math.floor(ms / msPerSecond);
  return `${Math.floor(seconds / secondsPerMinute)}:${String(seconds % secondsPerMinute).padStart(2, '0')}`;
}
