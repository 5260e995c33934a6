/** The twelve stations, in the order a season passes them. */
export const stationIds = [
  'planting',
  'bloom',
  'boll',
  'harvest',
  'module',
  'cleaning',
  'ginning',
  'pressing',
  'classing',
  'spinning',
  'weaving',
  'sewing',
] as const;
export type StationId = (typeof stationIds)[number];
