import type { NextTimePaths } from "../../core/advice/NextFiring.ts";
import { reviewAnswer } from "../../core/answers/reviewAnswer.ts";
import { type FiringCharts, reviewCharts } from "../../core/charts/chartsOf.ts";
import { temperatureAt } from "../../core/curve/Curve.ts";
import { ordered, statementText } from "../../core/findings/Finding.ts";
import { hottestZone, type ZoneReview } from "../../core/firing/FiringFacts.ts";
import type { LogOptions } from "../../core/log/reading/LogReading.ts";
import { ok, type Result } from "../../core/problem.ts";
import type { Block, ChartPair } from "../../core/reports/Block.ts";
import { reviewDocument } from "../../core/reports/documents/reviewDocument.ts";
import { reviewBlocks } from "../../core/reports/reviewBlocks.ts";
import type { FiringReview } from "../../core/review/FiringReview.ts";
import { pastFiringOf, reviewFiring } from "../../core/review/reviewFiring.ts";
import type { Schedule } from "../../core/schedule/Schedule.ts";
import { parseSchedule, scheduleYaml } from "../../core/schedule/scheduleFile.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import type { KeptFile } from "../parts/KeptFile.ts";
import {
  CHART_NAMES,
  type ChartTexts,
  type FindingPlace,
  type ReviewAnswer,
  type ShownCharts,
} from "./answers.ts";
import type { Progress } from "./jobs.ts";
import { firingGroups, readGroup, textOf } from "./readGroup.ts";

/** A firing to read and to review. */
interface ReviewAsked {
  readonly log: KeptFile;
  readonly record: KeptFile | null;
  readonly schedule: KeptFile | null;
  /** Logs of the same kiln from before, with the records of the same name. */
  readonly earlier: readonly KeptFile[];
  readonly told: Omit<LogOptions, "name">;
  /** Unit that charts are drawn in, null for that of the log; whether they are drawn for a dark screen too. */
  readonly unit: TemperatureUnit | null;
  readonly dark: boolean;
}

/** Reads a log with what lies beside it and reviews the firing, as the command does. */
export function reviewJob(asked: ReviewAsked, progress: Progress): Result<ReviewAnswer> {
  const { log, record, schedule, told } = asked;
  progress(0.05, `reading ${log.name}`);
  const files = readGroup({ log, record, others: [] }, told, (part) =>
    progress(0.05 + 0.25 * part, `reading ${log.name}`),
  );
  if (!files.ok) return files;
  const against = schedule === null ? ok(files.value.plan) : scheduleOf(schedule);
  if (!against.ok) return against;
  const plan = against.value;
  const earlier = earlierLogs(asked.earlier, progress);
  progress(0.5, "following the cones and the stress");
  const named = files.value.record?.schedule ?? null;
  const planPath = plan === null ? null : pathOf(schedule, named);
  const review = reviewFiring({
    ...files.value,
    plan,
    earlier,
    next: pathsOf(asked, planPath),
  });
  if (!review.ok) return review;
  progress(0.8, "drawing the charts");
  return ok(answerOf(review.value, { planPath, named, asked }));
}

function scheduleOf(file: KeptFile): Result<Schedule> {
  const text = textOf(file);
  return text.ok ? parseSchedule(text.value, file.name) : text;
}

function earlierLogs(files: readonly KeptFile[], progress: Progress) {
  const groups = firingGroups(files);
  return groups.map((group, index) => {
    progress(0.3 + (0.2 * index) / groups.length, `reading ${group.log.name}`);
    const read = readGroup(group);
    return read.ok
      ? pastFiringOf(group.log.name, read.value)
      : { name: group.log.name, broken: read.problems.map(({ what }) => what).join("; ") };
  });
}

/** As the command would find it from the folder of the log. */
function pathOf(dropped: KeptFile | null, named: string | null): string {
  if (dropped !== null) return dropped.name;
  return `../schedules/${/\.[^.]+$/.test(named ?? "") ? named : `${named}.yaml`}`;
}

