import { chainFacts } from '../model/trace/facts.ts';
import type { TraceRequest } from '../model/trace/need.ts';
import { type Trace, traceProject } from '../model/trace/trace-project.ts';
import { poundsFromKilograms, SQUARE_METRES_PER_ACRE } from '../model/units.ts';
import type { Check } from './check.ts';
import { between, near, nearShare } from './expected.ts';

function traced(request: TraceRequest): Trace {
  const result = traceProject(request);
  if (!result.ok) throw new Error(`cannot trace ${JSON.stringify(request)}`);
  return result.value;
}
const quilting = { yards: 1, widthInches: 45, ouncesPerSquareYard: 3.66 };
const twin = () => traced({ project: 'twin-quilt' });
const acresOf = ({ squareMetres }: Trace) => squareMetres / SQUARE_METRES_PER_ACRE;

export const traceChecks: readonly Check[] = [
  {
    id: 'trace/cloth-weight',
    link: 'trace',
    kind: 'exact',
    what: 'weight of a yard of quilting cotton that runs 3.5 yards to the pound',
    source: 'a maker’s page: 68 x 68, 45 in, 3.5 yd/lb',
    unit: 'lb',
    expected: nearShare(1 / 3.5, 0.005),
    ours: () => poundsFromKilograms(traced(quilting).clothKg),
  },
  {
    id: 'trace/yield',
    link: 'trace',
    kind: 'calibrated',
    what: 'lint of the acre that a twin quilt is traced back to',
    source: 'USDA-NASS January 2017: upland, five-year mean 806',
    unit: 'lb/acre',
    expected: nearShare(806, 0.05),
    ours: () => poundsFromKilograms(twin().lintKg) / acresOf(twin()),
  },
  {
    id: 'trace/mill-yield-old',
    link: 'trace',
    kind: 'definition',
    what: 'lint for 100 lb of yarn: 111 lb until 2009',
    source: 'USDA Economic Research Service, textile conversion factors, reported 16 October 2009',
    unit: 'lb',
    expected: near(111, 0.5),
    ours: () => {
      const { lintKg, yarnKg } = traced(quilting);
      return (100 * lintKg) / yarnKg;
    },
  },
  {
    id: 'trace/machine-speed',
    link: 'trace',
    kind: 'plainSum',
    what: 'acres an hour of a picker, back from a twin quilt',
    source: 'Raper in cottongrower.com, quoting Griffin, Buschermohle & Barnes: 8',
    unit: 'acre/h',
    expected: near(8, 0.01),
    ours: () => (60 * acresOf(twin())) / twin().machinePickingMinutes,
  },
  {
    id: 'trace/boll-fibres',
    link: 'trace',
    kind: 'notTuned',
    what: 'fibers of one boll on the way back from a twin quilt',
    source: 'popular figures: 250,000-500,000',
    unit: 'thousand',
    expected: between(250, 500),
    ours: () => twin().fibres / twin().bolls / 1000,
  },
  {
    id: 'trace/fiber-length',
    link: 'trace',
    kind: 'exact',
    what: 'mean length that the chain’s fibers are counted with: uniformity 82 % of an upper half mean of 28.4 mm',
    source: 'USDA-AMS, Understanding the Data: uniformity is mean length over upper half mean',
    unit: 'mm',
    expected: near(0.82 * 28.4, 0.5),
    ours: () => chainFacts.fibreLengthMm.value,
  },
];
