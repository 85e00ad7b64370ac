import { radiatedWattPerM2 } from "./heatBalance.ts";

/** Hot mass and brick apart, each constant over a heat capacity. They fit a log; they are not physical. */
export interface TwoNodeConstants {
  /** Power over the heat capacity of the hot mass [K/s]. */
  readonly pullKPerSecond: number;
  /** From hot mass to brick, over the heat capacity of the hot mass [1/s]. */
  readonly inwardPerSecond: number;
  /** From hot mass to brick, over the heat capacity of the brick [1/s]. */
  readonly soakPerSecond: number;
  /** From brick to room, over the heat capacity of the brick [1/s]. */
  readonly outwardPerSecond: number;
  /** Straight from the hot mass to the room by radiation, over its heat capacity [m²·K/J]. */
  readonly radiationM2KPerJ: number;
}

/** What a two-node fit gives. */
export interface TwoNodeFit extends TwoNodeConstants {
  /** How late the reading follows the hot mass: thermocouple, sheath and the air around it [s]. */
  readonly lagSeconds: number;
  /** Root mean square distance from the log [K]. */
  readonly rmsK: number;
}

/** Temperatures of the two [°C]. */
export interface KilnState {
  readonly hotC: number;
  readonly brickC: number;
}

/** What changes a kiln's state: share of full power, 0–1, and the room [°C]. */
export interface KilnDrive {
  readonly output: number;
  readonly roomC: number;
}

/** How fast both temperatures change [K/s]. */
export type KilnRates = (state: KilnState, drive: KilnDrive) => KilnState;

/** The two-node heat balance. */
export function twoNodeRates(constants: TwoNodeConstants): KilnRates {
  const { pullKPerSecond, inwardPerSecond, soakPerSecond, outwardPerSecond, radiationM2KPerJ } =
    constants;
  return ({ hotC, brickC }, { output, roomC }) => ({
    hotC:
      pullKPerSecond * output -
      inwardPerSecond * (hotC - brickC) -
      radiationM2KPerJ * radiatedWattPerM2(hotC, roomC),
    brickC: soakPerSecond * (hotC - brickC) - outwardPerSecond * (brickC - roomC),
  });
}

/** The state so many seconds later, by one classical Runge–Kutta step. */
export function stateAfter(
  rates: KilnRates,
  state: KilnState,
  drive: KilnDrive,
  seconds: number,
): KilnState {
  const along = (slope: KilnState, share: number): KilnState => ({
    hotC: state.hotC + slope.hotC * seconds * share,
    brickC: state.brickC + slope.brickC * seconds * share,
  });
  const k1 = rates(state, drive);
  const k2 = rates(along(k1, 0.5), drive);
  const k3 = rates(along(k2, 0.5), drive);
  const k4 = rates(along(k3, 1), drive);
  const mean = (of: (k: KilnState) => number) => (of(k1) + 2 * of(k2) + 2 * of(k3) + of(k4)) / 6;
  return along({ hotC: mean((k) => k.hotC), brickC: mean((k) => k.brickC) }, 1);
}
