import { describe, expect, it } from "vitest";
import type { MeasuredPing } from "../../../src/core/glaze/Glaze.ts";
import { parseRecord } from "../../../src/core/record/parseRecord.ts";
import { reviewFiring } from "../../../src/core/review/reviewFiring.ts";
import { firstPings } from "../../../src/core/trials/studyFirings.ts";
import { tilesOf } from "../../../src/core/trials/Tile.ts";
import { corners, sampled } from "../../support/curves.ts";
import { readingOf } from "../../support/firings.ts";
import { valued } from "../../support/schedules.ts";

/** Up to 1200 °C in 10 h, then 60 °C/h down: 1200 − 60 (t − 10) °C. */
const CURVE = sampled(corners([0, 0], [10, 1200], [28, 120]), 60);

function pingOf(pings: string, unloaded = "unloaded: { at: +27:00 }"): MeasuredPing | null {
  const record = valued(
    parseRecord(
      `formatVersion: 1\ntitle: Tiles\n${unloaded}\ntrials:\n  - { piece: A, clay: c, glaze: g, coat: 0.5 mm, glazedSides: one, pings: ${pings} }\n`,
      "a.yaml",
    ),
  );
  const review = valued(reviewFiring({ reading: readingOf({ kiln: CURVE }), record, plan: null }));
  const [tile] = tilesOf([record]).tiles;
  if (tile === undefined) throw new Error("no tile");
  return firstPings([{ review, record }])(tile);
}

describe("the first ping of a tile", () => {
  it("has the temperature that the log had then, and the kiln was shut before it was opened", () => {
    // 14 h after the peak: 1200 − 840 = 360 °C.
    const ping = pingOf('{ at: ["+25:30", "+24:00"] }');
    expect(ping?.onsetC).toBeCloseTo(360, 6);
    expect(ping).toMatchObject({ coatMm: 0.5, kiln: "shut" });
    // Two minutes of 60 °C/h are 2 K, small beside where the thermocouple hangs.
    expect(ping?.sigmaK).toBeCloseTo(Math.hypot(15, 2), 6);
  });

  it("after the kiln was opened says so, for a draught cracks glaze by itself", () => {
    expect(pingOf('{ at: ["+27:30"] }')?.kiln).toBe("opened");
  });

  it("of a firing without a note of its opening leaves that open", () => {
    expect(pingOf('{ at: ["+24:00"] }', "notes: none")?.kiln).toBe("not noted");
  });

  it.each([
    ["only counted", "{ count: 4 }"],
    ["before the peak", '{ at: ["+08:00"] }'],
    ["after the end of the log", '{ at: ["+40:00"] }'],
  ])("is none when pings were %s", (_, pings) => {
    expect(pingOf(pings)).toBeNull();
  });
});
