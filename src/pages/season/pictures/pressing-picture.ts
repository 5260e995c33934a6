import { fill } from '../../../language/fill.ts';
import { pressingWords as en } from '../../../language/messages/en/pictures/pressing.ts';
import { pressingWords as es } from '../../../language/messages/es/pictures/pressing.ts';
import type { Words } from '../../../language/words.ts';
import { baleShapeFacts } from '../../../model/gin/press-facts.ts';
import { trampingFacts } from '../../../model/gin/speed-facts.ts';
import type { Season } from '../../../model/season.ts';
import { KG_PER_POUND, METRES_PER_FOOT } from '../../../model/units.ts';
import { entryOf } from '../../../scene/stations/flow/labelled-entry.ts';
import { pressedBales } from '../../../scene/stations/pressing/bale-yard.ts';
import type { PressingInput, WeighedBale } from '../../../scene/stations/pressing/pressing-input.ts';
import { pressingLegend, pressingScene } from '../../../scene/stations/pressing/pressing-scene.ts';
import { above, atStation, percent, step } from '../../../workings/steps.ts';
import type { Origin, Printed, Step } from '../../../workings/working.ts';
import { printed } from '../printed.ts';
import { baleEntries, roundMass, roundMassText } from './bale-entries.ts';
import { flowText } from './flow-text.ts';
import type { PictureSize, StationPicture, TwinRow } from './picture.ts';
import { accountSteps, drawnStep, factStep, type LedgerAccount, said } from './row-steps.ts';

/** One pound in a cubic foot. */
const kgPerCubicMetre = KG_PER_POUND / METRES_PER_FOOT ** 3;
/** The picture on a desk, whose pieces the table tells. */
const SEEN_AT: PictureSize = { width: 808, height: 388 };

const wordsOf = ({ language }: Words) => (language === 'es' ? es : en);

/** The shape of a bale of the season's time, inches. */
function shapeOf({ scenario }: Season) {
  const { universalLongIn, universalWideIn, universalThickIn, flatLongIn, flatWideIn, flatThickIn } = baleShapeFacts;
  return scenario.era === 'present'
    ? { long: universalLongIn.value, wide: universalWideIn.value, thick: universalThickIn.value }
    : { long: flatLongIn.value, wide: flatWideIn.value, thick: flatThickIn.value };
}

function sizeText(season: Season, words: Words): string {
  const { long, wide, thick } = shapeOf(season);
  const { number } = words.formats.length(long);
  return fill(wordsOf(words).sizeText, {
    long: number,
    wide: words.formats.length(wide).number,
    thick: words.formats.length(thick).text,
  });
}

/** The bales that are whole; all of them where there is none. */
function wholeBales(bales: NonNullable<Season['pressing']>['bales']) {
  const whole = bales.filter(({ remnant }) => !remnant);
  return whole.length > 0 ? whole : bales;
}

type Value = Exclude<Printed, { as: 'exact' }>;

/** One line of the card: its text, and the values that the text is written from. */
interface CardLine {
  readonly key: string;
  readonly name: string;
  readonly value: string;
  readonly from: readonly Value[];
}

/** What is known of the mean whole bale, by name: its weights first. */
function cardLines(season: Season, words: Words): CardLine[] {
  const { pressing } = season;
  if (!pressing) return [];
  const own = wordsOf(words);
  const whole = wholeBales(pressing.bales);
  const meanKg = whole.reduce((sum, { netKg }) => sum + netKg, 0) / whole.length;
  const { tareKg } = whole[0]!;
  const density = pressing.densityLbPerCubicFoot;
  const mass = (kg: number): Value => ({ as: 'mass', value: kg, decimals: 1 });
  const line = (key: string, name: string, value: Value): CardLine => ({
    key,
    name,
    value: printed(value, words),
    from: [value],
  });
  const { long, wide, thick } = shapeOf(season);
  return [
    line('net', own.net, mass(meanKg)),
    line('gross', own.gross, mass(meanKg + tareKg)),
    line('moisture', own.moisture, { as: 'percent', value: pressing.moisturePercent, decimals: 1 }),
    line('tare', own.tare, mass(tareKg)),
    ...(density === null ? [] : [line('density', own.density, { as: 'density', value: density * kgPerCubicMetre })]),
    {
      key: 'size',
      name: own.size,
      value: sizeText(season, words),
      from: [long, wide, thick].map((inches): Value => ({ as: 'length', value: inches })),
    },
    line('mark', own.mark, { as: 'pounds', value: season.scenario.decisions.pressing.netPounds }),
  ];
}

