import { varietyFacts } from '../../model/field/variety-facts.ts';
import { machineBreakagePerMm } from '../../model/length/facts.ts';
import { shortFibrePercent } from '../../model/length/statistics.ts';
import type { Season } from '../../model/season.ts';
import { withDecision } from '../changed-decisions.ts';
import { lines, number, percent, workedLine } from './amounts.ts';
import { farmNamed, type Question } from './question.ts';

const saw = farmNamed('coastal-plain');
const roller = withDecision(
  withDecision(saw, { station: 'ginning', key: 'stand' }, 'roller'),
  { station: 'ginning', key: 'lintCleaner' },
  'roller',
);

/** Short fibre behind a place of the chain, per cent by weight; nought where the season did not come so far. */
function shortAfter({ fibreTrail }: Season, place: string): number {
  const found = fibreTrail.find(({ after }) => after === place);
  return found ? shortFibrePercent(found.fibre.lengths, 'weight') : 0;
}

/** Share of the lint that stays on the seed when the stand has had it, per cent. */
function leftOnSeedPercent({ ginning }: Season): number {
  const stand = ginning?.machines.find(({ machine }) => machine === 'sawStand' || machine === 'rollerStand');
  if (!ginning || !stand) return 0;
  return (100 * ginning.seedHouse.dryKg.lint) / stand.in.dryKg.lint;
}

/** Why does cotton stick to the seed? What grows on one, and what a stand leaves on it and breaks in taking it off. */
export const seedAndLint: Question = {
  id: 'seed-and-lint',
  runs: [
    { scenario: saw, seed: 1 },
    { scenario: roller, seed: 1 },
  ],
  answer: (seasons) => {
    const [sawn, rolled] = [seasons[0]!, seasons[1]!];
    const broken = (season: Season) => shortAfter(season, 'stand') - shortAfter(season, 'seedCottonCleaning');
    return {
      verdict: broken(sawn) > broken(rolled) ? 'sawBreaksMore' : 'rollerBreaksMore',
      said: {
        // To the nearest hundred: it is a mean over seeds that differ.
        fibres: number(Math.round(sawn.field.variety.fibresPerSeed / 100) * 100),
        milligrams: number(sawn.field.variety.lintPerSeedMg),
        onSeed: percent(leftOnSeedPercent(sawn)),
        before: percent(shortAfter(sawn, 'seedCottonCleaning')),
        behindSaw: percent(shortAfter(sawn, 'stand')),
        behindRoller: percent(shortAfter(rolled, 'stand')),
        moisture: percent(sawn.ginning?.standMoisturePercent ?? 0),
      },
      sides: seasons,
      compare: { before: { scenario: saw, seed: 1 }, after: { scenario: roller, seed: 1 } },
      shown: [
        workedLine('standMoisture', seasons, () => ({ topic: 'reading', station: 'ginning', key: 'lintMoisture' })),
        lines.turnout(seasons),
        lines.shortFibre(seasons),
        lines.length(seasons),
      ],
    };
  },
  decidedBy: [
    { name: 'fibresPerSeed', fact: varietyFacts.uplandMedium.fibresPerSeed },
    { name: 'sawBreaks', fact: machineBreakagePerMm.sawStand },
    { name: 'rollerBreaks', fact: machineBreakagePerMm.rollerStand },
  ],
  station: 'ginning',
};
