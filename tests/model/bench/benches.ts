import { startingSetUp } from '../../../src/model/bench/set-up.ts';
import { workBench } from '../../../src/model/bench/work-bench.ts';

/** Quilting cotton of middling upland. */
export const quiltingSetUp = startingSetUp('uplandMedium', 'quilting', 14);
const pimaSetUp = startingSetUp('pima', 'quilting', 14);
export const quiltingBench = workBench(quiltingSetUp);
export const pimaBench = workBench(pimaSetUp);
