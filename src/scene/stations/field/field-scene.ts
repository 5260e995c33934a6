import type { CottonKind } from '../../cloth/flower.ts';
import { lettered } from '../../cloth/lettering.ts';
import { ring } from '../../cloth/point.ts';
import { runningStitches } from '../../cloth/running-stitch.ts';
import { type DisplayList, group, type Mark, type Point } from '../../display-list.ts';
import type { MovingPiece, SceneFrame } from '../../scene-frame.ts';
import { type LaidNode, layPlant } from '../plant/plant-layout.ts';
import { plantMarks } from '../plant/plant-marks.ts';
import type { DrawnPlant } from '../plant/plant-sample.ts';
import { backingMark, skyMarks, soilMarks } from './ground.ts';
import { type HeatTape, heatLaidMarks, heatTapeMarks } from './heat-tape.ts';
import { type HeightTick, heightNotchMarks, heightTapeMarks } from './height-tape.ts';
import { fieldPlot, type Plot } from './plot.ts';
import { bareRowsMarks, cropRowsMarks } from './rows.ts';
import { soilWaterMarks } from './soil-water.ts';
import { cloudMarks, dropPieces, dropsOf, type FieldWeather, rainPath, sunPart } from './weather.ts';

/** What stays the same on every day of a station: one plant, its tapes and the words. */
export interface FieldScene {
  readonly plant: DrawnPlant;
  readonly kind: CottonKind;
  readonly size: { readonly width: number; readonly height: number };
  /** The station's last day, and the plant's height then: the view is chosen so that it fits. */
  readonly lastDayOfYear: number;
  readonly mostHeightInches: number;
  readonly heat: HeatTape;
  /** Water that one drop stands for: its depth over the field, and what that is over the ground of one plant. */
  readonly drop: { readonly inches: number; readonly kg: number };
  readonly heightTicks: readonly HeightTick[];
  readonly caption: string;
}

/** One day of the field, and the words that change with it. */
export interface FieldDayLook {
  readonly dayOfYear: number;
  readonly heightInches: number;
  readonly weather: FieldWeather;
  readonly soilWaterFraction: number;
  /** Share of the leaves still on, 0 to 1. */
  readonly leafShare: number;
  /** Means for one plant: flowers that opened today and yesterday, and open bolls. */
  readonly whiteFlowers: number;
  readonly pinkFlowers: number;
  readonly openBolls: number;
  readonly heat: { readonly dd60: number; readonly text: string; readonly short: string };
  readonly sunShows: string;
}

/** A fruiting site of the plant, by its node and its place on the branch. */
export interface SitePlace {
  readonly node: number;
  /** Its place among the node's sites. */
  readonly index: number;
}

/** What the pad shows, and the organ that it comes from. */
export interface ShownLarge {
  readonly site: SitePlace | null;
  /** A boll hangs below its site; a bud stands on it. */
  readonly hangs: boolean;
  readonly pad: DisplayList;
}

export interface LaidField {
  readonly plot: Plot;
  /** The frame of a day. */
  at(day: FieldDayLook, shown: ShownLarge): SceneFrame;
}

/** A crop this tall stands full height in the rows behind, inches. */
const TALL_CROP_INCHES = 40;
/** Seconds in which a drop falls. */
const FALL_SECONDS = 1.8;

