import { useMemo } from 'preact/hooks';
import { reaches, reachMm } from '../../../kiosk/reach.ts';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { reachScene, reachSize } from '../../../scene/kiosk/reach-scene.ts';
import { paintSvg } from '../../../scene/paint-svg.ts';
import { Picture } from '../../../ui/picture.tsx';
import type { KioskSheetWords } from './use-setup-words.ts';

/** Heights and reach: the drawing to scale, and the same figures as a table with their sources. */
export function ReachPart({ words }: { readonly words: KioskSheetWords['parts']['reach'] }) {
  const { formats } = useWords();
  const svg = useMemo(() => {
    const { bars, keys, floor } = words;
    const shown = reaches.flatMap(({ who, ...heights }) => (who === 'deep' ? [] : [{ ...heights, who: bars[who] }]));
    return paintSvg(reachScene({ bars: shown, labels: { keys, floor } }), { ...reachSize, theme: 'day' });
  }, [words]);
  const inches = (value: number) => fill(words.inches, { n: formats.number(value, 0) });
  return (
    <>
      <Picture svg={svg} alt={words.drawing} class="reach-picture" />
      <table class="reach-table">
        <caption>{words.table}</caption>
        <thead>
          <tr>
            <th scope="col">{words.who}</th>
            <th scope="col">{words.low}</th>
            <th scope="col">{words.high}</th>
            <th scope="col">{words.mm}</th>
            <th scope="col">{words.source}</th>
          </tr>
        </thead>
        <tbody>
          {reaches.map(({ who, lowInches, highInches, clause, mark }) => (
            <tr key={who}>
              <th scope="row">{words.rows[who]}</th>
              <td>{inches(lowInches)}</td>
              <td>{inches(highInches)}</td>
              <td>{fill(words.span, { low: String(reachMm(lowInches)), high: String(reachMm(highInches)) })}</td>
              <td>
                {clause}
                {mark === 'memory' ? `, ${words.memory}` : ''}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}
