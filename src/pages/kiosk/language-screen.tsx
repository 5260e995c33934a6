import { KioskScene } from './kiosk-scene.tsx';
import type { ScreenProps } from './screen.ts';

/** The first touch: a season is already running behind the question. */
export function LanguageScreen({ shown, said, theme, still }: ScreenProps) {
  return (
    <div class="kiosk-show" data-kind="language">
      <div class="kiosk-say">
        <h1 class="kiosk-loud">{said.language.head}</h1>
        <p class="kiosk-line">{said.language.ask}</p>
      </div>
      <KioskScene season={shown.season} station="bloom" theme={theme} still={still} alt={said.language.head} />
    </div>
  );
}
