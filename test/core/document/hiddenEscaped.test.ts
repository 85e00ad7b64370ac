import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseSchedule, scheduleYaml } from "../../../src/core/schedule/scheduleFile.ts";
import { hasHidden, hiddenEscaped } from "../../../src/core/text/escape.ts";
import { schedule, valued } from "../../support/schedules.ts";

/** Text of which every second character is likely to be one that hides or commands. */
const nasty = fc
  .array(
    fc.oneof(
      fc.constantFrom(
        "\u001b[31m",
        "\u009b",
        "\u202e",
        "\u2066",
        "\u0007",
        "\u007f",
        "\ufeff",
        "\u{e0041}",
        "\t",
        "\u2028",
      ),
      fc.string({ unit: "grapheme", maxLength: 4 }),
    ),
    { minLength: 1, maxLength: 8 },
  )
  .map((pieces) => pieces.join(""));

describe("hiddenEscaped", () => {
  it("leaves nothing hidden in a JSON document, which reads the same, for any text", () => {
    fc.assert(
      fc.property(nasty, (text) => {
        const json = hiddenEscaped(JSON.stringify({ [text]: [text] }));
        expect(hasHidden(json)).toBe(false);
        expect(JSON.parse(json)).toEqual({ [text]: [text] });
      }),
    );
  });

  it("writes characters beyond the first 65 536 as two, as JSON has them", () => {
    // 0xE0041 - 0x10000 = 0xD0041; d800 + 0x340 = db40, dc00 + 0x41 = dc41.
    expect(hiddenEscaped("\u{e0041}\u001b")).toBe("\\udb40\\udc41\\u001b");
  });

  it("leaves joined emoji and words of any script as they are", () => {
    expect(hiddenEscaped("👩‍🎨 ناشناس‌ها é ° 窯")).toBe("👩‍🎨 ناشناس‌ها é ° 窯");
  });

  it("leaves nothing hidden in a schedule that is written, which reads the same, for any title", () => {
    fc.assert(
      fc.property(nasty, (text) => {
        const titled = { ...schedule({}), title: `t${text}t` };
        const yaml = scheduleYaml(titled);
        expect(hasHidden(yaml)).toBe(false);
        expect(valued(parseSchedule(yaml, "a.yaml")).title).toBe(titled.title);
      }),
    );
  });
});
