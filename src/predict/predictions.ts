import type { StationId } from '../model/station.ts';
import { bloomPrediction } from './bloom.ts';
import { bollPrediction } from './boll.ts';
import { classingPrediction } from './classing.ts';
import { cleaningPrediction } from './cleaning.ts';
import { ginningPrediction } from './ginning.ts';
import { harvestPrediction } from './harvest.ts';
import { modulePrediction } from './module.ts';
import { plantingPrediction } from './planting.ts';
import type { Prediction } from './prediction.ts';
import { pressingPrediction } from './pressing.ts';
import { sewingPrediction } from './sewing.ts';
import { spinningPrediction } from './spinning.ts';
import { weavingPrediction } from './weaving.ts';

/** The question of each station. */
export const predictions: Readonly<Record<StationId, Prediction>> = {
  planting: plantingPrediction,
  bloom: bloomPrediction,
  boll: bollPrediction,
  harvest: harvestPrediction,
  module: modulePrediction,
  cleaning: cleaningPrediction,
  ginning: ginningPrediction,
  pressing: pressingPrediction,
  classing: classingPrediction,
  spinning: spinningPrediction,
  weaving: weavingPrediction,
  sewing: sewingPrediction,
};
