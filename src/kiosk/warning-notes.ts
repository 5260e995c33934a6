/** Two falling notes, a fifth apart, as a doorbell has them (an assumption; no source names a sound). */
const notesHertz = [660, 440] as const;
const noteSeconds = 0.35;
/** Rises and falls in this time, so that the speaker does not click. */
const rampSeconds = 0.03;
/** Well after both notes. */
const closesAfterMs = 2000;

/**
 * Plays two short notes, for a warning that is meant for the ear too.
 * @param volumePercent as loud as what is read aloud; at 0 nothing is played
 */
export function playWarningNotes(volumePercent: number): void {
  if (volumePercent <= 0) return;
  const context = new AudioContext();
  notesHertz.forEach((frequency, place) => {
    const begin = context.currentTime + place * noteSeconds;
    const end = begin + noteSeconds;
    const note = new OscillatorNode(context, { frequency });
    const loudness = new GainNode(context, { gain: 0 });
    loudness.gain.setValueAtTime(0, begin);
    loudness.gain.linearRampToValueAtTime(volumePercent / 100, begin + rampSeconds);
    loudness.gain.setValueAtTime(volumePercent / 100, end - rampSeconds);
    loudness.gain.linearRampToValueAtTime(0, end);
    note.connect(loudness).connect(context.destination);
    note.start(begin);
    note.stop(end);
  });
  // By the clock: where sound is refused the notes never end.
  setTimeout(() => void context.close(), closesAfterMs);
}
