import { fill } from '../../language/fill.ts';
import type { Words } from '../../language/words.ts';
import { averageFacts } from '../../model/trace/chain-averages.ts';
import { projectFacts } from '../../model/trace/facts.ts';
import { type ProjectId, projects } from '../../model/trace/project-facts.ts';
import { INCHES_PER_FOOT, KG_PER_POUND, METRES_PER_FOOT } from '../../model/units.ts';
import { clothScale } from '../../scene/trace/cloth-stretch.ts';
import { ruleLength, standsFor } from '../../scene/trace/counted.ts';
import { fieldScale } from '../../scene/trace/field-stretch.ts';
import { massScale } from '../../scene/trace/mass-stretch.ts';
import type { DrawnCloth, Inches, PieceShape, TraceDrawing, Weighed } from '../../scene/trace/trace-drawing.ts';
import type { TraceAsked } from './trace-link.ts';
import type { Traced } from './trace-of.ts';
import { traceFormats } from './trace-text.ts';
import type { TraceWords } from './use-trace-words.ts';

const mostBolls = 72;
const mostPlants = 120;
const squareInchesPerSquareYard = 36 ** 2;
/** A rule is about this long on the picture, px. */
const rulePx = 110;

const shapes: Readonly<Partial<Record<ProjectId, PieceShape>>> = {
  'dress-shirt': 'shirt',
  skirt: 'skirt',
  't-shirt': 'tee',
  jeans: 'jeans',
  apron: 'apron',
  bandana: 'square',
  tote: 'tote',
  pillowcase: 'sheet',
  'flat-sheet': 'sheet',
  'sheet-set': 'sheet',
};

/** What is drawn of the cloth of one piece, in its stated case. */
function drawnCloth({ project, own }: TraceAsked): DrawnCloth {
  if (project === 'own') {
    const cloth: Inches = [own.widthInches, own.yards * 36];
    return { kind: 'piece', shape: 'bolt', finished: cloth, cloth: laidOut(cloth) };
  }
  const of = projects[project];
  if (of.kind === 'quilt') {
    const over = projectFacts.backingOverInches.value;
    return { kind: 'quilt', top: of.top, batting: of.batting, backing: [of.top[0] + over, of.top[1] + over] };
  }
  const squareInches = of.squareYards * squareInchesPerSquareYard;
  const width = Math.max(of.finished[0] + 2, Math.min(projectFacts.usableWidthInches.value, Math.sqrt(squareInches)));
  return {
    kind: 'piece',
    shape: shapes[project] ?? 'sheet',
    finished: of.finished,
    cloth: [width, squareInches / width],
  };
}

/** Long cloth is laid on its side. */
const laidOut = ([width, length]: Inches): Inches => (length > 2 * width ? [length, width] : [width, length]);

