import { describe, expect, test } from 'vitest';
import { decisionQuantity } from '../../src/language/decision-quantity.ts';
import { fill } from '../../src/language/fill.ts';
import { makeFormats } from '../../src/language/formats.ts';
import { detectLanguage } from '../../src/language/language.ts';
import { loadMessages } from '../../src/language/load-messages.ts';
import { machineName } from '../../src/language/machine-name.ts';
import { en } from '../../src/language/messages/en.ts';
import { es } from '../../src/language/messages/es.ts';
import { phrase } from '../../src/language/phrase.ts';
import { problemText } from '../../src/language/problem-text.ts';
import { decisionTable } from '../../src/model/decisions.ts';

const us = makeFormats('en', 'us', en);
const metric = makeFormats('en', 'metric', en);
const spanishUs = makeFormats('es', 'us', es);
const spanishMetric = makeFormats('es', 'metric', es);
/** Exact text with the space that does not break written as a plain one. */
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

describe('numbers', () => {
  test('Spanish of the United States writes decimal point and comma thousands (CLDR 48, es-US)', () => {
    expect(spanishUs.number(1234.5, 1)).toBe('1,234.5');
    expect(spanishUs.number(12345.67, 2)).toBe('12,345.67');
    expect(spanishUs.percent(34.5)).toBe('34.5%');
    expect(spanishUs.money(1234.5)).toBe('$1,234.50');
  });

  test('a minus is a minus sign, and nothing is never below zero', () => {
    expect(us.number(-3.25, 1)).toBe('−3.3');
    expect(us.number(-0.0001, 1)).toBe('0.0');
    expect(us.money(-12)).toBe('−$12.00');
  });

  test('a closing error is written as a power of ten', () => {
    expect(us.powerOfTen(1.29e-16)).toBe('1.3 × 10⁻¹⁶');
    expect(us.powerOfTen(0)).toBe('0');
    expect(us.powerOfTen(25_000)).toBe('2.5 × 10⁴');
  });

  test('Spanish lists turn y into e and o into u before the same sound', () => {
    expect(spanishUs.list(['semilla', 'impurezas'])).toBe('semilla e impurezas');
    expect(spanishUs.list(['fibra', 'semilla', 'agua'])).toBe('fibra, semilla y agua');
    expect(spanishUs.either(['siete', 'ocho'])).toBe('siete u ocho');
    expect(us.list(['lint', 'seed', 'water'])).toBe('lint, seed, and water');
  });
});

describe('plurals', () => {
  const pacas = es.cloth.bale.bales;
  test('Spanish has one, many and other (CLDR plural rules)', () => {
    expect(spanishUs.plural(1, pacas)).toBe('1 paca');
    expect(spanishUs.plural(0, pacas)).toBe('0 pacas');
    expect(spanishUs.plural(1.5, pacas)).toBe('1.5 pacas');
    expect(spanishUs.plural(1_000_000, pacas)).toBe('1,000,000 de pacas');
  });
  test('English has one and other, and 1.0 counts as other', () => {
    expect(us.plural(1, en.cloth.bale.bales)).toBe('1 bale');
    expect(us.plural(2, en.cloth.bale.bales)).toBe('2 bales');
    expect(us.plural(1, en.units.pounds.name, 1)).toBe('1.0 pounds');
  });
});

describe('dates', () => {
  test('are written with the month in words', () => {
    expect(us.day(124)).toBe('May 4');
    expect(spanishUs.day(124)).toBe('4 de mayo');
    expect(us.day(365)).toBe('December 31');
    expect(us.day(60)).toBe('March 1');
  });
  test('a month starts where it says it starts', () => {
    for (const start of us.monthStarts) expect(us.day(start)).toMatch(/ 1$/);
    expect(us.monthStarts).toHaveLength(12);
  });
  test('a day past the end of the year is one of the next January', () => {
    expect(us.day(370)).toBe('January 5');
  });
});

