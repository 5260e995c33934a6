import { Container, Sprite, type Texture } from 'pixi.js';
import type { Theme } from '../style/inks.ts';
import { cutPiece } from './cloth/piece.ts';
import { pathLength, spotAt } from './cloth/point.ts';
import { drawnTexture } from './drawn-texture.ts';
import type { MovingPiece } from './scene-frame.ts';

/**
 * The counted pieces as sprites, one texture to each cut of each part and size. Only what moves is painted by pixi: whole layers
 * as sprites or as a Graphics of some thousand stitches took 40 to 200 ms a frame where WebGL runs in software (measured,
 * SwiftShader, 860 x 560); pieces alone keep up with the screen.
 */
export class PieceLayer {
  readonly container = new Container();
  private readonly textures = new Map<string, Texture>();
  private riders: { sprite: Sprite; piece: MovingPiece; length: number }[] = [];

  private theme: Theme = 'day';
  private resolution = 2;

  constructor() {
    this.container.eventMode = 'none';
  }

  /** @param resolution texels to a scene pixel; twice what is shown, since pieces come to lie between pixels */
  show(pieces: readonly MovingPiece[], theme: Theme, resolution: number): void {
    for (const child of this.container.removeChildren()) child.destroy();
    if (theme !== this.theme || resolution !== this.resolution) this.dropTextures();
    this.theme = theme;
    this.resolution = resolution;
    this.riders = pieces.map((piece) => {
      const sprite = new Sprite(this.textureOf(piece));
      sprite.anchor.set(0.5);
      this.container.addChild(sprite);
      return { sprite, piece, length: pathLength(piece.path) };
    });
  }

  /** Moves every piece to where it is after some seconds. */
  moveTo(seconds: number, lapSeconds: number): void {
    const laps = seconds / lapSeconds;
    for (const { sprite, piece, length } of this.riders) {
      const along = length > 0 ? (piece.restPx + laps * length) % length : 0;
      const { at } = spotAt(piece.path, along);
      sprite.position.set(at[0], at[1]);
    }
  }

  destroy(): void {
    this.riders = [];
    this.container.destroy({ children: true });
    this.dropTextures();
  }

  private dropTextures(): void {
    for (const texture of this.textures.values()) texture.destroy(true);
    this.textures.clear();
  }

  private textureOf({ part, form, cut, size }: MovingPiece): Texture {
    const shownSize = Math.round(size * 2) / 2;
    const key = `${part}/${form}/${cut}/${shownSize}`;
    const known = this.textures.get(key);
    if (known) return known;
    const side = Math.ceil(shownSize * 2.7 + 4);
    const marks = cutPiece(part, cut, form, side / 2, side / 2, shownSize);
    const texture = drawnTexture(marks, this.theme, side, side, this.resolution);
    this.textures.set(key, texture);
    return texture;
  }
}
