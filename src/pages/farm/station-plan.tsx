import { useMemo } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import type { Scenario } from '../../model/scenario.ts';
import type { StationId } from '../../model/station.ts';
import { paintSvg } from '../../scene/paint-svg.ts';
import { blockMarks } from '../../scene/quilt/block-marks.ts';
import { PatchButton } from '../../ui/patch-button.tsx';
import { Picture } from '../../ui/picture.tsx';
import type { Theme } from '../preferences.ts';
import { DecisionsPanel } from '../season/decisions-panel.tsx';
import { decidedLines, unlikeLines } from './decided-lines.ts';
import { farmWords } from './farm-words.ts';

export interface StationPlanProps {
  readonly station: StationId;
  readonly scenario: Scenario;
  /** The farm it began as. */
  readonly base: Scenario;
  readonly theme: Theme;
  readonly onDecide: (key: string, value: number | string | boolean) => void;
  readonly onPutBack: () => void;
}

const blockPx = 64;

/** One station of the plan: what is decided, in a line; what is unlike the farm it began as; and the controls, folded away. */
export function StationPlan({ station, scenario, base, theme, onDecide, onPutBack }: StationPlanProps) {
  const all = useWords();
  const { messages, formats, language } = all;
  const words = farmWords(language);
  const farm = base.name[language];
  const now = decidedLines(scenario, station, all);
  const unlike = unlikeLines(scenario, base, station, all);
  const isUnlike = (key: string) => unlike.some((line) => line.key === key);
  const state = unlike.length > 0 ? 'sewn' : 'chalked';
  const svg = useMemo(
    () =>
      paintSvg(blockMarks(station, state, { x: 3, y: 3, width: blockPx - 6, height: blockPx - 6 }), {
        width: blockPx,
        height: blockPx,
        theme,
      }),
    [station, state, theme],
  );
  return (
    <details class="station-plan" data-station={station}>
      <summary>
        <Picture svg={svg} alt="" />
        <span class="station-plan-words">
          <span class="station-plan-name">{messages.stations[station].name}</span>
          <span class="decided">
            {now.map(({ key, label, text }, index) => (
              <span key={key} data-unlike={isUnlike(key) ? '' : undefined}>
                <i>{label}</i> <b>{text}</b>
                {index < now.length - 1 ? <span class="unseen">, </span> : null}
              </span>
            ))}
          </span>
        </span>
      </summary>
      <DecisionsPanel scenario={scenario} station={station} onDecide={onDecide} />
      {unlike.length > 0 ? (
        <div class="station-plan-unlike">
          <p class="caption">{fill(formats.plural(unlike.length, words.changed), { farm })}</p>
          <ul class="caption">
            {unlike.map(({ key, label, text, there: before }) => (
              <li key={key}>{fill(words.was, { label, now: text, there: before })}</li>
            ))}
          </ul>
          <PatchButton onPress={onPutBack}>{fill(words.putBackAs, { farm })}</PatchButton>
        </div>
      ) : (
        <p class="caption">{fill(words.sameAs, { farm })}</p>
      )}
    </details>
  );
}
