import type { LogReading } from "../../src/core/log/reading/LogReading.ts";
import { readLog } from "../../src/core/log/readLog.ts";
import { fahrenheitFromCelsius } from "../../src/core/units/temperature.ts";
import { splitQuoted } from "../../src/node/readLogChunks.ts";
import type { Leg } from "./demo/controller.ts";
import { type FiringPlan, fire, type Sample } from "./demo/fire.ts";
import { OLD_HILDA } from "./demo/oldHilda.ts";
import { THIN_K } from "./demo/probes.ts";
import { valued } from "./schedules.ts";

/** A plain firing to cone 5: in its first ramp to 1.5 h, at its top from 7.6 to 7.9 h. */
export const CLIMB: readonly Leg[] = [
  { toC: 105, rateCPerHour: 55 },
  { toC: 1095, rateCPerHour: 195 },
  { toC: 1175, rateCPerHour: 85, holdMinutes: 15 },
];

/** What a logger writes beside the temperature, and how. */
export interface Columns {
  readonly setPoint?: boolean;
  readonly output?: boolean;
  readonly unit?: "C" | "F";
  /** What stands for the set point once the programme has ended. */
  readonly ended?: "0" | "";
  /** Changes what is written of a sample, so that a column lies. */
  readonly changed?: (sample: Sample, row: number) => Sample;
}

/** Old Hilda on a cone 5 programme, read every minute with the usual noise, unless a test says otherwise. */
export function samplesOf(parts: Partial<FiringPlan> = {}): readonly Sample[] {
  return fire({
    ...OLD_HILDA,
    seed: 1186,
    roomC: 18,
    legs: CLIMB,
    probes: [THIN_K],
    stopBelowC: 90,
    intervalSeconds: 60,
    ...parts,
  }).samples;
}

/** Samples as the text of a log. */
function logText(samples: readonly Sample[], columns: Columns = {}): string {
  const {
    setPoint = true,
    output = true,
    unit = "C",
    ended = "0",
    changed = (each) => each,
  } = columns;
  const degrees = (tempC: number) =>
    (unit === "F" ? fahrenheitFromCelsius(tempC) : tempC).toFixed(1);
  const zones = samples[0]?.readingsC.length ?? 1;
  const names = zones === 1 ? [`Kiln (°${unit})`] : [`Top (°${unit})`, `Bottom (°${unit})`];
  const head = [
    "Time",
    ...names,
    ...(setPoint ? [`Set point (°${unit})`] : []),
    ...(output ? ["Output (%)"] : []),
  ];
  const rows = samples.map((sample, row) => {
    const { seconds, readingsC, setC, output: share } = changed(sample, row);
    const minutes = Math.floor(seconds / 60);
    const clock = [Math.floor(minutes / 60), minutes % 60, Math.round(seconds % 60)]
      .map((part) => String(part).padStart(2, "0"))
      .join(":");
    return [
      clock,
      ...readingsC.map(degrees),
      ...(setPoint ? [setC === null ? ended : degrees(setC)] : []),
      ...(output ? [(100 * share).toFixed(0)] : []),
    ].join(",");
  });
  return `${[head.join(","), ...rows].join("\n")}\n`;
}

/** The same, read. */
export function strayReading(samples: readonly Sample[], columns: Columns = {}): LogReading {
  const bytes = new TextEncoder().encode(logText(samples, columns));
  return valued(readLog(bytes, { name: "firing.csv" }, splitQuoted));
}

/** The samples up to a moment [h]. */
export function until(samples: readonly Sample[], hours: number): readonly Sample[] {
  return samples.filter(({ seconds }) => seconds <= hours * 3600);
}
