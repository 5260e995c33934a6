import { useEffect } from 'preact/hooks';
import { playWarningNotes } from '../../kiosk/warning-notes.ts';
import { fill } from '../../language/fill.ts';
import { countdownSeconds } from '../../statechart/kiosk.ts';
import type { ScreenProps } from './screen.ts';
import { useStyles } from './use-styles.ts';

/** Asks whether anybody is there, over everything and by two notes; the seconds left are basting stitches that are drawn out one by one. */
export function IdleWarning({ context, said }: Pick<ScreenProps, 'context' | 'said'>) {
  const seam = useStyles<HTMLDivElement>({ '--left': String(context.left / countdownSeconds) });
  // Once, as it comes up: whoever turns the volume meanwhile has touched a key, and it goes.
  useEffect(() => playWarningNotes(context.volume), []);
  return (
    <section class="kiosk-warning" role="alert">
      <h1 class="kiosk-loud">{said.warning.head}</h1>
      <p class="kiosk-line">{fill(said.warning.line, { seconds: String(context.left) })}</p>
      <div class="kiosk-seam" ref={seam} aria-hidden="true" />
      <span class="patch kiosk-key" data-ink="weld" data-cut="2" aria-hidden="true">
        {said.keys.more}
      </span>
    </section>
  );
}
