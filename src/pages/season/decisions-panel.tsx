import { useWords } from '../../language/words.ts';
import { type Decision, decisionTable } from '../../model/decisions.ts';
import { mostLintCleaners } from '../../model/gin/lint-cleaner-limit.ts';
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

/** What a gin of the 1930s did not have to decide: there was no such machine, or only one way. */
export const notInTheThirties: readonly string[] = [
  'module/kind',
  'cleaning/dryers',
  'cleaning/dryerAirF',
  'ginning/lintCleaner',
  'ginning/lintCleaners',
  'ginning/moistureAddedPoints',
  'pressing/restoreToPercent',
  'classing/moduleAveraging',
];

/** A decision as it stands here: another decision may lower its limit. */
function allowedHere(scenario: Scenario, key: string, decision: Decision): Decision {
  if (key !== 'lintCleaners' || decision.kind !== 'number') return decision;
  return { ...decision, high: mostLintCleaners(scenario.decisions.ginning.lintCleaner) };
}

/** The one to four decisions of a station. */
export function DecisionsPanel({ scenario, station, onDecide }: DecisionsPanelProps) {
  const { messages } = useWords();
  const decisions = Object.entries(decisionTable[station]) as [string, Decision][];
  const values = scenario.decisions[station] as Readonly<Record<string, number | string | boolean>>;
  return (
    <section class="decisions-panel" aria-label={messages.scenes.change}>
      {decisions.map(([key, anywhere]) => {
        if (scenario.era === 'thirties' && notInTheThirties.includes(`${station}/${key}`)) return null;
        const decision = allowedHere(scenario, key, anywhere);
        const value = values[key]!;
        return (
          <DecisionControl
            key={key}
            station={station}
            decisionKey={key}
            decision={decision}
            value={decision.kind === 'number' ? Math.min(Number(value), decision.high) : value}
            onDecide={(chosen) => onDecide(key, chosen)}
            disabled={isIdle(scenario, station, key)}
          />
        );
      })}
    </section>
  );
}
