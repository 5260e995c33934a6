import { mathml } from 'virtual:formula-mathml';
import { fill } from '../../language/fill.ts';
import type { Formats } from '../../language/formats.ts';
import { loadWorkingWords } from '../../language/load-working-words.ts';
import { machineName } from '../../language/machine-name.ts';
import type { WorkingWords } from '../../language/messages/en/working-words.ts';
import type { Words } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import { stationIds } from '../../model/station.ts';
import type { FormulaLine, WorkingLine, WorkingText } from '../../ui/working-source.ts';
import type { FormulaId } from '../../workings/formula-texts.ts';
import { type Asked, workOut } from '../../workings/work-out.ts';
import type { Name, Origin, Printed, Step, Working } from '../../workings/working.ts';
import { printed } from './printed.ts';

const figures = 6;
const mostDecimals = 10;
const noBreakSpace = '\u00a0';

/** A number to about six figures, all those before the point, without the zeros that say nothing. */
function exactNumber(value: number, formats: Formats): string {
  if (Math.abs(value) >= 10 ** (figures - 1)) return formats.number(value, 0);
  const rounded = Number(value.toPrecision(figures));
  let decimals = 0;
  while (decimals < mostDecimals && Number(rounded.toFixed(decimals)) !== rounded) decimals++;
  return formats.number(rounded, decimals);
}

/** Words for one reader: those of the page, and those of the workings. */
interface Speech {
  readonly words: Words;
  readonly workingWords: WorkingWords;
}

function valueText(value: Printed, { words, workingWords }: Speech): string {
  if (value.as !== 'exact') return printed(value, words);
  const sign = workingWords.units[value.unit];
  const number = exactNumber(value.value, words.formats);
  return sign === '' ? number : sign === '%' ? `${number}%` : `${number}${noBreakSpace}${sign}`;
}

const named = (list: Readonly<Record<string, string>>, key: string): string => list[key] ?? key;

function nameText(name: Name, { words, workingWords }: Speech): string {
  const { messages, formats } = words;
  if ('word' in name) {
    return fill(named(workingWords.names, name.word), name.n === undefined ? {} : { n: formats.count(name.n) });
  }
  if ('account' in name) {
    if (name.account === 'lot') return name.side === 'in' ? messages.accounts.lotStart : messages.readings.on;
    return named({ ...messages.accounts.sources, ...messages.accounts.destinations }, name.account);
  }
  if ('part' in name) return name.part === 'water' ? messages.ledger.water : messages.parts[name.part];
  if ('machine' in name) return machineName(name.machine, messages);
  if ('count' in name) return messages.ledger.counts[name.count];
  if ('place' in name) return messages.fibre.places[name.place];
  if ('points' in name) return named(workingWords.points, name.points);
  if ('paid' in name) return named(messages.cloth.money.items, name.paid);
  if ('monthOf' in name) return formats.month(name.monthOf);
  return 'label' in name ? name.label : name.code;
}

function originText(origin: Origin, { words, workingWords }: Speech): Pick<WorkingLine, 'from' | 'source'> {
  const { messages } = words;
  if ('fact' in origin) return { from: `${messages.marks.names[origin.fact.mark]}: `, source: origin.fact.source };
  const template = workingWords.origins[origin.at];
  if (origin.at === 'machine') return { from: fill(template, { machine: machineName(origin.machine, messages) }) };
  return { from: 'station' in origin ? fill(template, { station: messages.stations[origin.station].name }) : template };
}

/** The lot that comes in or goes on is called after the station it comes from or goes to. */
function lotName(step: Step, { words }: Speech): string | null {
  const { name, from } = step;
  if (!('account' in name) || name.account !== 'lot' || !('station' in from)) return null;
  const { stations, accounts } = words.messages;
  const index = stationIds.indexOf(from.station) + (name.side === 'in' ? -1 : 1);
  const other = stationIds[index];
  return other ? fill(name.side === 'in' ? accounts.lotIn : accounts.lotOut, { name: stations[other].name }) : null;
}

