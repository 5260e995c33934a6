import { HtmlValidate } from 'html-validate';
import { expect, test } from 'vitest';
import { stillPages } from '../../src/pages/lessons/still-pages.tsx';

const pages = await stillPages(['assets/a.css']);
const validator = new HtmlValidate({
  extends: ['html-validate:standard'],
  // Matters of taste: the renderer writes lower-case void elements without a slash, and lines of any length.
  rules: { 'no-trailing-whitespace': 'off', 'no-inline-style': 'error', 'long-title': 'off' },
});
const faults = async (html: string): Promise<string[]> =>
  (await validator.validateString(html)).results.flatMap(({ messages }) =>
    messages.map(({ ruleId, message, line, selector }) => `${ruleId}: ${message} (${selector ?? `line ${line}`})`),
  );

test('there is a page for the index, the glossary and every lesson of each language', () => {
  const names = (language: string) =>
    pages.flatMap(({ path }) => (path.startsWith(`lessons/${language}/`) ? [path.replace(/^.*\//, '')] : []));
  expect(names('en')).toContain('staple-length.html');
  expect(names('en')).toContain('index.html');
  expect(names('en')).toContain('glossary.html');
  expect(names('es')).toEqual(names('en'));
});

test.each(pages.map(({ path, html }) => [path, html] as const))('%s is valid HTML', async (_path, html) => {
  expect(await faults(html)).toEqual([]);
});

test('a fault of the markup is seen', async () => {
  expect(
    await faults('<!doctype html><html lang="en"><head><title>x</title></head><body><p><div></p></body></html>'),
  ).not.toEqual([]);
});

test.each(pages.map(({ path, html }) => [path, html] as const))(
  '%s needs no script, carries a strict policy, the licence and links that stay on the site',
  (path, html) => {
    expect(html).not.toMatch(/<script(?! type="application\/ld\+json")|style="| on\w+="/);
    expect(html).toContain("default-src 'none'");
    for (const [, href = ''] of html.matchAll(/(?:href|src)="([^"]*)"/g)) expect(href).not.toMatch(/^(https?:)?\/\//);
    if (!/(index|glossary)\.html$/.test(path)) expect(html).toMatch(/Free to copy|copiar libremente/);
  },
);

test.each(pages.filter(({ path }) => !/(index|glossary)\.html$/.test(path)))(
  '$path says what it is for machines: the fields of a schema.org LearningResource',
  ({ html }) => {
    const data = JSON.parse(/<script type="application\/ld\+json">(.*?)<\/script>/s.exec(html)![1]!) as Record<
      string,
      unknown
    >;
    expect(data['@context']).toBe('https://schema.org');
    expect(data['@type']).toBe('LearningResource');
    for (const field of ['name', 'description', 'inLanguage', 'educationalLevel', 'license', 'accessibilitySummary'])
      expect(data[field]).toMatch(/\S/);
    expect(data.timeRequired).toMatch(/^PT\d+M$/);
    expect(data.isAccessibleForFree).toBe(true);
    expect(data.educationalAlignment).not.toEqual([]);
  },
);