/** Lays out one plant in its field. Frames share what stands still. */
export function layOutField(scene: FieldScene): LaidField {
  const plot = fieldPlot(scene.size, scene.caption);
  const { box, soilY, foot, textPx } = plot;
  const pxPerInch = (soilY - box.y - textPx * 0.8) / (scene.mostHeightInches * 1.1 + 1.5);
  const nodesAt = (dayOfYear: number, heightInches: number, widthShare: number): LaidNode[] =>
    layPlant(scene.plant, { dayOfYear, heightInches, foot, pxPerInch, widthShare });
  const reach = reachOf(nodesAt(scene.lastDayOfYear, scene.mostHeightInches, 1), foot, pxPerInch);
  const widthShare = Math.min(1, plot.reachPx / Math.max(1, reach));
  const still: Mark[] = [
    backingMark(box),
    ...skyMarks(box, soilY),
    ...bareRowsMarks(box, soilY),
    ...soilMarks(box, soilY, plot.rootFloorY),
    group('heatTape', heatTapeMarks(scene.heat, plot.heatTape, textPx)),
  ];
  const heightTape = group('heightTape', heightTapeMarks(plot.heightTape, soilY, pxPerInch, scene.heightTicks, textPx));
  const caption = lettered(plot.caption.lines, [plot.caption.x, plot.caption.y], {
    size: textPx,
    ink: 'lint',
    italic: true,
  });
  return {
    plot,
    at(day, { site, hangs, pad }) {
      const nodes = nodesAt(day.dayOfYear, day.heightInches, widthShare);
      return {
        width: plot.width,
        height: plot.height,
        still,
        parts: [sunPart(plot.sun.at, plot.sun.mostPx, day.weather.dd60, day.sunShows)],
        moving: waterPieces(plot, day.weather, scene.drop),
        over: [
          ...cloudMarks(
            [plot.clouds.from, box.y],
            { x: plot.clouds.to, depth: plot.clouds.depth },
            day.weather.rainInches,
          ),
          ...cropRowsMarks(box, soilY, {
            cropShare: Math.min(1, day.heightInches / TALL_CROP_INCHES),
            whiteFlowers: day.whiteFlowers,
            pinkFlowers: day.pinkFlowers,
            openBolls: day.openBolls,
            leafShare: day.leafShare,
            kind: scene.kind,
          }),
          soilWaterMarks(box, soilY, plot.rootFloorY, day.soilWaterFraction),
          heightTape,
          ...heightNotchMarks(plot.heightTape, soilY, day.heightInches * pxPerInch),
          ...plantMarks(nodes, {
            dayOfYear: day.dayOfYear,
            pxPerInch,
            kind: scene.kind,
            leafShare: day.leafShare,
            foot,
          }),
          ...leaderMarks(nodes, site, plot, pxPerInch, hangs),
          ...pad,
          ...caption,
          heatLaidMarks(scene.heat, plot.heatTape, day.heat, textPx),
        ],
        lapSeconds: FALL_SECONDS,
      };
    },
  };
}

/** How far the plant reaches from its stem to either side, leaves counted, px. */
function reachOf(nodes: readonly LaidNode[], foot: Point, pxPerInch: number): number {
  const leafPx = 3 * pxPerInch;
  let reach = 4 * pxPerInch;
  for (const { sites } of nodes)
    for (const { at } of sites) reach = Math.max(reach, Math.abs(at[0] - foot[0]) + leafPx);
  return reach;
}

/** A chalk line from the organ that is shown large to the pad that shows it. */
function leaderMarks(
  nodes: readonly LaidNode[],
  place: SitePlace | null,
  plot: Plot,
  pxPerInch: number,
  hangs: boolean,
): Mark[] {
  if (!place) return [];
  const branch = nodes.find(({ node }) => node.number === place.node);
  const laid = branch?.sites.find(({ site }) => site === branch.node.sites[place.index]);
  if (!laid) return [];
  const [x, y] = [laid.at[0], laid.at[1] + (hangs ? pxPerInch * 1.1 : 0)];
  const radius = Math.max(10, pxPerInch * 2.3);
  const { pad } = plot;
  const to: Point = [pad.x, Math.min(pad.y + pad.height - 14, Math.max(pad.y + 14, y))];
  const along = Math.atan2(to[1] - y, to[0] - x);
  const from: Point = [x + Math.cos(along) * radius, y + Math.sin(along) * radius];
  const stitches = [
    ...runningStitches(ring(x, y, radius, 24), 'leader/ring', { on: 5, off: 4, uneven: 0 }),
    ...(to[0] > from[0] + 8
      ? runningStitches([from, to], 'leader/line', { on: 7, off: 5, closed: false, uneven: 0 })
      : []),
  ];
  return [{ kind: 'stitches', stitches, ink: 'madder', width: 2 }];
}

/** The day's rain and irrigation as drops. */
function waterPieces(plot: Plot, weather: FieldWeather, drop: FieldScene['drop']): MovingPiece[] {
  const { box, soilY, textPx, heightTape, pad } = plot;
  const left = heightTape.x + heightTape.width + 10;
  const size = Math.max(6, textPx * 0.5);
  const rain = rainPath(left, pad.x - 10, box.y + (soilY - box.y) * 0.14, soilY - 6);
  const furrowY = soilY + size * 0.7;
  return [
    ...dropPieces('rain', dropsOf(weather.rainInches, drop.inches), size, drop.kg, rain),
    ...dropPieces('irrigation', dropsOf(weather.irrigationInches, drop.inches), size, drop.kg, () => [
      [left - 20, furrowY],
      [box.x + box.width - 12, furrowY],
    ]),
  ];
}
