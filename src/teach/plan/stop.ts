import type { BenchQuestionId } from '../../compare/bench-questions.ts';
import type { StandardCode } from '../../lessons/standards.ts';
import type { StationId } from '../../model/station.ts';

export const audiences = ['children', 'teens', 'adults', 'guild'] as const;
/** Who sits in the room. */
export type Audience = (typeof audiences)[number];

export const focuses = ['cloth', 'staple', 'pound', 'money', 'weather'] as const;
/** What the segment is about. */
export type Focus = (typeof focuses)[number];

export const segmentMinutes = [10, 20, 30, 45] as const;
/** How long a segment can be, minutes. */
export type SegmentMinutes = (typeof segmentMinutes)[number];

export const materialIds = [
  'scraps',
  'ruler',
  'cottonBall',
  'darkCloth',
  'ginnedSeed',
  'paperSquares',
  'counters',
  'scale',
  'water',
  'slips',
] as const;
/** A thing to have ready. */
export type MaterialId = (typeof materialIds)[number];

export const handsOnIds = [
  'pullThread',
  'fiberPinch',
  'seedByHand',
  'hundredSquares',
  'biasPull',
  'dampCotton',
  'tenCounters',
] as const;
export type HandsOnId = (typeof handsOnIds)[number];

/** What a stop opens: a station of the season, a prepared question, a question of the bench, a lesson, or nothing on the screen. */
export type StopAim =
  | { readonly kind: 'talk'; readonly talk: 'opening' | 'recap' }
  | { readonly kind: 'hands'; readonly hands: HandsOnId }
  | { readonly kind: 'station'; readonly station: StationId }
  | { readonly kind: 'question'; readonly question: string }
  | { readonly kind: 'bench'; readonly bench: BenchQuestionId }
  | { readonly kind: 'lesson'; readonly lesson: string };

/** How many minutes a stop can take: fewer and it fails, more and it drags. Common practice. */
export interface StopMinutes {
  readonly least: number;
  readonly usual: number;
  readonly most: number;
}

/** One thing to do with a class, as it can stand in any plan. */
export interface Stop {
  readonly id: string;
  readonly aim: StopAim;
  readonly minutes: StopMinutes;
  readonly materials: readonly MaterialId[];
  /** Glossary ids of the words it needs. */
  readonly vocabulary: readonly string[];
  readonly standards: readonly StandardCode[];
}
