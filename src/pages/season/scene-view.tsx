import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Words } from '../../language/words.ts';
import { useWords } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import type { StationId } from '../../model/station.ts';
import type { DisplayList } from '../../scene/display-list.ts';
import { paintSvg } from '../../scene/paint-svg.ts';
import { Picture } from '../../ui/picture.tsx';
import type { Theme } from '../preferences.ts';
import { fieldPicture, type PictureSize } from './field-picture.ts';

export interface SceneViewProps {
  readonly season: Season;
  readonly station: StationId;
  readonly dayOfYear: number;
  readonly theme: Theme;
  readonly alt: string;
}

/** The picture's size: wide on a desk, tall on a phone; null until the place is measured. */
function useSize(host: { readonly current: HTMLElement | null }): PictureSize | null {
  const [size, setSize] = useState<PictureSize | null>(null);
  useEffect(() => {
    const element = host.current;
    if (!element) return;
    const measure = () => {
      const width = Math.round(element.clientWidth);
      if (width > 0) setSize({ width, height: Math.round(width > 520 ? width * 0.6 : width * 1.05) });
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [host]);
  return size;
}

const pictureOf = (season: Season, station: StationId, day: number, words: Words, size: PictureSize): DisplayList =>
  station === 'planting' || station === 'bloom' || station === 'boll' ? fieldPicture(season, day, words, size) : [];

/** The scene of a station. */
export function SceneView({ season, station, dayOfYear, theme, alt }: SceneViewProps) {
  const words = useWords();
  const host = useRef<HTMLDivElement>(null);
  const size = useSize(host);
  const svg = useMemo(
    () => (size ? paintSvg(pictureOf(season, station, dayOfYear, words, size), { ...size, theme }) : ''),
    [season, station, dayOfYear, words, size, theme],
  );
  return (
    <div class="scene" ref={host}>
      {svg ? <Picture svg={svg} alt={alt} /> : null}
    </div>
  );
}
