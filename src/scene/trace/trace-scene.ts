import type { InkName } from '../../style/inks.ts';
import { patch } from '../cloth/patch.ts';
import { rectangle } from '../cloth/point.ts';
import { type DisplayList, group } from '../display-list.ts';
import { bollStretch } from './boll-stretch.ts';
import { clothStretch } from './cloth-stretch.ts';
import { fieldStretch, waterStretch } from './field-stretch.ts';
import { massStretch } from './mass-stretch.ts';
import type { TraceDrawing } from './trace-drawing.ts';

/** The stretches from the cloth down to the water, each with the cloth it is sewn on. */
const stretches = [
  { name: 'cloth', ground: 'calico', draw: clothStretch },
  { name: 'weight', ground: 'weldPale', draw: massStretch },
  { name: 'bolls', ground: 'indigo', draw: bollStretch },
  { name: 'field', ground: 'muslin', draw: fieldStretch },
  { name: 'water', ground: 'indigoWarm', draw: waterStretch },
] as const satisfies readonly { readonly name: string; readonly ground: InkName; readonly draw: unknown }[];

/** A picture and its size, px. */
export interface TraceScene {
  readonly list: DisplayList;
  readonly width: number;
  readonly height: number;
}

/** The whole way from the cloth to the field as one tall ribbon of cloths sewn together. @param width px */
export function traceScene(drawing: TraceDrawing, width: number): TraceScene {
  let top = 3;
  const list = stretches.map(({ name, ground, draw }) => {
    const { marks, height } = draw(drawing, top, width - 8);
    const cloth = patch(`trace/ground/${name}`, rectangle(4, top, width - 8, height + 3), ground, {
      shadow: 2.6,
      seam: 6,
      scissors: { miss: 1.6, snip: 140, bow: 0.002 },
    });
    top += height;
    return group(name, [cloth, ...marks]);
  });
  return { list, width, height: top + 10 };
}
