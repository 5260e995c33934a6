import type { ClimateId, Era } from '../../../model/scenario.ts';

export const climates = {
  coastalPlain: 'Coastal plain',
  midSouth: 'Mid-South river bottom',
  highPlains: 'High plains',
  lowDesert: 'Low desert',
  centralValley: 'Central valley',
} satisfies Record<ClimateId, string>;

export const eras = {
  present: 'The present',
  thirties: 'The 1930s',
} satisfies Record<Era, string>;
