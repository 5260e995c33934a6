/** One day of the growing season, as the ribbon carries it. */
export interface RibbonDay {
  readonly at: number;
  /** Heat units of all days so far. */
  readonly heatSum: number;
  readonly rainInches: number;
  /** Open bolls, 0 to 1 of those kept. */
  readonly openShare: number;
}

export interface RibbonClothProps {
  readonly days: readonly RibbonDay[];
  /** Heat units to a stitch. */
  readonly heatPerStitch: number;
  readonly now: number;
  readonly width: number;
  /** Where a day lies, px from the left. */
  readonly placeOf: (at: number) => number;
}

/** Height of the drawing, px, and where its thread runs. */
const clothHeightPx = 34;
const threadPx = 18;
/** A very wet day reaches this high; rain beyond it is cut off. Inches. */
const wettestInches = 2;

/**
 * What the season's days brought, sewn along the ribbon: a stitch for so much heat, so that warm weeks are sewn densely, rain
 * hanging above the thread, and open bolls filling up below it.
 */
export function RibbonCloth({ days, heatPerStitch, now, width, placeOf }: RibbonClothProps) {
  const stitches = heatStitches(days, heatPerStitch);
  const sewn = stitches.filter(({ to }) => to <= now);
  const ahead = stitches.filter(({ to }) => to > now);
  const path = (list: typeof stitches) =>
    list
      .map(({ from, to }) => `M${(placeOf(from) + 1).toFixed(1)} ${threadPx}H${(placeOf(to) - 2).toFixed(1)}`)
      .join('');
  const rain = days
    .filter(({ rainInches }) => rainInches > 0)
    .map(({ at, rainInches }) => {
      const long = 3 + 11 * Math.min(1, rainInches / wettestInches);
      return `M${placeOf(at).toFixed(1)} ${threadPx - 4 - long}v${long.toFixed(1)}`;
    })
    .join('');
  const open = days.filter(({ openShare }) => openShare > 0);
  const bolls =
    open.length > 1
      ? `M${placeOf(open[0]!.at).toFixed(1)} ${threadPx + 4}${open
          .map(({ at, openShare }) => `L${placeOf(at).toFixed(1)} ${(threadPx + 4 + 11 * openShare).toFixed(1)}`)
          .join('')}V${threadPx + 4}z`
      : '';
  return (
    <svg
      class="ribbon-cloth"
      width={width}
      height={clothHeightPx}
      viewBox={`0 0 ${width} ${clothHeightPx}`}
      aria-hidden="true"
    >
      <path class="ribbon-rain" d={rain} />
      <path class="ribbon-bolls" d={bolls} />
      <path class="ribbon-chalked" d={path(ahead)} />
      <path class="ribbon-sewn" d={path(sewn)} />
    </svg>
  );
}

/** Where each stitch begins and ends: the days between which so much heat came. */
function heatStitches(days: readonly RibbonDay[], heatPerStitch: number): { from: number; to: number }[] {
  const stitches: { from: number; to: number }[] = [];
  let from = days[0]?.at ?? 0;
  let before = { at: from, heatSum: 0 };
  for (const day of days) {
    for (let next = (stitches.length + 1) * heatPerStitch; day.heatSum >= next; next += heatPerStitch) {
      const share = (next - before.heatSum) / Math.max(1e-9, day.heatSum - before.heatSum);
      const to = before.at + share * (day.at - before.at);
      stitches.push({ from, to });
      from = to;
    }
    before = day;
  }
  return stitches;
}
