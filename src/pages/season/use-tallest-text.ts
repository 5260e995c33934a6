import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { Words } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import type { StationId } from '../../model/station.ts';
import { dayAt, stationSpan } from '../../model/timeline.ts';
import { stationPictures } from './pictures/station-pictures.ts';

/** How many moments of a station are looked at, beside its first. */
const looks = 24;
/** Lines are measured a little narrower than they stand: their numbers do not break. */
const narrower = 0.96;

/** Height of the tallest of these texts in a place, px. */
function tallestPx(place: HTMLElement, width: number, texts: Iterable<readonly string[]>): number {
  const rule = document.createElement('div');
  rule.setAttribute('aria-hidden', 'true');
  Object.assign(rule.style, {
    position: 'absolute',
    visibility: 'hidden',
    inlineSize: `${Math.floor(width * narrower)}px`,
  });
  for (const lines of texts) {
    const text = document.createElement('div');
    text.className = place.className;
    for (const line of lines) text.append(Object.assign(document.createElement('p'), { textContent: line }));
    rule.append(text);
  }
  place.after(rule);
  const heights = [...rule.children].map((text) => text.getBoundingClientRect().height);
  rule.remove();
  return Math.ceil(Math.max(0, ...heights));
}

/**
 * Keeps a place as tall as the tallest of what is said at a station while its time runs, so that nothing below it moves under
 * the hand. Another choice may make it taller, never lower, until another station or another width comes.
 * @param width px of the place; 0 while it is not known
 */
export function useTallestText(
  place: RefObject<HTMLElement | null>,
  width: number,
  season: Season,
  station: StationId,
  words: Words,
): void {
  const kept = useRef({ of: '', px: 0 });
  useEffect(() => {
    const element = place.current;
    if (!element || width === 0) return;
    const of = `${station} ${width} ${words.language} ${words.unitSystem}`;
    if (kept.current.of !== of) {
      kept.current = { of, px: 0 };
      element.style.minHeight = '';
    }
    const span = stationSpan(season, station);
    const texts = new Map<string, readonly string[]>();
    let timer = 0;
    // A task for each moment: all in one would be a long one.
    const look = (at: number) => {
      const step = Math.round((at * span.steps) / looks);
      const moment = { dayOfYear: dayAt(span, step), progress: step / span.steps };
      const lines = stationPictures[station].see(season, words, moment);
      texts.set(lines.map((line) => line.length).join(), lines);
      if (at < looks) timer = window.setTimeout(look, 0, at + 1);
      else {
        const px = Math.max(kept.current.px, tallestPx(element, width, texts.values()));
        kept.current = { of, px };
        element.style.minHeight = `${px}px`;
      }
    };
    let left = false;
    document.fonts.ready.then(() => {
      if (!left) timer = window.setTimeout(look, 0, 0);
    });
    return () => {
      left = true;
      clearTimeout(timer);
    };
  }, [place, width, season, station, words]);
}
