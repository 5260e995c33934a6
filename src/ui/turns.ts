const waiting = new Set<() => void>();
let asked = false;

/** Asks for the next turn after a frame; a hidden page draws none. */
function ask(): void {
  if (asked || waiting.size === 0) return;
  asked = true;
  if (document.hidden) setTimeout(next);
  else requestAnimationFrame(() => setTimeout(next));
}

function next(): void {
  asked = false;
  const [run] = waiting;
  if (!run) return;
  waiting.delete(run);
  ask();
  run();
}

/**
 * Runs some work after the next frame, in a task of its own, and after all that asked before: one piece of work a frame.
 * @returns gives the turn up
 */
export function takeTurn(run: () => void): () => void {
  waiting.add(run);
  ask();
  return () => {
    waiting.delete(run);
  };
}
