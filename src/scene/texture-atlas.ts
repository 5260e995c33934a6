import { CanvasSource, Rectangle, Texture } from 'pixi.js';
import type { Theme } from '../style/inks.ts';
import type { DisplayList } from './display-list.ts';
import { paintCanvas } from './paint-canvas.ts';
import { Shelves } from './shelves.ts';

/** Side of a page, scene px: a scene's pieces fill one or two. */
const PAGE_PX = 256;
/** A visit to many farms draws many sizes: beyond this the pages are begun anew with what is shown. */
const MOST_PAGES = 6;

interface Page {
  readonly context: CanvasRenderingContext2D | null;
  readonly source: CanvasSource;
  /** Drawn on since the renderer last took it over. */
  touched: boolean;
}

/**
 * Small square pictures side by side on a few 2-D canvases. A renderer paints all sprites of the same few textures in one call;
 * with a texture to each picture it begins anew after every sixteenth. Canvases come back by themselves after a lost context.
 */
export class TextureAtlas {
  private readonly pages: Page[] = [];
  private readonly known = new Map<string, Texture>();
  private readonly shelves: Shelves;

  /** @param resolution texels to a scene pixel, whole */
  constructor(
    readonly theme: Theme,
    readonly resolution: number,
  ) {
    this.shelves = new Shelves(PAGE_PX * resolution);
  }

  /** Whether it is time to begin a new one. */
  get full(): boolean {
    return this.pages.length > MOST_PAGES;
  }

  /**
   * The picture of a name, drawn when it is first asked for.
   * @param side scene px, whole
   * @param marks the picture, between 0 and the side
   */
  texture(name: string, side: number, marks: () => DisplayList): Texture {
    const known = this.known.get(name);
    if (known) return known;
    const { resolution } = this;
    const texels = side * resolution;
    const { page, x, y } = this.shelves.place(texels);
    const { context, source } = this.pageAt(page);
    if (context) {
      context.save();
      context.beginPath();
      context.rect(x, y, texels, texels);
      context.clip();
      context.setTransform(resolution, 0, 0, resolution, x, y);
      paintCanvas(context, marks(), this.theme);
      context.restore();
    }
    const texture = new Texture({ source, frame: new Rectangle(x / resolution, y / resolution, side, side) });
    this.known.set(name, texture);
    return texture;
  }

  /** Hands what was drawn to the renderer, each page once. */
  handOver(): void {
    for (const page of this.pages) {
      if (page.touched) page.source.update();
      page.touched = false;
    }
  }

  destroy(): void {
    for (const texture of this.known.values()) texture.destroy();
    for (const { source } of this.pages) source.destroy();
  }

  /** A page to draw on. */
  private pageAt(index: number): Page {
    const page = this.pages[index] ?? this.openPage(this.shelves.pages[index]!);
    this.pages[index] = page;
    page.touched = true;
    return page;
  }

  private openPage(sideTexels: number): Page {
    const canvas = document.createElement('canvas');
    canvas.width = sideTexels;
    canvas.height = sideTexels;
    const source = new CanvasSource({ resource: canvas, resolution: this.resolution });
    return { context: canvas.getContext('2d'), source, touched: false };
  }
}
