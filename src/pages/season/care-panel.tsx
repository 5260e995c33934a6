import type { Messages } from '../../language/messages/en.ts';
import { useWords } from '../../language/words.ts';
import type { Scenario } from '../../model/scenario.ts';
import type { StationId } from '../../model/station.ts';

type Caution = Exclude<keyof Messages['cautions'], 'heading' | 'rules'>;
type Limit = Exclude<keyof Messages['limits'], 'heading'>;

/** Where work can hurt, the usual caution stands beside it. */
const cautionsAt: Readonly<Partial<Record<StationId, readonly Caution[]>>> = {
  planting: ['seed', 'permit'],
  boll: ['harvestAid'],
  module: ['module'],
  cleaning: ['gin'],
  ginning: ['gin'],
  pressing: ['gin'],
  sewing: ['rotaryCutter', 'iron', 'sleepwear'],
};

/** What the model does not get right, or simplifies, where it shows. */
function limitsAt(station: StationId, { climate, era }: Scenario): readonly Limit[] {
  const inField = station === 'planting' || station === 'bloom' || station === 'boll';
  if (inField && climate === 'highPlains') return ['drylandYield'];
  if (inField && climate === 'lowDesert') return ['desertOpening'];
  if (station === 'classing') return era === 'present' ? ['colorChart', 'couplings', 'micronaire'] : ['couplings'];
  return station === 'weaving' ? ['threadCount'] : [];
}

/** Cautions and honest limits of a station; nothing where there are none. */
export function CarePanel({ station, scenario }: { readonly station: StationId; readonly scenario: Scenario }) {
  const { messages } = useWords();
  const cautions = cautionsAt[station] ?? [];
  const limits = limitsAt(station, scenario);
  return (
    <>
      {cautions.length > 0 ? (
        <section class="care-panel" aria-label={messages.cautions.heading}>
          <h3>{messages.cautions.heading}</h3>
          <ul>
            {cautions.map((caution) => (
              <li key={caution}>{messages.cautions[caution]}</li>
            ))}
          </ul>
          <p>{messages.cautions.rules}</p>
        </section>
      ) : null}
      {limits.length > 0 ? (
        <section class="care-panel" aria-label={messages.limits.heading}>
          <h3>{messages.limits.heading}</h3>
          <ul>
            {limits.map((limit) => (
              <li key={limit}>{messages.limits[limit]}</li>
            ))}
          </ul>
        </section>
      ) : null}
    </>
  );
}