/** The scene of a season: null where nothing was ginned. */
export function pressingInput(season: Season, words: Words, size: PictureSize): PressingInput | null {
  const { pressing, scenario } = season;
  const entries = baleEntries(season, 'pressing', words);
  const lint = entries && entryOf(entries.inflow, 'lot');
  const pressed = entries && entryOf(entries.outflow, 'lot');
  if (!pressing || !entries || !lint || !pressed) return null;
  const own = wordsOf(words);
  const { formats, unitSystem } = words;
  const unitKg = unitSystem === 'us' ? KG_PER_POUND : 1;
  const remnant = pressing.bales.find((bale) => bale.remnant);
  const wantedText = formats.pounds(scenario.decisions.pressing.netPounds).text;
  const strokes = formats.count(trampingFacts.tramper.value);
  const shows = fill(own.shows, { strokes });
  const caption = (template: string) => (legend: { tuftKg: number; bitKg: number }) =>
    fill(template, { tuft: roundMassText(legend.tuftKg, words), bit: roundMassText(legend.bitKg, words), shows });
  const { long, thick } = shapeOf(season);
  return {
    era: scenario.era,
    lint,
    water: entryOf(entries.inflow, 'moistureAdded') ?? null,
    pressed,
    bales: pressing.bales.map((bale): WeighedBale => ({ weight: bale.netKg / unitKg, remnant: bale.remnant })),
    wanted: (scenario.decisions.pressing.netPounds * KG_PER_POUND) / unitKg,
    baleShape: { long, thick, ties: baleShapeFacts.ties.value },
    unitKg,
    size,
    trampsPerMinute: trampingFacts.tramper.value,
    labels: {
      tramper: own.tramper,
      ram: own.ram,
      short: own.short,
      worth: own.worth,
      pressed: own.pressed,
      mean: formats.plural(wholeBales(pressing.bales).length, own.mean),
      card: cardLines(season, words),
      markOf: (place) => pressing.bales[place]?.tag ?? pressing.bales[place]?.mark ?? '',
      count: (bales) => formats.plural(bales, own.count),
      countOf: own.countOf,
      remnant: remnant ? fill(own.remnant, { mass: formats.mass(remnant.netKg, 0).text }) : '',
      weights: own.weights,
      wanted: fill(own.wanted, { mass: wantedText }),
      tick: (weight) => formats.count(weight),
      shows,
      caption: caption(own.caption),
      captionShort: caption(own.captionShort),
    },
  };
}

