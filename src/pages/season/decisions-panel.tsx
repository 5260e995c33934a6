import { useWords } from '../../language/words.ts';
import { type Decision, decisionTable } from '../../model/decisions.ts';
import type { Scenario } from '../../model/scenario.ts';
import type { StationId } from '../../model/station.ts';
import { DecisionControl } from '../../ui/decision-control.tsx';

export interface DecisionsPanelProps {
  readonly scenario: Scenario;
  readonly station: StationId;
  readonly onDecide: (key: string, value: number | string | boolean) => void;
}

/** Decisions that another decision switches off: they stay in sight and say so by being still. */
function isIdle(scenario: Scenario, station: StationId, key: string): boolean {
  const { harvest, ginning, spinning, weaving, cleaning } = scenario.decisions;
  if (station === 'harvest' && key === 'pickings') return harvest.method !== 'hand';
  if (station === 'cleaning' && key === 'dryerAirF') return cleaning.dryers === 0;
  if (station === 'ginning' && key === 'lintCleaner') return ginning.lintCleaners === 0;
  if (station === 'spinning' && key === 'noilPercent') return spinning.system !== 'ringCombed';
  if (station === 'weaving' && (key === 'endsPerInch' || key === 'picksPerInch')) return weaving.structure === 'jersey';
  return false;
}

/** The one to four decisions of a station. */
export function DecisionsPanel({ scenario, station, onDecide }: DecisionsPanelProps) {
  const { messages } = useWords();
  const decisions = Object.entries(decisionTable[station]) as [string, Decision][];
  const values = scenario.decisions[station] as Readonly<Record<string, number | string | boolean>>;
  return (
    <section class="decisions-panel" aria-label={messages.scenes.change}>
      <p class="instruction">{messages.stations[station].instruction}</p>
      {decisions.map(([key, decision]) => (
        <DecisionControl
          key={key}
          station={station}
          decisionKey={key}
          decision={decision}
          value={values[key]!}
          onDecide={(value) => onDecide(key, value)}
          disabled={isIdle(scenario, station, key)}
        />
      ))}
    </section>
  );
}
