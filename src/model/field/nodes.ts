import { nodeFacts } from './facts.ts';

/**
 * New main-stem nodes of a day.
 * @param dd60 heat of the day
 * @param load set lint over what the field can carry; 0 before the first flower
 * @param supply water supply, 0 to 1; counts from the first flower
 * @param flowering whether the plant has bolls to feed
 */
export function newNodes(dd60: number, load: number, supply: number, flowering: boolean): number {
  const pace = Math.min(dd60 / nodeFacts.dd60PerNode.value, 1 / nodeFacts.leastDaysPerNode.value);
  return flowering ? pace * Math.max(0, 1 - load) * supply : pace;
}

/** Height a day's new nodes add, inches: a dry plant makes short joints. */
export const newHeightInches = (nodes: number, supply: number): number =>
  nodes *
  nodeFacts.internodeInches.value *
  (nodeFacts.dryInternodeShare.value + (1 - nodeFacts.dryInternodeShare.value) * supply);
