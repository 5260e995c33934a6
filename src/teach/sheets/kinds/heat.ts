import { heatFacts, stageFacts } from '../../../model/field/facts.ts';
import { dd60 } from '../../../model/field/heat.ts';
import { celsiusFromFahrenheit, fahrenheitFromCelsius } from '../../../model/units.ts';
import type { Amount, Draw, QuestionBody, QuestionKind, Step } from '../question.ts';
import { amount, askFor, nearest, step, up } from '../rounding.ts';

/** Celsius degrees in a Fahrenheit degree. */
const celsiusDegrees = 1 / 1.8;
const daysOfWeek = 7;

interface Week {
  readonly given: Record<string, Amount>;
  readonly rows: string[][];
  readonly steps: Step[];
  /** On paper, and by the model's own function. */
  readonly total: number;
  readonly exact: number;
}

/** Days in a row out of the pupil's own season. @param from the first day may be this, @param to the last first day, day of the year */
function drawDays({ random, season, units }: Draw, count: number, from: number, to: number): Week {
  const isUs = units === 'us';
  const unit = isUs ? '°F' : '°C';
  const first = random.integer(from, to);
  const written = (f: number) => (isUs ? amount(f, 0, unit) : amount(celsiusFromFahrenheit(f), 1, unit));
  const base = isUs
    ? amount(heatFacts.dd60BaseF.value, 0, unit)
    : amount(celsiusFromFahrenheit(heatFacts.dd60BaseF.value), 2, unit);
  const given: Record<string, Amount> = { base };
  const rows: string[][] = [];
  const steps: Step[] = [];
  let total = 0;
  let exact = 0;
  for (let day = 1; day <= count; day++) {
    const { maxF, minF } = season.weather.days[first + day - 2]!;
    const [high, low] = [written(maxF), written(minF)];
    given[`day${day}`] = amount(day, 0, 'none');
    given[`high${day}`] = high;
    given[`low${day}`] = low;
    rows.push([`day${day}`, `high${day}`, `low${day}`]);
    const heat = Math.max(0, (high.value + low.value) / 2 - base.value);
    steps.push({
      ...step(`heat${day}`, `({high${day}} + {low${day}}) ÷ 2 − {base}`, heat, 2, 'none'),
      neverBelowZero: true,
    });
    total += heat;
    exact += isUs
      ? dd60(high.value, low.value)
      : dd60(fahrenheitFromCelsius(high.value), fahrenheitFromCelsius(low.value)) * celsiusDegrees;
  }
  return { given, rows, steps, total, exact };
}

const sumOf = (steps: readonly Step[]): string => steps.map(({ name }) => `{${name}}`).join(' + ');
const totalStep = ({ steps, total }: Week): Step => step('total', sumOf(steps), total, 2, 'none');

function weekBody(week: Week, more: QuestionBody['asks'] = []): QuestionBody {
  return {
    given: week.given,
    table: { name: 'week', rows: week.rows },
    asks: [askFor([...week.steps, totalStep(week)], nearest(0), week.exact), ...more],
  };
}

/** Heat units of days of the pupil's own season. */
export const heat: QuestionKind = {
  // June and July, where every day is above the base; then spring, where some are not; then summer and the bolls.
  1: (draw) => weekBody(drawDays(draw, 3, 160, 205)),
  2: (draw) => weekBody(drawDays(draw, daysOfWeek, 80, 130)),
  3: (draw) => {
    const week = drawDays(draw, daysOfWeek, 195, 225);
    const isUs = draw.units === 'us';
    const need = amount(stageFacts.openDd60.value * (isUs ? 1 : celsiusDegrees), 0, 'none');
    const perDay = week.total / daysOfWeek;
    const perDayStep = step('perDay', '{total} ÷ 7', perDay, 3, 'none');
    const body = weekBody(week, [
      askFor([perDayStep], nearest(1), week.exact / daysOfWeek),
      askFor(
        [step('days', '{need} ÷ {perDay}', need.value / perDay, 3, 'none')],
        up(),
        need.value / (week.exact / daysOfWeek),
      ),
    ]);
    return { ...body, given: { ...body.given, need } };
  },
};
