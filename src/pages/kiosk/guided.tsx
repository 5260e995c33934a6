import { useMemo } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { bollCut } from '../../scene/kiosk/boll-cut.ts';
import { lintOrSeed } from '../../scene/kiosk/lint-or-seed.ts';
import { BollPatchView } from './boll-patch-view.tsx';
import { KioskDrawing } from './kiosk-drawing.tsx';
import { KioskScene } from './kiosk-scene.tsx';
import type { ScreenProps } from './screen.ts';
import { ginned, guidedOrder, stopFigures } from './stop-figures.ts';

const locks = 5;

/** The words of a stop: at the gin a question, and once it is answered what the season says. */
function useStopWords({ context, shown, words, said }: ScreenProps) {
  const { season } = shown;
  const figures = useMemo(() => stopFigures(season, words), [season, words]);
  const stop = guidedOrder[context.stop]!;
  const { lintKg, seedKg } = ginned(season);
  const key = stop === 'ginning' && context.guess ? (lintKg > seedKg ? 'lint' : 'seed') : stop;
  return { stop, head: said.stops[key].head, text: fill(said.stops[key].text, figures), figures };
}

/** One stop of the guided two minutes: one picture, at most 25 words. */
export function Guided(props: ScreenProps) {
  const { context, shown, settings, said, theme, still, textPx } = props;
  const { season } = shown;
  const { stop, head, text, figures } = useStopWords(props);
  const { lintKg, seedKg } = ginned(season);
  const opened = context.guess !== null;
  if (stop === 'sewing') {
    const [one, other = ''] = head.split(', ');
    return (
      <BollPatchView
        season={season}
        mmPerPx={settings.mmPerPx}
        textPx={textPx}
        theme={theme}
        head={one!}
        tail={other}
        line={(isTrueSize) => (isTrueSize ? text : fill(said.stops.sewingHalf.text, figures))}
        alt={head}
      />
    );
  }
  return (
    <div class="kiosk-show" data-kind={stop}>
      <div class="kiosk-say" aria-live="polite">
        <h1 class="kiosk-loud">{head}</h1>
        <p class="kiosk-line">{text}</p>
      </div>
      {stop === 'boll' ? (
        <KioskDrawing
          key={stop}
          theme={theme}
          alt={text}
          of={[season]}
          draw={(width, height) => bollCut(width, height, locks, Math.round(season.field.variety.seedsPerBoll))}
        />
      ) : stop === 'ginning' ? (
        <KioskDrawing
          key={stop}
          theme={theme}
          alt={text}
          of={[season, opened]}
          draw={(width, height) => lintOrSeed({ width, height, lintKg, seedKg, opened })}
        />
      ) : (
        <KioskScene key={stop} season={season} station={stop} theme={theme} still={still} alt={text} />
      )}
    </div>
  );
}
