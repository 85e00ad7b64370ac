import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  adviceText,
  type Evidence,
  quoted,
  statementText,
} from "../../../src/core/findings/Finding.ts";

const EVIDENCE: readonly Evidence[] = [
  { name: "limit", value: 50, kind: "rate" },
  { name: "times over", value: 2.5, kind: "cones" },
];

/** Words of somebody who likes braces, and knows the names of places. */
const WORDS = fc.oneof(
  fc.string({ unit: "binary" }),
  fc
    .array(fc.constantFrom("{", "}", "limit", "times over", "{limit}", "\u2060", " ", "$&", "a"))
    .map((parts) => parts.join("")),
);

const onOneLine = (text: string) => text.replaceAll(/\s+/g, " ").trim();

describe("a statement", () => {
  it("puts its evidence in place", () => {
    const statement = "{times over} times the limit of {limit}, {limit} or less.";
    expect(statementText({ topic: "t", statement, evidence: EVIDENCE }, "C")).toBe(
      "2.5 times the limit of 50 °C/h, 50 °C/h or less.",
    );
    expect(statementText({ topic: "t", statement: "{limit}", evidence: EVIDENCE }, "F")).toBe(
      "90 °F/h",
    );
  });

  it("shows what somebody wrote as it was written, and the evidence around it, for any words", () => {
    fc.assert(
      fc.property(WORDS, WORDS, (ware, body) => {
        const statement = `{limit} for ${quoted(ware)}|${quoted(body)}: {times over} times`;
        const finding = { topic: "t", statement, evidence: EVIDENCE };
        expect(statementText(finding, "C")).toBe(
          `50 °C/h for ${onOneLine(ware)}|${onOneLine(body)}: 2.5 times`,
        );
      }),
      { numRuns: 500 },
    );
  });

  it("never throws, whatever stands in it", () => {
    fc.assert(
      fc.property(WORDS, (words) => {
        const finding = { topic: "t", statement: words, advice: words, evidence: EVIDENCE };
        expect(typeof statementText(finding, "C")).toBe("string");
        expect(statementText({ ...finding, statement: `${words}{batch 3}` }, "F")).toContain(
          "{batch 3}",
        );
      }),
    );
  });

  it("gives the same for advice", () => {
    const finding = {
      topic: "t",
      severity: "note",
      statement: "",
      evidence: EVIDENCE,
      basis: "",
      advice: `Cool ${quoted("platters {limit}")} at {limit}.`,
      zone: null,
      span: null,
    } as const;
    expect(adviceText(finding, "C")).toBe("Cool platters {limit} at 50 °C/h.");
  });
});
