import { fill } from '../../../../language/fill.ts';
import { useWords } from '../../../../language/words.ts';
import { stationIds } from '../../../../model/station.ts';
import { stationReadings } from '../../../season/station-readings.ts';
import type { HandoutProps } from './handout-words.ts';

/** Figures of each station on this page; all of them have a page of their own. */
const figuresShown = 2;

/** The twelve stations with what happens and two figures of a season. */
export function ChainHandout({ words: { own }, told }: HandoutProps) {
  const words = useWords();
  const { chain } = own;
  const { season, run } = told;
  return (
    <>
      <p>{fill(chain.lead, { farm: run.scenario.name[words.language], seed: String(run.seed) })}</p>
      <table class="handout-table">
        <thead>
          <tr>
            <th scope="col">{chain.station}</th>
            <th scope="col">{chain.happens}</th>
            <th scope="col">{chain.season}</th>
          </tr>
        </thead>
        <tbody>
          {stationIds.map((station, i) => (
            <tr key={station}>
              <th scope="row">
                {i + 1}. {words.messages.stations[station].name}
              </th>
              <td>{chain.lines[station]}</td>
              <td>
                {stationReadings(season, station, words)
                  .slice(0, figuresShown)
                  .map(({ key, label, text, trust }) => (
                    <p key={key}>
                      {label}: <b class="no-wrap">{text}</b>
                      {trust ? ' ×' : ''}
                    </p>
                  ))}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>{chain.sums}</p>
      <p class="handout-note">× {own.rests}</p>
    </>
  );
}
