import { type ClothName, catalogue } from '../../../model/cloth/catalogue-facts.ts';
import type { ClothDescription } from '../../../model/cloth/describe-cloth.ts';
import { MM_PER_INCH } from '../../../model/units.ts';
import type { DrawnThreads } from '../../../scene/lessons/close-cloth.ts';

/** A cloth of the list as a picture draws its threads: the warp paler than the weft, or dyed where it is. */
export const drawnThreads = (name: ClothName, cloth: ClothDescription): DrawnThreads => ({
  weave: cloth.construction.weave,
  endsPerInch: cloth.construction.endsPerInch,
  picksPerInch: cloth.construction.picksPerInch,
  warpInches: cloth.warpDiameterMm / MM_PER_INCH,
  weftInches: cloth.weftDiameterMm / MM_PER_INCH,
  warpInk: catalogue[name].dyedWarp ? 'mid' : 'lint',
  weftInk: catalogue[name].dyedWarp ? 'lint' : 'weldPale',
});
