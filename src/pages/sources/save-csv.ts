import { csvFormatRows } from 'd3-dsv';

/**
 * Saves rows as a CSV file on the visitor's device, with a byte order mark so that spreadsheets read the letters right.
 * @param rows the first row holds the heads
 */
export function saveCsv(name: string, rows: readonly (readonly (string | number)[])[]): void {
  const text = `\uFEFF${csvFormatRows(rows.map((row) => row.map(String)))}\n`;
  const url = URL.createObjectURL(new Blob([text], { type: 'text/csv' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The download has the file's content by the next turn; the address can go.
  setTimeout(() => URL.revokeObjectURL(url), 0);
}
