// @vitest-environment happy-dom
import { afterEach, describe, expect, test, vi } from 'vitest';
import { Announcer } from '../../src/ui/announcer.tsx';
import { Doors } from '../../src/ui/doors.tsx';
import { ErrorBoundary } from '../../src/ui/error-boundary.tsx';
import { FilePicker } from '../../src/ui/file-picker.tsx';
import { LanguageUnitsBar } from '../../src/ui/language-units-bar.tsx';
import { Navigation } from '../../src/ui/navigation.tsx';
import { Picture } from '../../src/ui/picture.tsx';
import { ProblemList } from '../../src/ui/problem-list.tsx';
import { Ribbon, type RibbonProps } from '../../src/ui/ribbon.tsx';
import { SewistLine } from '../../src/ui/sewist-line.tsx';
import { TrustMark } from '../../src/ui/trust-mark.tsx';
import { Twin } from '../../src/ui/twin.tsx';
import { afterwards, renderPart, textOf } from './render-part.ts';

const setWidth = (width: number) => {
  (window as unknown as { happyDOM: { setViewport(size: { width: number }): void } }).happyDOM.setViewport({ width });
};
afterEach(() => setWidth(1024));
const press = (element: Element | null | undefined) => afterwards(() => (element as HTMLElement).click());

describe('navigation', () => {
  const navigation = (
    <Navigation pages={['season', 'bench', 'sources']} current="bench" hrefOf={(page) => `#/${page}`} />
  );
  test('is a named row of links that marks the page it is on', async () => {
    setWidth(1920);
    const page = await renderPart(navigation);
    expect(page.querySelector('nav')?.getAttribute('aria-label')).toBe('Pages');
    expect([...page.querySelectorAll('a')].map((link) => link.getAttribute('href'))).toEqual([
      '#/season',
      '#/bench',
      '#/sources',
    ]);
    expect(textOf(page.querySelector('[aria-current=page]'))).toBe('Bench');
    expect(page.querySelector('button')).toBeNull();
  });
  test('keeps five links in the row of a desk and unfolds the rest, marked when the page is among them', async () => {
    setWidth(1366);
    const page = await renderPart(
      <Navigation
        pages={['season', 'bench', 'trace', 'lessons', 'ask', 'farm', 'sources']}
        current="farm"
        hrefOf={(id) => `#/${id}`}
      />,
    );
    const [row, rest] = [...page.querySelectorAll('ul')];
    expect(row!.querySelectorAll('a')).toHaveLength(5);
    expect(rest!.hidden).toBe(true);
    expect([...rest!.querySelectorAll('a')].map((link) => link.getAttribute('href'))).toEqual(['#/farm', '#/sources']);
    const more = page.querySelector('button')!;
    expect(textOf(more)).toBe('More');
    expect(more.hasAttribute('data-here')).toBe(true);
    await press(more);
    expect(rest!.hidden).toBe(false);
  });
  test('folds on a phone, opens by its button and shuts on Escape', async () => {
    setWidth(390);
    const page = await renderPart(navigation, 'es');
    const fold = page.querySelector('button')!;
    const list = page.querySelector('ul')!;
    expect(list.hidden).toBe(true);
    await press(fold);
    expect(fold.getAttribute('aria-expanded')).toBe('true');
    expect(list.hidden).toBe(false);
    expect(textOf(list)).toContain('Fuentes');
    await afterwards(() => fold.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true })));
    expect(list.hidden).toBe(true);
  });
});

describe('the doors', () => {
  test('open on one fact and three ways, of which exactly one is loud', async () => {
    const page = await renderPart(<Doors hrefOf={(door) => `#/${door}`} />);
    expect(page.querySelectorAll('h1')).toHaveLength(1);
    const doors = [...page.querySelectorAll('a')];
    expect(doors.map((door) => textOf(door.querySelector('.door-name')))).toEqual([
      'Follow a season',
      'Ask about a cloth',
      'Teach a class',
    ]);
    expect(page.querySelectorAll('[data-primary]')).toHaveLength(1);
    expect(doors.map((door) => door.getAttribute('href'))).toEqual(['#/season', '#/bench', '#/teach']);
  });
});