/** Everything the picture shows, in the reader's words and units. @param letters how many times their usual size */
export function traceDrawing(
  traced: Traced,
  asked: TraceAsked,
  name: string,
  words: Words,
  said: TraceWords,
  letters = 1,
): (width: number) => TraceDrawing {
  const { account, familiar } = traced;
  const { middle } = account.cases;
  const formats = traceFormats(words, said);
  const us = words.unitSystem === 'us';
  const { figures, picture } = said;
  const weighed = (kg: number, of: string): Weighed => ({ kg, name: of, text: formats.mass(kg) });
  const cloth = drawnCloth(asked);
  const squareFeet = middle.squareMetres / METRES_PER_FOOT ** 2;
  const average = (of: 'rowInches' | 'rainInches' | 'irrigationInches') =>
    account.averages[of] ?? averageFacts[of].value;
  const [rain, irrigation] = [average('rainInches'), average('irrigationInches')];
  const eachBoll = standsFor(middle.bolls, mostBolls);
  const eachPlant = standsFor(middle.plants, mostPlants);
  const counted = (many: string, one: string, each: number) =>
    each === 1 ? one : fill(many, { n: words.formats.count(each) });
  const drawing: TraceDrawing = {
    letters,
    title: name,
    cloth,
    many: asked.project !== 'own' && asked.count > 1 ? name : '',
    clothTags: [
      { name: figures.clothArea, text: formats.cloth(middle.clothSquareYards) },
      { name: figures.yarnLength, text: formats.yarn(middle.yarnKilometres) },
      { name: figures.fibres, text: formats.many(middle.fibres) },
    ],
    layers: { top: picture.top, batting: picture.batting, backing: picture.backing },
    clothRule: { inches: 1, text: '' },
    masses: {
      cloth: weighed(middle.clothKg, figures.cloth),
      batting: middle.battingKg > 0 ? weighed(middle.battingKg, figures.batting) : null,
      yarn: weighed(middle.yarnKg, figures.yarn),
      lint: weighed(middle.lintKg, figures.lint),
      seed: weighed(middle.seedKg, figures.seed),
      seedParts: [
        weighed(middle.oilKg, figures.oil),
        weighed(middle.mealKg, figures.meal),
        weighed(middle.hullsKg, figures.hulls),
        weighed(middle.lintersKg, figures.linters),
      ],
      ginWaste: weighed(middle.ginWasteKg, figures.ginWaste),
      seedCotton: weighed(middle.seedCottonKg, figures.seedCotton),
    },
    lost: picture.lostMill,
    massRule: { kg: 1, text: '' },
    bolls: {
      count: middle.bolls,
      each: eachBoll,
      text: `${formats.counted(middle.bolls)} ${figures.bolls.toLocaleLowerCase(words.language)}`,
      scale: counted(picture.bollScale, picture.oneBoll, eachBoll),
    },
    field: {
      squareFeet,
      rowFeet: average('rowInches') / INCHES_PER_FOOT,
      text: `${figures.field}: ${formats.field(middle.squareMetres)}`,
      scale: '',
      ruleFeet: 1,
      familiar: {
        feet: [familiar.widthFeet, familiar.lengthFeet],
        text: fill(picture.chalk, {
          familiar: said.familiarNames[familiar.id],
          width: formats.row(familiar.widthFeet),
          length: formats.row(familiar.lengthFeet),
        }),
      },
      plants: {
        count: middle.plants,
        each: eachPlant,
        text: `${formats.counted(middle.plants)} ${figures.plants.toLocaleLowerCase(words.language)}`,
        scale: counted(picture.plantScale, picture.onePlant, eachPlant),
      },
    },
    water: {
      scale: picture.waterScale,
      rain: { feet: rain / INCHES_PER_FOOT, text: fill(picture.rain, { depth: words.formats.rain(rain).text }) },
      irrigation: {
        feet: irrigation / INCHES_PER_FOOT,
        text:
          irrigation > 0
            ? fill(picture.irrigation, { depth: words.formats.rain(irrigation).text })
            : picture.noIrrigation,
      },
    },
  };
  // Each stretch has a rule of a round length in the reader's unit, once it is known how wide it is drawn.
  return (width) => {
    const inches = ruleLength(rulePx / clothScale(cloth, width) / (us ? 1 : 1 / 2.54)) * (us ? 1 : 1 / 2.54);
    const kg = ruleLength(rulePx / massScale(drawing, width) / (us ? KG_PER_POUND : 1)) * (us ? KG_PER_POUND : 1);
    const feet =
      ruleLength((rulePx / fieldScale(drawing, width).px) * (us ? 1 : METRES_PER_FOOT)) / (us ? 1 : METRES_PER_FOOT);
    return {
      ...drawing,
      clothRule: { inches, text: fill(picture.clothScale, { inches: words.formats.length(inches).text }) },
      massRule: { kg, text: fill(picture.massScale, { mass: words.formats.mass(kg).text }) },
      field: { ...drawing.field, ruleFeet: feet, scale: fill(picture.fieldScale, { feet: formats.row(feet) }) },
    };
  };
}
