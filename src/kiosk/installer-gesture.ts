/** How long the first corner is held, ms: longer than anyone rests a hand by chance. An assumption. */
export const HOLD_MS = 5000;
/** Then the corners are tapped within this time, ms. An assumption. */
export const TAPS_MS = 15_000;
/** How far from the edges a corner reaches, millimetres: a thumb. An assumption. */
const CORNER_MM = 25;

export type Corner = 'top-left' | 'top-right' | 'bottom-right' | 'bottom-left';
/** Held first, then tapped in this order: once round, clockwise. */
const heldCorner: Corner = 'top-left';
export const tappedCorners: readonly Corner[] = ['top-right', 'bottom-right', 'bottom-left', 'top-left'];

/** The corner that a point of the screen lies in; null away from all of them. All in CSS px. */
export function cornerAt(x: number, y: number, width: number, height: number, reach: number): Corner | null {
  const vertical = y <= reach ? 'top' : y >= height - reach ? 'bottom' : null;
  const horizontal = x <= reach ? 'left' : x >= width - reach ? 'right' : null;
  return vertical && horizontal ? `${vertical}-${horizontal}` : null;
}

/** Follows presses and tells when the gesture is complete: a hold in the one corner, then a tap in each of the others in order. */
export class GestureReader {
  private downAtMs: number | null = null;
  private heldAtMs: number | null = null;
  private tapped = 0;

  /** @param corner where a finger came down; null away from the corners */
  down(corner: Corner | null, nowMs: number): boolean {
    if (this.heldAtMs !== null && nowMs - this.heldAtMs <= TAPS_MS && corner === tappedCorners[this.tapped]) {
      this.tapped++;
      this.downAtMs = null;
      if (this.tapped < tappedCorners.length) return false;
      this.heldAtMs = null;
      return true;
    }
    this.heldAtMs = null;
    this.downAtMs = corner === heldCorner ? nowMs : null;
    return false;
  }

  /** @param corner where the finger left the glass */
  up(corner: Corner | null, nowMs: number): void {
    if (this.downAtMs !== null && corner === heldCorner && nowMs - this.downAtMs >= HOLD_MS) {
      this.heldAtMs = nowMs;
      this.tapped = 0;
    }
    this.downAtMs = null;
  }
}

let came = false;

/** Whether the installer's page was opened on the kiosk itself, not by its address. */
export const cameByGesture = (): boolean => came;

/**
 * Opens the installer's page when whoever installs the kiosk makes the gesture that no visitor makes by chance.
 * @param mmPerPx size of a CSS pixel on the glass, mm
 * @returns stops it
 */
export function watchInstallerGesture(mmPerPx: number): () => void {
  const reader = new GestureReader();
  const corner = ({ clientX, clientY }: PointerEvent) =>
    cornerAt(clientX, clientY, innerWidth, innerHeight, CORNER_MM / mmPerPx);
  const down = (event: PointerEvent) => {
    if (!reader.down(corner(event), event.timeStamp)) return;
    came = true;
    location.hash = '#/kiosk/setup';
  };
  const up = (event: PointerEvent) => reader.up(corner(event), event.timeStamp);
  // On their way down: what the page makes of a press does not matter here.
  addEventListener('pointerdown', down, true);
  addEventListener('pointerup', up, true);
  return () => {
    removeEventListener('pointerdown', down, true);
    removeEventListener('pointerup', up, true);
  };
}
