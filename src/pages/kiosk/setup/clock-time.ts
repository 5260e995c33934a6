/** A time of day as clocks on this kind of device show it. @param minute of the day */
export const clockTime = (minute: number): string =>
  `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;