test('the bar names each language in itself and says which is in force', async () => {
  const onLanguage = vi.fn();
  const onUnitSystem = vi.fn();
  const page = await renderPart(
    <LanguageUnitsBar
      theme="day"
      onLanguage={onLanguage}
      onUnitSystem={onUnitSystem}
      onTheme={() => {}}
      motion="moving"
      onMotion={() => {}}
    />,
  );
  const spanish = page.querySelector('[lang=es-US]')!;
  expect(textOf(spanish)).toBe('Español');
  expect(page.querySelector('[lang=en-US]')?.getAttribute('aria-pressed')).toBe('true');
  await press(spanish);
  expect(onLanguage).toHaveBeenCalledWith('es');
  await press(page.querySelector('[aria-label="Kilograms and millimeters"]'));
  expect(onUnitSystem).toHaveBeenCalledWith('metric');
  expect([...page.querySelectorAll('fieldset > legend')].map(textOf)).toEqual([
    'Language',
    'Units',
    'Screen',
    'Motion',
  ]);
});

describe('the ribbon', () => {
  const calls = {
    onScrub: vi.fn(),
    onPlay: vi.fn(),
    onPause: vi.fn(),
    onStep: vi.fn(),
    onStepStation: vi.fn(),
    onSpeed: vi.fn(),
  };
  const props: RibbonProps = {
    start: 115,
    end: 310,
    now: 188,
    nowText: 'Day 74, July 7',
    ticks: [{ at: 121, label: 'May' }],
    events: [
      { at: 185, label: 'First flower', dateText: 'July 4' },
      { at: 300, label: 'Harvest', dateText: 'October 27' },
    ],
    playing: false,
    speed: 'byWeek',
    ...calls,
  };
  test('is a native slider that speaks the day, with named buttons', async () => {
    const page = await renderPart(<Ribbon {...props} />);
    const slider = page.querySelector<HTMLInputElement>('input[type=range]')!;
    expect(slider.getAttribute('aria-valuetext')).toBe('Day 74, July 7');
    await afterwards(() => {
      slider.value = '200';
      slider.dispatchEvent(new Event('input', { bubbles: true }));
    });
    expect(calls.onScrub).toHaveBeenCalledWith(200);
    await press(page.querySelector('[aria-label=Play]'));
    expect(calls.onPlay).toHaveBeenCalledOnce();
    await press(page.querySelector('[aria-label="One step"]'));
    expect(calls.onStep).toHaveBeenCalledOnce();
    await press(page.querySelector('[aria-label="To the end of this station"]'));
    expect(calls.onStepStation).toHaveBeenCalledOnce();
    await press(page.querySelectorAll('input[type=radio]')[2]);
    expect(calls.onSpeed).toHaveBeenCalledWith('byStage');
  });
  test('shows Pause while it plays', async () => {
    const page = await renderPart(<Ribbon {...props} playing />);
    await press(page.querySelector('[aria-label=Pause]'));
    expect(calls.onPause).toHaveBeenCalledOnce();
    expect(page.querySelector('[aria-label=Play]')).toBeNull();
  });
  test('lists its events with their dates; only what is past is sewn', async () => {
    const page = await renderPart(<Ribbon {...props} />);
    expect([...page.querySelectorAll('ul li')].map(textOf)).toEqual(['First flower: July 4', 'Harvest: October 27']);
    expect([...page.querySelectorAll('.ribbon-event')].map((mark) => mark.classList.contains('past'))).toEqual([
      true,
      false,
    ]);
  });
});

describe('the mark of trust', () => {
  const mark = (kind: 'memory' | 'published') => (
    <TrustMark trust={{ mark: kind, source: 'Lord 1956' }} label="Micronaire" />
  );
  test('opens to its word, its meaning and its source, and shuts on Escape', async () => {
    const page = await renderPart(mark('memory'));
    const button = page.querySelector('button')!;
    expect(button.getAttribute('aria-label')).toBe('Micronaire: from memory');
    const note = document.getElementById(button.getAttribute('aria-controls')!)!;
    expect(note.hidden).toBe(true);
    await press(button);
    expect(note.hidden).toBe(false);
    expect(textOf(note)).toContain('Source: Lord 1956');
    await afterwards(() => button.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true })));
    expect(note.hidden).toBe(true);
  });
  test('is absent from a published number', async () => {
    expect((await renderPart(mark('published'))).childElementCount).toBe(0);
  });
});

