import type { Quantity } from '../../language/quantity-formats.ts';
import type { Words } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import type { StationId } from '../../model/station.ts';
import type { PredictedQuantity } from '../../predict/prediction.ts';
import { predictions } from '../../predict/predictions.ts';
import type { WorkingSource } from '../../ui/working-source.ts';
import { answerAsked } from './predict-steps.ts';
import { predictWords } from './predict-words.ts';
import { stationReadings } from './station-readings.ts';
import { workingSource } from './working-source.ts';

type Writer = (words: Words, value: number, exactly: boolean) => Quantity;
const plain: Writer = ({ formats }, value) => formats.plain(value);

const writers: Readonly<Record<PredictedQuantity, Writer>> = {
  seedsOfHundred: plain,
  bales: plain,
  fibres: plain,
  sharePercent: ({ formats }, value, exactly) => formats.percentage(value, exactly ? 1 : 0),
  days: ({ formats }, value) => formats.days(value),
  fahrenheit: ({ formats }, value) => formats.temperature(value),
  staple32nds: ({ formats }, value) => {
    const text = `${formats.plain(value).text}/32`;
    return { number: text, unit: '', text, spoken: text };
  },
  inches: ({ formats }, value) => formats.length(value, 2),
};

/** A guess in the reader's words and units. */
export const guessQuantity = (quantity: PredictedQuantity, value: number, words: Words): Quantity =>
  writers[quantity](words, value, false);

/** A number on the page and what opens it. */
export interface SourcedText {
  readonly text: string;
  readonly source: WorkingSource;
}

/** What the season gives, as it is printed, with its working; null where it did not come so far. */
export function answerText(
  season: Season,
  station: StationId,
  words: Words,
  place = 'guess/',
): (SourcedText & { value: number }) | null {
  const { answer, quantity, reading } = predictions[station];
  const value = answer(season);
  if (value === null) return null;
  const { question } = predictWords(words.language).asked[station];
  const shown = reading ? stationReadings(season, station, words).find(({ key }) => key === reading) : undefined;
  const text = shown?.text ?? writers[quantity](words, value, true).text;
  const asked = shown
    ? ({ topic: 'reading', station, key: shown.key } as const)
    : answerAsked(season, station, text, words);
  return { value, text, source: workingSource(season, words, asked, question, place) };
}

/** A sentence cut at its figures: words alone, or a figure with what opens it. */
export type WhyPiece = string | SourcedText;

/** Why the season gives that, from its own figures. A sentence that names a figure the season lacks is left out. */
export function whyText(season: Season, station: StationId, words: Words): WhyPiece[][] {
  const readings = stationReadings(season, station, words);
  return predictWords(words.language).asked[station].why.flatMap((sentence, at) => {
    const pieces = sentence.split(/\{(\w+)\}/).map((piece, i): WhyPiece | null => {
      if (i % 2 === 0) return piece;
      const found = readings.find(({ key }) => key === piece);
      if (!found) return null;
      const asked = { topic: 'reading', station, key: piece } as const;
      const source = workingSource(season, words, asked, found.label, `guess/why/${at}/`);
      return { text: found.text, source };
    });
    return pieces.some((piece) => piece === null) ? [] : [pieces as WhyPiece[]];
  });
}
