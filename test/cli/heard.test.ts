import { describe, expect, it } from "vitest";
import { inFull, type Ran } from "../support/undunted.ts";

const LOG = "logs/2026-05-09-a.csv";
const FORMS =
  'words, then when it was heard: a clock time such as "09:10", "3:40 pm" or "2026-03-15 09:10", or a time since the start of the log such as "+14:05" (h:mm)';

function heard(...sounds: readonly string[]): Ran {
  return inFull(["review", LOG, "--heard", ...sounds]);
}

function flat(ran: Ran): string {
  return ran.out.replaceAll(/\s+/g, " ");
}

describe("undunted review --heard", () => {
  it("takes words and a time", () => {
    const ran = heard("a crack +14:05");
    expect(flat(ran)).toContain('"a crack" was heard at 14:05, at ');
    expect(flat(ran)).not.toContain("pinging is assumed");
  });

  it("takes a time alone for pinging and says that it was assumed", () => {
    const text = flat(heard("+14:05"));
    expect(text).toContain('"pinging" was heard at 14:05, at ');
    expect(text).toContain("Noted: no words came with the time, so pinging is assumed.");
  });

  it("takes dates, several sounds and the time first", () => {
    // The log starts on 2026-05-09 at 07:20.
    const text = flat(heard("a crack at 2026-05-10 04:05", "+14:05 ticking, fast"));
    expect(text).toContain('"a crack" was heard at 20:45, at ');
    expect(text).toContain('"ticking, fast" was heard at 14:05, at ');
  });

  it.each([
    [["a crack"], '"a crack" has no time, so it cannot be placed in the log', "a crack 14:05"],
    [[""], '"" has no time, so it cannot be placed in the log', "14:05"],
    [["a crack 25:05"], '"25:05" is not a moment that can be read', "a crack 14:05"],
    [["a crack 13pm"], '"13pm" is not a moment that can be read', "a crack 14:05"],
    [["25:05"], '"25:05" is not a moment that can be read', "14:05"],
    [
      ["bang 2026-02-30 14:05"],
      '"2026-02-30 14:05" is not a moment that can be read',
      "bang 14:05",
    ],
  ])("refuses %j with a way to write it", (sounds, what, meant) => {
    const ran = heard(...sounds);
    expect(ran).toMatchObject({ exit: 2, out: "" });
    expect(ran.err.trim()).toBe(
      `--heard: ${what}\n  expected  ${FORMS}\n  try       --heard "${meant}", with a 24-hour clock     (command/heard)`,
    );
    expect(heard(meant).out).toContain("was heard at");
  });

  it("asks for quotes where words and time came apart", () => {
    const ran = heard("a", "crack", "14:05");
    expect(ran.err.trim()).toBe(
      `--heard: "a" has no time\n  expected  ${FORMS}\n  try       put what was heard in quotes, together with its time: --heard "a crack 14:05"     (command/heard)`,
    );
    expect(flat(heard("a crack 14:05"))).toContain('"a crack" was heard at');
  });

  it("does not pick one of two times", () => {
    const ran = heard("a crack 14:05 and 15:10");
    expect(ran.err.trim()).toBe(
      `--heard: "a crack 14:05 and 15:10" names more than one time\n  expected  ${FORMS}\n  try       one pair of quotes for each sound: --heard "a crack 14:05" "a crack 15:10"     (command/heard)`,
    );
    expect(
      flat(heard("a crack 14:05", "a crack 15:10")).match(/"a crack" was heard/g),
    ).toHaveLength(2);
  });
});
