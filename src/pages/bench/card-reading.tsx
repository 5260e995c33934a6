import { useWords } from '../../language/words.ts';
import { colourAgreement, type PrintedGrades, stapleAgreement } from '../../model/bench/printed-grades.ts';
import type { FibreCard } from '../../model/bench/set-up.ts';
import { micronaireClass, strengthWord, uniformityWord } from '../../model/classing/descriptors.ts';
import { twistFacts } from '../../model/mill/facts.ts';
import type { BenchSide } from '../../statechart/saved-bench.ts';
import { cardCodes, printedCodes } from '../../workings/bench/sentence-readings.ts';
import { benchWords } from './bench-words.ts';
import { SaidText } from './said-text.tsx';

/** The trade's word for a length: the edges of the staple chart, and Pima by its kind. */
function lengthWord({ kind, lengthIn }: FibreCard): 'short' | 'medium' | 'long' | 'extraLong' {
  if (kind === 'pima') return 'extraLong';
  if (lengthIn <= twistFacts.shortStapleInches.value) return 'short';
  return lengthIn < twistFacts.longStapleInches.value ? 'medium' : 'long';
}

export interface CardReadingProps {
  readonly card: FibreCard;
  readonly printed: PrintedGrades;
  readonly side: BenchSide;
}

/** What a class card says, a line for each of its figures; grades that were typed are held against the readings. */
export function CardReading({ card, printed, side }: CardReadingProps) {
  const { language } = useWords();
  const { card: said } = benchWords(language);
  const { staple, color, leaf } = cardCodes(card);
  const lines: readonly string[] = [
    said.said.length.replace('{word}', said.lengths[lengthWord(card)]),
    said.said.uniformity.replace('{word}', said.uniformity[uniformityWord(card.uniformityPercent)]),
    said.said.strength.replace('{word}', said.strength[strengthWord(card.strengthGPerTex)]),
    said.said.micronaire.replace('{word}', said.micronaire[micronaireClass(card.micronaire)]),
    said.said.color,
    said.said.leaf,
    ...(printed.staple32nds === null ? [] : [said.staple[stapleAgreement(card, printed.staple32nds)]]),
    ...(printed.color === null ? [] : [said.color[colourAgreement(card, printed.color)]]),
  ];
  return (
    <>
      <h4>{said.reads}</h4>
      <ul class="card-said">
        {lines.map((line) => (
          <li key={line}>
            <SaidText
              template={line}
              numbers={{ code: staple, grade: color, leaf, ...printedCodes(printed) }}
              where={`${side}/card`}
            />
          </li>
        ))}
      </ul>
    </>
  );
}
