import { type Language, languages } from '../language/language.ts';
import type { Probed } from './self-test.ts';

/** Names by which drivers tell that the processor draws in the place of a graphics chip. */
const drawnByProcessor = /swiftshader|llvmpipe|software|basic render/i;

function probeGraphics(): Probed['graphics'] {
  const canvas = document.createElement('canvas');
  const gl = canvas.getContext('webgl2') ?? canvas.getContext('webgl');
  if (!gl) return document.createElement('canvas').getContext('2d') ? 'canvas' : 'none';
  const info = gl.getExtension('WEBGL_debug_renderer_info');
  const name = String(gl.getParameter(info ? info.UNMASKED_RENDERER_WEBGL : gl.RENDERER));
  // The page's own pictures need it more than the test does.
  gl.getExtension('WEBGL_lose_context')?.loseContext();
  return drawnByProcessor.test(name) ? 'processor' : 'chip';
}

async function probeStorage(): Promise<Probed['storage']> {
  const place = 'seamfield.kiosk.probe';
  try {
    localStorage.setItem(place, 'kept');
    const back = localStorage.getItem(place);
    localStorage.removeItem(place);
    if (back !== 'kept') return 'none';
    return (await navigator.storage?.persisted?.()) ? 'promised' : 'kept';
  } catch {
    return 'none';
  }
}

async function countKeptFiles(): Promise<number> {
  try {
    const names = (await caches.keys()).filter((name) => name.includes('-precache-'));
    const counts = await Promise.all(names.map(async (name) => (await (await caches.open(name)).keys()).length));
    return counts.reduce((sum, count) => sum + count, 0);
  } catch {
    return 0;
  }
}

/** Voices come a moment after they are first asked for. */
const VOICES_MS = 1500;

function probeVoices(): Promise<readonly Language[]> {
  const speech = window.speechSynthesis;
  if (!speech) return Promise.resolve([]);
  const read = () =>
    languages.filter((language) =>
      speech.getVoices().some(({ localService, lang }) => localService && lang.toLowerCase().startsWith(language)),
    );
  return new Promise((resolve) => {
    if (read().length > 0) return resolve(read());
    const done = () => {
      clearTimeout(timer);
      speech.removeEventListener('voiceschanged', done);
      resolve(read());
    };
    const timer = setTimeout(done, VOICES_MS);
    speech.addEventListener('voiceschanged', done);
  });
}

/** Looks at what the device has. Nothing is sent, and nothing is left behind. */
export async function probeDevice(): Promise<Probed> {
  const [storage, keptFiles, voices] = await Promise.all([probeStorage(), countKeptFiles(), probeVoices()]);
  return {
    graphics: probeGraphics(),
    storage,
    keptFiles,
    served: Boolean(navigator.serviceWorker?.controller),
    fingers: navigator.maxTouchPoints,
    voices,
  };
}
