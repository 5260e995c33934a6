// @vitest-environment happy-dom
import { describe, expect, test, vi } from 'vitest';
import { makeFormats } from '../../src/language/formats.ts';
import { en } from '../../src/language/messages/en.ts';
import { type Decision, decisionTable } from '../../src/model/decisions.ts';
import { type StationId, stationIds } from '../../src/model/station.ts';
import { ChoiceRow } from '../../src/ui/choice-row.tsx';
import { DecisionControl } from '../../src/ui/decision-control.tsx';
import { PatchButton } from '../../src/ui/patch-button.tsx';
import { RulerSlider } from '../../src/ui/ruler-slider.tsx';
import { Switch } from '../../src/ui/switch.tsx';
import { afterwards, renderPart, textOf } from './render-part.ts';

const formats = makeFormats('en', 'us', en);

describe('a choice row', () => {
  const options = [
    { value: 'saw', label: 'Saw' },
    { value: 'roller', label: 'Roller' },
  ];
  test('is a group of radios with a name, and one of them is sewn', async () => {
    const page = await renderPart(<ChoiceRow label="Gin stand" options={options} value="saw" onChoose={() => {}} />);
    expect(textOf(page.querySelector('fieldset > legend'))).toBe('Gin stand');
    const radios = [...page.querySelectorAll<HTMLInputElement>('input[type=radio]')];
    expect(radios.map((radio) => radio.checked)).toEqual([true, false]);
    expect(new Set(radios.map((radio) => radio.name)).size).toBe(1);
    expect([...page.querySelectorAll('label')].map((label) => label.dataset.state)).toEqual(['sewn', 'chalked']);
  });
  test('gives back the value chosen, and shows a guess as basted', async () => {
    const onChoose = vi.fn();
    const page = await renderPart(
      <ChoiceRow label="Gin stand" options={options} value="saw" onChoose={onChoose} basted />,
    );
    expect(page.querySelector('label')?.dataset.state).toBe('basted');
    await afterwards(() => page.querySelectorAll<HTMLInputElement>('input')[1]!.click());
    expect(onChoose).toHaveBeenCalledWith('roller');
  });
});

describe('a ruler', () => {
  const ruler = (onChange: (value: number) => void, value = 38) => (
    <RulerSlider
      label="Row width"
      value={value}
      low={15}
      high={40}
      step={1}
      quantityOf={(inches) => formats.length(inches)}
      onChange={onChange}
      published={{ low: 30, high: 40 }}
    />
  );
  test('is a native slider named by its label that speaks its value with the unit', async () => {
    const page = await renderPart(ruler(() => {}));
    const slider = page.querySelector<HTMLInputElement>('input[type=range]')!;
    expect(textOf(page.querySelector(`label[for="${slider.id}"]`))).toBe('Row width');
    expect(slider.getAttribute('aria-valuetext')).toBe('38 inches');
    expect(textOf(page.querySelector('output'))).toBe('38 in');
    const help = document.getElementById(slider.getAttribute('aria-describedby')!);
    expect(textOf(help)).toContain('published 30 in to 40 in');
  });
  test('moves by its buttons without dragging and stops at its ends', async () => {
    const onChange = vi.fn();
    let page = await renderPart(ruler(onChange));
    const [less, more] = [...page.querySelectorAll('button')];
    expect(less!.getAttribute('aria-label')).toBe('Less: Row width');
    await afterwards(() => more!.click());
    expect(onChange).toHaveBeenLastCalledWith(39);
    await afterwards(() => less!.click());
    expect(onChange).toHaveBeenLastCalledWith(37);
    onChange.mockClear();
    page = await renderPart(ruler(onChange, 40));
    const top = page.querySelectorAll('button')[1]!;
    expect(top.getAttribute('aria-disabled')).toBe('true');
    await afterwards(() => top.click());
    expect(onChange).not.toHaveBeenCalled();
  });
  test('gives back what the slider is moved to', async () => {
    const onChange = vi.fn();
    const page = await renderPart(ruler(onChange));
    const slider = page.querySelector<HTMLInputElement>('input[type=range]')!;
    await afterwards(() => {
      slider.value = '30';
      slider.dispatchEvent(new Event('input', { bubbles: true }));
    });
    expect(onChange).toHaveBeenCalledWith(30);
  });
});

test('a switch says what it is, whether it is on, and turns', async () => {
  const onChange = vi.fn();
  const page = await renderPart(<Switch label="Prewash" on={false} onChange={onChange} />);
  const control = page.querySelector('[role=switch]')!;
  expect(control.getAttribute('aria-checked')).toBe('false');
  expect(textOf(document.getElementById(control.getAttribute('aria-labelledby')!))).toBe('Prewash');
  await afterwards(() => (control as HTMLButtonElement).click());
  expect(onChange).toHaveBeenCalledWith(true);
});

describe('a button that may not be pressed', () => {
  test('stays in its place, says why and does nothing', async () => {
    const onPress = vi.fn();
    const page = await renderPart(
      <PatchButton onPress={onPress} refusal="Too wet to store.">
        Next
      </PatchButton>,
    );
    const button = page.querySelector('button')!;
    expect(button.getAttribute('aria-disabled')).toBe('true');
    expect(textOf(document.getElementById(button.getAttribute('aria-describedby')!))).toBe('Too wet to store.');
    await afterwards(() => button.click());
    expect(onPress).not.toHaveBeenCalled();
  });
});

describe('every decision of the season has a control with a name', () => {
  const first = (decision: Decision) =>
    decision.kind === 'number' ? decision.low : decision.kind === 'choice' ? decision.options[0]! : false;
  const all = stationIds.flatMap((station) =>
    Object.entries(decisionTable[station] as Record<string, Decision>).map(
      ([key, decision]) => [station, key, decision] as [StationId, string, Decision],
    ),
  );
  test.each(['en', 'es'] as const)('in %s', async (language) => {
    expect(all.length).toBeGreaterThan(25);
    for (const [station, decisionKey, decision] of all) {
      const page = await renderPart(
        <DecisionControl
          station={station}
          decisionKey={decisionKey}
          decision={decision}
          value={first(decision)}
          onDecide={() => {}}
        />,
        language,
        'metric',
      );
      expect(textOf(page.querySelector('.control-label')), `${station}.${decisionKey}`).not.toBe('');
      expect(page.querySelectorAll('input, [role=switch]').length, `${station}.${decisionKey}`).toBeGreaterThan(0);
      expect(textOf(page), `${station}.${decisionKey}`).not.toMatch(/undefined|NaN|\{/);
    }
  });
  test('a choice can be narrowed to the options that make sense', async () => {
    const page = await renderPart(
      <DecisionControl
        station="ginning"
        decisionKey="lintCleaner"
        decision={decisionTable.ginning.lintCleaner}
        value="saw"
        options={['saw', 'air']}
        onDecide={() => {}}
      />,
    );
    expect([...page.querySelectorAll('label')].map(textOf)).toEqual(['Saw type', 'Air only']);
  });
});