const lineOf = (step: Step, speech: Speech): WorkingLine => ({
  name: `${step.of === undefined ? '' : `${step.of}: `}${lotName(step, speech) ?? nameText(step.name, speech)}`,
  value: valueText(step.value, speech),
  ...originText(step.from, speech),
});

const escaped = (text: string): string => text.replace(/&/g, '&amp;').replace(/</g, '&lt;');

/** A formula with a number in the place of each letter; one below zero stands in brackets. */
const filledIn = (markup: string, values: ReadonlyMap<string, number>, formats: Formats): string =>
  markup.replace(/<mtext>@([\w-]+)@<\/mtext>/g, (_, symbol: string) => {
    const value = values.get(symbol) ?? Number.NaN;
    const number = `<mn>${escaped(exactNumber(value, formats))}</mn>`;
    return value < 0 ? `<mrow><mo>(</mo>${number}<mo>)</mo></mrow>` : number;
  });

/** What the signs of a formula mean, where not everybody knows them. */
const notesOf = (markup: string, { signs }: WorkingWords): string[] =>
  Object.entries({ '⌉': signs.nearest, '⌋': signs.down, max: signs.max, min: signs.min }).flatMap(([sign, note]) =>
    markup.includes(`>${sign}<`) ? [note] : [],
  );

function spoken(working: Working, speech: Speech): WorkingText {
  const { workingWords, words } = speech;
  const headings = {
    lines: working.kind === 'formula' ? workingWords.inputs : workingWords.steps,
    step: workingWords.step,
    value: workingWords.value,
    result: working.kind === 'formula' ? workingWords.rounded : workingWords.result,
  };
  const result = valueText(working.result, speech);
  if (working.kind === 'procedure') {
    return { formula: null, lines: working.steps.map((step) => lineOf(step, speech)), result, headings };
  }
  const letters = [...working.first, ...working.inputs];
  const values = new Map(letters.map(({ symbol, value }) => [symbol.replace('_', '-'), value.value]));
  const line = (id: FormulaId, exact: Printed): FormulaLine => ({
    shown: mathml[id]!.formula,
    filled: filledIn(mathml[id]!.filled, values, words.formats),
    exact: valueText(exact, speech),
  });
  return {
    formula: {
      lines: [
        ...working.first.map(({ symbol, formula, value }) => ({ symbol, ...line(formula, value) })),
        line(working.formula, working.exact),
      ],
      headings: { shown: workingWords.formula, filled: workingWords.filled },
      notes: notesOf([...working.first, working].map(({ formula }) => mathml[formula]!.formula).join(''), workingWords),
    },
    lines: [...working.inputs, ...working.first].map((each) => ({ symbol: each.symbol, ...lineOf(each, speech) })),
    result,
    headings,
  };
}

/** A working in the reader's words. */
export const wordedWorking = async (working: Working, words: Words): Promise<WorkingText> =>
  spoken(working, { words, workingWords: await loadWorkingWords(words.language) });
/** Words of a page that has workings of its own: names of their steps, and what the numbers in a formula belong to. */
export interface OwnWorkingWords {
  readonly names: Readonly<Record<string, string>>;
  readonly filled: string;
}

/** A working in the reader's words, with those of its own page. */
export async function workingInWords(working: Working, words: Words, own: OwnWorkingWords): Promise<WorkingText> {
  const general = await loadWorkingWords(words.language);
  const workingWords = { ...general, names: { ...general.names, ...own.names }, filled: own.filled };
  return spoken(working, { words, workingWords });
}

/** The working of a number of a season in the reader's words; null where the season shows no such number. */
export async function workingText(season: Season, asked: Asked, words: Words): Promise<WorkingText | null> {
  const working = workOut(season, asked);
  return working ? wordedWorking(working, words) : null;
}
