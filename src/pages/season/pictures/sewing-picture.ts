import { fill } from '../../../language/fill.ts';
import type { Words } from '../../../language/words.ts';
import { needleTable } from '../../../model/cloth/facts.ts';
import type { SewingOutcome } from '../../../model/cloth/sew.ts';
import type { Season } from '../../../model/season.ts';
import { MM_PER_INCH } from '../../../model/units.ts';
import { massOf, type OutAccount } from '../../../scene/stations/flow/flow-input.ts';
import { roundMass } from '../../../scene/stations/flow/piece-mass.ts';
import { clothInks } from '../../../scene/stations/sewing/cloth-inks.ts';
import { MOST_SNIPS, sewingScene } from '../../../scene/stations/sewing/sewing-scene.ts';
import { above, atStation, decided, exact, step } from '../../../workings/steps.ts';
import type { Step } from '../../../workings/working.ts';
import type { PictureSize, StationPicture, TwinRow } from './picture.ts';
import { type PictureLedger, pictureLedger } from './picture-ledger.ts';
import { drawnStep, factStep, said } from './row-steps.ts';
import { sewingWords } from './sewing-words.ts';

/** The cut pieces first, then what else the ledger holds. */
const order: readonly OutAccount[] = ['cloth', 'offcuts', 'effluent'];
const nameOf = { cloth: 'pieces', offcuts: 'offcuts', effluent: 'effluent' } as const;
type Named = keyof typeof nameOf;

const centimetresPerInch = MM_PER_INCH / 10;

/** A length as a sewist says it: to a quarter of an inch, or to a whole centimeter; the number, and its unit. */
export function aboutLength(
  inches: number,
  { unitSystem, messages, formats }: Words,
): { number: string; unit: string } {
  const { inches: inch, centimetres } = messages.units;
  const unitOf = (value: number, name: typeof inch.name) => formats.plural(value, { ...name }).replace(/^\S+\s/, '');
  if (unitSystem === 'metric') {
    const whole = Math.round(inches * centimetresPerInch);
    return { number: formats.count(whole), unit: centimetres.sign };
  }
  const quarters = Math.round(inches * 4);
  const whole = Math.floor(quarters / 4);
  const part = ['', '¼', '½', '¾'][quarters % 4]!;
  const number = `${whole > 0 || part === '' ? formats.count(whole) : ''}${part}`;
  return { number, unit: unitOf(quarters === 4 ? 1 : 2, inch.name) };
}

/** Lines of the mat: inches, or centimeters. */
const gridOf = ({ unitSystem }: Words) =>
  unitSystem === 'us' ? { inches: 1, numberEach: 4 } : { inches: 1 / centimetresPerInch, numberEach: 5 };

const threadText = ({ needle }: SewingOutcome, { language, formats }: Words): string => {
  const words = sewingWords(language);
  const [from, to] = needle.threadNumbers ?? [];
  return from === undefined || to === undefined
    ? words.threadFine
    : fill(words.threadNumbers, { from: formats.count(from), to: formats.count(to) });
};

const needleText = ({ needle }: SewingOutcome, { language }: Words): string =>
  fill(sewingWords(language).needle, { from: needle.needles[0], to: needle.needles[1] });

const snipKgOf = (ledger: PictureLedger): number =>
  roundMass(massOf(ledger.inflow.get('lot')!) / MOST_SNIPS, ledger.unitKg);

function layOut(season: Season, words: Words, size: PictureSize) {
  const ledger = pictureLedger(season, 'sewing', words);
  const { sewing, weaving, scenario } = season;
  const inflow = ledger?.inflow.get('lot');
  if (!ledger || !inflow || !sewing || !weaving?.cloth) return () => null;
  const own = sewingWords(words.language);
  const { formats } = words;
  const side = sewing.patchInchesPerBoll;
  const about = side === null ? null : aboutLength(side, words);
  const grid = gridOf(words);
  const square = formats.length(grid.inches).text;
  const frameAt = sewingScene({
    size,
    mat: scenario.era === 'present',
    patchInches: side,
    seamInches: scenario.decisions.sewing.seamInches,
    locks: scenario.decisions.planting.variety === 'pima' ? 4 : 5,
    cloth: clothInks(weaving.cloth.finish),
    inflow,
    outflow: order.flatMap((account) => {
      const masses = ledger.outflow.get(account);
      return masses ? [{ account, masses }] : [];
    }),
    unitKg: ledger.unitKg,
    grid,
    labels: {
      before: side === null ? '' : own.before,
      measure: about?.number ?? '',
      after: about ? fill(own.after, { unit: about.unit }) : '',
      side: fill(own.side, { size: formats.length(side ?? 0, 2).text }),
      sewn: fill(own.sewn, { size: formats.length(sewing.sewnPatchInches ?? 0, 2).text }),
      grain: own.grain,
      selvage: weaving.cloth.description.kind === 'woven' ? own.selvage : null,
      needle: needleText(sewing, words),
      thread: threadText(sewing, words),
      inflow: fill(own.inflow, { mass: ledger.massIn('lot') }),
      out: (account, progress) => fill(own[nameOf[account as Named]], { mass: ledger.massOut(account, progress) }),
      caption: (kg) =>
        fill(size.width > 560 ? own.caption : own.captionShort, { mass: formats.mass(kg, 0).text, square }),
    },
  });
  return ({ progress }: { readonly progress: number }) => frameAt(progress);
}

