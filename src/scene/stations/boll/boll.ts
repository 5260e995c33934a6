import { cutBollMarks, openBollMarks } from '../../cloth/boll.ts';
import { bractsBehind, flowerMarks } from '../../cloth/flower.ts';
import { lettered, linesHeight, linesOf } from '../../cloth/lettering.ts';
import { type DisplayList, group, type Mark } from '../../display-list.ts';
import type { SceneFrame } from '../../scene-frame.ts';
import { type FieldDayLook, type FieldScene, layOutField, type SitePlace } from '../field/field-scene.ts';
import { padMark } from '../field/pad.ts';
import type { Plot } from '../field/plot.ts';
import type { SiteState } from '../plant/plant-sample.ts';
import { type FibreRule, fibreOnRule, fibreSection } from './fibre-rule.ts';

/** One boll of the plant, followed from its flower until it is picked. */
export interface LargeBoll {
  readonly site: SitePlace;
  readonly state: SiteState;
  readonly locks: 4 | 5;
  readonly seeds: number;
  readonly fibre: { readonly mm: number; readonly length: number; readonly wall: number };
  readonly title: string;
  readonly place: string;
  /** For a phone. */
  readonly placeShort: string;
  readonly lengthText: string;
  readonly wallText: string;
}

export interface BollScene extends FieldScene {
  readonly rule: FibreRule;
}
export interface BollDay extends FieldDayLook {
  /** Null when the plant has no boll to follow. */
  readonly boll: LargeBoll | null;
}

/** A boll reaches its full size about three weeks after the flower (memory: UGA Bulletin 1252). */
const BOLL_DAYS = 21;

/** One plant as its bolls fill and open, and one of its bolls large: cut open until it opens by itself. */
export function layOutBoll(scene: BollScene): (day: BollDay) => SceneFrame {
  const field = layOutField(scene);
  const pad = padMark('boll', field.plot.pad);
  return (day) =>
    field.at(day, {
      site: day.boll?.site ?? null,
      hangs: day.boll?.state.kind === 'greenBoll' || day.boll?.state.kind === 'openBoll',
      pad: day.boll ? [pad, ...largeBoll(field.plot, day.boll, scene)] : [],
    });
}

interface PadPlan {
  readonly words: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly anchor: 'start' | 'middle';
  };
  readonly boll: { readonly x: number; readonly y: number; readonly reach: number };
  /** Null on a phone. */
  readonly section: { readonly x: number; readonly y: number; readonly width: number; readonly radius: number } | null;
}

/** Where things lie on the pad: words beside the boll on a broad one, above it on a high one. */
function padPlan(
  { pad, textPx, small }: Plot,
  wordsHeight: (width: number) => number,
  sectionWords: (width: number) => number,
  footY: number,
): PadPlan {
  const margin = textPx * (small ? 0.8 : 1.1);
  if (!small && pad.width > pad.height * 0.9) {
    const column = pad.width * 0.46;
    const left = pad.x + pad.width - margin * 0.8 - column;
    const reach = Math.min((footY - pad.y - margin * 0.9) / 2, (left - pad.x - margin * 0.9) / 2);
    const words = { x: left, y: pad.y + margin, width: column, anchor: 'start' } as const;
    const top = words.y + wordsHeight(column) + textPx * 0.5;
    const radius = Math.min(reach * 0.32, (footY - top - sectionWords(column) - textPx * 0.6) / 2);
    return {
      words,
      boll: { x: pad.x + margin * 0.6 + reach, y: pad.y + margin * 0.6 + (footY - pad.y - margin * 0.6) / 2, reach },
      section: radius < textPx * 0.8 ? null : { x: left, y: top + radius, width: column, radius },
    };
  }
  const inner = pad.width - margin * 2;
  const words = { x: pad.x + pad.width / 2, y: pad.y + margin * 0.9, width: inner, anchor: 'middle' } as const;
  const top = words.y + wordsHeight(inner) + textPx * 0.2;
  // The boll comes first: where a section would make it small, there is none.
  const asked = Math.max(textPx * 3.6, (footY - top) * 0.24);
  const radius = asked * 0.42;
  const sectionX = { x: pad.x + margin, width: inner - radius * 2 - textPx };
  const fits = sectionWords(sectionX.width) <= asked * 1.05 && (footY - top - asked) / 2 > inner * 0.32;
  const sectionHeight = small || !fits ? 0 : asked;
  return {
    words,
    boll: {
      x: words.x,
      y: top + (footY - top - sectionHeight) / 2,
      reach: Math.min((footY - top - sectionHeight) / 2, inner / 2),
    },
    section: sectionHeight === 0 ? null : { ...sectionX, y: footY - sectionHeight / 2, radius },
  };
}

