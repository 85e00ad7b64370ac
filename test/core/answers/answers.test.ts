import { describe, expect, it } from "vitest";
import {
  type Answer,
  answerText,
  askedRooms,
  SCREEN_LINES,
  type ScreenPart,
  screenOf,
} from "../../../src/core/answers/Answer.ts";
import { answerHtml } from "../../../src/core/answers/answerHtml.ts";
import { coneSaid, giveOrTake } from "../../../src/core/answers/coneSaid.ts";
import { reviewAnswer } from "../../../src/core/answers/reviewAnswer.ts";
import { heading, roomsOf, sentence } from "../../../src/core/answers/rooms.ts";
import type { Heatwork } from "../../../src/core/cones/cone.ts";
import { plainPaint } from "../../../src/core/reports/Block.ts";
import { saidDate, saidMoment } from "../../../src/core/reports/moments.ts";
import { sampleReview } from "../../support/samples/reportsObjects.ts";

const SHOWN = { paint: plainPaint, more: (names: string) => `More: ${names}` };

function answerOf(changes: Partial<Answer> = {}): Answer {
  return {
    title: "A firing",
    when: "Sat 23 May 18:00",
    screen: [sentence("All is well.")],
    rooms: [
      { name: "cooling", blocks: [sentence("It cooled.")] },
      { name: "cones", blocks: [sentence("It fell.")] },
    ],
    ...changes,
  };
}

/** So many lines of text. */
function part(rank: number, lines: number, text = `rank ${rank}`): ScreenPart {
  return { rank, blocks: [{ kind: "lines", lines: Array.from({ length: lines }, () => text) }] };
}

describe("a screen", () => {
  const texts = (parts: readonly ScreenPart[]) =>
    screenOf(parts).flatMap((block) => (block.kind === "lines" ? [block.lines[0]] : []));

  it("keeps the order in which its parts are given", () => {
    expect(texts([part(2, 3), part(0, 3), part(1, 3)])).toEqual(["rank 2", "rank 0", "rank 1"]);
  });

  it("leaves out what matters least, and fills up with what fits", () => {
    expect(texts([part(0, 10), part(3, 20), part(1, 10), part(4, 4)])).toEqual([
      "rank 0",
      "rank 1",
      "rank 4",
    ]);
  });

  it("never leaves out what has to be said", () => {
    expect(texts([part(0, 40), part(1, 1)])).toEqual(["rank 0"]);
  });

  it("is at most so many lines of 80 columns for a review, with what it leaves out in its rooms", () => {
    const answer = reviewAnswer(sampleReview(), { unit: "C" });
    const lines = answerText(answer, null, SHOWN).trimEnd().split("\n");
    expect(lines.length).toBeLessThanOrEqual(SCREEN_LINES);
    for (const line of lines) expect([...line].length, line).toBeLessThanOrEqual(80);
    expect(answer.rooms.map(({ name }) => name)).toEqual(
      expect.arrayContaining(["findings", "cooling", "cones", "reading", "safety"]),
    );
  });
});

describe("a screen that speaks of cracks", () => {
  const cause = {
    kind: "crackle by fit",
    name: "crackle: the glaze shrinks more than the clay",
    posterior: 0.9,
    likelihood: "likely",
    standing: "speaks for",
    balance: 3,
    evidence: [],
    unanswered: [],
  } as const;
  const opened = {
    topic: "opening",
    severity: "warning",
    statement: "The kiln was opened at 280 °C.",
    evidence: [],
    basis: "common practice",
    advice: "Wait.",
    zone: null,
    span: null,
  } as const;
  const screenOfPieces = (what: "cracked" | "crackled") =>
    answerText(
      reviewAnswer(
        sampleReview({
          diagnosis: [cause],
          diagnosedPieces: [{ piece: "A", what, count: 1, causes: [cause] }],
          findings: [opened],
        }),
        { unit: "C" },
      ),
      null,
      SHOWN,
    );

  it("keeps a warning that no crack speaks of, and says no other twice", () => {
    expect(screenOfPieces("crackled")).toMatch(
      /Look at this too\n {2}• Warning: The kiln was opened/,
    );
    expect(screenOfPieces("cracked")).not.toContain("Look at this too");
  });
});

