/** Sizes on the glass, mm: 20 mm keys 3 mm apart (Colle and Hiszem 2004), capitals of 4.8 mm at least (36 CFR 1194, 402.4) and 7.3 mm as the goal, for a reader 600 mm away (EN 301 549, 5.1.4). */
export const kioskMm = { key: 20, gap: 3, leastCapital: 4.8, goalCapital: 7.3 } as const;

/** Height of a capital as a share of the type size: measured on the page's text face, which the browser sets at 109 %. */
export const capitalShare = 0.69;

/** The shorter side of a screen holds this many lines of the words it has to show. */
const linesOnShortSide = 38;

/** Capitals on a screen, mm: as large as the goal where the screen has the room, and never below the least. */
export const capitalMm = (shortSideMm: number): number =>
  Math.min(kioskMm.goalCapital, Math.max(kioskMm.leastCapital, shortSideMm / linesOnShortSide));

/** Ways to set twelve blocks in whole rows. */
const blockColumns = [12, 6, 4, 3, 2] as const;

/** Custom properties that every size of the kiosk follows from, by name. */
export function kioskSizes(mmPerPx: number, widthPx: number, heightPx: number): Readonly<Record<string, string>> {
  const capital = capitalMm(Math.min(widthPx, heightPx) * mmPerPx);
  const [key, gap] = [Math.ceil(kioskMm.key / mmPerPx), Math.ceil(kioskMm.gap / mmPerPx)];
  const columns = blockColumns.find((count) => count * (key + gap) + gap <= widthPx) ?? 1;
  const px = (mm: number) => `${(mm / mmPerPx).toFixed(2)}px`;
  return {
    '--mm': px(1),
    // A hair more, so that what is rounded to whole pixels is still no smaller.
    '--kiosk-key': `${key}px`,
    '--kiosk-gap': `${gap}px`,
    '--kiosk-columns': String(columns),
    '--kiosk-text': `${Math.ceil(capital / capitalShare / mmPerPx)}px`,
  };
}