function largeBoll(plot: Plot, boll: LargeBoll, scene: BollScene): DisplayList {
  const { pad, textPx, small } = plot;
  const margin = textPx * (small ? 0.8 : 1.1);
  const titlePx = textPx * (small ? 1.08 : 1.3);
  const inner = pad.width - margin * 2;
  const placeText = small ? boll.placeShort : boll.place;
  const wordsHeight = (width: number) =>
    linesHeight(linesOf(boll.title, titlePx, width, { bold: true }).length, titlePx) +
    linesHeight(linesOf(placeText, textPx, width, { italic: true }).length, textPx);
  const ruleY = pad.y + pad.height - margin - textPx * 1.9;
  const fibresTop = ruleY - textPx * 2.5;
  const lengthLines = small ? [] : linesOf(boll.lengthText, textPx, inner, { italic: true });
  const footY = fibresTop - linesHeight(lengthLines.length, textPx);
  const sectionWords = (width: number) =>
    linesHeight(linesOf(boll.wallText, textPx, width, { italic: true }).length, textPx);
  const plan = padPlan(plot, wordsHeight, sectionWords, footY);
  const { words } = plan;
  const title = linesOf(boll.title, titlePx, words.width, { bold: true });
  const placeLines = linesOf(placeText, textPx, words.width, { italic: true });
  const placeY = words.y + linesHeight(title.length, titlePx) + textPx * 0.7;
  return [
    group('large', bollMarks(boll, plan.boll, scene.kind), boll.seeds),
    ...lettered(title, [words.x, words.y + titlePx * 0.75], {
      size: titlePx,
      ink: 'lint',
      anchor: words.anchor,
      bold: true,
    }),
    ...lettered(placeLines, [words.x, placeY], { size: textPx, ink: 'lint', anchor: words.anchor, italic: true }),
    ...(plan.section ? sectionMarks(boll, plan.section, textPx, words.anchor === 'start') : []),
    ...fibreOnRule({ rule: scene.rule, fibre: boll.fibre }, pad.x + margin, ruleY, inner - textPx * 0.6, textPx),
    ...lettered(lengthLines, [pad.x + margin, footY + textPx * 0.95], { size: textPx, ink: 'lint', italic: true }),
  ];
}

/** One fibre cut across, and its words below it or beside it. */
function sectionMarks(boll: LargeBoll, at: NonNullable<PadPlan['section']>, textPx: number, below: boolean): Mark[] {
  const lines = linesOf(boll.wallText, textPx, at.width, { italic: true });
  const wordsX = below ? at.x : at.x + at.radius * 2 + textPx * 0.8;
  const wordsY = below
    ? at.y + at.radius + textPx * 1.25
    : at.y - linesHeight((lines.length - 1) / 2, textPx) + textPx * 0.3;
  return [
    group(
      'section',
      fibreSection(at.x + at.radius, at.y, at.radius, boll.fibre.wall),
      Math.round(boll.fibre.wall * 100),
    ),
    ...lettered(lines, [wordsX, wordsY], { size: textPx, ink: 'lint', italic: true }),
  ];
}

/** The boll itself: in flower, green and cut across, or open. */
function bollMarks(boll: LargeBoll, { x, y, reach }: PadPlan['boll'], kind: FieldScene['kind']): DisplayList {
  const { state } = boll;
  if (state.kind === 'flower')
    return flowerMarks('large', { x, y, size: reach * 0.86, wide: 1, turn: -0.2 }, kind, state.ageDays);
  if (state.kind === 'openBoll') {
    const size = reach * Math.min(0.8, 0.68 + 0.03 * state.ageDays);
    return openBollMarks('large', { x, y, size, wide: 1, turn: 0.2 }, boll.locks);
  }
  const ageDays = state.kind === 'greenBoll' ? state.ageDays : 0;
  const size = reach * (0.34 + 0.5 * Math.min(1, ageDays / BOLL_DAYS));
  const placing = { x, y, size, wide: 1, turn: 0.25 };
  return [
    ...bractsBehind('large', { ...placing, size: reach * 0.72 }),
    ...cutBollMarks('large/cut', placing, boll.locks, boll.seeds, boll.fibre),
  ];
}
