import { csvFormatRows } from 'd3-dsv';
import { saveFile } from '../save-file.ts';

/**
 * Saves rows as a CSV file on the visitor's device, with a byte order mark so that spreadsheets read the letters right.
 * @param rows the first row holds the heads
 */
export function saveCsv(name: string, rows: readonly (readonly (string | number)[])[]): void {
  const text = `\uFEFF${csvFormatRows(rows.map((row) => row.map(String)))}\n`;
  saveFile(name, new Blob([text], { type: 'text/csv' }));
}
