import { useId, useState } from 'preact/hooks';
import { kioskLimits } from '../../../kiosk/settings.ts';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import type { PartProps } from './setup-page.tsx';

/** Length of the bar, CSS px; it fits the narrowest phone. */
const barPx = 240;
const keyMm = 20;
/** Typed to a tenth of a millimeter, kept to a thousandth of one a pixel. */
const rounded = (mmPerPx: number): number => Math.round(mmPerPx * 1000) / 1000;

/** A typed length with a point or a comma, mm; null where it is none. */
function lengthOf(text: string): number | null {
  const value = Number(text.trim().replace(',', '.'));
  const mmPerPx = rounded(value / barPx);
  const { low, high } = kioskLimits.mmPerPx;
  return text.trim() !== '' && mmPerPx >= low && mmPerPx <= high ? value : null;
}

/** How large a pixel is on this glass: a bar, a ruler held against it, and what it measures. */
export function SizePart({ said: { size }, settings: { mmPerPx }, change }: PartProps) {
  const { formats } = useWords();
  const [typed, setTyped] = useState<string | null>(null);
  const id = useId();
  const text = typed ?? formats.number(mmPerPx * barPx, 1);
  const isWrong = lengthOf(text) === null;
  const { low, high } = kioskLimits.mmPerPx;
  const keyPx = keyMm / mmPerPx;
  return (
    <section class="setup-part" aria-labelledby={`${id}-head`}>
      <h2 id={`${id}-head`}>{size.heading}</h2>
      <p>{size.help}</p>
      <svg class="setup-bar" width={barPx} height="44" viewBox={`0 0 ${barPx} 44`} role="img" aria-label={size.bar}>
        <rect class="setup-bar-cloth" width={barPx} height="44" />
        <path
          class="setup-bar-line"
          d={`M1 22H${barPx - 1}M1 8V36M${barPx - 1} 8V36M14 15L2 22L14 29M${barPx - 14} 15L${barPx - 2} 22L${barPx - 14} 29`}
        />
      </svg>
      <label class="control-label" for={id}>
        {size.length}
      </label>
      <input
        id={id}
        class="setup-typed setup-number"
        type="text"
        inputMode="decimal"
        autocomplete="off"
        value={text}
        aria-invalid={isWrong}
        aria-describedby={isWrong ? `${id}-wrong` : `${id}-result`}
        onInput={({ currentTarget: { value } }) => {
          setTyped(value);
          const length = lengthOf(value);
          if (length !== null) change({ mmPerPx: rounded(length / barPx) });
        }}
        onBlur={() => setTyped(null)}
      />
      {isWrong ? (
        <p id={`${id}-wrong`} class="refusal">
          {fill(size.rule, { low: formats.number(low * barPx, 0), high: formats.number(high * barPx, 0) })}
        </p>
      ) : null}
      <p id={`${id}-result`} class="caption">
        {fill(size.result, { mm: formats.number(mmPerPx, 3), px: formats.number(keyPx, 0) })}
      </p>
      <svg class="setup-key" width={keyPx} height={keyPx} viewBox="0 0 20 20" role="img" aria-label={size.patch}>
        <rect width="20" height="20" />
        <path d="M1.4 1.4H18.6V18.6H1.4Z" />
      </svg>
    </section>
  );
}
