import { useId, useMemo, useState } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { type StationId, stationIds } from '../../model/station.ts';
import { paintSvg } from '../../scene/paint-svg.ts';
import { quiltMarks } from '../../scene/quilt/quilt.ts';
import { decodeRun, encodeRun } from '../../statechart/saved-run.ts';
import { mostPupils, pupilNumber, seasonOfPupil } from '../../teach/class/class-seasons.ts';
import { PatchButton } from '../../ui/patch-button.tsx';
import { Picture } from '../../ui/picture.tsx';
import { useTheme } from '../lessons/use-theme.ts';
import { hashOf } from '../route.ts';
import type { TeachWords } from './use-teach-words.ts';

export interface JoinPageProps {
  readonly query: string;
  readonly teach: TeachWords;
}

const quiltPx = { width: 560, height: 440 };

/** The twelve stations of a season, chalked: all of them still to come. */
function StationsAhead() {
  const { messages } = useWords();
  const theme = useTheme();
  const svg = useMemo(() => {
    const labels = Object.fromEntries(stationIds.map((id) => [id, messages.stations[id].name])) as Record<
      StationId,
      string
    >;
    const box = { x: 4, y: 4, width: quiltPx.width - 12, height: quiltPx.height - 12 };
    return paintSvg(quiltMarks({ layout: 'landscape', box, stateOf: () => 'chalked', labels }), { ...quiltPx, theme });
  }, [messages, theme]);
  return (
    <div class="join-ahead">
      <Picture svg={svg} alt="" />
    </div>
  );
}

/** Where a pupil gives the number the teacher gave, and goes on to the season of that number. */
export function JoinPage({ query, teach: { said } }: JoinPageProps) {
  const { formats, language } = useWords();
  const id = useId();
  const [text, setText] = useState('');
  const [refused, setRefused] = useState(false);
  const pupils = pupilNumber(new URLSearchParams(query).get('pupils') ?? '') ?? mostPupils;
  const season = query
    .split('&')
    .filter((piece) => !piece.startsWith('pupils='))
    .join('&');
  const { run } = decodeRun(season);
  const go = () => {
    const number = pupilNumber(text);
    if (number === null || number > pupils) return setRefused(true);
    const own = encodeRun({ ...seasonOfPupil(run, number), predict: true });
    location.hash = hashOf({ page: 'season', station: 'planting', query: own });
  };
  const allowed = fill(said.joinRefused, { most: formats.count(pupils) });
  return (
    <>
      <form
        class="patch join"
        data-cut="2"
        onSubmit={(event) => {
          event.preventDefault();
          go();
        }}
      >
        <h1>{said.joinTitle}</h1>
        <p class="page-lead">{fill(said.joinLead, { farm: run.scenario.name[language] })}</p>
        <div class="teach-field">
          <label class="control-label" for={id}>
            {said.joinLabel}
          </label>
          <input
            id={id}
            class="teach-typed join-number"
            inputMode="numeric"
            autoComplete="off"
            maxLength={2}
            aria-invalid={refused || undefined}
            aria-describedby={refused ? `${id}-why` : undefined}
            value={text}
            onInput={(event) => {
              setText(event.currentTarget.value);
              setRefused(false);
            }}
          />
          {refused ? (
            <p id={`${id}-why`} class="refusal" role="alert">
              {allowed}
            </p>
          ) : null}
        </div>
        <div>
          <PatchButton ink="madder" primary onPress={go}>
            {said.joinGo}
          </PatchButton>
        </div>
        <p class="caption">{said.joinNothing}</p>
      </form>
      <StationsAhead />
    </>
  );
}
