import type { AssumedKiln } from "../kiln/LearnedKiln.ts";
import { type DifferenceLine, scheduleDifference } from "../schedule/energy.ts";
import type { Repair, RepairStep } from "../schedule/repairSchedule.ts";
import type { Schedule } from "../schedule/Schedule.ts";
import { printDuration, printSetRate, printSpan } from "../text/quantities.ts";
import { capitalised, stopped } from "../text/wrap.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { type Block, type Cell, section } from "./Block.ts";

const MARK: Readonly<Record<DifferenceLine["kind"], string>> = {
  same: " ",
  removed: "−",
  added: "+",
};

/** A schedule that was changed, and what was changed in it. */
export interface Mending {
  readonly before: Schedule;
  readonly after: Schedule;
  /** Null when something was solved for, not mended. */
  readonly repair: Repair | null;
  readonly kiln: AssumedKiln;
}

/** A change as blocks: the difference line by line, what each mend costs, what cannot be mended. */
export function mendingBlocks(mending: Mending, unit: TemperatureUnit): readonly Block[] {
  const { before, after, repair, kiln } = mending;
  const lines = scheduleDifference(before, after, kiln);
  const changed = lines.some(({ kind }) => kind !== "same");
  const cost =
    repair === null || !changed
      ? []
      : [{ kind: "sentence", text: `In all it costs ${costText(repair)}.` } as const];
  return [
    ...section("What was changed", [
      ...cost,
      changed
        ? differenceTable(lines, unit, before.unit)
        : { kind: "sentence", text: "Nothing; the schedule stays as it was." },
    ]),
    ...section(
      "Why, and what each mend costs",
      listOf((repair?.steps ?? []).map((step) => stepText(step))),
    ),
    ...section("What the kiln must do, and what cannot be mended", listOf(repair?.limits ?? [])),
  ];
}

/** Two schedules side by side, one line a segment; − goes, + comes. */
function differenceTable(
  lines: readonly DifferenceLine[],
  unit: TemperatureUnit,
  own: TemperatureUnit,
): Block {
  return {
    kind: "table",
    caption: "What changes: − goes, + comes",
    columns: [
      { head: "", align: "left" },
      { head: "from → to", align: "right" },
      { head: "rate", align: "right" },
      { head: "hold", align: "right" },
      { head: "lasts", align: "right" },
      { head: "kWh", align: "right" },
      { head: "reason", align: "left" },
    ],
    rows: lines.map((line): readonly Cell[] => [
      MARK[line.kind],
      printSpan(line.fromC, line.segment.toC, unit),
      line.segment.rateCPerHour === "free"
        ? "free"
        : printSetRate(line.segment.rateCPerHour, { unit, own }),
      line.segment.holdSeconds === 0 ? "" : printDuration(line.segment.holdSeconds),
      printDuration(line.seconds),
      line.kWh === null ? "" : line.kWh.toFixed(1),
      line.kind === "added" ? (line.segment.why ?? "") : "",
    ]),
  };
}

function stepText(step: RepairStep): string {
  return `${stopped(capitalised(step.did))} It costs ${costText(step)}. ${step.reason}`;
}

function costText(cost: { readonly costSeconds: number; readonly costKWh: number | null }): string {
  const { costSeconds, costKWh } = cost;
  const time = `${printDuration(Math.abs(costSeconds))} ${costSeconds < 0 ? "less" : "more"}`;
  if (costKWh === null) return `${time}, electricity unknown`;
  return `${time} and ${Math.abs(costKWh).toFixed(1)} kWh ${costKWh < 0 ? "less" : "more"}`;
}

function listOf(items: readonly string[]): readonly Block[] {
  return items.length === 0 ? [] : [{ kind: "list", items }];
}
