import { describe, expect, test } from 'vitest';
import { stationIds } from '../../../../src/model/station.ts';
import { stationSpan } from '../../../../src/model/timeline.ts';
import { stationPictures } from '../../../../src/pages/season/pictures/station-pictures.ts';
import { rectangle } from '../../../../src/scene/cloth/point.ts';
import type { DisplayList } from '../../../../src/scene/display-list.ts';
import type { SceneFrame } from '../../../../src/scene/scene-frame.ts';
import { long } from '../../../laws/runs.ts';
import { checkedSizes, crossedWords, farmSeasons, smallWords, spokenWords, wordFaults } from './scene-checks.ts';

const [coastal, , dryland, , , thirties] = farmSeasons;
/** In the long run each farm in each size, otherwise the farms in turn. */
const seasons = [coastal!, dryland!, thirties!];
const inTurn = (turn: number) => (long ? seasons : [seasons[turn % seasons.length]!]);
const spoken = [spokenWords('en'), spokenWords('es')];

describe.each(stationIds)('%s', (station) => {
  test.each(checkedSizes)('in $width x $height no word is crossed, covered or too small', (size) => {
    const faults = inTurn(stationIds.indexOf(station) + checkedSizes.indexOf(size)).flatMap((season) => {
      const { fromDay, toDay } = stationSpan(season, station);
      return spoken.flatMap((words) => {
        const frameAt = stationPictures[station].layOut(season, words, size);
        return [0.05, 1].flatMap((progress) => {
          const frame = frameAt({ dayOfYear: Math.round(fromDay + (toDay - fromDay) * progress), progress });
          return frame ? [...wordFaults(frame), ...smallWords(frame), ...crossedWords(frame)] : [];
        });
      });
    });
    expect([...new Set(faults)]).toEqual([]);
  });
});

test('a stitch through a word is seen, unless cloth lies between, and so is cloth over it', () => {
  const size = { width: 200, height: 100 };
  const word = { kind: 'text', text: 'cotton', x: 20, y: 50, size: 20, ink: 'ink', anchor: 'start' } as const;
  const stitch = { kind: 'stitches', stitches: [[0, 44, 200, 44]], ink: 'mid', width: 1 } as const;
  const cloth = { kind: 'patch', points: rectangle(0, 20, 200, 60), ink: 'muslin', shadow: 0 } as const;
  const faultsOf = (over: DisplayList) =>
    crossedWords({ ...size, still: [], parts: [], moving: [], over, lapSeconds: 1 } satisfies SceneFrame).length;
  expect(faultsOf([stitch, word])).toBe(1);
  expect(faultsOf([stitch, cloth, word])).toBe(0);
  expect(faultsOf([word, cloth])).toBe(1);
});
