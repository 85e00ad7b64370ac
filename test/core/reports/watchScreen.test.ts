import { describe, expect, it } from "vitest";
import { plainPaint } from "../../../src/core/reports/Block.ts";
import { watchScreen } from "../../../src/core/reports/watchScreen.ts";
import type { WatchView } from "../../../src/core/reports/watchWords.ts";
import { visibleWidth } from "../../../src/core/text/wrap.ts";
import { corners, sampled } from "../../support/curves.ts";
import { readingOf } from "../../support/firings.ts";
import { schedule, segment } from "../../support/schedules.ts";
import { lookAt, watchedAt, watchedReading } from "../../support/watching.ts";

const RAMP = sampled(corners([0, 20], [22, 1340]), 60);

function screen(of: WatchView, size: { width?: number; rows?: number; unit?: "C" | "F" } = {}) {
  const { width = 80, rows = 24, unit = "C" } = size;
  return watchScreen(of, { unit, paint: plainPaint, width, rows });
}

function flat(lines: readonly string[]): string {
  return lines.join(" ").replaceAll(/\s+/g, " ");
}

describe("the screen of a watched firing", () => {
  it("says where the kiln is, when the cone comes and on what that hangs", () => {
    // From 17:00, 60 °C/h from 20 °C: 1100 °C at 11:00; the chart's 1186 °C less the usual 8 °C, 1 h 18 min later.
    const text = flat(screen(lookAt(watchedAt(RAMP, 18, { cone: "5", offsetK: null }))));
    expect(text).toContain("last reading 11:00, day 2 · 18:00 after the start");
    expect(text).toContain("1100 °C, climbing at 60 °C/h ± under 1 °C/h over 10 min");
    expect(text).toMatch(/down about 12:1[78], in 1 h 1[78] min; 12:0\d to 12:3\d/);
    expect(text).toContain("if it goes on at 60 °C/h, as for 1 h");
  });

  it("ends with the caution to be there and not to rely on it", () => {
    const last = flat(screen(lookAt(watchedAt(RAMP, 18))).slice(-3));
    expect(last).toContain("Stay within reach near the peak");
    expect(last).toContain("see for yourself that the kiln has switched off");
    expect(last).toContain("Witness cones judge the firing, not this estimate.");
  });

  it("fits 80 columns and 24 lines, whatever there is to say, and a narrow terminal too", () => {
    const both = readingOf({ "Top of the old kiln": RAMP, "Bottom of the old kiln": RAMP }, [
      ...["a", "b", "c", "d", "e", "f"].map((channel) => ({
        kind: "open" as const,
        channel,
        fromSeconds: 100,
        toSeconds: 200,
        count: 3,
        what: `the thermocouple ${channel} ${"gave values that no thermocouple gives and ".repeat(3)}more`,
      })),
    ]);
    const plan = schedule({ cone: "5", segments: [segment(1240, 60, 30), segment(500, -60)] });
    const state = watchedReading(both, { plan });
    for (const width of [80, 50, 40]) {
      const lines = screen(lookAt(state), { width });
      for (const line of lines) expect(visibleWidth(line)).toBeLessThanOrEqual(width);
    }
    const lines = screen(lookAt(state));
    expect(lines.length).toBeLessThanOrEqual(24);
    expect(flat(lines)).toMatch(/and \d more \(undunted review\)/);
  });

  it("counts days from the last reading, as people beside a kiln do", () => {
    const curve = sampled(corners([0, 20], [19, 1160], [20, 960]), 60);
    const text = flat(screen(lookAt(watchedAt(curve, 20))));
    expect(text).toMatch(/100 °C about \d\d:\d\d tomorrow/);
  });

  it("speaks °F when asked", () => {
    const text = flat(screen(lookAt(watchedAt(RAMP, 18, { cone: "5" })), { unit: "F" }));
    expect(text).toContain("2012 °F, climbing at 108 °F/h");
    expect(text).not.toContain("°C");
  });

  it("asks after the logger when nothing new has come for five steps and two minutes", () => {
    const quiet = (stillSeconds: number) =>
      flat(
        screen(
          lookAt(watchedAt(RAMP, 18), {
            file: { ...lookAt(null).file, change: "same", stillSeconds },
          }),
        ),
      );
    expect(quiet(290)).toContain("The log last grew 5 min ago.");
    expect(quiet(310)).toContain("No new reading for 5 min: is the logger still running?");
  });

  it("says what it waits for, that the log began anew, and that it ends", () => {
    const waiting = lookAt(null, {
      why: "For readings. So far the log has one whole line: holds no row of readings.",
      isLast: true,
      file: { ...lookAt(null).file, restarts: 1 },
    });
    const text = flat(screen(waiting));
    expect(text).toContain("firing.csv · no readings yet");
    expect(text).toContain("Waiting For readings.");
    expect(text).toContain("It has begun anew once: replaced or cut.");
    expect(text).toContain("Still for 30 min: the watch ends.");
  });

  it("lets no file name command the terminal", () => {
    const text = screen(lookAt(watchedAt(RAMP, 18), { log: "a\u001b[2Jb.csv" })).join("\n");
    expect(text).not.toContain("\u001b");
  });
});
