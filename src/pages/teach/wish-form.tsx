import { useId } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import { farmOf, farms } from '../../model/farms.ts';
import { decodeRun, encodeRun } from '../../statechart/saved-run.ts';
import type { PlanWish } from '../../teach/plan/plan.ts';
import { proposePlan } from '../../teach/plan/propose-plan.ts';
import { audiences, focuses, segmentMinutes } from '../../teach/plan/stop.ts';
import { ChoiceRow } from '../../ui/choice-row.tsx';
import type { PlanHand } from './use-plan.ts';
import type { TeachWords } from './use-teach-words.ts';

export interface WishFormProps {
  readonly hand: PlanHand;
  readonly said: TeachWords['said'];
  readonly onTold: (line: string) => void;
}

/** How long, for whom, about what, and which season. A new wish is a new plan; the one before can be brought back. */
export function WishForm({ hand: { plan, set }, said, onTold }: WishFormProps) {
  const { formats, language, messages } = useWords();
  const id = useId();
  const wishFor = (some: Partial<PlanWish>) => {
    const { minutes, audience, focus, season } = plan;
    set(proposePlan({ minutes, audience, focus, ...some }, season));
    onTold('');
  };
  const { run } = decodeRun(plan.season);
  const own = farmOf(run.scenario.id) === undefined;
  return (
    <section class="patch teach-wish" data-cut="2" aria-label={said.wish}>
      <ChoiceRow
        label={said.minutesLabel}
        options={segmentMinutes.map((value) => ({ value, label: formats.count(value) }))}
        value={plan.minutes}
        onChoose={(minutes) => wishFor({ minutes })}
      />
      <ChoiceRow
        label={said.audienceLabel}
        options={audiences.map((value) => ({ value, label: said.audiences[value] }))}
        value={plan.audience}
        onChoose={(audience) => wishFor({ audience })}
      />
      <ChoiceRow
        label={said.focusLabel}
        options={focuses.map((value) => ({ value, label: said.focuses[value] }))}
        value={plan.focus}
        onChoose={(focus) => wishFor({ focus })}
      />
      <div class="teach-season">
        <div class="teach-field">
          <label class="control-label" for={`${id}-farm`}>
            {said.farmLabel}
          </label>
          <select
            id={`${id}-farm`}
            class="teach-typed"
            onChange={(event) => {
              const scenario = farmOf(event.currentTarget.value);
              if (scenario) set({ ...plan, season: encodeRun({ scenario, seed: run.seed }) });
            }}
          >
            {own ? (
              <option value={run.scenario.id} selected>
                {said.otherFarm}
              </option>
            ) : null}
            {farms.map((farm) => (
              <option key={farm.id} value={farm.id} selected={farm.id === run.scenario.id}>
                {farm.name[language]}
              </option>
            ))}
          </select>
        </div>
        <div class="teach-field">
          <label class="control-label" for={`${id}-seed`}>
            {messages.common.seed}
          </label>
          <input
            id={`${id}-seed`}
            class="teach-typed teach-seed"
            inputMode="numeric"
            autoComplete="off"
            maxLength={6}
            value={String(run.seed)}
            onChange={(event) => {
              const text = event.currentTarget.value.trim();
              if (/^\d{1,6}$/.test(text)) set({ ...plan, season: encodeRun({ ...run, seed: Number(text) }) });
              else event.currentTarget.value = String(run.seed);
            }}
          />
        </div>
      </div>
    </section>
  );
}
