const toneSeconds = 5;
/** The pitch at which meters weigh nothing off: A-weighting is 0 dB at 1 kHz (IEC 61672-1). */
const toneHertz = 1000;
/** Rises and falls in this time, so that the speaker does not click. */
const rampSeconds = 0.05;

/** Plays a steady tone, as loud as the page can, to hold a sound level meter against. */
export function playMeterTone(): void {
  const context = new AudioContext();
  const tone = new OscillatorNode(context, { frequency: toneHertz });
  const loudness = new GainNode(context, { gain: 0 });
  const { currentTime: begin } = context;
  loudness.gain.linearRampToValueAtTime(1, begin + rampSeconds);
  loudness.gain.setValueAtTime(1, begin + toneSeconds - rampSeconds);
  loudness.gain.linearRampToValueAtTime(0, begin + toneSeconds);
  tone.connect(loudness).connect(context.destination);
  tone.addEventListener('ended', () => void context.close());
  tone.start(begin);
  tone.stop(begin + toneSeconds);
}
