import { useId } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import { usualPxPerMm } from '../../scene/bench/true-scale.ts';
import { cardWidth, dotsPerCm } from '../../workings/bench/picture-readings.ts';
import { benchWords } from './bench-words.ts';
import { SaidText } from './said-text.tsx';
import { scaleLimits } from './use-scale.ts';

/** A bank card, mm (ISO/IEC 7810, ID-1). */
const cardMm = { width: 85.6, height: 53.98 };

export interface TrueSizeProps {
  readonly pxPerMm: number;
  readonly onChange: (pxPerMm: number) => void;
}

/** Sets the scale of this screen once, by a card laid on an outline. */
export function TrueSize({ pxPerMm, onChange }: TrueSizeProps) {
  const { language } = useWords();
  const { scale: said } = benchWords(language);
  const id = useId();
  const [width, height] = [cardMm.width * pxPerMm, cardMm.height * pxPerMm];
  return (
    <details class="bench-scale patch" data-cut="3">
      <summary>{said.heading}</summary>
      <div>
        <SaidText template={said.help} numbers={{ card: cardWidth(cardMm.width) }} where="scale" />
      </div>
      <label for={id}>{said.slider}</label>
      <input
        id={id}
        type="range"
        min={scaleLimits.low}
        max={scaleLimits.high}
        step={0.01}
        value={pxPerMm}
        onInput={(event) => onChange(Number(event.currentTarget.value))}
      />
      <div class="caption">
        <SaidText template={said.value} numbers={{ n: dotsPerCm(pxPerMm, pxPerMm === usualPxPerMm) }} where="scale" />
      </div>
      <button type="button" class="bench-link" onClick={() => onChange(usualPxPerMm)}>
        {said.reset}
      </button>
      <div class="bench-outline">
        <svg width={width} height={height} viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
          <rect x="1" y="1" width={width - 2} height={height - 2} rx={3.18 * pxPerMm} />
        </svg>
      </div>
    </details>
  );
}
