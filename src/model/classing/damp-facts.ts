import type { Facts } from '../fact.ts';

/** How damp a bale may be. */
export const dampFacts = {
  refusedAbovePercent: {
    value: 7.5,
    unit: '% wet basis',
    range: [7.5, 7.5],
    source:
      'bales at most 7.5 % (National Cotton Council policy, in Hughs et al. 2004); no point of a bale under loan above it (farm press, wet bales, 2006)',
    mark: 'published',
  },
  limitSinceYear: {
    value: 2006,
    unit: 'year',
    source:
      'USDA Commodity Credit Corporation, wet cotton, Federal Register 71:51422 (30 August 2006), 7 CFR 1427.3: the first limit of moisture that was read',
    mark: 'published',
    note: 'before it bales were docked for rot (5 to 20 lb in 1914-15, USDA Bulletin 458) and for wrapping over 30 lb (Duggar, Southern Field Crops), not for a measured moisture; damp cotton lost by its rough ginning',
  },
  paidAtPercent: {
    value: 7.5,
    unit: '% wet basis',
    range: [7, 7.83],
    source:
      'the buyer pays for a damper bale as if it had dried to the limit: how trades that settle at a standard moisture deal; no published rule of the cotton trade was read',
    mark: 'assumption',
    note: 'commercial regain of 8.5 % is 7.83 % wet basis',
  },
  colourAbovePercent: {
    value: 8,
    unit: '% wet basis',
    range: [8, 8],
    source: 'bales above 8 % change colour significantly in six months (Hughs et al. 2004)',
    mark: 'published',
    note: 'by how much is not published, so no bale is darkened for it',
  },
} as const satisfies Facts;
