import type { Language } from '../../../../src/language/language.ts';
import { en, type Messages } from '../../../../src/language/messages/en.ts';
import { es } from '../../../../src/language/messages/es.ts';
import { makeWords, type Words } from '../../../../src/language/words.ts';
import { runSeason } from '../../../../src/model/chain.ts';
import { farms } from '../../../../src/model/farms.ts';
import type { Scenario } from '../../../../src/model/scenario.ts';
import type { Season } from '../../../../src/model/season.ts';
import type { StationId } from '../../../../src/model/station.ts';
import { ledgerOf } from '../../../../src/pages/season/ledger-panel.tsx';
import { textWidth } from '../../../../src/scene/cloth/letter-widths.ts';
import type { Shown } from '../../../../src/scene/cloth/part-cloth.ts';
import { isInside } from '../../../../src/scene/cloth/point.ts';
import {
  flatMarks,
  type PatchMark,
  type Point,
  type Stitch,
  type StitchesMark,
  type TextMark,
} from '../../../../src/scene/display-list.ts';
import { frameAtRest, type SceneFrame } from '../../../../src/scene/scene-frame.ts';
import { shownKg, shownParts } from '../../../../src/scene/stations/flow/flow-input.ts';
import { inkOnPad, textInks } from '../../../../src/style/inks.ts';
import { inTurn, long } from '../../../laws/runs.ts';

/** Desk, projector, phone, tall screen. */
export const checkedSizes = [
  { width: 808, height: 388 },
  { width: 550, height: 341 },
  { width: 366, height: 384 },
  { width: 1016, height: 960 },
] as const;

/**
 * Every size in the long run; otherwise two of them, others for the next case, so that all are seen.
 * @param turn which case it is, from 0
 */
export const sizesInTurn = <Size>(sizes: readonly Size[], turn: number): readonly Size[] =>
  long ? sizes : [sizes[turn % sizes.length]!, sizes[(turn + 2) % sizes.length]!];

const messagesOf: Readonly<Record<Language, Messages>> = { en, es };
const made = new Map<string, Words>();
/** The words of a language and its units; their formats take a while to make, so they are made once. */
export function spokenWords(language: Language, unitSystem: Words['unitSystem'] = 'us'): Words {
  const key = `${language} ${unitSystem}`;
  const known = made.get(key) ?? makeWords(language, unitSystem, messagesOf[language]);
  made.set(key, known);
  return known;
}

/** Both languages in both unit systems in the long run; otherwise both languages, the units changed about with the turn. */
export const spokenInTurn = (turn: number): readonly Words[] =>
  inTurn([spokenWords('en'), spokenWords('es'), spokenWords('es', 'metric'), spokenWords('en', 'metric')], turn);

/** Every farm's season, and a farm's with other decisions at one station. */
export const farmSeasons: readonly Season[] = farms.map((farm) => runSeason(farm, 1, null));
export function decided<Station extends StationId>(
  farm: Scenario,
  station: Station,
  changes: Partial<Scenario['decisions'][Station]>,
): Season {
  const decisions = { ...farm.decisions, [station]: { ...farm.decisions[station], ...changes } };
  return runSeason({ ...farm, decisions }, 1, null);
}

type Mark = PatchMark | StitchesMark | TextMark;
const restMarks = new WeakMap<SceneFrame, readonly Mark[]>();
/** Every mark of a frame with its pieces at rest. Cutting the pieces is most of the work, so it is done once for all checks. */
function marksOf(frame: SceneFrame): readonly Mark[] {
  const known = restMarks.get(frame) ?? [...flatMarks(frameAtRest(frame))];
  restMarks.set(frame, known);
  return known;
}

const textsOf = (frame: SceneFrame): TextMark[] =>
  marksOf(frame).filter((mark): mark is TextMark => mark.kind === 'text');

interface Span {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}
function spanOf(mark: TextMark): Span {
  const { text, size, x, y, anchor } = mark;
  const width = textWidth(text, size, mark);
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
  return { text, left, right: left + width, top: y - size * 0.74, bottom: y + size * 0.2 };
}

