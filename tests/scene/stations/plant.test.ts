import { describe, expect, test } from 'vitest';
import { petalInk } from '../../../src/scene/cloth/flower.ts';
import { flatMarks, groupsOf } from '../../../src/scene/display-list.ts';
import { furrowFeet, furrowScene } from '../../../src/scene/stations/plant/furrow.ts';
import { layPlant } from '../../../src/scene/stations/plant/plant-layout.ts';
import { plantMarks } from '../../../src/scene/stations/plant/plant-marks.ts';
import { type SiteState, siteOn } from '../../../src/scene/stations/plant/plant-sample.ts';
import { handMadePlant } from '../sample-plant.ts';

const plant = handMadePlant();
const drawn = (dayOfYear: number, leafShare = 1) => {
  const [foot, pxPerInch] = [[400, 540] as const, 13];
  const nodes = layPlant(plant, { dayOfYear, heightInches: 36, foot, pxPerInch });
  return plantMarks(nodes, { dayOfYear, pxPerInch, kind: 'upland', leafShare, foot });
};
const counted = (dayOfYear: number) => {
  const counts: Record<SiteState['kind'], number> = {
    notYet: 0,
    square: 0,
    flower: 0,
    greenBoll: 0,
    openBoll: 0,
    shed: 0,
  };
  for (const node of plant.nodes.filter(({ appearsDay }) => appearsDay <= dayOfYear))
    for (const site of node.sites.filter(({ squareDay }) => squareDay <= dayOfYear))
      counts[siteOn(site, dayOfYear).kind]++;
  return counts;
};

describe('the plant', () => {
  test.each([130, 150, 176, 190, 201, 224, 250, 276, 300])(
    'on day %i draws exactly the organs its sites hold',
    (day) => {
      const groups = new Map([...groupsOf(drawn(day))].map((found) => [found.name, found.count]));
      const counts = counted(day);
      expect(groups.get('squares')).toBe(counts.square);
      expect(groups.get('flowers')).toBe(counts.flower);
      expect(groups.get('greenBolls')).toBe(counts.greenBoll);
      expect(groups.get('openBolls')).toBe(counts.openBoll);
      expect(groups.get('shed')).toBe(counts.shed);
    },
  );
  test('one madder cross to a shed site: two stitches each', () => {
    const shed = [...groupsOf(drawn(224))].find(({ name }) => name === 'shed')!;
    const stitches = [...flatMarks(shed.marks)].flatMap((mark) => (mark.kind === 'stitches' ? mark.stitches : []));
    expect(stitches).toHaveLength(2 * counted(224).shed);
  });
  test('upland opens white, is pink the next day, and has dropped on the third; Pima is yellow, then red — Wakelyn et al., Cotton Fiber Chemistry and Technology; UC Davis, Cotton reproduction: flower', () => {
    expect([0, 1, 2].map((age) => petalInk('upland', age))).toEqual(['lint', 'blush', null]);
    expect([0, 1, 2].map((age) => petalInk('pima', age))).toEqual(['weld', 'madder', null]);
  });
  test('the stem is as tall as the plant, its nodes rise in order, and their sides alternate', () => {
    const laid = layPlant(plant, { dayOfYear: 224, heightInches: 36, foot: [100, 500], pxPerInch: 10 });
    expect(500 - laid.at(-1)!.at[1]).toBeCloseTo(360, 9);
    laid.slice(1).forEach((node, i) => {
      expect(node.at[1]).toBeLessThan(laid[i]!.at[1]);
      expect(node.node.side).toBe(-laid[i]!.node.side);
    });
  });
  test('a branch goes out on its own side, site after site', () => {
    for (const { node, at, sites } of layPlant(plant, {
      dayOfYear: 224,
      heightInches: 36,
      foot: [100, 500],
      pxPerInch: 10,
    })) {
      let reach = 0;
      for (const site of sites) {
        const out = (site.at[0] - at[0]) * node.side;
        expect(out).toBeGreaterThan(reach);
        reach = out;
      }
    }
  });
  test('after a harvest aid no leaf is left, and no fruit is lost with it', () => {
    const bare = [...groupsOf(drawn(276, 0))];
    expect([...flatMarks(bare.find(({ name }) => name === 'leaves')!.marks)]).toEqual([]);
    expect(bare.find(({ name }) => name === 'openBolls')?.count).toBe(counted(276).openBoll);
  });
});

describe('the furrow', () => {
  const furrow = (seedsPerFoot: number) => [
    ...groupsOf(furrowScene({ seedsPerFoot, size: { width: 860, height: 560 }, labels: { rowTicks: [] } })),
  ];
  test.each([2, 3.5, 5])('holds %d seeds to the foot, as far as the planter has come', (seedsPerFoot) => {
    const sown = furrow(seedsPerFoot).find(({ name }) => name === 'seedsSown')!;
    expect(Math.abs(sown.count! - seedsPerFoot * furrowFeet(860) * 0.72)).toBeLessThanOrEqual(1);
  });
});
