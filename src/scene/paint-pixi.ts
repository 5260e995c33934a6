import { Container, Sprite, type Texture } from 'pixi.js';
import type { Theme } from '../style/inks.ts';
import { cutPiece } from './cloth/piece.ts';
import { type Rail, railOf } from './rail.ts';
import type { MovingPiece } from './scene-frame.ts';
import { TextureAtlas } from './texture-atlas.ts';

interface Rider {
  readonly sprite: Sprite;
  readonly rail: Rail;
  readonly restPx: number;
}

/**
 * The counted pieces as sprites, one picture to each cut of each part and size. Only what moves is painted by pixi: whole layers
 * as sprites or as a Graphics of some thousand stitches took 40 to 200 ms a frame where WebGL runs in software (measured,
 * SwiftShader, 860 x 560); pieces alone keep up with the screen.
 */
export class PieceLayer {
  readonly container = new Container();
  private atlas = new TextureAtlas('day', 2);
  private riders: Rider[] = [];

  constructor() {
    this.container.eventMode = 'none';
  }

  /** @param resolution texels to a scene pixel; twice what is shown, since pieces come to lie between pixels */
  show(pieces: readonly MovingPiece[], theme: Theme, resolution: number): void {
    const before = this.atlas;
    if (theme !== before.theme || resolution !== before.resolution || before.full)
      this.atlas = new TextureAtlas(theme, resolution);
    // Sprites are used again: a step of the season changes few pieces, and a new sprite costs more than a moved one.
    const sprites = this.riders.map(({ sprite }) => sprite);
    this.riders = pieces.map((piece, i) => {
      const sprite = sprites[i] ?? this.container.addChild(new Sprite({ anchor: 0.5 }));
      sprite.texture = this.textureOf(piece);
      return { sprite, rail: railOf(piece.path), restPx: piece.restPx };
    });
    for (const sprite of sprites.slice(pieces.length)) sprite.destroy();
    this.atlas.handOver();
    if (before !== this.atlas) before.destroy();
  }

  /** Moves every piece to where it is after some seconds. */
  moveTo(seconds: number, lapSeconds: number): void {
    const laps = seconds / lapSeconds;
    for (const { sprite, rail, restPx } of this.riders)
      rail.carry(sprite.position, rail.length > 0 ? (restPx + laps * rail.length) % rail.length : 0);
  }

  destroy(): void {
    this.riders = [];
    this.container.destroy({ children: true });
    this.atlas.destroy();
  }

  private textureOf({ part, form, cut, size }: MovingPiece): Texture {
    const shownSize = Math.round(size * 2) / 2;
    const side = Math.ceil(shownSize * 2.7 + 4);
    return this.atlas.texture(`${part}/${form}/${cut}/${shownSize}`, side, () =>
      cutPiece(part, cut, form, side / 2, side / 2, shownSize),
    );
  }
}
