import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import type { StationId } from '../../model/station.ts';
import { middleGuess } from '../../predict/prediction.ts';
import { predictions } from '../../predict/predictions.ts';
import { PatchButton } from '../../ui/patch-button.tsx';
import { PredictControl } from './predict-control.tsx';
import { PredictResult } from './predict-result.tsx';
import { predictWords } from './predict-words.ts';
import type { usePredict } from './use-predict.ts';
import './predict.css';

export interface PredictPanelProps {
  readonly season: Season;
  readonly station: StationId;
  readonly predict: ReturnType<typeof usePredict>;
}

/** The question before a station's numbers; once it is answered, the guess and the season's own number side by side. */
export function PredictPanel({ season, station, predict }: PredictPanelProps) {
  const { asking, guess } = predict;
  const wasAsking = useRef('');
  const heading = useRef<HTMLHeadingElement>(null);
  // The button that was pressed is gone: the focus goes to what it brought, or to the page.
  useEffect(() => {
    const answered = wasAsking.current === station && !asking;
    wasAsking.current = asking ? station : '';
    if (answered) (heading.current ?? document.getElementById('main'))?.focus({ preventScroll: true });
  }, [asking, station]);
  if (asking) return <Question key={station} station={station} predict={predict} />;
  if (guess === null) return null;
  return <PredictResult season={season} station={station} guess={guess} heading={heading} />;
}

function Question({ station, predict }: Omit<PredictPanelProps, 'season'>) {
  const { language, formats } = useWords();
  const said = predictWords(language);
  const id = useId();
  const { low, high, choices, typed } = predictions[station];
  const [value, setValue] = useState<number | null>(choices || typed ? null : middleGuess(predictions[station]));
  const [missing, setMissing] = useState(false);
  const { question } = said.asked[station];
  const give = () => {
    if (value === null) setMissing(true);
    else predict.answer(value);
  };
  const lack = typed ? fill(said.noNumber, { low: formats.count(low), high: formats.count(high) }) : said.noChoice;
  return (
    <section class="predict-panel patch" data-state="basted" data-cut="2" aria-labelledby={id}>
      <h2 id={id}>{question}</h2>
      <PredictControl
        station={station}
        value={value}
        invalid={missing && value === null}
        onValue={(chosen) => {
          setValue(chosen);
          setMissing(false);
        }}
        onGive={give}
      />
      {missing && value === null ? (
        <p class="refusal" role="alert">
          {lack}
        </p>
      ) : null}
      <div class="predict-buttons">
        <PatchButton ink="weld" onPress={give}>
          {said.guess}
        </PatchButton>
        <PatchButton onPress={predict.skip}>{said.skip}</PatchButton>
        <PatchButton onPress={() => predict.turn(false)}>{said.stop}</PatchButton>
      </div>
    </section>
  );
}
