import { stringify } from "yaml";
import { heatworkOf } from "../../../src/core/cones/heatwork.ts";
import type { DemoFiring, HeardWhen, WrittenRecord } from "./DemoFiring.ts";
import type { Fired } from "./fire.ts";
import { clockTime, elapsedTime, isoDate, wallTimeAfter } from "./wallClock.ts";

/** The record of a demo firing as YAML, its cones bent by the heat that the ware felt. */
export function recordText(firing: DemoFiring, fired: Fired): string {
  const { title, schedule, kiln, thermocouple, found, notes, ...noted } = firing.noted;
  const unloaded = sampleBelow(fired, firing.unloadedBelowC);
  const record: WrittenRecord = {
    formatVersion: 1,
    title,
    invented: true,
    ...(schedule === undefined ? {} : { schedule }),
    kiln,
    thermocouple,
    witnessCones: firing.cones.map((cone) => ({ cone, bent: bentBy(fired, cone) })),
    ...noted,
    unloaded: {
      at: momentOf(firing, unloaded.seconds),
      temperature: `${Math.round(unloaded.readingC)} C`,
    },
    ...(firing.heard.length === 0 ? {} : { heard: heardIn(firing, fired, unloaded.seconds) }),
    ...(found === undefined ? {} : { found }),
    notes,
  };
  return stringify(record, { lineWidth: 96 });
}

function heardIn(firing: DemoFiring, fired: Fired, unloadedSeconds: number) {
  return firing.heard.map((sound) => ({
    what: sound.what,
    at: momentOf(firing, heardSeconds(fired, sound, unloadedSeconds)),
    ...(sound.note === undefined ? {} : { note: sound.note }),
  }));
}

/** How a cone beside the first thermocouple was found. */
function bentBy({ ware }: Fired, cone: string): string {
  const state = heatworkOf(ware, { series: "self-supporting" }).cones.find(
    (one) => one.cone === cone,
  );
  if (state === undefined) throw new RangeError(`bentBy: no cone ${cone}`);
  const reached = BENDS.findLast(([heatwork]) => state.heatwork >= heatwork);
  return reached?.[1] ?? "upright";
}

/** Share of a cone's heatwork from which it stands so, roughly: slow at first, fast after level. */
const BENDS = [
  [0.47, "1 o'clock"],
  [0.6, "2 o'clock"],
  [0.74, "3 o'clock"],
  [0.88, "4 o'clock"],
  [0.96, "5 o'clock"],
  [1, "down"],
] as const;

function heardSeconds(fired: Fired, sound: HeardWhen, unloadedSeconds: number): number {
  if (sound.belowC !== undefined) return sampleBelow(fired, sound.belowC).seconds;
  return unloadedSeconds + (sound.minutesAfterUnloading ?? 0) * 60;
}

/** First sample on the way down with a reading below so much. */
function sampleBelow({ samples }: Fired, belowC: number) {
  let peakC = Number.NEGATIVE_INFINITY;
  for (const { seconds, readingsC } of samples) {
    const readingC = readingsC[0] as number;
    peakC = Math.max(peakC, readingC);
    if (peakC > 900 && readingC < belowC) return { seconds, readingC };
  }
  throw new RangeError(`sampleBelow: never fell below ${belowC} °C`);
}

/** `2026-03-15 09:10`, or `+26:05` when the log has no clock. */
function momentOf({ start, moments }: DemoFiring, seconds: number): string {
  if (moments === "elapsed") return `+${elapsedTime(Math.round(seconds / 60) * 60).slice(0, -3)}`;
  const at = wallTimeAfter(start, Math.round(seconds / 60) * 60);
  return `${isoDate(at)} ${clockTime(at).slice(0, 5)}`;
}
