import { freeMinutes, type Plan } from '../../teach/plan/plan.ts';
import { stopOf } from '../../teach/plan/stop-list.ts';

export interface PlanStripProps {
  readonly plan: Plan;
  /** The stop that is on; those before it are done. Absent where nothing has begun. */
  readonly now?: number;
}

/** A plan as a strip of cloth pieces, each as long as its minutes; the list beside it says the same in words. */
export function PlanStrip({ plan, now }: PlanStripProps) {
  const free = freeMinutes(plan);
  return (
    <div class="plan-strip" aria-hidden="true">
      {plan.stops.map(({ id, minutes }, place) => (
        <span
          key={id}
          class="plan-piece"
          data-kind={stopOf(id)?.aim.kind}
          data-state={now === undefined ? undefined : place < now ? 'done' : place === now ? 'now' : 'later'}
          style={{ flexGrow: minutes }}
        >
          <b>{place + 1}</b>
        </span>
      ))}
      {free > 0 ? <span class="plan-piece" data-kind="free" style={{ flexGrow: free }} /> : null}
    </div>
  );
}
