import type { BenchQuestionId } from '../../compare/bench-questions.ts';
import type { StandardCode } from '../../lessons/standards.ts';
import type { StationId } from '../../model/station.ts';
import type { HandsOnId, MaterialId, Stop, StopAim, StopMinutes } from './stop.ts';

/** Minutes by kind of stop; common practice. */
const minutesOf: Readonly<Record<StopAim['kind'], StopMinutes>> = {
  talk: { least: 1, usual: 2, most: 8 },
  hands: { least: 3, usual: 5, most: 12 },
  station: { least: 2, usual: 4, most: 10 },
  question: { least: 3, usual: 5, most: 12 },
  bench: { least: 3, usual: 5, most: 12 },
  lesson: { least: 8, usual: 11, most: 20 },
};

type Needs = Partial<Pick<Stop, 'materials' | 'vocabulary' | 'standards'>>;
const stop = (id: string, aim: StopAim, needs: Needs = {}): Stop => ({
  id,
  aim,
  minutes: minutesOf[aim.kind],
  materials: needs.materials ?? [],
  vocabulary: needs.vocabulary ?? [],
  standards: needs.standards ?? [],
});
const hands = (
  name: HandsOnId,
  materials: readonly MaterialId[],
  vocabulary: readonly string[],
  standards: readonly StandardCode[],
) => stop(name, { kind: 'hands', hands: name }, { materials, vocabulary, standards });
const at = (station: StationId, vocabulary: readonly string[], standards: readonly StandardCode[]) =>
  stop(`at-${station}`, { kind: 'station', station }, { vocabulary, standards });
const ask = (question: string, vocabulary: readonly string[], standards: readonly StandardCode[]) =>
  stop(`ask-${question}`, { kind: 'question', question }, { vocabulary, standards });
const bench = (name: BenchQuestionId, vocabulary: readonly string[], standards: readonly StandardCode[]) =>
  stop(`bench-${name}`, { kind: 'bench', bench: name }, { vocabulary, standards });
const lesson = (
  name: string,
  materials: readonly MaterialId[],
  vocabulary: readonly string[],
  standards: readonly StandardCode[],
) => stop(`lesson-${name}`, { kind: 'lesson', lesson: name }, { materials, vocabulary, standards });

/** Every stop a plan can have. A stop's place is its code in a link, so new ones go at the end. */
export const stopList: readonly Stop[] = [
  stop('opening', { kind: 'talk', talk: 'opening' }, { materials: ['scraps'] }),
  stop('recap', { kind: 'talk', talk: 'recap' }, { materials: ['slips'] }),
  hands('pullThread', ['scraps'], ['yarn', 'twist', 'warp'], ['16.2.1', '5-PS1-3']),
  hands('fiberPinch', ['cottonBall', 'darkCloth', 'ruler'], ['staple-length', 'short-fiber'], ['16.2.1', '5-PS1-3']),
  hands('seedByHand', ['ginnedSeed'], ['ginning', 'lint'], ['16.2.1', 'MS-PS1-3']),
  hands('hundredSquares', ['paperSquares'], ['seed-cotton', 'turnout'], ['5-PS1-2']),
  hands('biasPull', ['scraps', 'ruler'], ['grain', 'bias'], ['16.2.4', '2-PS1-2']),
  hands('dampCotton', ['cottonBall', 'scale', 'water'], ['moisture-content'], ['5-PS1-2', '5-PS1-3']),
  hands('tenCounters', ['counters'], ['bale'], ['16.1.4']),
  at('planting', ['stand'], ['MS-PS1-3']),
  at('bloom', ['square', 'bloom', 'shedding'], ['MS-PS1-3']),
  at('boll', ['boll', 'lock'], ['16.2.1', 'MS-PS1-3']),
  at('harvest', ['seed-cotton', 'spindle-picker'], ['5-PS1-2']),
  at('module', ['module', 'moisture-content'], ['5-PS1-3']),
  at('cleaning', ['trash', 'bur'], ['5-PS1-2']),
  at('ginning', ['gin-stand', 'lint', 'cottonseed'], ['5-PS1-2', 'MS-PS1-3']),
  at('pressing', ['bale', 'turnout'], ['5-PS1-2']),
  at('classing', ['staple-length', 'classing'], ['16.2.1', '16.2.2']),
  at('spinning', ['carding', 'yarn', 'twist'], ['16.2.1', '16.2.2']),
  at('weaving', ['warp', 'weft', 'shrinkage'], ['16.2.4', '2-PS1-2']),
  at('sewing', ['boll', 'patch'], ['5-PS1-2', 'MS-PS1-3']),
  ask('good-and-bad-years', ['bale', 'heat-units'], ['16.1.4']),
  ask('forty-or-eighty', ['defoliant', 'boll'], ['16.1.4']),
  ask('rain', ['color-grade', 'lint'], ['16.2.2']),
  ask('stripper-or-picker', ['stripper-harvester', 'spindle-picker'], ['16.1.4']),
  ask('by-hand', ['hand-picking', 'steelyard'], ['16.1.4']),
  ask('wet-module', ['module', 'yellowness'], ['16.2.2', '5-PS1-3']),
  ask('seed-and-lint', ['cottonseed', 'lint'], ['5-PS1-2', 'MS-PS1-3']),
  ask('saw-or-roller', ['gin-saw', 'roller-gin'], ['16.2.2']),
  ask('third-lint-cleaning', ['lint-cleaner', 'leaf-grade'], ['16.2.2', '16.1.4']),
  ask('where-the-seed-goes', ['cottonseed', 'linters'], ['5-PS1-2', 'MS-PS1-3']),
  ask('who-gets-the-money', ['bale', 'ginning'], ['16.1.4']),
  ask('one-staple', ['staple-length', 'premium'], ['16.2.2']),
  bench('pilling', ['pilling', 'hairiness'], ['16.2.2', '16.2.4']),
  bench('lawn', ['combing', 'noil', 'yarn-count'], ['16.2.2', '16.2.4']),
  bench('thread', ['yarn-count', 'ply', 'tex'], ['16.2.1', '16.2.3']),
  bench('flannel', ['shrinkage', 'prewashing'], ['16.2.4', '16.2.5']),
  lesson('one-boll-one-patch', ['scraps', 'ruler'], ['boll', 'seed-cotton', 'lint'], ['16.2.1', '5-PS1-2']),
  lesson('what-a-fiber-is', ['cottonBall', 'darkCloth'], ['seed-hair', 'cellulose'], ['16.2.1', 'MS-PS1-3']),
  lesson(
    'staple-length',
    ['scraps', 'ruler', 'cottonBall'],
    ['staple-length', 'upper-half-mean'],
    ['16.2.1', '16.2.2'],
  ),
  lesson('uniformity-and-short-fiber', ['scraps'], ['uniformity', 'hairiness', 'pilling'], ['16.2.2', '16.2.4']),
  lesson('inside-a-gin', ['scraps'], ['bur', 'gin-stand', 'turnout'], ['5-PS1-2', 'MS-PS1-3']),
  lesson('from-hand-to-spindle', ['slips'], ['steelyard', 'sharecropping', 'spindle-picker'], ['16.1.4']),
  lesson('a-plants-summer', ['slips'], ['square', 'heat-units', 'shedding'], ['MS-PS1-3']),
];

/** The stop of an id, or undefined. */
export const stopOf = (id: string): Stop | undefined => stopList.find((each) => each.id === id);
