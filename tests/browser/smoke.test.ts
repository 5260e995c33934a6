import { expect, test } from 'vitest';
import { openPage, siteUrl, useBrowser } from './browser.ts';

useBrowser();

/** Directives of a content security policy, by name. */
const directives = (policy: string): Map<string, string> =>
  new Map(policy.split(';').map((part) => [part.trim().split(/\s+/)[0] ?? '', part.trim()]));

test('the start page answers with a title and one main heading, and asks no other host for anything', async () => {
  const { page, finish } = await openPage();
  expect(await page.title()).toContain('Seamfield');
  const heading = page.getByRole('heading', { level: 1 });
  await heading.waitFor();
  expect(await heading.count()).toBe(1);
  expect((await heading.innerText()).trim()).not.toBe('');
  expect(await page.getByRole('main').count()).toBe(1);
  await finish();
});

test('the page carries a strict policy of its own, so any static host is as safe as our server, which repeats it', async () => {
  const { page, finish } = await openPage();
  const carried = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content');
  const policy = directives(carried ?? '');
  expect(policy.get('default-src')).toBe("default-src 'none'");
  expect(policy.get('script-src')).toBe("script-src 'self'");
  expect(policy.get('style-src')).toBe("style-src 'self'");
  expect(policy.get('connect-src')).toBe("connect-src 'self'");
  expect(policy.get('base-uri')).toBe("base-uri 'none'");
  expect(carried).not.toMatch(/unsafe|https?:|\*|data:/);
  const sent = (await fetch(siteUrl())).headers;
  expect(sent.get('content-security-policy')).toBe(`${carried}; frame-ancestors 'self'`);
  expect(sent.get('x-content-type-options')).toBe('nosniff');
  expect(sent.get('referrer-policy')).toBe('no-referrer');
  await finish();
});

test('the policy is in force: an inline script does not run, and the harness sees the refusal', async () => {
  const { page, faults } = await openPage();
  const ran = await page.evaluate(() => {
    const script = document.createElement('script');
    script.textContent = 'window.inlineRan = true';
    document.body.append(script);
    return 'inlineRan' in window;
  });
  expect(ran).toBe(false);
  await expect.poll(() => faults.join('\n')).toMatch(/Content Security Policy/);
});

test('a request to another host is refused and seen', async () => {
  const { page, faults } = await openPage();
  await page.evaluate(() => fetch('http://localhost:9/').catch(() => undefined));
  expect(faults.join('\n')).toMatch(/Content Security Policy|another host/);
});

test.each([
  { width: 1366, height: 768 },
  { width: 390, height: 844 },
])('the start page holds the accessibility rules that a program can check, at $width x $height', async (size) => {
  const { page, axe, finish } = await openPage(size);
  await page.getByRole('heading', { level: 1 }).waitFor();
  expect(await axe()).toEqual([]);
  await finish();
});

test('the accessibility check sees a picture without words', async () => {
  const { page, axe } = await openPage();
  await page.evaluate(() => document.body.append(document.createElement('img')));
  expect((await axe()).join('\n')).toContain('image-alt');
});

test('in a browser set to Spanish the page still answers', async () => {
  const { page, finish } = await openPage({ language: 'es-MX' });
  await page.getByRole('heading', { level: 1 }).waitFor();
  await finish();
});