describe('quantities against the conversion factors of NIST Special Publication 811', () => {
  test.each([
    ['pound: 0.453 592 37 kg', us.mass(0.45359237, 3).number, '1.000'],
    ['ounce per square yard: 33.905 75 g/m2', us.clothWeight(33.90575).number, '1.0'],
    ['pound per cubic foot: 16.018 46 kg/m3', us.density(16.01846 * 14).number, '14.0'],
    ['pound per acre: 1.120 851 kg/ha', metric.fieldYield(1000).number, '1,121'],
    ['inch: 25.4 mm', metric.fibreLength(25.4 * 1.125).number, '28.6'],
    ['acre: 0.404 687 3 ha', metric.area(100).number, '40.5'],
    ['yard: 0.914 4 m', metric.clothLength(100).number, '91.44'],
    ['ounce: 28.349 52 g', us.smallMass(28.34952).number, '1.00'],
    ['square yard: 0.836 127 4 m2', us.clothArea(0.8361274).number, '1.0'],
    ['gram-force: 9.806 65 mN, so 30 g/tex are 29.4 cN/tex', metric.strength(30).number, '29.4'],
    ['square inch threads: 68 to the inch are 26.8 to the centimeter', metric.threads(68).number, '26.8'],
    ['77 °F are 25 °C', metric.temperature(77).number, '25'],
    ['Ne 30 is 19.7 tex (590.5 / Ne)', metric.yarnCount(30).number, '19.7'],
    ['1800 heat units of 1 °F are 1000 of 1 °C', metric.heatUnits(1800).number, '1,000'],
    ['1 seed to the foot is 3.3 to the meter (0.304 8 m)', metric.seeds(1).number, '3.3'],
  ])('%s', (_, got, expected) => {
    expect(got).toBe(expected);
  });

  test('carry unit and speech in the language', () => {
    expect(plain(us.mass(100, 1).text)).toBe('220.5 lb');
    expect(us.mass(100, 1).spoken).toBe('220.5 pounds');
    expect(spanishUs.mass(100, 1).spoken).toBe('220.5 libras');
    expect(plain(spanishMetric.fibreLength(28.4).text)).toBe('28.4 mm');
    expect(plain(us.fibreLength(28.448).text)).toBe('1.12 in');
    expect(spanishUs.days(1).spoken).toBe('1 día');
    expect(plain(us.yarnCount(30).text)).toBe('Ne 30');
    expect(us.mass(100).text).toContain('\u00a0');
  });

  test('a seam is a fraction of an inch, never 6.35 mm', () => {
    expect(plain(us.seam(0.25).text)).toBe('1/4 in');
    expect(plain(us.seam(0.625).text)).toBe('5/8 in');
    expect(plain(metric.seam(0.25).text)).toBe('6 mm');
  });
});

describe('decisions', () => {
  const table = decisionTable;
  test('inches are water, seams or distances by what is decided', () => {
    expect(plain(decisionQuantity(metric, 'irrigationInches', table.bloom.irrigationInches, 10).text)).toBe('254 mm');
    expect(plain(decisionQuantity(metric, 'rowInches', table.planting.rowInches, 38).text)).toBe('97 cm');
    expect(plain(decisionQuantity(metric, 'seamInches', table.sewing.seamInches, 0.25).text)).toBe('6 mm');
  });
  test('dates, percentages and points are written as such', () => {
    expect(decisionQuantity(spanishUs, 'plantingDayOfYear', table.planting.plantingDayOfYear, 124).text).toBe(
      '4 de mayo',
    );
    expect(decisionQuantity(us, 'openPercent', table.boll.openPercent, 60).text).toBe('60%');
    expect(plain(decisionQuantity(us, 'moistureAddedPoints', table.ginning.moistureAddedPoints, 1.5).text)).toBe(
      '1.5 points',
    );
    expect(plain(decisionQuantity(us, 'netPounds', table.pressing.netPounds, 480).text)).toBe('480 lb');
    expect(plain(decisionQuantity(metric, 'netPounds', table.pressing.netPounds, 480).text)).toBe('217.7 kg');
  });
});

describe('sentences', () => {
  test('an unfilled name stays to be seen', () => {
    expect(fill('{low} to {high}', { low: '1' })).toBe('1 to {high}');
  });

  test('a problem names field, value and what is allowed in both languages', () => {
    const problem = {
      field: 'decisions.planting.rowInches',
      value: '400',
      rule: { kind: 'range', low: 15, high: 40, step: 1, unit: 'inches' },
    } as const;
    expect(problemText(problem, en, us)).toBe(
      'decisions.planting.rowInches: 400 is not allowed. Allowed: 15 to 40 inches, in steps of 1.',
    );
    expect(problemText(problem, es, spanishUs)).toBe(
      'decisions.planting.rowInches: 400 no se permite. Se permite: 15 a 40 pulgadas, de 1 en 1.',
    );
    expect(
      problemText({ field: 'era', value: 'nothing', rule: { kind: 'choice', options: ['a', 'b'] } }, es, spanishUs),
    ).toBe('era: un valor vacío no se permite. Se permite: a o b.');
  });

  test('a line of the weather reader is put into Spanish with its dates', () => {
    const { phrases } = es.problems;
    expect(phrase('filled from the days beside: 2019-05-04 (taken as dry)', phrases)).toBe(
      'completado con los días vecinos: 2019-05-04 (tomados como secos)',
    );
    expect(phrase('missing 2019-01-01, 2019-01-02 and 40 more', phrases)).toBe(
      'faltan 2019-01-01, 2019-01-02 y 40 más',
    );
    expect(phrase('at most TMAX (71)', phrases)).toBe('como máximo TMAX (71)');
    expect(phrase('a line nobody foresaw', phrases)).toBe('a line nobody foresaw');
  });

  test('a numbered machine keeps its number', () => {
    expect(machineName('lintCleaner2', en)).toBe('Lint cleaner 2');
    expect(machineName('sawStand', es)).toBe('Unidad de sierras');
  });
});

describe('languages', () => {
  test('the first known language of the reader wins; others get English', () => {
    expect(detectLanguage(['es-MX', 'en'])).toBe('es');
    expect(detectLanguage(['pt-BR', 'ES'])).toBe('es');
    expect(detectLanguage(['de'])).toBe('en');
    expect(detectLanguage([])).toBe('en');
  });
  test('Spanish is fetched on demand', async () => {
    expect((await loadMessages('es')).stations.ginning.name).toBe('Despepite');
    expect(await loadMessages('en')).toBe(en);
  });
});
