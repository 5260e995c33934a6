import { useState } from 'preact/hooks';
import { keptTallies, resetTallies } from '../../../kiosk/tallies.ts';
import { talliesCsv, tallyRows } from '../../../kiosk/tallies-csv.ts';
import { fill } from '../../../language/fill.ts';
import type { Language } from '../../../language/language.ts';
import { useWords, type Words } from '../../../language/words.ts';
import type { StationId } from '../../../model/station.ts';
import { PatchButton } from '../../../ui/patch-button.tsx';
import { saveFile } from '../../save-file.ts';
import type { SetupWords } from './use-setup-words.ts';

/** What was counted, in words. */
function named(what: string, said: SetupWords['tallies'], { messages }: Words): string {
  const [kind, name = ''] = what.split(':');
  if (kind === 'language')
    return fill(said.language, { language: messages.common.languages[name as Language] ?? name });
  if (kind === 'station') return fill(said.station, { station: messages.stations[name as StationId].name });
  return kind === 'finished' ? said.finished : said.visit;
}

/** What the kiosk has counted; forgotten only when asked twice. */
export function CountsPart({ said: { tallies: said } }: { readonly said: SetupWords }) {
  const words = useWords();
  const [tallies, setTallies] = useState(keptTallies);
  const [asked, setAsked] = useState(false);
  const rows = tallyRows(tallies);
  return (
    <section class="setup-part" aria-labelledby="setup-counts">
      <h2 id="setup-counts">{said.heading}</h2>
      <p>{said.help}</p>
      {rows.length === 0 ? <p class="caption">{said.none}</p> : null}
      {rows.length > 0 ? (
        <>
          <table class="setup-counts">
            <thead>
              <tr>
                <th scope="col">{said.what}</th>
                <th scope="col" class="number">
                  {said.count}
                </th>
                <th scope="col" class="number">
                  {said.mean}
                </th>
              </tr>
            </thead>
            <tbody>
              {rows.map(({ what, count, meanSeconds }) => (
                <tr key={what}>
                  <th scope="row">{named(what, said, words)}</th>
                  <td class="number">{words.formats.count(count)}</td>
                  <td class="number">{meanSeconds === null ? '' : words.formats.number(meanSeconds, 1)}</td>
                </tr>
              ))}
            </tbody>
          </table>
          <div class="setup-row">
            <PatchButton
              onPress={() =>
                saveFile('seamfield-kiosk-counts.csv', new Blob([talliesCsv(tallies)], { type: 'text/csv' }))
              }
            >
              {said.save}
            </PatchButton>
            {asked ? (
              <>
                <PatchButton
                  onPress={() => {
                    resetTallies();
                    setTallies(keptTallies());
                    setAsked(false);
                  }}
                >
                  {said.sure}
                </PatchButton>
                <PatchButton onPress={() => setAsked(false)}>{said.keep}</PatchButton>
              </>
            ) : (
              <PatchButton onPress={() => setAsked(true)}>{said.reset}</PatchButton>
            )}
          </div>
        </>
      ) : null}
    </section>
  );
}
