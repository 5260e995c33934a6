import { fill } from './fill.ts';
import type { Formats } from './formats.ts';
import type { Messages } from './messages/en.ts';

type Refusals = Messages['verdicts']['refusals'];
type Stops = Messages['verdicts']['stopped'];

/**
 * Why a block cannot be sewn in yet, in a sentence.
 * @param refusal the statechart's reason with its numbers: percentages, DD60, Ne or threads per inch, by name
 */
export function refusalText(
  refusal: { readonly reason: keyof Refusals; readonly values: Readonly<Record<string, number>> },
  messages: Messages,
  formats: Formats,
): string {
  const { reason, values } = refusal;
  const write: Record<string, (value: number) => string> = {
    open: (value) => formats.percent(value, 0),
    needed: (value) => formats.percent(value, 0),
    moisture: (value) => formats.percent(value),
    limit: (value) =>
      reason === 'yarnOutOfReach'
        ? formats.yarnCount(value).text
        : reason === 'settTooHigh'
          ? formats.threads(value).spoken
          : formats.percent(value, 0),
    count: (value) => formats.yarnCount(value).text,
    sett: (value) => formats.threads(value).spoken,
    dd60: (value) => formats.heatUnits(value).text,
  };
  return fill(
    messages.verdicts.refusals[reason],
    Object.fromEntries(Object.entries(values).map(([name, value]) => [name, write[name]?.(value) ?? String(value)])),
  );
}

/**
 * Why a season ended early, in a sentence.
 * @param stop the model's reason; heat in DD60, or null where heat was not the lack
 */
export function stopText(
  stop: { readonly reason: string; readonly dd60: number | null; readonly dd60Needed: number | null },
  messages: Messages,
  formats: Formats,
): string {
  const template = messages.verdicts.stopped[stop.reason as keyof Stops] ?? messages.verdicts.stopped.heading;
  return fill(template, {
    dd60: formats.heatUnits(stop.dd60 ?? 0).text,
    needed: formats.heatUnits(stop.dd60Needed ?? 0).text,
  });
}
