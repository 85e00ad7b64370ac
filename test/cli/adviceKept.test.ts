import { cpSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { type DraftWishOptions, draftedInput } from "../../src/cli/draftedInput.ts";
import { buildProgram } from "../../src/cli/program.ts";
import { aroundFiring } from "../../src/cli/reviewedLog.ts";
import type { NextTime, WantedChange } from "../../src/core/advice/NextFiring.ts";
import { bandPassage } from "../../src/core/curve/bandPassage.ts";
import { reviewFiring } from "../../src/core/review/reviewFiring.ts";
import { draftSchedule } from "../../src/core/schedule/draftSchedule.ts";
import { scheduleYaml } from "../../src/core/schedule/scheduleFile.ts";
import { readFiring } from "../../src/node/readFiring.ts";
import { isWhole, valued } from "../support/schedules.ts";
import { emptyFolder } from "../support/undunted.ts";

const LOGS = join(import.meta.dirname, "../../logs");

/** A log where `review` finds it with its record and schedule, or by itself. */
function placed(log: string, isAlone: boolean): string {
  if (!isAlone) return join(LOGS, log);
  const path = join(emptyFolder(), log);
  cpSync(join(LOGS, log), path);
  return path;
}

async function nextTimeOf(path: string): Promise<NextTime> {
  const files = valued(
    await readFiring(path, { options: {}, recordPath: null, schedulePath: null }),
  );
  const { earlier, next } = await aroundFiring(path, files, {
    earlier: null,
    offers: false,
    recordNamed: false,
    asWritten: true,
  });
  const { nextTime } = valued(reviewFiring({ ...files, earlier, next }));
  if (nextTime === null) throw new RangeError("no next time");
  return nextTime;
}

/** What the command that is handed on makes, as the command line understands it. */
async function run(command: string) {
  const [, , ...words] = [...command.matchAll(/'([^']*)'|(\S+)/g)].map(
    (word) => word[1] ?? word[2],
  );
  const draft = buildProgram(() => undefined).commands.find((each) => each.name() === "draft");
  if (draft === undefined) throw new RangeError("there is no draft");
  let given: readonly [string | undefined, DraftWishOptions] = [undefined, {}];
  draft.action((path: string | undefined, options: DraftWishOptions) => {
    given = [path, options];
  });
  await draft.parseAsync(words as string[], { from: "user" });
  const { schedule, known } = valued(await draftedInput(...given));
  return { schedule, draft: draftSchedule({ schedule, start: null, ...known }) };
}

/** The most that advice allows where it speaks of the fall, asked of the schedule or of the lid. */
function allowed(change: WantedChange) {
  const of = (name: string) => change.evidence.find((each) => each.name === name)?.value;
  const [fromC, toC] = [of("from"), of("to")];
  const mostCPerHour = change.ask?.kind === "pace" ? of("limit") : of("planned");
  if (fromC === undefined || toC === undefined || mostCPerHour === undefined) return null;
  return { fromC, toC, mostCPerHour };
}

const FIRINGS = readdirSync(LOGS)
  .filter((name) => name.endsWith(".csv"))
  .flatMap((log) => [
    { log, isAlone: false },
    { log, isAlone: true },
  ]);

describe("advice and the command below it", () => {
  it.each(FIRINGS)("agree for $log, alone: $isAlone", async ({ log, isAlone }) => {
    const next = await nextTimeOf(placed(log, isAlone));
    expect(next.command).not.toBeNull();
    const { schedule, draft } = await run(next.command as string);
    expect(next.schedule && scheduleYaml(next.schedule)).toBe(scheduleYaml(schedule));
    const isClose = next.changes.some(
      ({ about, standing }) => about === "cone" && standing === "too close to tell",
    );
    const warned = draft.findings.filter(
      ({ severity, topic }) => severity === "warning" && !(isClose && topic === "cone wanted"),
    );
    expect(warned).toEqual([]);
    // Where no schedule makes the cone, no more heat is asked of one.
    const isOutOfReach = next.changes.some(({ change }) => /no schedule makes/.test(change));
    expect(isOutOfReach && next.changes.some(({ ask }) => ask?.kind === "cone")).toBe(false);
    const { curve } = draft.expansion;
    for (const change of next.changes) {
      const { about, ask, standing, inSchedule } = change;
      expect(inSchedule).toBe(ask !== null);
      if (about === "cooling" && standing !== "too close to tell") {
        const pace = allowed(change);
        expect(pace).not.toBeNull();
        const { fromC, toC, mostCPerHour } = pace as NonNullable<typeof pace>;
        const band = { name: "advised", lowC: toC, highC: fromC };
        const { fastestCPerHour } = bandPassage(curve, band, "cooling");
        expect(Math.abs(fastestCPerHour ?? 0)).toBeLessThanOrEqual(1.01 * mostCPerHour);
      }
      if (ask?.kind === "cone") {
        const state = draft.heatwork.cones.find(({ cone }) => cone === ask.cone);
        expect(state?.marginK).toBeGreaterThanOrEqual(0);
        const peak = change.evidence.find(({ name }) => name === "peak")?.value;
        expect(Math.max(...schedule.segments.map(({ toC }) => toC))).toBeCloseTo(peak ?? 0, 6);
      }
      if (about === "lid") {
        const cool = change.evidence.find(({ name }) => name === "cool")?.value ?? 0;
        expect(schedule.segments.at(-1)?.toC).toBeLessThanOrEqual(cool + 0.5);
      }
    }
    if (next.changes.some(({ inSchedule }) => inSchedule)) expect(isWhole(schedule)).toBe(true);
  });
});
