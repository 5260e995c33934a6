import type { StationId } from '../../../model/station.ts';
import { bloomPicture } from './bloom-picture.ts';
import { bollPicture } from './boll-picture.ts';
import { classingPicture } from './classing-picture.ts';
import { cleaningPicture } from './cleaning-picture.ts';
import { ginningPicture } from './ginning-picture.ts';
import { harvestPicture } from './harvest-picture.ts';
import { modulePicture } from './module-picture.ts';
import type { StationPicture } from './picture.ts';
import { plantingPicture } from './planting-picture.ts';
import { pressingPicture } from './pressing-picture.ts';
import { sewingPicture } from './sewing-picture.ts';
import { spinningPicture } from './spinning-picture.ts';
import { weavingPicture } from './weaving-picture.ts';

/** How each station is shown. */
export const stationPictures: Readonly<Record<StationId, StationPicture>> = {
  planting: plantingPicture,
  bloom: bloomPicture,
  boll: bollPicture,
  harvest: harvestPicture,
  module: modulePicture,
  cleaning: cleaningPicture,
  ginning: ginningPicture,
  pressing: pressingPicture,
  classing: classingPicture,
  spinning: spinningPicture,
  weaving: weavingPicture,
  sewing: sewingPicture,
};
