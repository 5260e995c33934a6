import type { StationId } from '../../model/station.ts';
import type { BlockPiece } from './block-piece.ts';
import { bloomBlock, bollBlock, harvestBlock, moduleBlock, plantingBlock } from './field-blocks.ts';
import { classingBlock, cleaningBlock, ginningBlock, pressingBlock } from './gin-blocks.ts';
import { sewingBlock, spinningBlock, weavingBlock } from './mill-blocks.ts';

const blocks: Readonly<Record<StationId, readonly BlockPiece[]>> = {
  planting: plantingBlock(),
  bloom: bloomBlock(),
  boll: bollBlock(),
  harvest: harvestBlock(),
  module: moduleBlock(),
  cleaning: cleaningBlock(),
  ginning: ginningBlock(),
  pressing: pressingBlock(),
  classing: classingBlock(),
  spinning: spinningBlock(),
  weaving: weavingBlock(),
  sewing: sewingBlock(),
};

/** The pieces of a station's quilt block, in the unit square, from traditional patchwork geometry. */
export const blockOf = (station: StationId): readonly BlockPiece[] => blocks[station];