/** Words that leave the picture, lie on one another, or are in an ink that carries no words, one line each. */
export function wordFaults(frame: SceneFrame): string[] {
  const texts = textsOf(frame);
  const spans = texts.map(spanOf);
  const slack = 1;
  const faults = spans
    .filter(
      ({ left, right, top, bottom }) =>
        left < -slack || top < -slack || right > frame.width + slack || bottom > frame.height + slack,
    )
    .map(({ text }) => `"${text}" leaves the picture`);
  const inks = new Set<string>([...textInks, ...Object.values(inkOnPad)]);
  faults.push(...texts.filter(({ ink }) => !inks.has(ink)).map(({ text, ink }) => `"${text}" in ${ink}`));
  spans.forEach((one, i) => {
    for (const other of spans.slice(i + 1))
      if (
        one.left < other.right - slack &&
        other.left < one.right - slack &&
        one.top < other.bottom - slack &&
        other.top < one.bottom - slack
      )
        faults.push(`"${one.text}" lies on "${other.text}"`);
  });
  return faults;
}

/** Whether cloth painted after some mark and before the words lies over a point. */
const isCovered = (point: Point, later: readonly Mark[]): boolean =>
  later.some((mark) => mark.kind === 'patch' && isInside(point, mark.points));

/** Words that a stitch on the same cloth runs through, or that cloth painted later hides, one line each. */
export function crossedWords(frame: SceneFrame): string[] {
  const marks = [...flatMarks([...frame.still, ...frame.over])];
  const faults: string[] = [];
  marks.forEach((mark, i) => {
    if (mark.kind !== 'text') return;
    const { left, right, top, bottom } = spanOf(mark);
    const { size } = mark;
    // What a letter without ascender or descender covers, and not the last of its width, which is slack.
    const inner = {
      left: left + size * 0.1,
      right: right - size * 0.4,
      top: top + size * 0.25,
      bottom: bottom - size * 0.24,
    };
    const isBeside = ([x0, y0, x1, y1]: Stitch) =>
      Math.max(x0, x1) <= inner.left ||
      Math.min(x0, x1) >= inner.right ||
      Math.max(y0, y1) <= inner.top ||
      Math.min(y0, y1) >= inner.bottom;
    const crosses = ([x0, y0, x1, y1]: Stitch) =>
      Array.from({ length: 9 }, (_, k): Point => [x0 + ((x1 - x0) * k) / 8, y0 + ((y1 - y0) * k) / 8]).find(
        ([x, y]) => x > inner.left && x < inner.right && y > inner.top && y < inner.bottom,
      );
    for (let k = 0; k < i; k++) {
      const below = marks[k]!;
      const stitches =
        below.kind === 'stitches' ? below.stitches : below.kind === 'patch' ? below.stitch?.stitches : [];
      const hit = stitches?.flatMap((stitch) => {
        const point = isBeside(stitch) ? undefined : crosses(stitch);
        return point && !isCovered(point, marks.slice(k + 1, i)) ? [point] : [];
      })[0];
      if (hit) {
        faults.push(`a stitch in ${(below.kind === 'patch' ? below.stitch! : below).ink} runs through "${mark.text}"`);
        break;
      }
    }
    const middle: Point = [(inner.left + inner.right) / 2, (inner.top + inner.bottom) / 2];
    if (
      [[inner.left, middle[1]] as Point, middle, [inner.right, middle[1]] as Point].some((point) =>
        isCovered(point, marks.slice(i + 1)),
      )
    )
      faults.push(`"${mark.text}" is covered`);
  });
  return faults;
}

/** Words smaller than can be read: 13 px on a phone, 14 elsewhere, less what rounding takes. */
export function smallWords(frame: SceneFrame): string[] {
  const least = (frame.width < 480 ? 13 : 14) - 0.75;
  return textsOf(frame)
    .filter(({ size }) => size < least)
    .map(({ text, size }) => `"${text}" is ${size.toFixed(1)} px`);
}

