import { catalogue } from '../../model/cloth/catalogue-facts.ts';
import { threadsSideBySide } from '../../model/cloth/diameter.ts';
import { asNe, TEX_TIMES_NE, texFromNe, YARDS_PER_HANK } from '../../model/units.ts';
import { clothThread, labelNumber, labelThread, ladderThread } from '../thread-ladder.ts';
import type { Computed } from './computed.ts';

const exampleNe = 30;

export const yarnNumberQuantities = {
  'hank-length': { as: 'clothLength', value: () => YARDS_PER_HANK, decimals: 0 },
  'thread-in-pound': { as: 'clothLength', value: () => YARDS_PER_HANK * exampleNe, decimals: 0 },
  'tex-times-count': { as: 'plain', value: () => TEX_TIMES_NE, decimals: 1 },
  'tex-of-example': { as: 'plain', value: () => texFromNe(asNe(exampleNe)), decimals: 1 },
  'denim-over-lawn': {
    as: 'plain',
    value: () => clothThread('denim').diameterMm / clothThread('lawn').diameterMm,
    decimals: 1,
    restsOn: catalogue.denim,
  },
  'count-denim': { as: 'yarnCount', value: () => clothThread('denim').numbers.ne, restsOn: catalogue.denim },
  'count-lawn': { as: 'yarnCount', value: () => clothThread('lawn').numbers.ne, restsOn: catalogue.lawn },
  'count-two-ply': { as: 'yarnCount', value: () => Math.round(ladderThread('plied', '40/2Ne').numbers.ne) },
  'label-number': { as: 'plain', value: () => labelNumber },
  'label-metric-tex': { as: 'plain', value: () => labelThread('metric').numbers.tex, decimals: 1 },
  'label-two-ply-tex': { as: 'plain', value: () => labelThread('twoPly').numbers.tex, decimals: 1 },
  'label-three-ply-tex': { as: 'plain', value: () => labelThread('threePly').numbers.tex, decimals: 1 },
  'label-heaviest-over-lightest': {
    as: 'plain',
    value: () => labelThread('threePly').numbers.tex / labelThread('metric').numbers.tex,
    decimals: 1,
  },
  'wraps-in-inch': { as: 'plain', value: () => threadsSideBySide(texFromNe(asNe(exampleNe))), decimals: 0 },
} as const satisfies Readonly<Record<string, Computed>>;
