import {
  type Browser,
  type BrowserContextOptions,
  type ConsoleMessage,
  chromium,
  type Page,
  type Request,
  type Response,
} from 'playwright-core';
import { afterAll, beforeAll, expect, inject } from 'vitest';
import { accessibilityFindings } from './accessibility-findings.ts';

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
  /** A profile that no other test gets, for what cannot be taken back: a moved clock, a script put before the page's own. */
  readonly fresh?: boolean;
}

/** An open page, and what it did that it should not have. */
export interface OpenPage {
  readonly page: Page;
  /** Console errors and warnings, uncaught errors, failed requests and requests to other hosts, as they come. */
  readonly faults: readonly string[];
  /**
   * Accessibility findings of the page as it stands, one line each.
   * @param whole every rule; unless said otherwise at the first look alone, later ones do without the slow rules
   */
  axe(whole?: boolean): Promise<string[]>;
  /** Leaves the page and fails the test when there was any fault. */
  finish(): Promise<void>;
}

let browser: Browser | undefined;
/** The Chromium of the files that share one. */
let shared: Browser | undefined;
/** Pages that tests are done with, by what cannot be changed in an open one. */
const idle = new Map<string, Page[]>();

const launch = (extraFlags: readonly string[]) =>
  chromium.launch({ executablePath: inject('chromiumPath'), args: [...launchFlags, ...extraFlags] });

/**
 * The Chromium of the calling file's tests. Call it at the top of the file. Files that run in one process share one, and its
 * pages: starting both anew took longer than many a test.
 * @param own flags for a Chromium that this file shares with none; an empty list for a plain one
 */
export function useBrowser(own?: readonly string[]): void {
  beforeAll(async () => {
    if (own) browser = await launch(own);
    else {
      shared ??= await launch([]);
      browser = shared;
    }
  });
  afterAll(async () => {
    if (browser !== shared) await browser?.close();
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

/** Gathers what a page should not do, until told to stop. */
function watch(page: Page, site: string): { faults: string[]; stop: () => void } {
  const faults: string[] = [];
  const { origin } = new URL(site);
  const onConsole = (message: ConsoleMessage) => {
    const loud = message.type() === 'error' || message.type() === 'warning';
    // A page names its own icon: this one the browser asks for beside a picture opened alone, to empty the profile.
    const ofBrowser = message.location().url.endsWith('/favicon.ico');
    if (loud && !ofBrowser && !harmless.test(message.text()))
      faults.push(`console ${message.type()}: ${message.text()}`);
  };
  const onError = (error: Error) => void faults.push(`uncaught: ${error.message}`);
  const onRequest = (request: Request) => {
    const url = new URL(request.url());
    const local = url.origin === origin || url.protocol === 'data:' || url.protocol === 'blob:';
    if (!local) faults.push(`request to another host: ${request.url()}`);
  };
  const onResponse = (response: Response) => {
    if (response.status() >= 400) faults.push(`answer ${response.status()}: ${response.url()}`);
  };
  page.on('console', onConsole).on('pageerror', onError).on('request', onRequest).on('response', onResponse);
  return {
    faults,
    stop: () =>
      page.off('console', onConsole).off('pageerror', onError).off('request', onRequest).off('response', onResponse),
  };
}

/** Takes an idle page and empties its profile, or opens a new one. */
async function pageFor(key: string, settings: BrowserContextOptions, site: string): Promise<Page> {
  const left = idle.get(key)?.pop();
  if (!left) return (await browser!.newContext(settings)).newPage();
  await left.setViewportSize(settings.viewport!);
  await left.emulateMedia({
    media: null,
    reducedMotion: settings.reducedMotion ?? null,
    colorScheme: settings.colorScheme ?? null,
  });
  // A file of the site that runs nothing, so that nothing is kept again.
  await left.goto(new URL('cloth/chalk.svg', site).href);
  await left.evaluate(() => {
    localStorage.clear();
    sessionStorage.clear();
  });
  await left.mouse.move(0, 0);
  return left;
}

/**
 * Opens a page of the built site in an empty profile.
 * @returns the page once its scripts have loaded
 */
export async function openPage(options: OpenOptions = {}): Promise<OpenPage> {
  if (!browser) throw new Error('call useBrowser() at the top of the test file');
  const { path = '', width = 1366, height = 768, language = 'en-US', touch = false } = options;
  const settings: BrowserContextOptions = {
    viewport: { width, height },
    locale: language,
    reducedMotion: options.reducedMotion ? 'reduce' : 'no-preference',
    hasTouch: touch,
    colorScheme: options.colorScheme ?? 'light',
    javaScriptEnabled: options.javaScriptEnabled ?? true,
    serviceWorkers: options.serviceWorkers ? 'allow' : 'block',
  };
  const site = options.site ?? siteUrl();
  const fresh =
    browser !== shared ||
    options.fresh ||
    options.serviceWorkers ||
    options.site ||
    options.javaScriptEnabled === false;
  const key = fresh ? '' : `${language} ${touch}`;
  const page = await pageFor(key, settings, site);
  const { faults, stop } = watch(page, site);
  await page.goto(new URL(path, site).href, { waitUntil: 'load' });
  let looks = 0;
  return {
    page,
    faults,
    axe: (whole = looks === 0) => {
      looks++;
      return accessibilityFindings(page, whole);
    },
    async finish() {
      const context = page.context();
      stop();
      if (key === '') await context.close();
      else {
        for (const other of context.pages()) if (other !== page) await other.close();
        await page.goto('about:blank');
        idle.set(key, [...(idle.get(key) ?? []), page]);
      }
      expect(faults).toEqual([]);
    },
  };
}
