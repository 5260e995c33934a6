import { assign, setup } from 'xstate';
import { type StationId, stationIds } from '../model/station.ts';

/** Stops of the guided two minutes. */
export const guidedStops = 6;

/**
 * Without a touch for this long a visitor is asked whether anybody is there: above the 36 s that a slow reader takes for a
 * screen of sixty words (100 words a minute; Brysbaert 2019 measured 238 on average). Common practice has no figure.
 */
export const quietMs = 60_000;
/** Then this many seconds are counted down: WCAG 2.2, 2.2.1 asks for at least 20 to go on by one action. */
export const countdownSeconds = 20;
/** A finger that lies on the glass this long is none: a bag, or an event that was lost. An assumption. */
export const longestHoldMs = 600_000;

/** Steps of loudness, percent of the loudest: 18 dB between the quietest and the loudest, with one at 12 dB (EN 301 549, 8.2.1). */
export const volumeSteps = [0, 12.5, 25, 50, 100] as const;

/** The next step of loudness up or down; the ends hold. */
export function turnedVolume(volume: number, by: 1 | -1): number {
  const next =
    by > 0 ? volumeSteps.find((step) => step > volume) : [...volumeSteps].reverse().find((step) => step < volume);
  return next ?? volume;
}

export type Guess = 'lint' | 'seed';

/** What a visit begins with: the site's own settings. */
export interface KioskInput {
  /** Languages offered, the site's own first. */
  readonly languages: readonly string[];
  readonly volume: number;
}

export interface KioskContext extends KioskInput {
  readonly language: string;
  readonly siteVolume: number;
  /** Stop of the guided tour, 0 to 5. */
  readonly stop: number;
  readonly guess: Guess | null;
  /** Station looked at in explore. */
  readonly station: StationId;
  /** Which of its two choices is laid on: 0 or 1. */
  readonly side: 0 | 1;
  /** Seconds left of the countdown. */
  readonly left: number;
}

export type KioskEvent =
  | { type: 'BEGIN' }
  | { type: 'LANGUAGE'; language: string }
  | { type: 'NEXT' }
  | { type: 'BACK' }
  | { type: 'HOME' }
  | { type: 'GUESS'; guess: Guess }
  | { type: 'EXPLORE' }
  | { type: 'STATION'; station: StationId }
  | { type: 'COMPARE' }
  | { type: 'SIDE'; side: 0 | 1 }
  | { type: 'LESSON' }
  | { type: 'VOLUME'; by: 1 | -1 }
  /** A finger comes down, the last one goes up, a key of a keypad is pressed. */
  | { type: 'DOWN' }
  | { type: 'UP' }
  | { type: 'KEY' }
  /** Something is read aloud, and has been. */
  | { type: 'SPEAK' }
  | { type: 'SPOKEN' };

/** A visit that has not begun. */
const fresh = ({ languages, volume }: KioskInput): KioskContext => ({
  languages,
  volume,
  siteVolume: volume,
  language: languages[0] ?? 'en',
  stop: 0,
  guess: null,
  station: stationIds[0],
  side: 0,
  left: countdownSeconds,
});

/**
 * The kiosk: attract, language, the guided two minutes, explore, and beside them the watch that asks who is there. What leaves a
 * visit, by Home or by silence, forgets all of it. Nothing of it is ever stored.
 */
export const kioskMachine = setup({
  types: { context: {} as KioskContext, events: {} as KioskEvent, input: {} as KioskInput },
  guards: {
    oneLanguage: ({ context }) => context.languages.length === 1,
    offered: ({ context, event }) => event.type === 'LANGUAGE' && context.languages.includes(event.language),
    lastStop: ({ context }) => context.stop === guidedStops - 1,
    secondsLeft: ({ context }) => context.left > 1,
  },
  actions: {
    forget: assign(({ context }) => fresh({ languages: context.languages, volume: context.siteVolume })),
    speakLanguage: assign({
      language: ({ context, event }) => (event.type === 'LANGUAGE' ? event.language : context.language),
    }),
    forth: assign({ stop: ({ context }) => context.stop + 1 }),
    back: assign({ stop: ({ context }) => context.stop - 1 }),
    guess: assign({ guess: ({ context, event }) => (event.type === 'GUESS' ? event.guess : context.guess) }),
    goTo: assign(({ context, event }) => ({
      station: event.type === 'STATION' ? event.station : context.station,
      side: 0 as const,
    })),
    lay: assign({ side: ({ context, event }) => (event.type === 'SIDE' ? event.side : context.side) }),
    turnVolume: assign({
      volume: ({ context, event }) =>
        event.type === 'VOLUME' ? turnedVolume(context.volume, event.by) : context.volume,
    }),
    startCount: assign({ left: countdownSeconds }),
    count: assign({ left: ({ context }) => context.left - 1 }),
  },
  delays: { quiet: quietMs, second: 1000, longestHold: longestHoldMs },
}).createMachine({
  id: 'kiosk',
  context: ({ input }) => fresh(input),
  initial: 'attract',
  states: {
    attract: {
      entry: 'forget',
      on: { BEGIN: 'visit' },
    },
    visit: {
      type: 'parallel',
      on: {
        HOME: 'attract',
        LANGUAGE: { guard: 'offered', actions: 'speakLanguage' },
        VOLUME: { actions: 'turnVolume' },
      },
      states: {
        place: {
          initial: 'arriving',
          states: {
            arriving: { always: [{ guard: 'oneLanguage', target: 'guided' }, { target: 'language' }] },
            language: {
              on: {
                LANGUAGE: { guard: 'offered', target: 'guided', actions: 'speakLanguage' },
                BACK: '#kiosk.attract',
              },
            },
            guided: {
              on: {
                NEXT: [{ guard: 'lastStop', target: 'keepsake' }, { actions: 'forth' }],
                BACK: [
                  { guard: ({ context }) => context.stop > 0, actions: 'back' },
                  { guard: 'oneLanguage', target: '#kiosk.attract' },
                  { target: 'language' },
                ],
                GUESS: { actions: 'guess' },
              },
            },
            keepsake: { on: { BACK: 'guided', EXPLORE: 'explore', NEXT: 'explore' } },
            explore: {
              initial: 'looking',
              on: { STATION: { target: '.looking', actions: 'goTo' } },
              states: {
                looking: { on: { COMPARE: 'comparing', LESSON: 'lesson', BACK: '#kiosk.visit.place.keepsake' } },
                comparing: { on: { SIDE: { actions: 'lay' }, BACK: 'looking' } },
                lesson: { on: { BACK: 'looking' } },
              },
            },
          },
        },
        watch: {
          initial: 'alert',
          on: { SPEAK: '.listening' },
          states: {
            alert: {
              after: { quiet: 'warned' },
              on: { DOWN: 'held', KEY: { target: 'alert', reenter: true } },
            },
            held: { on: { UP: 'alert' }, after: { longestHold: 'alert' } },
            listening: { on: { SPOKEN: 'alert' } },
            warned: {
              entry: 'startCount',
              initial: 'counting',
              on: { DOWN: 'rescued', KEY: 'alert' },
              states: {
                counting: {
                  after: {
                    second: [
                      { guard: 'secondsLeft', target: 'counting', reenter: true, actions: 'count' },
                      { target: '#kiosk.attract' },
                    ],
                  },
                },
              },
            },
            // Still asked while the finger that answers lies on the glass, so that it presses nothing below.
            rescued: { on: { UP: 'alert' }, after: { longestHold: 'alert' } },
          },
        },
      },
    },
  },
});
