import { describe, expect, it } from "vitest";
import {
  watchDocument,
  watchDocumentSchema,
} from "../../../../src/core/reports/documents/watchDocument.ts";
import { corners, sampled } from "../../../support/curves.ts";
import { schedule, segment } from "../../../support/schedules.ts";
import { lookAt, watchedAt } from "../../../support/watching.ts";

const CURVE = sampled(corners([0, 20], [20, 1220], [22, 1000], [40, 40]), 60);
const PLAN = schedule({ cone: "6", segments: [segment(1220, 60, 10), segment(500, -60)] });

describe("the document of a look", () => {
  it.each([0.03, 1, 18, 20, 21, 30, 40])(
    "fits its schema after %d h, with and without a plan",
    (hours) => {
      for (const known of [{}, { plan: PLAN }, { cone: "6" }]) {
        const document = watchDocument(lookAt(watchedAt(CURVE, hours, known)));
        expect(watchDocumentSchema.parse(document)).toEqual(document);
        expect(JSON.parse(JSON.stringify(document))).toEqual(document);
      }
    },
  );

  it("says what is waited for while there are no readings", () => {
    const document = watchDocumentSchema.parse(
      watchDocument(lookAt(null, { why: "For readings." })),
    );
    expect(document).toMatchObject({ status: "waiting", why: "For readings.", firing: null });
  });

  it("carries the cautions, that of being there among them", () => {
    const topics = watchDocument(lookAt(null, { why: "For readings." })).cautions.map(
      ({ topic }) => topic,
    );
    expect(topics).toContain("attendance");
    expect(topics).toContain("opening");
  });
});
