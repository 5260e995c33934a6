import { type DoubtInput, type DoubtResult, doubtSeason } from '../../doubt/doubt-season.ts';

/** What the page is told. */
export type DoubtAnswer =
  | { readonly kind: 'progress'; readonly share: number }
  | { readonly kind: 'done'; readonly result: DoubtResult };

/** Ranked changes told for each outcome. */
const listed = 8;
/** The page is told no oftener than this, ms. */
const pauseMs = 100;

// The facts that are moved are this worker's own copy of the model's; whoever ends the worker ends the run.
addEventListener('message', ({ data }: MessageEvent<DoubtInput>) => {
  const answer = (message: DoubtAnswer) => postMessage(message);
  const steps = doubtSeason(data, listed);
  let told = performance.now();
  for (;;) {
    const step = steps.next();
    if (step.done) {
      answer({ kind: 'done', result: step.value });
      return;
    }
    if (performance.now() - told < pauseMs) continue;
    told = performance.now();
    answer({ kind: 'progress', share: step.value.share });
  }
});
