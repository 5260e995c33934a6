import { Container, Sprite, type Texture } from 'pixi.js';
import type { Theme } from '../style/inks.ts';
import { drawnTexture } from './drawn-texture.ts';
import { type MovingPart, partAt } from './scene-frame.ts';

/** Moving parts of machines as sprites, one texture to each name. */
export class PartLayer {
  readonly container = new Container();
  private textures = new Map<string, Texture>();
  private shown: { sprite: Sprite; part: MovingPart }[] = [];
  private theme: Theme = 'day';
  private resolution = 2;

  constructor() {
    this.container.eventMode = 'none';
  }

  /** @param resolution texels to a scene pixel */
  show(parts: readonly MovingPart[], theme: Theme, resolution: number): void {
    for (const child of this.container.removeChildren()) child.destroy();
    const before = this.textures;
    const kept = theme === this.theme && resolution === this.resolution ? before : new Map<string, Texture>();
    this.theme = theme;
    this.resolution = resolution;
    this.textures = new Map();
    this.shown = parts.map((part) => {
      const sprite = new Sprite(this.textureOf(part, kept));
      sprite.anchor.set(0.5);
      this.container.addChild(sprite);
      return { sprite, part };
    });
    const used = new Set(this.textures.values());
    for (const texture of before.values()) if (!used.has(texture)) texture.destroy(true);
  }

  /** Moves every part to where it is after some seconds. */
  moveTo(seconds: number): void {
    for (const { sprite, part } of this.shown) {
      const { turn, shift } = partAt(part, seconds);
      sprite.rotation = turn;
      sprite.position.set(part.middle[0] + shift[0], part.middle[1] + shift[1]);
    }
  }

  destroy(): void {
    this.shown = [];
    this.container.destroy({ children: true });
    for (const texture of this.textures.values()) texture.destroy(true);
    this.textures.clear();
  }

  private textureOf({ name, marks, middle, radius }: MovingPart, kept: ReadonlyMap<string, Texture>): Texture {
    const side = Math.ceil(radius * 2 + 4);
    const texture =
      this.textures.get(name) ??
      kept.get(name) ??
      drawnTexture(marks, this.theme, side, side, this.resolution, [middle[0] - side / 2, middle[1] - side / 2]);
    this.textures.set(name, texture);
    return texture;
  }
}
