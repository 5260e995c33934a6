import { encode } from 'uqr';

/** Light squares around a code, so that a reader finds its edge (ISO/IEC 18004: four). */
const quietSquares = 4;

/**
 * A QR code of a text as SVG, one path of dark squares on white, whatever the theme: readers expect dark on light.
 * @param text at most about 300 characters, so that the squares stay large enough for the back of a room
 */
export function qrSvg(text: string): string {
  const { size, data } = encode(text, { border: quietSquares, ecc: 'M' });
  const squares = data.flatMap((row, y) => row.flatMap((dark, x) => (dark ? [`M${x} ${y}h1v1h-1z`] : [])));
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size} ${size}" shape-rendering="crispEdges"><rect width="${size}" height="${size}" fill="#fff"/><path d="${squares.join('')}" fill="#000"/></svg>`;
}
