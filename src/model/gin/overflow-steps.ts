/** The overflow hopper of one part at one moment, kg since the start. */
export interface HopperState {
  readonly fedKg: number;
  readonly toFeedersKg: number;
  readonly removedKg: number;
  readonly hopperKg: number;
}

/** An empty distributor. */
export const emptyHopper: HopperState = { fedKg: 0, toFeedersKg: 0, removedKg: 0, hopperKg: 0 };

/**
 * One step of time at the distributor: new feed comes, part of the hopper is blown back through the separator, the conveyor
 * drops its share of the sum into the hopper. At every step fed = to feeders + removed + in the hopper.
 * @param feedKg new feed in this step
 * @param share share of the conveyor's load that falls into the hopper
 * @param removedFraction what the separator takes of what is blown back
 * @param drawnFraction share of the hopper blown back in this step
 */
export function stepHopper(
  state: HopperState,
  feedKg: number,
  share: number,
  removedFraction: number,
  drawnFraction: number,
): HopperState {
  const drawnKg = state.hopperKg * drawnFraction;
  const takenOutKg = drawnKg * removedFraction;
  const distributedKg = feedKg + drawnKg - takenOutKg;
  const overflowKg = distributedKg * share;
  return {
    fedKg: state.fedKg + feedKg,
    toFeedersKg: state.toFeedersKg + distributedKg - overflowKg,
    removedKg: state.removedKg + takenOutKg,
    hopperKg: state.hopperKg - drawnKg + overflowKg,
  };
}
