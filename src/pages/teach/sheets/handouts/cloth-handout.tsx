import { useWords } from '../../../../language/words.ts';
import { catalogue } from '../../../../model/cloth/catalogue-facts.ts';
import { clothNames, clothOunces } from '../../../../model/trace/cloth-weights.ts';
import { gsmFromOuncesPerSquareYard } from '../../../../model/units.ts';
import type { HandoutWords } from './handout-words.ts';

/** Places for swatches on the second side. */
const swatches = [1, 2, 3, 4] as const;

/** Named cloths by weight, lightest first, with their threads, and how to tell what lies on the table. */
export function ClothHandout({ words: { own, cloths } }: { readonly words: HandoutWords }) {
  const { formats, messages } = useWords();
  const { cloth } = own;
  const [ounces, grams] = [messages.units.ouncesPerSquareYard.sign, messages.units.gramsPerSquareMetre.sign];
  const rows = clothNames
    .map((name) => ({ name, listed: catalogue[name], weight: clothOunces(name)! }))
    .sort((a, b) => a.weight - b.weight);
  const metric = (value: number) => formats.count(gsmFromOuncesPerSquareYard(value));
  return (
    <>
      <p>{cloth.lead}</p>
      <table class="handout-table">
        <thead>
          <tr>
            <th scope="col">{cloth.name}</th>
            <th scope="col">{cloth.weight}</th>
            <th scope="col">{cloth.threads}</th>
            <th scope="col">{cloth.have}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ name, listed, weight }) => (
            <tr key={name}>
              <th scope="row">{cloths[name]}</th>
              <td>{`${formats.number(weight, 1)} ${ounces} (${metric(weight)} ${grams})`}</td>
              <td>
                {listed.loopMm > 0
                  ? `${listed.warp}, ${cloth.loop} ${formats.number(listed.loopMm, 1)} mm`
                  : `${listed.warp} × ${listed.weft}, ${formats.number(listed.endsPerInch, 0)} × ${formats.number(listed.picksPerInch, 0)}`}
                {listed.mark === 'published' || listed.mark === 'derived' ? '' : ' ×'}
              </td>
              <td />
            </tr>
          ))}
        </tbody>
      </table>
      <p class="handout-note">{cloth.memory}</p>
      <h3 class="handout-next-side">{cloth.look}</h3>
      <ul>
        {cloth.looks.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <p>{cloth.write}</p>
      <ul class="handout-swatches">
        {swatches.map((swatch) => (
          <li key={swatch}>
            <span class="handout-swatch" />
            {cloth.swatchLines.map((line) => (
              <span key={line} class="handout-line">
                {line} <span class="sheet-blank" />
              </span>
            ))}
          </li>
        ))}
      </ul>
    </>
  );
}
