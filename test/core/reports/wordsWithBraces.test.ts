import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { problemText, type Result } from "../../../src/core/problem.ts";
import { parseRecord } from "../../../src/core/record/parseRecord.ts";
import { plainPaint } from "../../../src/core/reports/Block.ts";
import { reviewDocument } from "../../../src/core/reports/documents/reviewDocument.ts";
import { reviewFiring } from "../../../src/core/review/reviewFiring.ts";
import { draftSchedule } from "../../../src/core/schedule/draftSchedule.ts";
import { parseSchedule } from "../../../src/core/schedule/scheduleFile.ts";
import { firing, readingOf } from "../../support/firings.ts";
import { draftText, reviewText } from "../../support/reportTexts.ts";

const SHOWN = { unit: "C", paint: plainPaint } as const;

function taken<Value>(result: Result<Value>): Value {
  if (!result.ok) throw new Error(result.problems.map(problemText).join("\n"));
  return result.value;
}

/** A body of one's own, called so; its stress takes seconds to work out. */
const bodyOf = (word: string) => `body: { base: stoneware cone 6, name: ${word} }, `;

/** A record in which everything that a person may name is called so. */
function recordWith(name: string, hasBody: boolean) {
  const word = JSON.stringify(name);
  return parseRecord(
    `formatVersion: 1
title: ${word}
kiln: ${word}
cone: "6"
ware:
  - { name: ${word}, clay: ${word}, ${hasBody ? bodyOf(word) : ""}thickest: 12 mm, widest: 380 mm }
unloaded: { at: "+13:00", temperature: 280 C }
heard:
  - { what: ${word}, at: "+12:00", note: ${word} }
found:
  - { piece: ${word}, what: through-crack, note: ${word} }
notes: ${word}
`,
    "firing.yaml",
  );
}

function planWith(name: string, hasBody: boolean) {
  const word = JSON.stringify(name);
  return parseSchedule(
    `formatVersion: 1
title: ${word}
unit: C
cone: "6"
ware: { ${hasBody ? bodyOf(word) : ""}thickest: 14, widest: 300, state: damp }
segments:
  - { to: 1210, rate: 150, hold: 15 min, why: ${word} }
  - { to: 100, rate: 200 }
`,
    "plan.yaml",
  );
}

/** Hot and quick, so that warnings, cautions, causes and changes all have something to say. */
const QUICK = firing({ quartzCPerHour: 160, cristobaliteCPerHour: 160 });
const ZONE = firing({ peakC: 1170, quartzCPerHour: 160, cristobaliteCPerHour: 160 });

/** A review and a draft in all their words. */
function everyWord(name: string, hasBody: boolean): readonly string[] {
  const plan = taken(planWith(name, hasBody));
  const zones = hasBody ? { [name]: QUICK } : { [name]: QUICK, other: ZONE };
  const reading = { ...readingOf(zones), name };
  const record = taken(recordWith(name, hasBody));
  const review = taken(reviewFiring({ reading, record, plan }));
  return [
    reviewText(review, SHOWN),
    JSON.stringify(reviewDocument(review)).replaceAll('\\"', '"'),
    draftText(draftSchedule({ schedule: plan, start: null }), SHOWN),
  ];
}

/** Names without blanks, so that a plain one as long breaks every line in the same places. */
const NAMES = fc
  .array(
    fc.constantFrom("{", "}", "{limit}", "{fastest}", "{peak}", "{0}", "batch", "{{", "}}", "{12}"),
    { minLength: 2, maxLength: 4 },
  )
  .map((parts) => `P${parts.join("")}`);

function expectKept(name: string, hasBody: boolean): void {
  const plain = "P".repeat(name.length);
  const asWritten = everyWord(name, hasBody);
  for (const text of asWritten) expect(text).toContain(name);
  expect(asWritten.map((text) => text.replaceAll(name, plain))).toEqual(everyWord(plain, hasBody));
}

describe("a name with braces", () => {
  it("changes no other word of a review, its document or a draft, and stands in them as it is", () => {
    fc.assert(
      fc.property(NAMES, (name) => expectKept(name, false)),
      { numRuns: 12 },
    );
  });

  it("does so for ware of a body with such a name", () => {
    expectKept("Platters{batch3}{limit}", true);
  });
});
