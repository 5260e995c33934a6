import type { KioskSettings } from './settings.ts';

export type Hours = KioskSettings['hours'];

const hoursOfDay = 24;
/** Where a kiosk never closes: the hour with the fewest people about, common practice. */
const quietHour = 4;

/** Whether visitors are about. */
export const isOpen = (now: Date, { from, to }: Hours): boolean => now.getHours() >= from && now.getHours() < to;

/** The minute of the day at which the page is loaded anew: the middle of the closed hours. */
export function nightMinute({ from, to }: Hours): number {
  const closed = hoursOfDay - (to - from);
  const hour = closed === 0 ? quietHour : (to + closed / 2) % hoursOfDay;
  return Math.round(hour * 60);
}

/** The latest of those moments that has passed, by the clock of the place. */
export function lastNight(now: Date, hours: Hours): Date {
  const minute = nightMinute(hours);
  const today = new Date(now.getFullYear(), now.getMonth(), now.getDate(), 0, minute);
  return today <= now ? today : new Date(now.getFullYear(), now.getMonth(), now.getDate() - 1, 0, minute);
}
