import { readFileSync } from 'node:fs';
import { brotliDecompressSync } from 'node:zlib';

/** Tables that the container format numbers; 63 is followed by a tag of its own. WOFF File Format 2.0, section 4.1. */
const KNOWN_TAGS =
  'cmap head hhea hmtx maxp name OS/2 post cvt  fpgm glyf loca prep CFF  VORG EBDT EBLC gasp hdmx kern LTSH PCLT VDMX vhea vmtx BASE GDEF GPOS GSUB EBSC JSTF MATH CBDT CBLC COLR CPAL SVG  sbix acnt avar bdat bloc bsln cvar fdsc feat fmtx fvar gvar hsty just lcar mort morx opbd prop trak Zapf Silf Glat Gloc Feat Sill';

/** A base-128 number, big end first; returns it and where it ends. */
function base128(bytes: Buffer, from: number): readonly [value: number, end: number] {
  let value = 0;
  let at = from;
  for (;;) {
    const byte = bytes[at++]!;
    value = value * 128 + (byte & 127);
    if (byte < 128) return [value, at];
  }
}

/** The tables of a WOFF2 file, as they are stored. */
function tablesOf(file: string): ReadonlyMap<string, { readonly bytes: Buffer; readonly transformed: boolean }> {
  const bytes = readFileSync(file);
  if (bytes.toString('latin1', 0, 4) !== 'wOF2') throw new Error(`${file}: not a WOFF2 file`);
  const count = bytes.readUInt16BE(12);
  let at = 48;
  const entries: { tag: string; length: number; transformed: boolean }[] = [];
  for (let i = 0; i < count; i++) {
    const flags = bytes[at++]!;
    const known = flags & 63;
    const tag = known === 63 ? bytes.toString('latin1', at, at + 4) : KNOWN_TAGS.slice(known * 5, known * 5 + 4);
    if (known === 63) at += 4;
    const version = flags >> 6;
    const transformed = tag === 'glyf' || tag === 'loca' ? version !== 3 : version !== 0;
    let length: number;
    [length, at] = base128(bytes, at);
    if (transformed) [length, at] = base128(bytes, at);
    entries.push({ tag, length, transformed });
  }
  const whole = brotliDecompressSync(bytes.subarray(at, at + bytes.readUInt32BE(20)));
  let start = 0;
  return new Map(
    entries.map(({ tag, length, transformed }) => {
      const table = { bytes: whole.subarray(start, start + length), transformed };
      start += length;
      return [tag, table] as const;
    }),
  );
}

/** Glyph of a character by a format 4 subtable. OpenType, 'cmap'. */
function glyphOf(cmap: Buffer, code: number): number {
  const subtables = Array.from({ length: cmap.readUInt16BE(2) }, (_, i) => cmap.readUInt32BE(8 + 8 * i));
  const table = subtables.map((offset) => cmap.subarray(offset)).find((each) => each.readUInt16BE(0) === 4)!;
  const segments = table.readUInt16BE(6) / 2;
  for (let i = 0; i < segments; i++) {
    if (code > table.readUInt16BE(14 + 2 * i)) continue;
    const start = table.readUInt16BE(16 + 2 * segments + 2 * i);
    if (code < start) return 0;
    const delta = table.readUInt16BE(16 + 4 * segments + 2 * i);
    const rangeAt = 16 + 6 * segments + 2 * i;
    const range = table.readUInt16BE(rangeAt);
    if (range === 0) return (code + delta) % 65536;
    const glyph = table.readUInt16BE(rangeAt + range + 2 * (code - start));
    return glyph === 0 ? 0 : (glyph + delta) % 65536;
  }
  return 0;
}

/**
 * How far a font's letters advance, as a share of its size; undefined for a letter it does not have.
 * Read from 'head', 'hhea', 'cmap' and 'hmtx' as OpenType (ISO/IEC 14496-22) lays them down.
 */
export function advancesOf(file: string): (letter: string) => number | undefined {
  const tables = tablesOf(file);
  const bytesOf = (tag: string) => tables.get(tag)!.bytes;
  const unitsPerEm = bytesOf('head').readUInt16BE(18);
  const metrics = bytesOf('hhea').readUInt16BE(34);
  const { bytes: hmtx, transformed } = tables.get('hmtx')!;
  // A transformed table begins with a byte of flags, and keeps the advances in a row.
  const advance = (glyph: number) =>
    transformed
      ? hmtx.readUInt16BE(1 + 2 * Math.min(glyph, metrics - 1))
      : hmtx.readUInt16BE(4 * Math.min(glyph, metrics - 1));
  return (letter) => {
    const glyph = glyphOf(bytesOf('cmap'), letter.codePointAt(0)!);
    return glyph === 0 ? undefined : advance(glyph) / unitsPerEm;
  };
}