/** Marks that reach far over the edge or hold no numbers, one line each. */
export function markFaults(frame: SceneFrame): string[] {
  const over = 14;
  const faults: string[] = [];
  const isOut = (x: number, y: number) =>
    !(x >= -over && y >= -over && x <= frame.width + over && y <= frame.height + over);
  for (const mark of marksOf(frame)) {
    if (mark.kind === 'text') continue;
    const bad =
      mark.kind === 'patch'
        ? mark.points.find(([x, y]) => isOut(x, y))
        : mark.stitches.find(([a, b, c, d]) => isOut(a, b) || isOut(c, d));
    if (bad) faults.push(`${mark.kind} in ${mark.ink} at ${bad.map((px) => px.toFixed(0)).join(', ')}`);
  }
  return faults;
}

/** Parts that do not say what they show, or whose marks leave their circle, one line each. */
export function partFaults(frame: SceneFrame): string[] {
  return frame.parts.flatMap((part) => {
    const faults = part.shows.trim() === '' || /\{\w+\}/.test(part.shows) ? [`${part.name} shows nothing`] : [];
    for (const mark of flatMarks(part.marks)) {
      if (mark.kind !== 'patch') continue;
      const far = mark.points.some(([x, y]) => Math.hypot(x - part.middle[0], y - part.middle[1]) > part.radius + 1);
      if (far) faults.push(`${part.name} reaches out of its circle`);
    }
    return faults;
  });
}

/** Accounts and parts whose pieces do not stand for what the ledger holds, within half a piece, one line each. */
export function countFaults(frame: SceneFrame, season: Season, station: StationId): string[] {
  const ledger = ledgerOf(season, station, 'bale')!;
  const masses = new Map<string, number>();
  const add = (key: string, kg: number) => masses.set(key, (masses.get(key) ?? 0) + kg);
  for (const side of ['in', 'out'] as const)
    for (const entry of ledger[side])
      for (const part of shownParts) add(`${side}/${entry.account} ${part}`, shownKg(entry, part));
  const counts = new Map<string, number>();
  const pieceKg = new Map<Shown, number>();
  for (const { band, part, standsForKg } of frame.moving) {
    counts.set(`${band} ${part}`, (counts.get(`${band} ${part}`) ?? 0) + 1);
    pieceKg.set(part, standsForKg);
  }
  const largest = Math.max(0, ...pieceKg.values());
  return [...masses].flatMap(([key, kg]) => {
    const part = key.split(' ')[1] as Shown;
    const each = pieceKg.get(part) ?? largest;
    const off = (counts.get(key) ?? 0) - kg / each;
    return Math.abs(off) <= 0.5 + 1e-6 ? [] : [`${key}: ${counts.get(key) ?? 0} pieces for ${(kg / each).toFixed(2)}`];
  });
}

/** Every text in a frame, joined. */
export const allText = (frame: SceneFrame): string =>
  textsOf(frame)
    .map(({ text }) => text)
    .join(' ');

/** Keys whose texts are no words: what a thing is, not what it is called. */
const notWords = ['account', 'method', 'kind', 'id', 'cover', 'verdict', 'machine', 'structure', 'finish', 'wrap'];

/** The same words twice over: as long as a translation could ever be. */
export function twice<Value>(value: Value): Value {
  if (typeof value === 'string') return (/\p{L}{3}/u.test(value) ? `${value} ${value}` : value) as Value;
  if (typeof value === 'function')
    return ((...args: unknown[]) => twice((value as (...given: unknown[]) => unknown)(...args))) as Value;
  if (Array.isArray(value)) return value.map(twice) as Value;
  if (value && typeof value === 'object')
    return Object.fromEntries(
      Object.entries(value).map(([key, inner]) => [key, notWords.includes(key) ? inner : twice(inner)]),
    ) as Value;
  return value;
}
