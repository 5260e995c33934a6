import type { Summary } from '../../doubt/summarise.ts';
import { fill } from '../../language/fill.ts';
import { useWidth } from '../../ui/use-width.ts';
import type { OutcomeWriting } from './doubt-outcomes.ts';
import type { DoubtWords } from './doubt-words.ts';

export interface DoubtStripProps {
  readonly writing: OutcomeWriting;
  readonly summary: Summary;
  /** Where this season stands; null when it has no such number. */
  readonly now: number | null;
  readonly words: DoubtWords;
}

const firstWidth = 400;
const height = 104;
/** Heights from the top: the pin's head, the foot of the stitches, the cloth's edges, the words below. */
const at = { head: 15, stitches: 52, top: 54, bottom: 82, words: 99 };
const tallestStitch = 30;
/** Room for a number on either side, so that no word is cut off. */
const sidePx = 34;
/** Room beyond the nine in ten on either side, of their width. */
const beyond = 0.12;

/** A corner that is cut by hand: the cloth's edge leans by a pixel or two, the same on every drawing. */
const cloth = (left: number, right: number, top: number, bottom: number) =>
  `M${left} ${top + 1.4}L${(left + right) / 2} ${top}L${right} ${top + 1}L${right - 1.2} ${bottom}L${(2 * left + right) / 3} ${bottom - 1.2}L${left + 0.8} ${bottom - 0.4}z`;

/** Where many seasons end, as a strip of cloth: the middle nine in ten, the middle half, the middle one, and a pin. */
export function DoubtStrip({ writing, summary, now, words }: DoubtStripProps) {
  const [box, width] = useWidth<HTMLDivElement>(firstWidth);
  const [low, lower, middle, upper, high] = summary.quantiles;
  const from = Math.min(low, now ?? low);
  const to = Math.max(high, now ?? high);
  const margin = (to - from) * beyond || 1;
  const x = (value: number) => sidePx + ((value - from + margin) / (to - from + 2 * margin)) * (width - 2 * sidePx);
  const most = Math.max(...summary.bins.map(({ count }) => count));
  const stitches = summary.bins
    .map((bin) => ({ x: x((bin.low + bin.high) / 2), px: (bin.count / most) * tallestStitch }))
    .filter((stitch) => stitch.px > 0 && stitch.x > 0 && stitch.x < width)
    .map((stitch) => `M${stitch.x.toFixed(1)} ${at.stitches}v${-Math.max(1, stitch.px).toFixed(1)}`)
    .join('');
  const spoken = fill(words.strips.spoken, {
    outcome: writing.name,
    low: writing.short(low),
    lower: writing.short(lower),
    middle: writing.short(middle),
    upper: writing.short(upper),
    high: writing.short(high),
    now: now === null ? words.ranking.lost : writing.short(now),
  });
  return (
    <div class="doubt-strip">
      <p>
        <b>{writing.name}</b> {writing.unit ? <span class="caption">{writing.unit}</span> : null}
      </p>
      <div ref={box}>
        <svg role="img" aria-label={spoken} viewBox={`0 0 ${width} ${height}`} width="100%" height={height}>
          <path class="strip-rest" d={`M4 ${(at.top + at.bottom) / 2}H${width - 4}`} />
          <path class="strip-count" d={stitches} />
          <path class="strip-band" d={cloth(x(low), x(high), at.top, at.bottom)} />
          <path class="strip-band-stitch" d={cloth(x(low) + 4, x(high) - 4, at.top + 4, at.bottom - 4)} />
          <path class="strip-half" d={cloth(x(lower), x(upper), at.top - 1, at.bottom + 1)} />
          <path class="strip-half-stitch" d={cloth(x(lower) + 4, x(upper) - 4, at.top + 3, at.bottom - 3)} />
          <path class="strip-middle" d={`M${x(middle)} ${at.top}V${at.bottom}`} />
          {[low, middle, high].map((value, index) => (
            <text key={`${index}`} x={x(value)} y={at.words} text-anchor="middle">
              {writing.short(value)}
            </text>
          ))}
          {now === null ? null : (
            <g class="strip-pin">
              <path class="pin-edge" d={`M${x(now)} ${at.head}L${x(now) - 2} ${at.bottom - 6}`} />
              <path class="pin-needle" d={`M${x(now)} ${at.head}L${x(now) - 2} ${at.bottom - 6}`} />
              <circle cx={x(now)} cy={at.head - 6} r="6" />
              <text
                x={x(now) + (x(now) > width / 2 ? -11 : 11)}
                y={at.head - 1}
                text-anchor={x(now) > width / 2 ? 'end' : 'start'}
              >
                {words.strips.now}: {writing.short(now)}
              </text>
            </g>
          )}
        </svg>
      </div>
    </div>
  );
}
