import { useWords } from '../../../../language/words.ts';
import { clothWeightFacts } from '../../../../model/trace/cloth-weight-facts.ts';
import { clothNames } from '../../../../model/trace/cloth-weights.ts';
import { gsmFromOuncesPerSquareYard } from '../../../../model/units.ts';
import type { HandoutWords } from './handout-words.ts';

/** Named cloths by weight, lightest first, with their ranges, and how to tell what lies on the table. */
export function ClothHandout({ words: { own, cloths } }: { readonly words: HandoutWords }) {
  const { formats, messages } = useWords();
  const { cloth } = own;
  const [ounces, grams] = [messages.units.ouncesPerSquareYard.sign, messages.units.gramsPerSquareMetre.sign];
  const rows = [...clothNames].sort((a, b) => clothWeightFacts[a].value - clothWeightFacts[b].value);
  const metric = (value: number) => formats.count(gsmFromOuncesPerSquareYard(value));
  return (
    <>
      <p>{cloth.lead}</p>
      <table class="handout-table">
        <thead>
          <tr>
            <th scope="col">{cloth.name}</th>
            <th scope="col">{cloth.weight}</th>
            <th scope="col">{cloth.range}</th>
            <th scope="col">{cloth.have}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((name) => {
            const { value, range, mark } = clothWeightFacts[name];
            const isSoft = mark === 'memory' || (mark as string) === 'common practice';
            return (
              <tr key={name}>
                <th scope="row">{cloths[name]}</th>
                <td>
                  {`${formats.number(value, 1)} ${ounces} (${metric(value)} ${grams})`}
                  {isSoft ? ' ×' : ''}
                </td>
                <td>{`${formats.number(range[0], 1)}–${formats.number(range[1], 1)} (${metric(range[0])}–${metric(range[1])})`}</td>
                <td />
              </tr>
            );
          })}
        </tbody>
      </table>
      <p class="handout-note">{cloth.memory}</p>
      <h3>{cloth.look}</h3>
      <ul>
        {cloth.looks.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <p class="handout-room">{cloth.write}</p>
    </>
  );
}
