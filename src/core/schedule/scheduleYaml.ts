import { Document, isMap, visit, type YAMLMap } from "yaml";
import { hasHidden, hiddenEscaped } from "../document/hiddenEscaped.ts";
import {
  fahrenheitDeltaFromCelsiusDelta,
  fahrenheitFromCelsius,
  type TemperatureUnit,
} from "../units/temperature.ts";
import { bodyAsGiven } from "../ware/bodyAsGiven.ts";
import type { Schedule, Segment } from "./Schedule.ts";
import { ROOM_C } from "./scheduleFile.ts";

/**
 * A schedule as the text of its file, in its own unit; `parseSchedule` reads it back the same.
 * Numbers are written to a millionth of a degree, so that nothing a person wrote is lost; control
 * characters and what hides text are written as escapes, so that no terminal obeys them.
 */
export function scheduleYaml(schedule: Schedule): string {
  const document = new Document(fileOf(schedule), { aliasDuplicateObjects: false });
  const segments = document.get("segments", true) as { items: unknown[] } | undefined;
  for (const item of segments?.items ?? []) if (isMap(item)) item.flow = true;
  const ware = document.get("ware", true);
  if (isMap(ware)) setWare(ware);
  visit(document, {
    Scalar: (_, node) => {
      if (typeof node.value === "string" && hasHidden(node.value)) node.type = "QUOTE_DOUBLE";
    },
  });
  return hiddenEscaped(document.toString({ lineWidth: 0, defaultStringType: "PLAIN" }));
}

/** On one line; a body of one's own takes a line for each property. */
function setWare(ware: YAMLMap): void {
  const body = ware.get("body", true);
  ware.flow = !isMap(body);
  if (isMap(body)) for (const { value } of body.items) if (isMap(value)) value.flow = true;
}

function wareFileOf(ware: Schedule["ware"]): Record<string, unknown> {
  return {
    ...(ware.body && { body: bodyAsGiven(ware.body) }),
    ...(typeof ware.wallMm === "number" && { wall: rounded(ware.wallMm) }),
    ...(typeof ware.baseMm === "number" && { base: rounded(ware.baseMm) }),
    ...(ware.thickestMm !== null && { thickest: rounded(ware.thickestMm) }),
    ...(ware.widestMm !== null && { widest: rounded(ware.widestMm) }),
    ...(typeof ware.heightMm === "number" && { height: rounded(ware.heightMm) }),
    ...(ware.stands && { stands: ware.stands }),
    ...(typeof ware.shelfMm === "number" && { shelf: rounded(ware.shelfMm) }),
    ...(typeof ware.footGapMm === "number" && { footGap: rounded(ware.footGapMm) }),
    ...(ware.glazedSides && { glazedSides: ware.glazedSides }),
    ...(ware.state !== null && { state: ware.state }),
    ...(ware.crackle && { crackle: true }),
  };
}

function fileOf(schedule: Schedule): Record<string, unknown> {
  const { unit } = schedule;
  const wareFile = wareFileOf(schedule.ware);
  return {
    formatVersion: 1,
    title: schedule.title,
    unit,
    ...(schedule.cone !== null && { cone: schedule.cone }),
    ...(schedule.series !== "self-supporting" && { series: schedule.series }),
    ...(schedule.startC !== ROOM_C && { start: temperature(schedule.startC, unit) }),
    ...(Object.keys(wareFile).length > 0 && { ware: wareFile }),
    ...(schedule.kilnRatingC !== undefined && {
      kilnRating: temperature(schedule.kilnRatingC, unit),
    }),
    ...(schedule.thermocouple && {
      thermocouple: {
        type: schedule.thermocouple.type,
        ...(schedule.thermocouple.wireMm !== null && { wire: schedule.thermocouple.wireMm }),
      },
    }),
    segments: schedule.segments.map((segment) => segmentFile(segment, unit)),
    ...(schedule.notes !== null && { notes: schedule.notes }),
    ...(typeof schedule.basis === "string" && { basis: schedule.basis }),
  };
}

function segmentFile(segment: Segment, unit: TemperatureUnit): Record<string, unknown> {
  const { rateCPerHour: rate, holdSeconds } = segment;
  return {
    to: temperature(segment.toC, unit),
    rate: rate === "free" ? "free" : rateNumber(Math.abs(rate), unit),
    ...(holdSeconds > 0 && { hold: hold(holdSeconds) }),
    ...(segment.why !== null && { why: segment.why }),
  };
}

function temperature(tempC: number, unit: TemperatureUnit): number {
  return rounded(unit === "C" ? tempC : fahrenheitFromCelsius(tempC));
}

function rateNumber(rateCPerHour: number, unit: TemperatureUnit): number {
  return rounded(unit === "C" ? rateCPerHour : fahrenheitDeltaFromCelsiusDelta(rateCPerHour));
}

function hold(seconds: number): string {
  if (seconds % 60 !== 0) return `${rounded(seconds)} s`;
  const minutes = seconds / 60;
  const hours = Math.floor(minutes / 60);
  if (hours === 0) return `${minutes} min`;
  return minutes % 60 === 0 ? `${hours} h` : `${hours} h ${minutes % 60} min`;
}

function rounded(value: number): number {
  return Math.round(value * 1e6) / 1e6;
}
