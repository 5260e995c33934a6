import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { talliesPlace } from '../../src/kiosk/tallies.ts';
import { settled, useBrowser } from './browser.ts';
import { inAttract, openKiosk, press, screenNow } from './kiosk-of-page.ts';

useBrowser();
const patience = 180_000;

/** What a visitor could leave behind: everything the device keeps but counts, and all that stands on the screen. */
const traces = (page: Awaited<ReturnType<typeof openKiosk>>['page']) =>
  page.evaluate(
    (counts) => ({
      kept: Object.fromEntries(Object.entries({ ...localStorage }).filter(([place]) => place !== counts)),
      session: { ...sessionStorage },
      cookies: document.cookie,
      address: location.href,
      history: history.state as unknown,
      language: document.documentElement.lang,
      state: { ...document.querySelector<HTMLElement>('.kiosk')!.dataset },
      drawn: document.querySelector('.kiosk')!.innerHTML,
    }),
    talliesPlace,
  );

/** Counts the notes that the page plays. */
function countNotes() {
  const counted = globalThis as unknown as { notes: number };
  counted.notes = 0;
  const { start } = OscillatorNode.prototype;
  OscillatorNode.prototype.start = function (when) {
    counted.notes++;
    start.call(this, when);
  };
}
const notes = (page: Page) => page.evaluate(() => (globalThis as unknown as { notes: number }).notes);

test(
  'a visit from the first touch to the code and back to attract; the warning and its renewal; a reset equals a fresh load',
  async () => {
    const { page, faults, axe, finish } = await openKiosk({
      reducedMotion: true,
      touch: true,
      before: countNotes,
    });
    const fresh = await traces(page);
    expect(await page.locator('.kiosk a').count()).toBe(0);

    await page.touchscreen.tap(960, 300);
    await settled(page);
    expect(await screenNow(page)).toBe('language');
    await press(page, 'Español');
    expect(await screenNow(page)).toBe('guided');
    // The words of a language come with its first use.
    await page.locator('html[lang=es-US]').waitFor();
    expect(await axe()).toEqual([]);
    await press(page, 'English');
    await press(page, 'Next');
    await press(page, 'Next');
    expect(await page.locator('.kiosk h1').innerText()).toBe('Which\nweighs more?'.replace('\n', ' '));
    await press(page, 'The lint');
    expect(await page.locator('.kiosk h1').innerText()).toBe('The seed');
    await press(page, 'Next');

    // A minute of silence asks; a touch anywhere brings back the very same screen and presses nothing.
    const before = await page.locator('.kiosk-stage').innerHTML();
    await page.clock.fastForward(60_000);
    await page.locator('.kiosk-warning').waitFor();
    await expect.poll(() => notes(page)).toBe(2);
    const left = async () => Number(/(\d+) s/.exec(await page.locator('.kiosk-warning p').innerText())?.[1]);
    const first = await left();
    expect(first).toBeGreaterThan(10);
    await page.clock.runFor(5000);
    await settled(page);
    expect(await left()).toBeLessThanOrEqual(first - 5);
    expect(await notes(page)).toBe(2);
    const home = (await page.locator('.kiosk-band button').first().boundingBox())!;
    await page.touchscreen.tap(home.x + 20, home.y + 20);
    await page.locator('.kiosk-warning').waitFor({ state: 'detached' });
    expect(await page.locator('.kiosk-stage').innerHTML()).toBe(before);
    await page.clock.fastForward(70_000);
    await page.keyboard.press('ArrowRight');
    await page.locator('.kiosk-warning').waitFor({ state: 'detached' });
    expect(await page.locator('.kiosk-stage').innerHTML()).toBe(before);

    await press(page, 'Next');
    await press(page, 'Next');
    expect(await page.locator('.kiosk-boll').innerText()).toContain('true size');
    await press(page, 'Next');
    expect(await screenNow(page)).toBe('keepsake');
    expect(await page.locator('.kiosk-code svg').count()).toBe(1);
    await press(page, 'All twelve');
    await page.getByRole('button', { name: 'Weaving' }).click();
    await press(page, 'Compare');
    await press(page, 'Bleached');
    expect(await axe()).toEqual([]);
    await press(page, 'Español');
    await page.locator('html[lang=es-US]').waitFor();
    // Two-stage silence, with every choice of the visit open.
    await page.clock.fastForward(60_000);
    await page.locator('.kiosk-warning').waitFor();
    await page.clock.runFor(20_000);
    await inAttract(page);
    await settled(page);
    const after = await traces(page);
    expect(after).toEqual({ ...fresh, state: { ...fresh.state, lay: after.state.lay }, drawn: after.drawn });
    // And what stands there is what a new device shows in the same minute.
    const minute = Math.floor((await page.evaluate(() => Date.now())) / 60_000) * 60_000;
    const other = await openKiosk({ reducedMotion: true, touch: true, time: minute + 1000 });
    expect(await traces(other.page)).toEqual(after);
    await other.finish();
    const counts = JSON.parse((await page.evaluate((place) => localStorage.getItem(place), talliesPlace)) ?? '{}');
    expect(counts).toMatchObject({ visit: { count: 1 }, finished: { count: 1 }, 'language:es': { count: 1 } });
    expect(faults).toEqual([]);
    await finish();
  },
  patience,
);