function pathsOf({ log, told }: ReviewAsked, planPath: string | null): NextTimePaths {
  const stem =
    planPath === null ? "next" : `${planPath.replace(/^.*\//, "").replace(/\.[^.]+$/, "")}-next`;
  return {
    log: Object.keys(told).length > 0 ? null : log.name,
    recordBeside: true,
    schedule: planPath,
    output: `${stem}.yaml`,
  };
}

function answerOf(
  review: FiringReview,
  from: {
    readonly planPath: string | null;
    readonly named: string | null;
    readonly asked: ReviewAsked;
  },
): ReviewAnswer {
  const next = review.nextTime;
  const logUnit = review.reading.unit === "F" ? "F" : "C";
  const { unit, dark } = from.asked;
  const charts = chartsOf(review, { unit: unit ?? logUnit, dark });
  return {
    screen: { C: screenIn("C", review), F: screenIn("F", review) },
    blocks: { C: blocksIn("C", review, charts), F: blocksIn("F", review, charts) },
    charts,
    json: JSON.stringify(reviewDocument(review), null, 2),
    decisions: review.reading.decisions,
    logUnit,
    findings: placesOf(review),
    diagnosis: review.diagnosis,
    nextSchedule: next?.schedule ? scheduleYaml(next.schedule) : null,
    nextByKiln: next?.command?.includes(" --kiln ") ?? false,
    nextOffsetK: toldOffset(next?.command ?? ""),
    remarks:
      from.named !== null && from.planPath === null
        ? [
            `The record names the schedule ${from.named}. Drop that file too, to hold the firing against it.`,
          ]
        : [],
  };
}

/** The offset that a command tells, as it tells it [K]. */
function toldOffset(command: string): number | null {
  const [, offsetK] = / --offset (-?[\d.]+)C/.exec(command) ?? [];
  return offsetK === undefined ? null : Number(offsetK);
}

function chartsOf(
  review: FiringReview,
  { unit, dark }: { readonly unit: TemperatureUnit; readonly dark: boolean },
): ShownCharts {
  const charts = reviewCharts(review);
  return {
    unit,
    light: textsOf(charts, unit, false),
    dark: dark ? textsOf(charts, unit, true) : null,
  };
}

function blocksIn(
  unit: TemperatureUnit,
  review: FiringReview,
  { light }: ShownCharts,
): readonly Block[] {
  const pairs: Partial<Record<keyof FiringCharts, ChartPair>> = {};
  for (const name of CHART_NAMES)
    if (light[name] !== undefined) pairs[name] = { light: name, dark: name };
  return reviewBlocks(withoutCommand(review), { unit, charts: pairs });
}

function screenIn(unit: TemperatureUnit, review: FiringReview): readonly Block[] {
  return reviewAnswer(withoutCommand(review), { unit }).screen;
}

/** A button does here what the command line does elsewhere. */
function withoutCommand(review: FiringReview): FiringReview {
  const next = review.nextTime;
  return {
    ...review,
    nextTime: next && { ...next, command: null, commandSays: next.scheduleSays },
  };
}

function textsOf(charts: FiringCharts, unit: TemperatureUnit, dark: boolean): ChartTexts {
  return Object.fromEntries(
    CHART_NAMES.flatMap((name) => {
      const maker = charts[name];
      return maker === null ? [] : [[name, JSON.stringify(maker({ unit, dark }))]];
    }),
  );
}

function placesOf(review: FiringReview): readonly FindingPlace[] {
  const zone = hottestZone(review.zones);
  return ordered(review.findings).map((finding) => {
    const { span } = finding;
    return {
      statement: statementText(finding, "C"),
      severity: finding.severity,
      hours: span && [span.fromSeconds / 3600, span.toSeconds / 3600],
      coolingC: span && coolingOf(zone, span.fromSeconds, span.toSeconds),
    };
  });
}

function coolingOf(
  zone: ZoneReview,
  fromSeconds: number,
  toSeconds: number,
): FindingPlace["coolingC"] {
  if (fromSeconds < zone.peakAtSeconds) return null;
  const end = Math.min(toSeconds, zone.lastReadingAtSeconds);
  const from = temperatureAt(zone.curve, fromSeconds);
  const to = temperatureAt(zone.curve, end);
  return from === null || to === null ? null : [from, to];
}
