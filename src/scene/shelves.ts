/** A square's place: which page, and its upper left corner. Texels. */
export interface ShelfPlace {
  readonly page: number;
  readonly x: number;
  readonly y: number;
}

/** Clear texels between neighbours, so that none shows at another's edge. */
const GAP_TEXELS = 1;

/** Gives squares their places on square pages, row upon row: small pictures of much the same size lie close that way. */
export class Shelves {
  private readonly sides: number[] = [];
  private x = 0;
  private y = 0;
  private high = 0;

  /** @param pageTexels side of a page */
  constructor(private readonly pageTexels: number) {}

  /** Side of each page, texels: a square larger than a page has a larger page. */
  get pages(): readonly number[] {
    return this.sides;
  }

  /** @param side of the square, texels, above 0 */
  place(side: number): ShelfPlace {
    const page = this.sides.at(-1) ?? 0;
    if (this.x + side > page) {
      this.x = 0;
      this.y += this.high + GAP_TEXELS;
      this.high = 0;
    }
    if (this.sides.length === 0 || side > page || this.y + side > page) {
      this.sides.push(Math.max(side, this.pageTexels));
      this.x = 0;
      this.y = 0;
      this.high = 0;
    }
    const at = { page: this.sides.length - 1, x: this.x, y: this.y };
    this.x += side + GAP_TEXELS;
    this.high = Math.max(this.high, side);
    return at;
  }
}
