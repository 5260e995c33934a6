import { useMemo } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { type StationId, stationIds } from '../../model/station.ts';
import { paintSvg } from '../../scene/paint-svg.ts';
import { blockMarks } from '../../scene/quilt/block-marks.ts';
import { Picture } from '../../ui/picture.tsx';
import { BlockPicture } from './block-picture.tsx';
import { choiceNumber, seasonsOfChoice, stationNumber } from './explore-choices.ts';
import { KioskScene } from './kiosk-scene.tsx';
import type { ScreenProps } from './screen.ts';

/** What is shown of a station: itself, its two choices side by side, or its one minute. */
export type ExploreView = 'looking' | 'comparing' | 'lesson';

/** One of the twelve stations, in words of 60 at most. */
export function Explore(props: ScreenProps & { readonly view: ExploreView }) {
  const { view } = props;
  if (view === 'comparing') return <Compared {...props} />;
  return view === 'lesson' ? <Lesson {...props} /> : <Looked {...props} />;
}

function Looked({ context, shown, words, said, theme, still }: ScreenProps) {
  const { station } = context;
  const number = stationNumber(shown.season, station, words);
  const { name } = words.messages.stations[station];
  return (
    <div class="kiosk-show" data-kind="explore">
      <div class="kiosk-say" aria-live="polite">
        <h1 class="kiosk-loud">{name}</h1>
        {number ? <p class="kiosk-line">{fill(said.stations[station].say, { n: number })}</p> : null}
      </div>
      <KioskScene key={station} season={shown.season} station={station} theme={theme} still={still} alt={name} />
    </div>
  );
}

function Compared({ context, shown, words, said, theme, still }: ScreenProps) {
  const { station, side } = context;
  const seasons = useMemo(() => seasonsOfChoice(shown.season, station), [shown, station]);
  const { counted, choices } = said.stations[station];
  return (
    <div class="kiosk-show" data-kind="compare">
      <div class="kiosk-say" aria-live="polite">
        <h1 class="kiosk-mid">{counted}</h1>
        <ul class="kiosk-sides">
          {seasons.map((season, i) => (
            <li key={choices[i]} class="patch kiosk-side" data-ink={i === side ? 'indigo' : 'lint'} data-cut={i + 1}>
              <span>{choices[i]}</span>
              <b>{choiceNumber(season, station, words) ?? said.noCrop}</b>
            </li>
          ))}
        </ul>
      </div>
      <KioskScene
        key={`${station}${side}`}
        season={seasons[side]}
        station={station}
        theme={theme}
        still={still}
        alt={choices[side]}
      />
    </div>
  );
}

function Lesson({ context, words, said, theme }: ScreenProps) {
  const { station } = context;
  return (
    <div class="kiosk-show" data-kind="lesson">
      <div class="kiosk-say" aria-live="polite">
        <h1 class="kiosk-mid">{words.messages.stations[station].name}</h1>
        <p class="kiosk-line">{said.stations[station].lesson}</p>
      </div>
      <BlockPicture station={station} theme={theme} />
    </div>
  );
}

const blockPx = 64;

/** The twelve blocks as keys: what was looked at last is pinned. */
export function BlockKeys({ context, send, words, theme }: ScreenProps) {
  return (
    <div class="kiosk-blocks">
      {stationIds.map((station) => (
        <button
          key={station}
          type="button"
          class="kiosk-block"
          aria-pressed={station === context.station}
          aria-label={words.messages.stations[station].name}
          onClick={() => send({ type: 'STATION', station })}
        >
          <Block station={station} theme={theme} />
        </button>
      ))}
    </div>
  );
}

function Block({ station, theme }: { readonly station: StationId } & Pick<ScreenProps, 'theme'>) {
  const svg = useMemo(
    () =>
      paintSvg(blockMarks(station, 'sewn', { x: 1, y: 1, width: blockPx - 2, height: blockPx - 2 }), {
        width: blockPx,
        height: blockPx,
        theme,
      }),
    [station, theme],
  );
  return <Picture svg={svg} alt="" />;
}