/** The patch less two seam allowances. */
function sewnSteps({ scenario }: Season, { patchInchesPerBoll, sewnPatchInches }: SewingOutcome, words: Words): Step[] {
  const { rows } = sewingWords(words.language);
  const { seamInches } = scenario.decisions.sewing;
  return [
    said(rows.patch, { as: 'length', value: patchInchesPerBoll ?? 0, decimals: 2 }, atStation('sewing')),
    said(rows.seam, { as: 'seam', value: seamInches }, decided('sewing')),
    said(rows.sewn, { as: 'length', value: sewnPatchInches ?? 0, decimals: 2 }, above),
  ];
}

/** The thread that goes with the needle, by the weight of the cloth. */
function threadSteps(sewing: SewingOutcome, words: Words): Step[] {
  const { rows } = sewingWords(words.language);
  return [
    step('cutWeight', exact(sewing.gramsPerSquareMetre, 'gramsPerSquareMetre'), atStation('sewing')),
    factStep(rows.thread, { as: 'text', text: threadText(sewing, words) }, needleTable),
  ];
}

/** The sewing table: one boll beside the patch it makes, and the cloth of one bale being cut. */
export const sewingPicture: StationPicture = {
  layOut,
  see(season, words, { progress }) {
    const ledger = pictureLedger(season, 'sewing', words);
    const { sewing, scenario } = season;
    if (!ledger || !sewing) return [];
    const own = sewingWords(words.language);
    const { formats } = words;
    const boll =
      sewing.patchInchesPerBoll === null
        ? []
        : [
            fill(own.see, {
              size: formats.length(sewing.patchInchesPerBoll, 2).text,
              seam: formats.seam(scenario.decisions.sewing.seamInches).text,
              sewn: formats.length(sewing.sewnPatchInches ?? 0, 2).text,
            }),
            own.seeBoll,
          ];
    return [
      ...boll,
      fill(own.cutSoFar, {
        done: formats.percent(100 * progress, 0),
        pieces: ledger.massOut('cloth', progress),
        offcuts: ledger.massOut('offcuts', progress),
      }),
    ];
  },
  rows(season, words, { progress }) {
    const ledger = pictureLedger(season, 'sewing', words);
    const { sewing, scenario } = season;
    if (!ledger || !sewing) return [];
    const { seamInches } = scenario.decisions.sewing;
    const { rows } = sewingWords(words.language);
    const { formats } = words;
    const row = (key: keyof typeof rows, text: string, steps: TwinRow['steps']): TwinRow => ({
      key,
      label: rows[key],
      text,
      steps,
    });
    const side = sewing.patchInchesPerBoll;
    return [
      ...(side === null ? [] : [row('patch', formats.length(side, 2).text, { reading: 'patch' })]),
      ...(sewing.sewnPatchInches === null
        ? []
        : [row('sewn', formats.length(sewing.sewnPatchInches, 2).text, sewnSteps(season, sewing, words))]),
      row('seam', formats.seam(seamInches).text, [
        said(rows.seam, { as: 'seam', value: seamInches }, decided('sewing')),
      ]),
      row('needle', sewing.needle.needles.join(' – '), { reading: 'needle' }),
      row('thread', threadText(sewing, words), threadSteps(sewing, words)),
      row('in', ledger.massIn('lot'), ledger.steps('in', 'lot')),
      ...order.flatMap((account) =>
        ledger.outflow.has(account)
          ? [row(nameOf[account as Named], ledger.massOut(account, progress), ledger.steps('out', account, progress))]
          : [],
      ),
      row('snip', formats.mass(snipKgOf(ledger), 0).text, [
        drawnStep(rows.snip, { as: 'mass', value: snipKgOf(ledger), decimals: 0 }),
      ]),
    ];
  },
};
