/** How often it is asked whether the screen should still stay on. */
const LOOK_EVERY_MS = 60_000;

/**
 * Keeps the screen on while it is wanted. The browser takes the lock back whenever the page is hidden, and then it is asked for
 * again. Where there is none, the screen's own settings decide.
 * @returns stops it and lets the screen go
 */
export function keepAwake(isWanted: () => boolean): () => void {
  let lock: WakeLockSentinel | null = null;
  let stopped = false;
  const letGo = () => {
    void lock?.release().catch(() => {});
    lock = null;
  };
  const look = async () => {
    if (!isWanted()) return letGo();
    if (stopped || document.hidden || (lock && !lock.released)) return;
    try {
      const given = await navigator.wakeLock?.request('screen');
      if (stopped) await given?.release();
      else lock = given ?? null;
    } catch {
      // Refused, for example on a low battery: asked again in a minute.
    }
  };
  const lookNow = () => void look();
  lookNow();
  const timer = setInterval(lookNow, LOOK_EVERY_MS);
  document.addEventListener('visibilitychange', lookNow);
  return () => {
    stopped = true;
    clearInterval(timer);
    document.removeEventListener('visibilitychange', lookNow);
    letGo();
  };
}