test(
  'a keypad does everything; what a browser does by itself is refused; attract moves and shows the year; nothing is read aloud without a voice of the device',
  async () => {
    const { page, finish } = await openKiosk({ reducedMotion: true });
    // The loop moves its fixed parts every minute.
    const laid = async () =>
      JSON.stringify(
        await page
          .locator('.kiosk-band button, .kiosk h1')
          .evaluateAll((all) => all.map((each) => each.getBoundingClientRect())),
      );
    const places = new Set<string>();
    for (let minute = 0; minute < 4; minute++) {
      places.add(await laid());
      await page.clock.fastForward(60_000);
      await settled(page);
    }
    expect(places.size).toBeGreaterThan(2);
    await page.clock.fastForward(11_000);

    const refused = await page.evaluate(() => {
      const sent = (kind: Event) => !document.querySelector('.kiosk')!.dispatchEvent(kind);
      const cancelable = { bubbles: true, cancelable: true };
      return [
        sent(new MouseEvent('contextmenu', cancelable)),
        sent(new Event('selectstart', cancelable)),
        sent(new Event('dragstart', cancelable)),
        sent(new Event('gesturestart', cancelable)),
        sent(new WheelEvent('wheel', { ...cancelable, ctrlKey: true })),
      ];
    });
    expect(refused).toEqual([true, true, true, true, true]);
    const style = await page.evaluate(() => {
      const { userSelect, touchAction } = getComputedStyle(document.querySelector('.kiosk')!);
      return [userSelect, touchAction];
    });
    expect(style).toEqual(['none', 'manipulation']);

    await page.keyboard.press('Enter');
    await settled(page);
    expect(await screenNow(page)).toBe('language');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Enter');
    await page.locator('html[lang=es-US]').waitFor();
    await settled(page);
    expect(await page.locator('.kiosk-band').getByText('Escuchar').count()).toBe(0);
    for (let stop = 0; stop < 2; stop++) {
      await page.keyboard.press('Enter');
      await settled(page);
    }
    expect(await page.locator('.kiosk h1').innerText()).toBe('¿Qué pesa más?');
    await page.keyboard.press('Escape');
    await settled(page);
    await page.keyboard.press('Backspace');
    await settled(page);
    await page.keyboard.press('Escape');
    await settled(page);
    expect(await screenNow(page)).toBe('language');
    await page.keyboard.press('Escape');
    await inAttract(page);
    await finish();
  },
  patience,
);

test(
  'where the device has a voice, words are read aloud, the watch waits, loudness turns and falls back',
  async () => {
    const { page, finish } = await openKiosk({
      reducedMotion: true,
      before: () => {
        const said: { text: string; volume: number }[] = [];
        const voice = (lang: string, localService: boolean) => ({
          lang,
          localService,
          name: lang,
          default: false,
          voiceURI: lang,
        });
        class Utterance extends EventTarget {
          voice: unknown = null;
          lang = '';
          volume = 1;
          text: string;
          constructor(text: string) {
            super();
            this.text = text;
          }
        }
        let speaking: Utterance | null = null;
        const end = () => {
          const last = speaking;
          speaking = null;
          last?.dispatchEvent(new Event('end'));
        };
        Object.assign(window, { said, endSpeech: end, SpeechSynthesisUtterance: Utterance });
        const synthesis = Object.assign(new EventTarget(), {
          getVoices: () => [voice('en-US', true), voice('es-MX', false)],
          speak: (utterance: Utterance) => {
            speaking = utterance;
            said.push({ text: utterance.text, volume: utterance.volume });
          },
          cancel: end,
        });
        Object.defineProperty(window, 'speechSynthesis', { value: synthesis });
      },
    });
    const heard = () => page.evaluate(() => (window as unknown as { said: { text: string; volume: number }[] }).said);
    await page.keyboard.press('Enter');
    await settled(page);
    await press(page, 'English');
    await press(page, 'Listen');
    await page.clock.fastForward(200_000);
    expect(await page.locator('.kiosk-warning').count()).toBe(0);
    await page.keyboard.press('+');
    await page.evaluate(() => (window as unknown as { endSpeech(): void }).endSpeech());
    await press(page, 'Listen');
    const [first, second] = await heard();
    expect(first!.text).toContain('seeds ride in it');
    expect([first!.volume, second!.volume]).toEqual([0.5, 1]);
    await press(page, 'Stop');
    // The Spanish voice is not the device's own: it would need the network.
    await press(page, 'Español');
    expect(await page.getByRole('button', { name: 'Escuchar' }).count()).toBe(0);
    await press(page, 'English');
    await press(page, 'Home');
    await inAttract(page);
    await page.keyboard.press('Enter');
    await settled(page);
    await press(page, 'English');
    await press(page, 'Listen');
    expect((await heard()).at(-1)!.volume).toBe(0.5);
    await press(page, 'Stop');
    await finish();
  },
  patience,
);
