import AxeBuilder from '@axe-core/playwright';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject } from 'vitest';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the built site is served, with a closing slash. */
    siteAddress: string;
    /** The Chromium to test in. */
    chromiumPath: string;
  }
}

const launchFlags = [
  '--no-sandbox',
  // Machines without a GPU: WebGL in software, which Chromium no longer falls back to by itself.
  '--enable-unsafe-swiftshader',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/**
 * Not the page's doing: Chromium's own remark on reading a software-drawn canvas back, for example for a screenshot, and the
 * word of the harness that it keeps the service worker out.
 */
const harmless = /GPU stall due to ReadPixels|Service Worker registration blocked by Playwright/;

/** Every level and version of the accessibility guidelines that a page must hold. */
const axeTags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** How a page is opened. */
export interface OpenOptions {
  /** Path and hash below the site's address; '' is the start page. */
  readonly path?: string;
  /** Width of the view, CSS pixels. */
  readonly width?: number;
  /** Height of the view, CSS pixels. */
  readonly height?: number;
  /** The browser's language, for example es-MX. */
  readonly language?: string;
  readonly reducedMotion?: boolean;
  readonly touch?: boolean;
  readonly colorScheme?: 'light' | 'dark';
  readonly javaScriptEnabled?: boolean;
  /** Lets the site keep its files for use offline; elsewhere each page comes over the network, as it does the first time. */
  readonly serviceWorkers?: boolean;
  /** Another site than the one under test, with a closing slash. */
  readonly site?: string;
}

/** An open page, and what it did that it should not have. */
export interface OpenPage {
  readonly page: Page;
  /** Console errors and warnings, uncaught errors, failed requests and requests to other hosts, as they come. */
  readonly faults: readonly string[];
  /** Accessibility findings of the page as it stands, one line each. */
  axe(): Promise<string[]>;
  /** Closes the page and fails the test when there was any fault. */
  finish(): Promise<void>;
}

let browser: Browser | undefined;

/** Starts one Chromium for the tests of the calling file. Call it at the top of the file. */
export function useBrowser(extraFlags: readonly string[] = []): void {
  beforeAll(async () => {
    browser = await chromium.launch({
      executablePath: inject('chromiumPath'),
      args: [...launchFlags, ...extraFlags],
    });
  });
  afterAll(async () => {
    await browser?.close();
    browser = undefined;
  });
}

/** Waits until no part of the page has yet to take up what it was given, and what it took up is drawn. */
export async function settled(page: Page): Promise<void> {
  await page.evaluate(
    () =>
      new Promise<void>((done) => {
        const look = () =>
          requestAnimationFrame(() =>
            setTimeout(() =>
              document.querySelector('[aria-busy=true]') === null
                ? requestAnimationFrame(() => setTimeout(done))
                : look(),
            ),
          );
        look();
      }),
  );
}

/** The address of a path of the site. */
export const siteUrl = (path = ''): string => new URL(path, inject('siteAddress')).href;

function watch(page: Page, site: string): string[] {
  const faults: string[] = [];
  const { origin } = new URL(site);
  page.on('console', (message) => {
    const loud = message.type() === 'error' || message.type() === 'warning';
    if (loud && !harmless.test(message.text())) faults.push(`console ${message.type()}: ${message.text()}`);
  });
  page.on('pageerror', (error) => faults.push(`uncaught: ${error.message}`));
  page.on('request', (request) => {
    const url = new URL(request.url());
    const local = url.origin === origin || url.protocol === 'data:' || url.protocol === 'blob:';
    if (!local) faults.push(`request to another host: ${request.url()}`);
  });
  page.on('response', (response) => {
    if (response.status() >= 400) faults.push(`answer ${response.status()}: ${response.url()}`);
  });
  return faults;
}

/**
 * Opens a page of the built site in a fresh profile.
 * @returns the page once its scripts have loaded
 */
export async function openPage(options: OpenOptions = {}): Promise<OpenPage> {
  if (!browser) throw new Error('call useBrowser() at the top of the test file');
  const { path = '', width = 1366, height = 768, language = 'en-US' } = options;
  const settings: BrowserContextOptions = {
    viewport: { width, height },
    locale: language,
    reducedMotion: options.reducedMotion ? 'reduce' : 'no-preference',
    hasTouch: options.touch ?? false,
    colorScheme: options.colorScheme ?? 'light',
    javaScriptEnabled: options.javaScriptEnabled ?? true,
    serviceWorkers: options.serviceWorkers ? 'allow' : 'block',
  };
  const context = await browser.newContext(settings);
  const page = await context.newPage();
  const site = options.site ?? siteUrl();
  const faults = watch(page, site);
  await page.goto(new URL(path, site).href, { waitUntil: 'load' });
  return {
    page,
    faults,
    async axe() {
      // At the end of the page the sticky foot lies in its own place: above it, whatever it happens to cover counts as too small.
      await page.evaluate(() => window.scrollTo(0, document.documentElement.scrollHeight));
      // No frames within the page: the short way, and only what is wrong, takes a third of the time.
      const { violations } = await new AxeBuilder({ page })
        .options({ runOnly: { type: 'tag', values: axeTags }, resultTypes: ['violations'] })
        .setLegacyMode(true)
        .analyze();
      return violations.map(({ id, help, nodes }) => `${id}: ${help}: ${nodes.map(({ html }) => html).join(' | ')}`);
    },
    async finish() {
      await context.close();
      expect(faults).toEqual([]);
    },
  };
}
