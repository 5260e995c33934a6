import type { FieldStop } from './field-season.ts';
import type { Growing } from './growing.ts';
import { heatNeeds } from './stages.ts';

/** Why a season ended without a boll to pick. */
export function fieldStop({ stages, heat, variety, killedYoung }: Growing, lastDay: number): FieldStop {
  const needs = heatNeeds(variety);
  const dd60 = heat.dd60[lastDay]!;
  if (stages.emerged < 0) return { station: 'planting', reason: 'neverEmerged', dd60, dd60Needed: needs.emerge };
  if (killedYoung) return { station: 'planting', reason: 'killedByFrost', dd60, dd60Needed: null };
  if (stages.firstSquare < 0) return { station: 'bloom', reason: 'neverSquared', dd60, dd60Needed: needs.square };
  if (stages.firstFlower < 0) return { station: 'bloom', reason: 'neverFlowered', dd60, dd60Needed: needs.flower };
  return { station: 'boll', reason: 'noBollOpened', dd60, dd60Needed: needs.open };
}
