import type { Caution } from "../cautions/cautions.ts";
import type { Curve } from "../curve/Curve.ts";
import type { Finding } from "../findings/Finding.ts";
import { kelvinFromCelsius } from "../units/temperature.ts";
import type { TwoNodeFit } from "./twoNode.ts";

/** What a controller asked of the elements: share of full power, 0–1, reading by reading. */
export interface OutputSeries {
  /** Seconds from the start of the same log, strictly rising. */
  readonly timesSeconds: Float64Array;
  readonly fraction: Float64Array;
}

/** One logged firing, as a kiln is learned from it. */
export interface KilnFiring {
  readonly name: string;
  /** The hottest thermocouple. */
  readonly curve: Curve;
  /** Null when the log has no output column. */
  readonly output: OutputSeries | null;
  /** Wall time of the first reading, `2026-03-14T17:05:00`, or null. */
  readonly start: string | null;
  /** Which kiln it was, as the record says; null when nobody noted it. */
  readonly kiln?: string | null;
  /** What its witness cones allow the thermocouple to be out by [K]; left out where none stood in it. */
  readonly offset?: { readonly lowK: number | null; readonly highK: number | null };
}

/** What a person may say of the kiln that no log can. */
export interface LearnOptions {
  /** Wattage of the elements when new [W]; without it there is no energy. */
  readonly powerWatt?: number;
  /** Price of a kilowatt-hour, in whatever money. */
  readonly tariffPerKWh?: number;
}

/** When a firing had fallen to a temperature after its peak. */
export interface CooledTo {
  readonly tempC: number;
  /** From the peak [s]. */
  readonly secondsFromPeak: number;
  /** Read in the log, or worked out from its last reading, lid shut and power off. */
  readonly how: "measured" | "worked out";
}

/** How hard the elements pulled in a stretch of temperature. */
export interface PullAt {
  readonly lowC: number;
  readonly highC: number;
  /** Power over heat capacity [K/s]. */
  readonly pullKPerSecond: number;
}

/** What one firing says of its kiln. */
export interface LearnedFiring {
  readonly name: string;
  readonly start: string | null;
  readonly roomC: number;
  readonly peakC: number;
  readonly peakAtSeconds: number;
  /** Fall by itself at 573 and at 226 °C [°C/h, positive]; null where it was not seen falling by itself. */
  readonly fallAtQuartzCPerHour: number | null;
  readonly fallAtCristobaliteCPerHour: number | null;
  /** How falling by itself was told from a controlled fall; null when none was found. */
  readonly coolingFrom: "output" | "shape" | null;
  /** First sign that the lid or a vent was opened [s]; nothing after it is learned from. */
  readonly openedAtSeconds: number | null;
  readonly cooledTo: readonly CooledTo[];
  readonly pulls: readonly PullAt[];
  /** Share of the time up to the peak with the elements fully on; null without an output column. */
  readonly fullOnFraction: number | null;
  /** Scatter of the thermocouple [K], one sigma. */
  readonly noiseK: number;
  /** Null without a wattage or without an output column. */
  readonly energyKWh: number | null;
  /** Energy at the tariff; null without one of the two. */
  readonly cost: number | null;
}

/** Speed of the kiln at a temperature, positive both ways [°C/h]. */
export interface ReachRow {
  readonly tempC: number;
  /** Fastest climb seen, over half an hour; null where no log climbed. */
  readonly seenCPerHour: number | null;
  /** Climb with everything on, as predicted; 0 where the kiln can only hold or not even that. */
  readonly climbCPerHour: number;
  /** Fall by itself, lid shut. */
  readonly fallCPerHour: number;
}

/** A kiln as its logs show it. Its constants fit the logs; they are no properties of the kiln. */
export interface LearnedKiln {
  /** In order of their start where it is known. */
  readonly firings: readonly LearnedFiring[];
  readonly roomC: number;
  readonly cooling: CoolingConstants & {
    readonly lowestC: number;
    readonly highestC: number;
    readonly firings: readonly string[];
  };
  readonly power: {
    /** Power over heat capacity [K/s]. */
    readonly pullKPerSecond: number;
    /** From the output column, or from the fastest climb; then it is the least that the kiln can do. */
    readonly from: "output" | "fastest climb";
    readonly firing: string;
  };
  /** Hot mass and brick apart; null when no log carries it. */
  readonly twoNode: (TwoNodeFit & { readonly firing: string }) | null;
  readonly reach: readonly ReachRow[];
  /** Hottest that the balance can hold with everything on [°C]. */
  readonly ceilingC: number;
  readonly powerWatt: number | null;
  readonly tariffPerKWh: number | null;
  readonly findings: readonly Finding[];
  readonly cautions: readonly Caution[];
}

