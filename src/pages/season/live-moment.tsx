import { useEffect, useMemo, useState } from 'preact/hooks';
import { dayAt, type StationSpan } from '../../model/timeline.ts';
import type { Moment } from '../../statechart/runner.ts';
import type { PictureMoment } from './pictures/picture.ts';
import { SceneView, type SceneViewProps } from './scene-view.tsx';
import type { Session } from './season-session.ts';
import { TimeBar, type TimeBarProps } from './time-bar.tsx';

/**
 * Panels, and a picture that does not move, follow the season this often at most: with every step by day and by week, so that
 * picture and table say the same, and not with every frame by stage.
 */
const panelMs = 100;

/**
 * The moment of the runner.
 * @param leastMs from one update to the next; 0 is every frame. The last moment always comes.
 */
function useMoment(session: Session, leastMs: number): Moment {
  const [moment, setMoment] = useState(session.runner.current);
  useEffect(() => {
    let frame: number | null = null;
    let timer: number | null = null;
    let last = Number.NEGATIVE_INFINITY;
    const show = () => {
      frame = null;
      timer = null;
      last = performance.now();
      setMoment(session.runner.current());
    };
    const stop = session.runner.subscribe(() => {
      if (frame !== null || timer !== null) return;
      // Off the frame, and each in a task of its own: panels and picture drawn within one frame would make it a long one.
      if (leastMs > 0) timer = window.setTimeout(show, Math.max(0, last + leastMs - performance.now()));
      else frame = requestAnimationFrame(show);
    });
    show();
    return () => {
      stop();
      if (frame !== null) cancelAnimationFrame(frame);
      if (timer !== null) clearTimeout(timer);
    };
  }, [session, leastMs]);
  return moment;
}

/** The moment as the panels show it. */
export const usePanelMoment = (session: Session): Moment => useMoment(session, panelMs);

/** What a picture shows at a moment: the beginning, while the runner is still at another station. */
export function pictureMoment({ station, step, steps }: Moment, at: string, span: StationSpan): PictureMoment {
  const here = station === at;
  return { dayOfYear: dayAt(span, here ? step : 0), progress: here ? step / steps : 0 };
}

type LiveSceneProps = Omit<SceneViewProps, 'moment'> & { readonly session: Session; readonly span: StationSpan };

/** The scene, following the season step by step. */
export function LiveScene({ session, span, ...rest }: LiveSceneProps) {
  const moment = useMoment(session, rest.still ? panelMs : 0);
  const { dayOfYear, progress } = pictureMoment(moment, rest.station, span);
  // One object for one moment: what is computed from it is not computed again.
  const shown = useMemo(() => ({ dayOfYear, progress }), [dayOfYear, progress]);
  return <SceneView {...rest} moment={shown} />;
}

/** The ribbon, following the season step by step. */
export function LiveTimeBar({ session, ...rest }: Omit<TimeBarProps, 'moment'> & { readonly session: Session }) {
  return <TimeBar {...rest} moment={useMoment(session, 0)} />;
}
