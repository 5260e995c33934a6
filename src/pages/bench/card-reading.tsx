import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import type { FibreCard } from '../../model/bench/set-up.ts';
import { colourOf } from '../../model/classing/colour.ts';
import { micronaireClass, strengthWord, uniformityWord } from '../../model/classing/descriptors.ts';
import { stapleCode32nds } from '../../model/classing/staple.ts';
import { twistFacts } from '../../model/mill/facts.ts';
import { benchWords } from './bench-words.ts';

/** The trade's word for a length: the edges of the staple chart, and Pima by its kind. */
function lengthWord({ kind, lengthIn }: FibreCard): 'short' | 'medium' | 'long' | 'extraLong' {
  if (kind === 'pima') return 'extraLong';
  if (lengthIn <= twistFacts.shortStapleInches.value) return 'short';
  return lengthIn < twistFacts.longStapleInches.value ? 'medium' : 'long';
}

/** What a class card says, a line for each of its figures. */
export function CardReading({ card }: { readonly card: FibreCard }) {
  const { language, formats } = useWords();
  const { card: said } = benchWords(language);
  const { color, colorName } = colourOf(card.kind, card.reflectanceRd, card.yellownessB);
  const lines = [
    fill(said.said.length, {
      code: `${formats.count(stapleCode32nds(card.kind, card.lengthIn))}/32`,
      word: said.lengths[lengthWord(card)],
    }),
    fill(said.said.uniformity, { word: said.uniformity[uniformityWord(card.uniformityPercent)] }),
    fill(said.said.strength, { word: said.strength[strengthWord(card.strengthGPerTex)] }),
    fill(said.said.micronaire, { word: said.micronaire[micronaireClass(card.micronaire)] }),
    fill(said.said.color, { grade: `${color} (${colorName})` }),
    fill(said.said.leaf, { leaf: formats.count(card.leaf) }),
  ];
  return (
    <>
      <h4>{said.reads}</h4>
      <ul class="card-said">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </>
  );
}
