import type { ShownSeason } from '../../kiosk/season-of-hour.ts';
import type { KioskSettings } from '../../kiosk/settings.ts';
import type { Words } from '../../language/words.ts';
import type { KioskContext, KioskEvent } from '../../statechart/kiosk.ts';
import type { Theme } from '../preferences.ts';
import type { KioskWords } from './use-kiosk-words.ts';

/** What every screen of the kiosk is given. */
export interface ScreenProps {
  readonly context: KioskContext;
  readonly send: (event: KioskEvent) => void;
  readonly shown: ShownSeason;
  readonly settings: KioskSettings;
  readonly words: Words;
  readonly said: KioskWords;
  readonly theme: Theme;
  readonly still: boolean;
  /** Type size of words, px. */
  readonly textPx: number;
}
