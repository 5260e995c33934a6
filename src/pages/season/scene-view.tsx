import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { useWords, type Words } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import type { StationId } from '../../model/station.ts';
import type { MountedScene } from '../../scene/app.ts';
import type { SceneFrame } from '../../scene/scene-frame.ts';
import { wordlessFrame } from '../../scene/wordless.ts';
import type { Theme } from '../preferences.ts';
import type { PictureMoment, PictureSize } from './pictures/picture.ts';
import { stationPictures } from './pictures/station-pictures.ts';
import { StillPicture } from './still-picture.tsx';

export interface SceneViewProps {
  readonly season: Season;
  readonly station: StationId;
  readonly moment: PictureMoment;
  readonly theme: Theme;
  /** Nothing moves: by the visitor's wish, or the device's. */
  readonly still: boolean;
  /** The season stands still, and so do the pieces. */
  readonly paused: boolean;
  readonly alt: string;
  /** The size to lay it out at in its place, px, where that is not as on the season's page; it is scaled to the place's width. */
  readonly sizeIn?: (host: HTMLElement) => PictureSize;
  /** Words stand elsewhere, in a size of their own. */
  readonly wordless?: boolean;
}

/** A phone's picture is a little taller than wide, a tall screen's takes half of it, and on a desk the ledger shows below. */
function heightFor(width: number): number {
  const { innerWidth, innerHeight } = window;
  if (width <= 520) return Math.round(width * 1.05);
  if (innerHeight > innerWidth * 1.1) return Math.round(Math.min(width * 1.05, innerHeight * 0.5));
  return Math.round(Math.min(width * 0.62, Math.max(width * 0.45, innerHeight - 380)));
}

/** The picture's size on the season's page: wide on a desk, tall on a phone. */
function pageSize({ clientWidth }: HTMLElement): PictureSize {
  const width = Math.round(clientWidth);
  return { width, height: heightFor(width) };
}

/** The picture's size; null until the place is measured. */
function useSize(
  host: { readonly current: HTMLElement | null },
  sizeIn: (host: HTMLElement) => PictureSize,
): PictureSize | null {
  const [size, setSize] = useState<PictureSize | null>(null);
  useEffect(() => {
    const element = host.current;
    if (!element) return;
    const measure = () => {
      const next = sizeIn(element);
      if (next.width > 0) setSize(next);
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [host, sizeIn]);
  return size;
}

/** The frame of a station at a moment: laid out once, then asked moment by moment. */
function useFrame(
  season: Season,
  station: StationId,
  { dayOfYear, progress }: PictureMoment,
  words: Words,
  size: PictureSize | null,
  wordless: boolean,
) {
  const frameAt = useMemo(
    () => (size ? stationPictures[station].layOut(season, words, size) : null),
    [season, station, words, size],
  );
  return useMemo((): SceneFrame | null => {
    const frame = frameAt?.({ dayOfYear, progress }) ?? null;
    return frame && wordless ? wordlessFrame(frame) : frame;
  }, [frameAt, dayOfYear, progress, wordless]);
}

/**
 * The scene of a station. It is an SVG picture at once, and stays one where nothing moves or where there is neither WebGL nor
 * canvas; the living picture is fetched with the first scene that moves and takes its place.
 */
export function SceneView(props: SceneViewProps) {
  const { season, station, moment, theme, still, paused, alt, sizeIn = pageSize, wordless = false } = props;
  const words = useWords();
  const host = useRef<HTMLDivElement>(null);
  const stage = useRef<HTMLDivElement>(null);
  const size = useSize(host, sizeIn);
  const frame = useFrame(season, station, moment, words, size, wordless);
  const [scene, setScene] = useState<MountedScene | null>(null);
  const [lost, setLost] = useState(false);
  const moves = frame !== null && frame.moving.length + frame.parts.length > 0 && !still;
  const living = moves && scene !== null && !lost;

  useEffect(() => {
    const element = stage.current;
    if (!moves || !element) return;
    let mounted: MountedScene | null = null;
    let left = false;
    import('../../scene/app.ts')
      .then(({ mountScene }) =>
        mountScene(element, {
          onLost: () => setLost(true),
          onBack: () => setLost(false),
        }),
      )
      .then(
        (ready) => {
          if (left) ready.destroy();
          else {
            mounted = ready;
            setScene(ready);
          }
        },
        // Neither WebGL nor canvas: the SVG picture stays.
        () => setLost(true),
      );
    return () => {
      left = true;
      mounted?.destroy();
      setScene(null);
      setLost(false);
    };
  }, [moves]);
  // What the page takes up in turns is painted in the turn itself: later, it would share a frame with the next part's turn.
  useLayoutEffect(() => {
    if (scene && frame && moves) scene.show(frame, theme);
  }, [season, words, theme]);
  useEffect(() => {
    if (scene && frame && moves) scene.show(frame, theme);
  }, [scene, frame, moves, theme]);
  useEffect(() => {
    if (paused) scene?.pause();
    else scene?.resume();
  }, [scene, paused]);

  return (
    <div class="scene" ref={host}>
      {frame && !living ? <StillPicture frame={frame} theme={theme} alt={alt} /> : null}
      <div class="scene-stage" ref={stage} role="img" aria-label={alt} hidden={!living} />
    </div>
  );
}