describe("rooms", () => {
  it("hold what stands under their headings, a heading of somebody's own with what is before it", () => {
    const rooms = roomsOf(
      [sentence("lead"), heading("Findings"), sentence("a"), heading("1. My glaze"), sentence("b")],
      "cones",
    );
    expect(rooms.map(({ name, blocks }) => [name, blocks.length])).toEqual([
      ["cones", 1],
      ["findings", 4],
    ]);
  });

  it("are asked for by name, several at once, or all", () => {
    const answer = answerOf();
    const names = (...asked: readonly string[]) => {
      const rooms = askedRooms(answer, asked);
      return rooms.ok ? rooms.value?.map(({ name }) => name) : rooms.problems;
    };
    expect(names("cones")).toEqual(["cones"]);
    expect(names("cones,cooling")).toEqual(["cooling", "cones"]);
    expect(names("cones", "cooling")).toEqual(["cooling", "cones"]);
    expect(names("all")).toEqual(["cooling", "cones"]);
    expect(askedRooms(answer, null)).toEqual({ ok: true, value: null });
  });

  it("that are not there are refused with those that are, and the nearest", () => {
    const rooms = askedRooms(answerOf(), ["coolng"]);
    expect(rooms).toMatchObject({
      ok: false,
      problems: [
        {
          code: "answer/room",
          what: 'there is no part "coolng" here',
          expected: "one or more of cooling, cones, all",
          fix: "write cooling",
        },
      ],
    });
    expect(askedRooms(answerOf(), [" "]).ok).toBe(false);
  });

  it("stand by themselves when they are asked for, and after the screen when all are", () => {
    const answer = answerOf();
    const some = askedRooms(answer, ["cones"]);
    const all = askedRooms(answer, ["all"]);
    if (!some.ok || !all.ok) throw new RangeError("no rooms");
    expect(answerText(answer, null, SHOWN)).toContain("More: cooling, cones, all");
    const alone = answerText(answer, some.value, SHOWN);
    expect(alone).toContain("It fell.");
    expect(alone).not.toMatch(/All is well|It cooled|More:/);
    const whole = answerText(answer, all.value, SHOWN);
    expect(whole).toMatch(/All is well[\s\S]*It cooled[\s\S]*It fell/);
  });

  it("are folded on a page, below the screen and a line of contents", () => {
    const page = answerHtml(answerOf());
    expect(page).toMatch(
      /All is well[\s\S]*href="#cooling"[\s\S]*<details id="cooling"><summary>Cooling<\/summary>[\s\S]*It cooled/,
    );
  });
});

describe("a cone as people say it", () => {
  const heat = (fraction: number | null, cone: string | null = "5"): Heatwork =>
    ({
      position: { cone, fraction, next: fraction === null ? null : "6", label: "cone 14 or more" },
    }) as Heatwork;

  it.each([
    [0.02, "Cone 5 just fell"],
    [0.2, "Cone 5"],
    [0.4, "Between cone 5 and 6, nearer 5"],
    [0.5, "Between cone 5 and 6"],
    [0.8, "Between cone 5 and 6, nearer 6"],
    [0.95, "Just under cone 6"],
  ])("is, %f of the way from 5 to 6, “%s”", (fraction, said) => {
    expect(coneSaid(heat(fraction), "was")).toBe(said);
  });

  it("is its label beyond the ends of a series", () => {
    expect(coneSaid(heat(null), "was")).toBe("Cone 14 or more");
  });

  it.each([
    [0.1, ""],
    [0.25, "give or take a quarter of a cone"],
    [0.5, "give or take half a cone"],
    [1, "give or take a cone"],
    [2.2, "give or take 2 cones"],
    [null, "how far off this may be is not known"],
  ])("is known to %f cones: “%s”", (sigmaCones, said) => {
    expect(giveOrTake({ sigmaCones } as Heatwork)).toBe(said);
  });
});

describe("a moment as people say it", () => {
  const hours = (count: number) => count * 3600;

  it("has its weekday where the date is known, over midnight and month's end", () => {
    const clock = { start: "2026-05-31T18:00:00", startOfDaySeconds: hours(18) };
    expect(saidDate(clock)).toBe("Sun 31 May 18:00");
    expect(saidMoment(clock, hours(10))).toBe("Mon 04:00");
    expect(saidDate(clock, hours(10))).toBe("Mon 1 Jun 04:00");
  });

  it("is a clock on the day of the start alone, and how long it had gone on without a clock", () => {
    const clock = { start: null, startOfDaySeconds: hours(18) };
    expect(saidMoment(clock, hours(2))).toBe("20:00");
    expect(saidMoment(clock, hours(10))).toBe("04:00, 10 h in");
    expect(saidMoment({ start: null, startOfDaySeconds: null }, hours(10))).toBe("10 h in");
    expect(saidDate(clock)).toBeNull();
  });
});
