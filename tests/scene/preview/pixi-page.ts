import { mountScene } from '../../../src/scene/app.ts';
import { sampleFrame } from '../sample-frames.ts';

declare global {
  interface Window {
    sceneReport: Record<string, unknown>;
    sceneLossTrial: () => Promise<string[]>;
  }
}

const host = document.querySelector<HTMLElement>('#host')!;
document.body.style.margin = '0';
document.body.style.background = '#EEE4CF';
const log: string[] = [];
const scene = await mountScene(host, {
  onLost: () => log.push('lost'),
  onBack: () => log.push('back'),
});
const started = performance.now();
scene.show(sampleFrame('ginning', { width: 860, height: 560 })!, 'day');
const shownMs = performance.now() - started;
let frames = 0;
await new Promise((done) => setTimeout(done, 1500));
const first = performance.now();
await new Promise<void>((done) => {
  const count = () => {
    frames++;
    if (performance.now() - first < 2000) requestAnimationFrame(count);
    else done();
  };
  requestAnimationFrame(count);
});
window.sceneReport = {
  renderer: scene.renderer,
  shownMs: Math.round(shownMs),
  framesIn2s: frames,
  canvases: document.querySelectorAll('canvas').length,
};

const pause = (ms: number) => new Promise((done) => setTimeout(done, ms));
window.sceneLossTrial = async () => {
  const lose = () => {
    const gl = document.querySelectorAll('canvas')[1]!.getContext('webgl2');
    return gl?.getExtension('WEBGL_lose_context');
  };
  const first = lose();
  first?.loseContext();
  await pause(300);
  first?.restoreContext();
  await pause(500);
  lose()?.loseContext();
  await pause(1500);
  log.push(`canvases ${document.querySelectorAll('canvas').length}`);
  return log;
};