/** Stefan–Boltzmann constant [W/m²K⁴], CODATA 2018. */
export const STEFAN_BOLTZMANN = 5.670374419e-8;

/** The two ways in which a kiln loses heat, each over its heat capacity. */
export interface CoolingConstants {
  /** Conduction through the brick over heat capacity [1/s]. */
  readonly conductionPerSecond: number;
  /** Radiating area over heat capacity [m²·K/J]. */
  readonly radiationM2KPerJ: number;
}

/** What a black square metre at one temperature radiates to the room [W/m²]. */
export function radiatedWattPerM2(tempC: number, roomC: number): number {
  return (
    STEFAN_BOLTZMANN *
    (fourthPower(kelvinFromCelsius(tempC)) - fourthPower(kelvinFromCelsius(roomC)))
  );
}

/** By multiplying: `** 4` is not the same to the last digit in every engine. */
function fourthPower(value: number): number {
  const square = value * value;
  return square * square;
}

/** Fall by itself at a temperature [K/s, positive], by conduction and radiation to a room [°C]. */
export function lossKPerSecond(constants: CoolingConstants, tempC: number, roomC: number): number {
  return (
    constants.conductionPerSecond * (tempC - roomC) +
    constants.radiationM2KPerJ * radiatedWattPerM2(tempC, roomC)
  );
}

/** Bricks are still soaking up heat above this [°C], which one temperature cannot say … */
const SOAKING_FROM_C = 1000;

/** … so that a kiln climbs there at only this share of what the balance gives. */
const SOAKING_FACTOR = 0.85;

/** Share of the climb that the balance gives which a kiln really makes at a temperature [°C]. */
export function climbShare(tempC: number): number {
  return tempC > SOAKING_FROM_C ? SOAKING_FACTOR : 1;
}

/** How fast a kiln heats with everything on, and falls with everything off. */
export interface AssumedKiln {
  /** Fastest heating at a temperature [°C/h, positive]. */
  readonly fullHeatingCPerHour: (tempC: number) => number;
  /** Fall by itself at a temperature, lid shut [°C/h, positive]. */
  readonly naturalCoolingCPerHour: (tempC: number) => number;
  /** Heat that the loaded kiln takes up [J/K]; absent while it is not known, and energy with it. */
  readonly heatCapacityJPerK?: number;
  /** The user's own kiln, when it was learned from logs: whole firings are predicted by it. */
  readonly learned?: LearnedKiln;
  /** What kiln that is and where its numbers come from; a clause to put in a sentence. */
  readonly basis: string;
}

/** Room that the reference kiln stands in [°C]. */
const ROOM_C = 25;

/** Conduction and radiation of the reference kiln. */
const COOLING: CoolingConstants = { conductionPerSecond: 3.7e-5, radiationM2KPerJ: 4.2e-8 };

/** Heat that the loaded reference kiln takes up [J/K]. */
const HEAT_CAPACITY_J_PER_K = 122_000;

/** Power over heat capacity [K/s]: 10.5 kW on 122 kJ/K. */
const POWER_K_PER_SECOND = 10_500 / HEAT_CAPACITY_J_PER_K;

/**
 * A loaded studio kiln to stand in while the user's own is unknown: 180 L, 75 mm of firebrick,
 * 10.5 kW, 40 kg of ware and 45 kg of furniture. Loss = conduction + radiation, as in
 * C·dT/dt = P − UA·(T − Ta) − σA(T⁴ − Ta⁴), each over C. The constants were fitted to a simulated
 * firing of that kiln and are simulated, not measured; studio logs differ by a factor of two.
 */
export const REFERENCE_KILN: AssumedKiln = {
  fullHeatingCPerHour: (tempC) =>
    3600 * climbShare(tempC) * (POWER_K_PER_SECOND - lossKPerSecond(COOLING, tempC, ROOM_C)),
  naturalCoolingCPerHour: (tempC) => 3600 * lossKPerSecond(COOLING, tempC, ROOM_C),
  heatCapacityJPerK: HEAT_CAPACITY_J_PER_K,
  basis:
    "a loaded 180 L kiln with 75 mm of firebrick and 10.5 kW, simulated, not measured; a light kiln falls up to twice as fast",
};
