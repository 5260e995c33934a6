/** Limits of a farm that are no decision of a season. */
export const farmLimits = {
  acres: { low: 1, high: 5000, unit: 'acres', source: 'a garden patch to a very large farm', mark: 'assumption' },
  soilWaterMm: {
    low: 50,
    high: 250,
    unit: 'mm',
    source: 'thin sand to deep silt loam under a root zone of about 1.2 m (FAO 56, table 19, from memory)',
    mark: 'memory',
  },
} as const;

/** Longest texts of a scenario file, characters; Spanish takes a fifth more room. */
export const textLimits = {
  nameEn: 200,
  nameEs: 240,
  storyEn: 600,
  storyEs: 720,
  unit: 'characters',
  source: 'a name fits on a line, a story in a short paragraph',
  mark: 'assumption',
} as const;
