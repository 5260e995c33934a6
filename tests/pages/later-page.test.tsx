// @vitest-environment happy-dom
import { expect, test } from 'vitest';
import { laterPage } from '../../src/pages/later-page.tsx';
import { ErrorBoundary } from '../../src/ui/error-boundary.tsx';
import { afterwards, renderPart, textOf } from '../ui/render-part.ts';

const Page = ({ name }: { readonly name: string }) => <main>{`This is ${name}`}</main>;

test('a page comes when its script has come, and at once the next time', async () => {
  let asked = 0;
  const Later = laterPage(async () => {
    asked++;
    return { default: Page };
  });
  const first = await renderPart(<Later name="one" />);
  await afterwards(() => undefined);
  expect(textOf(first)).toBe('This is one');
  const again = await renderPart(<Later name="two" />);
  expect(textOf(again)).toBe('This is two');
  expect(asked).toBe(1);
});

test('a script that does not come is told, and asked for again when the reader tries again', async () => {
  let online = false;
  const Later = laterPage(async () => {
    if (!online) throw new Error('no network');
    return { default: Page };
  });
  const part = await renderPart(
    <ErrorBoundary>
      <Later name="late" />
    </ErrorBoundary>,
  );
  await afterwards(() => undefined);
  const retry = part.querySelector('[role=alert] button') as HTMLElement;
  expect(retry).not.toBeNull();
  online = true;
  await afterwards(() => retry.click());
  await afterwards(() => undefined);
  expect(textOf(part)).toBe('This is late');
});
