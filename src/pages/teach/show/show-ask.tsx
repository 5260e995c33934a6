import { useMemo } from 'preact/hooks';
import type { StationId } from '../../../model/station.ts';
import { middleGuess } from '../../../predict/prediction.ts';
import { predictions } from '../../../predict/predictions.ts';
import { paintSvg } from '../../../scene/paint-svg.ts';
import { blockMarks } from '../../../scene/quilt/block-marks.ts';
import { Picture } from '../../../ui/picture.tsx';
import { PredictControl } from '../../season/predict-control.tsx';
import '../../season/predict.css';

const blockPx = 240;

/** A station's block of the quilt, pinned: still to be sewn in. */
export function AskBlock({ station }: { readonly station: StationId }) {
  const block = useMemo(() => {
    const box = { x: 4, y: 4, width: blockPx - 8, height: blockPx - 8 };
    return paintSvg(blockMarks(station, 'pinned', box), { width: blockPx, height: blockPx, theme: 'projector' });
  }, [station]);
  return <Picture class="show-block" svg={block} alt="" />;
}

export interface ShowAskProps {
  readonly station: StationId;
  /** What the class guessed; null where nobody put it in. */
  readonly guess: number | null;
  readonly onGuess: (value: number) => void;
  readonly onNext: () => void;
}

/** What a guess can be, and the station's block of the quilt, still to be sewn in. */
export function ShowAsk({ station, guess, onGuess, onNext }: ShowAskProps) {
  const { choices, typed } = predictions[station];
  return (
    <div class="show-asked">
      <PredictControl
        station={station}
        value={guess ?? (choices || typed ? null : middleGuess(predictions[station]))}
        invalid={false}
        onValue={(value) => value !== null && onGuess(value)}
        onGive={onNext}
      />
      <AskBlock station={station} />
    </div>
  );
}
