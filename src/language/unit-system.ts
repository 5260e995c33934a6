/** US customary, or metric. A choice of display only: the model never changes. */
export const unitSystems = ['us', 'metric'] as const;
export type UnitSystem = (typeof unitSystems)[number];
