import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type Looked, lookedAt, NOTHING_LOOKED, viewOf } from "../../src/cli/watchInput.ts";
import { plainPaint } from "../../src/core/reports/Block.ts";
import { watchScreen } from "../../src/core/reports/watchScreen.ts";
import type { FileLook } from "../../src/node/followFile.ts";
import { valued } from "../support/schedules.ts";

const ROWS = readFileSync("logs/2026-03-14-b.csv", "utf8").split("\n").slice(0, 500);
const GIVEN = {
  remarks: [],
  logOptions: { name: "firing.csv" },
  known: { record: null, plan: null, cone: null, kiln: null, offsetK: 0 },
  everySeconds: 5,
  untilStillSeconds: 1800,
} as unknown as Parameters<typeof viewOf>[2];

function look(text: string, change: FileLook["change"]): FileLook {
  return {
    bytes: new TextEncoder().encode(text),
    lines: text.split("\n").length - 1,
    hasHalfLine: false,
    change,
    restarts: 0,
    stillSeconds: 12,
  };
}

const WHOLE = `${ROWS.join("\n")}\n`;
/** From a row on, a logger that writes something else altogether. */
const BROKEN = `${ROWS.map((row) => (row.startsWith("2026") ? row.replaceAll(/\d/g, "x") : row)).join("\n")}\n`;

function seenAfter(...looks: readonly FileLook[]): {
  readonly looked: Looked;
  readonly screen: string;
} {
  let looked = NOTHING_LOOKED;
  for (const each of looks) looked = valued(lookedAt(each, looked, GIVEN));
  const last = looks.at(-1) as FileLook;
  const lines = watchScreen(viewOf(last, looked, GIVEN), {
    unit: "C",
    paint: plainPaint,
    width: 80,
    rows: 24,
  });
  return { looked, screen: lines.join("\n").replaceAll(/\s+/g, " ") };
}

describe("a log that can no longer be read", () => {
  const unread = [look(WHOLE, "grown"), look(BROKEN, "grown")] as const;

  it("is a warning, and what was read last is not called now", () => {
    const { screen } = seenAfter(...unread);
    expect(screen).toContain("Warning The log cannot be read now");
    expect(screen).toContain("Last read");
    expect(screen).not.toContain("Now ");
  });

  it("stays one at every further look at the unchanged file, and when it is gone and back", () => {
    const same = look(BROKEN, "same");
    for (const looks of [[same], [same, same, same], [look(BROKEN, "missing"), same]]) {
      const { looked, screen } = seenAfter(...unread, ...looks);
      expect(looked.why).toMatch(/^The log cannot be read now/);
      expect(screen).toContain("Warning The log cannot be read now");
    }
  });

  it("is over once the log can be read again", () => {
    const { looked, screen } = seenAfter(...unread, look(WHOLE, "grown"));
    expect(looked.why).toBe(null);
    expect(screen).toContain("Now ");
  });
});
