import { type PingSettings, USUAL_SETTINGS } from "../core/pings/Ping.ts";
import { failed, ok, type Problem, type Result } from "../core/problem.ts";
import { writtenQuantity } from "../core/units/parseQuantity.ts";

/** What the command line says about how clicks are told from the rest. */
export interface PingSettingOptions {
  readonly threshold?: string;
  readonly attack?: string;
  readonly apart?: string;
  readonly floor?: string;
}

interface Asked {
  readonly option: string;
  readonly units: Readonly<Record<string, number>>;
  readonly least: number;
  readonly most: number;
  readonly example: string;
}

const DECIBELS = { db: 1, "": 1 };
const TIMES = { ms: 0.001, s: 1 };

const ASKED: Readonly<Record<keyof PingSettingOptions, Asked>> = {
  threshold: { option: "--threshold", units: DECIBELS, least: 3, most: 80, example: "12dB" },
  attack: { option: "--attack", units: DECIBELS, least: 1, most: 60, example: "7dB" },
  apart: { option: "--apart", units: TIMES, least: 0.01, most: 5, example: "60ms" },
  floor: { option: "--floor", units: TIMES, least: 2, most: 60, example: "10s" },
};

/** How clicks are told from the rest, what was not given being the usual; all problems at once. */
export function pingSettingsFrom(given: PingSettingOptions): Result<PingSettings> {
  const values: Partial<Record<keyof PingSettingOptions, number>> = {};
  const problems: Problem[] = [];
  for (const name of Object.keys(ASKED) as (keyof PingSettingOptions)[]) {
    const text = given[name];
    if (text === undefined) continue;
    const value = settingOf(text, ASKED[name]);
    if (value.ok) values[name] = value.value;
    else problems.push(...value.problems);
  }
  if (problems.length > 0) return failed(...problems);
  return ok({
    thresholdDb: values.threshold ?? USUAL_SETTINGS.thresholdDb,
    attackDb: values.attack ?? USUAL_SETTINGS.attackDb,
    apartSeconds: values.apart ?? USUAL_SETTINGS.apartSeconds,
    floorSeconds: values.floor ?? USUAL_SETTINGS.floorSeconds,
  });
}

function settingOf(text: string, { option, units, least, most, example }: Asked): Result<number> {
  const written = writtenQuantity(text);
  const value = written ? written.value * (units[written.unit] ?? Number.NaN) : Number.NaN;
  if (value >= least && value <= most) return ok(value);
  const [unit] = Object.keys(units) as [string];
  const factor = units[unit] as number;
  const bounds = `${least / factor} to ${most / factor} ${unit === "db" ? "dB" : unit}`;
  return failed({
    code: "command/ping-setting",
    where: option,
    what: `"${text}" cannot be used`,
    expected: `${bounds}, with its unit`,
    fix: `${option} ${example}`,
  });
}
