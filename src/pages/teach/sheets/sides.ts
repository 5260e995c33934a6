import type { WrittenQuestion, WrittenTable } from './question-text.ts';

/** Letters that surely fit a line of 11-point text: across the page, beside a drawing or a table, and in half of the page. */
const lettersInLine = { whole: 104, beside: 62, half: 49 } as const;
/** Heights on paper, millimeters. */
const mm = { line: 5, heading: 11, tableRow: 5.5, tableRoom: 1, drawing: 35, askRoom: 3, head: 11, rule: 11, foot: 8 };
/** Height of the room for working under each thing asked, at least. */
const workingMm = 14;
/** The box that both US Letter and A4 have room for is 190 by 260 mm; the last millimeter is left to rounding. */
const sideMm = 259;

const linesOf = (text: string, letters: number): number => Math.ceil(text.length / letters);

/** Asks stand two in a row; the last of an odd number has the row to itself. */
function askRows<Ask>(asks: readonly Ask[]): readonly (readonly Ask[])[] {
  return asks.flatMap((_, i) => (i % 2 === 0 ? [asks.slice(i, i + 2)] : []));
}

/** A height that a question surely does not exceed on paper, millimeters. */
export function questionMm({ text, table, asks }: WrittenQuestion, hasDrawing: boolean): number {
  const rowsInTable = table ? Math.max(...tableColumns(table).map(({ length }) => length)) + 1 : 0;
  const beside = Math.max(hasDrawing ? mm.drawing : 0, table ? rowsInTable * mm.tableRow + mm.tableRoom : 0);
  const words = linesOf(text, beside > 0 ? lettersInLine.beside : lettersInLine.whole) * mm.line;
  const rows = askRows(asks).map((row) => {
    const letters = row.length === 1 ? lettersInLine.whole : lettersInLine.half;
    const lines = Math.max(...row.map(({ text, rounding }) => linesOf(`a ${text} (${rounding})`, letters)));
    return lines * mm.line + workingMm + mm.askRoom;
  });
  return mm.heading + Math.max(words, beside) + rows.reduce((sum, row) => sum + row, 0);
}

/** Rows of a long table stand in so many columns beside each other. */
const rowsInColumn = 6;
/** The rows of a table, a long one's in columns. */
export function tableColumns({ rows }: WrittenTable): readonly WrittenTable['rows'][] {
  if (rows.length <= 2 * rowsInColumn) return [rows];
  return Array.from({ length: Math.ceil(rows.length / rowsInColumn) }, (_, i) =>
    rows.slice(i * rowsInColumn, (i + 1) * rowsInColumn),
  );
}

/** Groups of heights in their order, each of so much at most. */
function fillSides(heights: readonly number[], most: number): number[][] {
  const sides: number[][] = [[]];
  let used = 0;
  heights.forEach((height, i) => {
    const side = sides.at(-1)!;
    if (side.length > 0 && used + height > most) {
      sides.push([i]);
      used = height;
    } else {
      side.push(i);
      used += height;
    }
  });
  return sides;
}

/**
 * Which questions stand on which side of the paper: on as few sides as they fit, and evenly, so that there is room to work on each.
 * @param heights of the questions, millimeters
 * @returns for each side the places of its questions
 */
export function sidesOf(heights: readonly number[]): readonly (readonly number[])[] {
  const room = sideMm - mm.head - mm.foot;
  // The rule of rounding stands above the first.
  const withRule = heights.map((height, i) => (i === 0 ? height + mm.rule : height));
  const fewest = fillSides(withRule, room);
  const total = withRule.reduce((sum, height) => sum + height, 0);
  // The least that each side may hold so that there are no more sides.
  for (let most = Math.ceil(total / fewest.length); most < room; most++) {
    const sides = fillSides(withRule, most);
    if (sides.length === fewest.length) return sides;
  }
  return fewest;
}
