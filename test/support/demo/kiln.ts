import { kelvinFromCelsius } from "../../../src/core/units/temperature.ts";

/** What a kiln is made of, as far as heat goes. */
export interface KilnBuild {
  /** Elements, new and at full power [W]. */
  readonly powerWatt: number;
  /** Hot mass: ware, furniture and the inner face of the brick [J/K]. */
  readonly hotJoulePerK: number;
  /** The brick behind it [J/K]. */
  readonly brickJoulePerK: number;
  /** From hot mass to brick [W/K]. */
  readonly inwardWattPerK: number;
  /** From brick to room [W/K]. */
  readonly outwardWattPerK: number;
  /** Leaks that radiate straight into the room [m²]. */
  readonly leakM2: number;
}

/** How far the kiln is open: through convection and through radiation. */
export interface Opening {
  readonly wattPerK: number;
  readonly m2: number;
}

/** Temperatures inside [°C]. */
export interface KilnState {
  readonly hotC: number;
  readonly brickC: number;
}

/** What acts on a kiln for a moment. */
export interface KilnMoment {
  /** Share of full power, worn elements counted, 0–1. */
  readonly power: number;
  readonly roomC: number;
  readonly opening: Opening;
  readonly seconds: number;
}

/** An invented 180-litre top loader with 75 mm of firebrick and 10.5 kW, half-full of ware. */
export const TOP_LOADER_180: KilnBuild = {
  powerWatt: 10_500,
  hotJoulePerK: 88_000,
  brickJoulePerK: 52_000,
  inwardWattPerK: 13,
  outwardWattPerK: 6.6,
  leakM2: 0.0052,
};

/** An invented 60-litre test kiln with 4.4 kW. */
export const TEST_KILN_60: KilnBuild = {
  powerWatt: 4_400,
  hotJoulePerK: 27_000,
  brickJoulePerK: 24_000,
  inwardWattPerK: 6,
  outwardWattPerK: 3.1,
  leakM2: 0.0026,
};

/** A kiln with its lid and vents shut. */
export const SHUT: Opening = { wattPerK: 0, m2: 0 };

const STEFAN_BOLTZMANN = 5.670374e-8;

/** The kiln a moment later: two masses, conduction through the brick, radiation and draught to the room. */
export function kilnAfter(build: KilnBuild, state: KilnState, moment: KilnMoment): KilnState {
  const { hotC, brickC } = state;
  const { opening, roomC, seconds } = moment;
  const inward = build.inwardWattPerK * (hotC - brickC);
  const outward = build.outwardWattPerK * (brickC - roomC);
  const radiated =
    STEFAN_BOLTZMANN *
    (build.leakM2 + opening.m2) *
    (kelvinFromCelsius(hotC) ** 4 - kelvinFromCelsius(roomC) ** 4);
  const draught = opening.wattPerK * (hotC - roomC);
  const heated = build.powerWatt * moment.power;
  return {
    hotC: hotC + ((heated - inward - radiated - draught) * seconds) / build.hotJoulePerK,
    brickC: brickC + ((inward - outward) * seconds) / build.brickJoulePerK,
  };
}
