import type { Facts } from '../fact.ts';

const norms =
  'mill norms for waste and cleaning (scribd 108105499, after the South India Textile Research Association)';
const opening = 'split by part is ours; the whole sits at the top of the published blowroom cleaning of 50 to 60 %';

export const wasteFacts = {
  blowroomBurs: { value: 0.85, unit: 'fraction', range: [0.6, 0.95], source: opening, mark: 'assumption' },
  blowroomSticks: { value: 0.75, unit: 'fraction', range: [0.5, 0.9], source: opening, mark: 'assumption' },
  blowroomLeaf: { value: 0.58, unit: 'fraction', range: [0.4, 0.7], source: opening, mark: 'assumption' },
  blowroomMotes: { value: 0.6, unit: 'fraction', range: [0.4, 0.7], source: opening, mark: 'assumption' },
  blowroomDirt: { value: 0.65, unit: 'fraction', range: [0.4, 0.8], source: opening, mark: 'assumption' },
  blowroomSeed: { value: 0.9, unit: 'fraction', range: [0.7, 1], source: opening, mark: 'assumption' },
  blowroomFibreShare: {
    value: 0.5,
    unit: 'fraction of the waste',
    range: [0.4, 0.5],
    source: 'Rieter encyclopaedia, "Quantity of waste material": about half of blowroom waste is good fibre',
    mark: 'published',
  },
  blowroomMostLint: {
    value: 0.15,
    unit: 'fraction of the lint',
    range: [0.1, 0.3],
    source: 'keeps a very trashy lot from losing its lint',
    mark: 'assumption',
  },
  cardTrash: {
    value: 0.875,
    unit: 'fraction',
    range: [0.8, 0.95],
    source: `blowroom and card together take 90 to 98 %; ${norms}`,
    mark: 'derived',
  },
  comberTrash: {
    value: 0.55,
    unit: 'fraction',
    range: [0.5, 0.6],
    source: 'combing takes 50 to 60 % of the impurities (best-filter.com, weak host)',
    mark: 'published',
  },
  invisibleLoss: {
    value: 0.005,
    unit: 'fraction',
    range: [0, 0.005],
    source: `dust and fly that no one sweeps up, at most 0.5 %; ${norms}`,
    mark: 'published',
  },
  sweepings: {
    value: 0.02,
    unit: 'fraction',
    range: [0.015, 0.025],
    source:
      'sweepings, filter and roving waste: what the invisible loss leaves of the 2.5 in the yarn realisation formula of D. Shanmuganandam, South India Textile Research Association',
    mark: 'memory',
    note: 'the formula is published; that its 2.5 covers these wastes is from memory',
  },
  yarnWaste: {
    value: 0.008,
    unit: 'fraction',
    range: [0.005, 0.01],
    source: `hard (yarn) waste; ${norms}`,
    mark: 'published',
  },
} as const satisfies Facts;

export const cardFacts = {
  fibreLoss: {
    value: 0.04,
    unit: 'fraction',
    range: [0.03, 0.06],
    source: 'inside card waste of 4 to 7 % (South India Textile Research Association), which counts trash too',
    mark: 'assumption',
  },
  lostLengthMm: {
    value: 4.5,
    unit: 'mm',
    range: [4, 5],
    source: 'Rieter encyclopaedia, "The influence of length": fibres under about 4 to 5 mm are lost',
    mark: 'published',
  },
  lostLengthSpreadMm: {
    value: 0.7,
    unit: 'mm',
    range: [0.3, 1.5],
    source: 'softness of that edge',
    mark: 'assumption',
  },
  lostShare: {
    value: 0.9,
    unit: 'fraction',
    range: [0.8, 1],
    source: 'share of the very shortest fibres that go',
    mark: 'assumption',
  },
  mostStrips: {
    value: 0.8,
    unit: 'ratio',
    range: [0.5, 1],
    source: 'end of the search for the draw of the strips: there even the shortest fibre would all go',
    mark: 'assumption',
  },
  stripFloor: {
    value: 0.25,
    unit: 'ratio',
    range: [0.1, 0.5],
    source: 'long fibre in card strips against the shortest',
    mark: 'assumption',
  },
  stripLengthMm: {
    value: 8,
    unit: 'mm',
    range: [6, 10],
    source: 'how fast card strips favour short fibre',
    mark: 'assumption',
  },
  nepsKept: {
    value: 0.1,
    unit: 'fraction',
    range: [0.1, 0.3],
    source: 'Cotton Guide, International Trade Centre, neps: a modern, well-set card takes about 90 %',
    mark: 'published',
  },
} as const satisfies Facts;

export const comberFacts = {
  floor: {
    value: 0.04,
    unit: 'fraction',
    range: [0.02, 0.08],
    source: 'long fibre caught up with the noil',
    mark: 'assumption',
  },
  height: {
    value: 0.66,
    unit: 'fraction',
    range: [0.5, 0.8],
    source: 'set so that combing removes 42 to 50 % of the short fibre, as published for 15 % noil (weak host)',
    mark: 'assumption',
  },
  softnessMm: {
    value: 4,
    unit: 'mm',
    range: [2, 6],
    source: 'how sharply the nippers sort by length',
    mark: 'assumption',
  },
  lowestCutMm: {
    value: -40,
    unit: 'mm',
    range: [-80, -20],
    source: 'start of the search for the cut: ten softnesses below the shortest fibre',
    mark: 'derived',
  },
  highestCutMm: {
    value: 90,
    unit: 'mm',
    range: [65, 130],
    source: 'end of the search for the cut: above the longest fibre held',
    mark: 'derived',
  },
  nepsKept: {
    value: 0.4,
    unit: 'fraction',
    range: [0.3, 0.6],
    source: 'the comber drops most of the neps the card left',
    mark: 'memory',
  },
} as const satisfies Facts;