/** The press: lint becomes bales, each a little off the weight aimed at. */
export const pressingPicture: StationPicture = {
  layOut(season, words, size) {
    const input = pressingInput(season, words, size);
    if (!input) return () => null;
    const frameAt = pressingScene(input);
    return ({ progress }) => frameAt(progress);
  },
  see(season, words) {
    const { pressing, scenario } = season;
    if (!pressing) return [];
    const own = wordsOf(words);
    const remnant = pressing.bales.find((bale) => bale.remnant);
    return [
      ...flowText(season, 'pressing', words),
      fill(own.see, { ties: own.ties[scenario.era] }),
      words.formats.plural(pressing.bales.length, own.seeBales),
      ...(remnant ? [fill(own.seeRemnant, { mass: words.formats.mass(remnant.netKg, 0).text })] : []),
    ];
  },
  rows(season, words, { progress }) {
    const { pressing } = season;
    const input = pressingInput(season, words, SEEN_AT);
    if (!pressing || !input) return [];
    const own = wordsOf(words);
    const { formats } = words;
    const { lint, water, pressed, bales } = input;
    const legend = pressingLegend(input);
    const row = (key: string, label: string, text: string, steps: readonly Step[]): TwinRow => ({
      key,
      label,
      text,
      steps,
    });
    const scale = (key: string, label: string, kg: number) =>
      row(key, label, mass(kg), [said(label, { as: 'mass', value: kg, decimals: 1 }, { at: 'chance' })]);
    const seen = (key: string, label: string, text: string, from: Origin) =>
      row(key, label, text, [said(label, { as: 'text', text }, from)]);
    const account = (side: 'in' | 'out', name: LedgerAccount) =>
      accountSteps(season, 'pressing', side, name, side === 'in' ? 1 : progress, words);
    const mass = (kg: number) => formats.mass(kg, 1).text;
    const whole = wholeBales(pressing.bales).map(({ netKg }) => netKg);
    const remnant = pressing.bales.find((bale) => bale.remnant);
    const marked = pressing.bales[0]!.tag === null ? 'mark' : 'tag';
    const markOf = (place: number) => input.labels.markOf(place);
    return [
      row('in', lint.name, lint.amount(1), account('in', 'lot')),
      ...(water ? [row('moistureAdded', water.name, water.amount(1), account('in', 'moistureAdded'))] : []),
      row(
        'lot',
        `${own.worth}: ${own.pressed.toLocaleLowerCase(words.language)}`,
        pressed.amount(progress),
        account('out', 'lot'),
      ),
      ...cardLines(season, words).map(({ key, name, value, from }) =>
        row(key, `${input.labels.mean}: ${name.toLocaleLowerCase(words.language)}`, value, [
          step('balesPressed', { as: 'count', value: pressing.bales.length }, atStation('pressing')),
          ...from.map((each) => said(`${input.labels.mean}: ${name}`, each, atStation('pressing'))),
        ]),
      ),
      row('bales', own.rows.bales, formats.count(pressedBales(bales, progress)), [
        step('balesPressed', { as: 'count', value: pressing.bales.length }, atStation('pressing')),
        step('workDone', percent(100 * progress, 2), { at: 'drawing' }),
        said(own.rows.bales, { as: 'count', value: pressedBales(bales, progress) }, above),
      ]),
      scale('lightest', own.rows.lightest, Math.min(...whole)),
      scale('heaviest', own.rows.heaviest, Math.max(...whole)),
      ...(remnant ? [scale('remnant', own.rows.remnant, remnant.netKg)] : []),
      seen('first', own.rows.first[marked], markOf(0), atStation('pressing')),
      seen('last', own.rows.last[marked], markOf(bales.length - 1), atStation('pressing')),
      ...(pressing.pressForceMN === null
        ? []
        : [
            row('force', own.rows.force, `${formats.number(pressing.pressForceMN, 2)}\u00a0MN`, [
              said(own.rows.force, { as: 'number', value: pressing.pressForceMN, decimals: 2 }, atStation('pressing')),
            ]),
          ]),
      row('tramper', own.tramper, fill(own.strokes, { strokes: formats.count(trampingFacts.tramper.value) }), [
        factStep(own.tramper, { as: 'count', value: trampingFacts.tramper.value }, trampingFacts.tramper),
      ]),
      row('piece', own.rows.piece, roundMassText(legend.tuftKg, words), [
        drawnStep(own.rows.piece, roundMass(legend.tuftKg, words)),
      ]),
      row('bit', own.rows.bit, roundMassText(legend.bitKg, words), [
        drawnStep(own.rows.bit, roundMass(legend.bitKg, words)),
      ]),
    ];
  },
  said(season, words) {
    const { pressing } = season;
    if (!pressing) return [];
    const own = wordsOf(words);
    const remnant = pressing.bales.find((bale) => bale.remnant);
    const bales = words.formats.plural(pressing.bales.length, own.seeBales);
    return [
      {
        key: 'allBales',
        label: own.rows.bales,
        text: words.formats.count(pressing.bales.length),
        steps: [said(bales, { as: 'count', value: pressing.bales.length }, atStation('pressing'))],
      },
      ...(remnant
        ? [
            {
              key: 'remnantWhole',
              label: own.rows.remnant,
              text: words.formats.mass(remnant.netKg, 0).text,
              steps: [said(own.rows.remnant, { as: 'mass', value: remnant.netKg, decimals: 0 }, { at: 'chance' })],
            } as const,
          ]
        : []),
    ];
  },
};
