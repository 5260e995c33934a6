import { paintSvg } from '../scene/paint-svg.ts';
import { quiltMarks } from '../scene/quilt/quilt.ts';
import type { Theme } from '../style/inks.ts';
import './quiet-picture.css';

const short = 720;
const long = 960;

/** The finished quilt, wide or tall as the screen is, as SVG text. */
function quilt(tall: boolean, theme: Theme): string {
  const [width, height] = tall ? [short, long] : [long, short];
  const marks = quiltMarks({
    layout: tall ? 'portrait' : 'landscape',
    box: { x: 8, y: 8, width: width - 20, height: height - 20 },
    stateOf: () => 'sewn',
  });
  return paintSvg(marks, { width, height, theme });
}

/**
 * A still picture for the moments in which the page is not well. It is drawn in advance, while all is well, and needs nothing of
 * the page but its body: it stands over whatever is left of it.
 * @param name what it is called for those who hear it
 * @returns shows it; shown again it stays the same
 */
export function quietPicture(name: string): () => void {
  const place = document.createElement('div');
  place.className = 'quiet-picture';
  place.setAttribute('role', 'img');
  place.setAttribute('aria-label', name);
  const theme: Theme = document.documentElement.dataset.theme === 'projector' ? 'projector' : 'day';
  // The SVG comes from our own drawing code.
  place.innerHTML = quilt(innerHeight > innerWidth, theme);
  return () => {
    if (place.isConnected) return;
    // What is left of the page answers neither keys nor fingers any more.
    for (const other of document.body.children) (other as HTMLElement).inert = true;
    document.body.append(place);
  };
}
