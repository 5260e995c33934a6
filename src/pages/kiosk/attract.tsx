import { useEffect, useMemo, useState } from 'preact/hooks';
import { dayOfYearOf, todayOn } from '../../kiosk/today.ts';
import { fill } from '../../language/fill.ts';
import { stationIds } from '../../model/station.ts';
import { quiltMarks } from '../../scene/quilt/quilt.ts';
import { BollPatchView } from './boll-patch-view.tsx';
import { KioskDrawing } from './kiosk-drawing.tsx';
import { KioskKey } from './kiosk-key.tsx';
import { KioskScene } from './kiosk-scene.tsx';
import type { ScreenProps } from './screen.ts';
import { stopFigures } from './stop-figures.ts';

/** What is shown in turn, and for how long. */
const turns = ['boll', 'today', 'gin', 'quilt'] as const;
const turnMs = 11_000;
/** A block of the quilt is sewn this often. */
const blockMs = 650;

/** Which turn it is, since the loop began. */
function useTurn(): number {
  const [turn, setTurn] = useState(0);
  useEffect(() => {
    const timer = setInterval(() => setTurn((last) => last + 1), turnMs);
    return () => clearInterval(timer);
  }, []);
  return turn;
}

function Quilt({ theme, still, alt }: Pick<ScreenProps, 'theme' | 'still'> & { readonly alt: string }) {
  const [sewn, setSewn] = useState(still ? stationIds.length : 0);
  useEffect(() => {
    if (still) return;
    const timer = setInterval(() => setSewn((last) => Math.min(stationIds.length, last + 1)), blockMs);
    return () => clearInterval(timer);
  }, [still]);
  return (
    <KioskDrawing
      theme={theme}
      alt={alt}
      of={[sewn]}
      draw={(width, height) =>
        quiltMarks({
          layout: height > width ? 'portrait' : 'landscape',
          box: { x: 6, y: 6, width: width - 16, height: height - 16 },
          stateOf: (station) => {
            const at = stationIds.indexOf(station);
            return at < sewn ? 'sewn' : at === sewn ? 'pinned' : 'chalked';
          },
        })
      }
    />
  );
}

/** The loop that nobody has to touch: one boll and its patch, the farm today, the gin, the quilt. Any touch begins a visit. */
export function Attract({
  shown,
  settings,
  words,
  said,
  theme,
  still,
  textPx,
  date,
}: ScreenProps & { readonly date: Date }) {
  const { season, greeting } = shown;
  const turn = useTurn();
  const kind = turns[turn % turns.length]!;
  const figures = useMemo(() => stopFigures(season, words), [season, words]);
  const today = useMemo(() => todayOn(season, dayOfYearOf(date)), [season, date]);
  const { attract } = said;
  const farm = greeting ? attract.own : season.scenario.name[words.language];
  const told = {
    today: { head: attract.today, line: `${attract.days[today.work]} ${farm}.` },
    gin: { head: attract.gin.head, line: fill(attract.gin.line, figures) },
    quilt: { head: attract.quilt.head, line: greeting?.[words.language] || attract.quilt.line },
  };
  return (
    <>
      {kind === 'boll' ? (
        <BollPatchView
          season={season}
          mmPerPx={settings.mmPerPx}
          textPx={textPx}
          theme={theme}
          head={attract.boll.head}
          tail={attract.boll.tail}
          line={() => fill(attract.boll.line, figures)}
          alt={`${attract.boll.head}, ${attract.boll.tail}`}
        />
      ) : (
        <div class="kiosk-show" data-kind={kind}>
          <div class="kiosk-say">
            <h1 class="kiosk-loud">{told[kind].head}</h1>
            <p class="kiosk-line">{told[kind].line}</p>
          </div>
          {kind === 'quilt' ? (
            <Quilt theme={theme} still={still} alt={told.quilt.head} />
          ) : (
            <KioskScene
              key={kind}
              season={season}
              station={kind === 'gin' ? 'ginning' : today.station}
              theme={theme}
              still={still}
              alt={told[kind].head}
              {...(kind === 'today' ? { from: Math.max(0, today.progress - 0.25), to: today.progress } : {})}
            />
          )}
        </div>
      )}
      <div class="kiosk-band">
        <KioskKey cut="touch" ink="weld" primary onPress={() => {}}>
          {attract.touch}
        </KioskKey>
      </div>
    </>
  );
}