describe('bad input', () => {
  test('each problem is a line in an alert; none, nothing', async () => {
    const page = await renderPart(
      <ProblemList
        problems={[
          { field: 'TMAX, line 3', value: '200', rule: { kind: 'range', low: -76, high: 140, step: null, unit: '°F' } },
        ]}
      />,
      'es',
    );
    expect(page.querySelector('[role=alert]')).not.toBeNull();
    expect(textOf(page.querySelector('li'))).toBe('TMAX, line 3: 200 no se permite. Se permite: −76 a 140 °F.');
    expect((await renderPart(<ProblemList problems={[]} />)).childElementCount).toBe(0);
  });

  const choose = (page: HTMLElement, file: File) =>
    afterwards(() => {
      const input = page.querySelector<HTMLInputElement>('input[type=file]')!;
      Object.defineProperty(input, 'files', { value: [file], configurable: true });
      input.dispatchEvent(new Event('change', { bubbles: true }));
    });
  test('a file is read as text with its name; one too large is refused', async () => {
    const onText = vi.fn();
    const onFail = vi.fn();
    const page = await renderPart(
      <FilePicker label="Weather" accept=".csv" inUse={null} onText={onText} onFail={onFail} mostBytes={20} />,
    );
    expect(textOf(page.querySelector('label'))).toBe('Weather');
    await choose(page, new File(['DATE,TMAX'], 'plains.csv'));
    await vi.waitFor(() => expect(onText).toHaveBeenCalledWith('DATE,TMAX', 'plains.csv'));
    await choose(page, new File(['x'.repeat(30)], 'huge.csv'));
    await vi.waitFor(() => expect(onFail).toHaveBeenCalledWith('huge.csv'));
    expect(onText).toHaveBeenCalledOnce();
  });

  test('a part that breaks leaves a message and can be drawn again', async () => {
    let broken = true;
    const Part = () => {
      if (broken) throw new Error('planted');
      return <p>whole</p>;
    };
    const onError = vi.fn();
    const page = await renderPart(
      <ErrorBoundary onError={onError}>
        <Part />
      </ErrorBoundary>,
    );
    expect(textOf(page.querySelector('[role=alert] h3'))).toBe('A seam came apart');
    expect(onError).toHaveBeenCalledOnce();
    broken = false;
    await press(page.querySelector('button'));
    expect(textOf(page)).toBe('whole');
  });
});

test('a twin has its three headings in order', async () => {
  const page = await renderPart(<Twin name="Ginning" see={<p>A saw.</p>} change={<p>Stand.</p>} />);
  expect([...page.querySelectorAll('h2')].map(textOf)).toEqual(['What you see', 'What you can change', 'What changed']);
  expect(page.querySelector('section')?.getAttribute('aria-label')).toBe('Ginning');
});

test('an announcement is polite', async () => {
  const page = await renderPart(<Announcer message="Block sewn." />);
  expect(page.querySelector('[role=status]')?.getAttribute('aria-live')).toBe('polite');
  expect(textOf(page)).toBe('Block sewn.');
});

test('a picture speaks its words, or keeps still where words stand beside it', async () => {
  const svg = '<svg><path d="M0 0"/></svg>';
  const page = await renderPart(<Picture svg={svg} alt="A boll" />);
  expect(page.querySelector('[role=img]')?.getAttribute('aria-label')).toBe('A boll');
  expect((await renderPart(<Picture svg={svg} alt="" />)).querySelector('[aria-hidden]')).not.toBeNull();
});

test('each station has its line at the table', async () => {
  expect(textOf((await renderPart(<SewistLine station="weaving" />)).querySelector('p'))).toContain('Thread count');
});
