import { KILO } from '../units.ts';
import { millSpeeds } from './speed-facts.ts';

/** Minutes that one spindle of a ring frame turns for a kilometre of yarn: every turn of it is a turn of twist. */
export const spindleMinutesPerKilometre = (turnsPerMetre: number): number =>
  (turnsPerMetre * KILO) / millSpeeds.present.spindle.value;
