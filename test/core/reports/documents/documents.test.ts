import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import {
  comparedLine,
  comparisonDocument,
  comparisonLine,
  unreadLogLine,
} from "../../../../src/core/reports/documents/comparisonDocument.ts";
import { conesDocument } from "../../../../src/core/reports/documents/conesDocument.ts";
import {
  DOCUMENT_NAMES,
  type DocumentName,
  documentJsonSchema,
} from "../../../../src/core/reports/documents/documentJsonSchema.ts";
import { draftDocument } from "../../../../src/core/reports/documents/draftDocument.ts";
import { glazeDocument } from "../../../../src/core/reports/documents/glazeDocument.ts";
import { kilnDocument } from "../../../../src/core/reports/documents/kilnDocument.ts";
import { measureDocument } from "../../../../src/core/reports/documents/measureDocument.ts";
import { problemDocument } from "../../../../src/core/reports/documents/pieces.ts";
import { pingsDocument } from "../../../../src/core/reports/documents/pingsDocument.ts";
import { reviewDocument } from "../../../../src/core/reports/documents/reviewDocument.ts";
import { watchDocument } from "../../../../src/core/reports/documents/watchDocument.ts";
import { comparisonPart } from "../../../../src/core/review/compareFirings.ts";
import { firing } from "../../../support/firings.ts";
import { learnedDemoKiln } from "../../../support/kilns.ts";
import { photographed, squareNet } from "../../../support/mosaics.ts";
import { sampleGlazeWork } from "../../../support/samples/glazes.ts";
import { fallingLog, listeningTo, pingReviewOf } from "../../../support/samples/pings.ts";
import { sampleDraft, sampleReview } from "../../../support/samples/reportsObjects.ts";
import {
  sampleComparison,
  sampleCone,
  sampleCones,
} from "../../../support/samples/reportsTables.ts";
import { schedule } from "../../../support/schedules.ts";
import { lookAt, watchedAt } from "../../../support/watching.ts";
import { measured, SIZE } from "../../photo/measuredMosaic.ts";

const problem = {
  code: "log/no-temperatures",
  what: "no column holds temperatures",
  where: "a.csv: columns",
  expected: "at least one column of readings in °C, °F or K",
  fix: "name the column with --column",
} as const;

function measuredTile(isCracked: boolean) {
  const cracks = isCracked ? squareNet(SIZE, 54, 0.3) : [];
  const result = measured(photographed(cracks, { ...SIZE, lineWidth: 4 }), { ownCounts: [12, 12] });
  if (!result.ok) throw new RangeError("measuredTile: the sample was refused");
  return result.value;
}

const samples: readonly (readonly [DocumentName, object])[] = [
  ["review", reviewDocument(sampleReview())],
  [
    "review",
    reviewDocument(sampleReview({ zones: [], spread: null, offset: null, comparison: null })),
  ],
  ["draft", draftDocument(sampleDraft())],
  ["draft", draftDocument(sampleDraft({ start: null }))],
  ["compare", comparisonDocument(sampleComparison())],
  ["kiln", kilnDocument(learnedDemoKiln(), "Old Hilda")],
  ["kiln", kilnDocument(learnedDemoKiln({ withOutput: false }), null)],
  ["measure", measureDocument(measuredTile(true))],
  ["measure", measureDocument(measuredTile(false))],
  ["cones", conesDocument(sampleCones())],
  ["cones", conesDocument(sampleCone())],
  ["glaze", glazeDocument([sampleGlazeWork(), sampleGlazeWork({ withBench: false })])],
  ["pings", pingsDocument(pingReviewOf(listeningTo([60, 90], 600)))],
  [
    "pings",
    pingsDocument(
      pingReviewOf(
        listeningTo(
          Array.from({ length: 120 }, (_, i) => 60 * i + 30),
          7200,
        ),
        fallingLog(9000),
      ),
    ),
  ],
  ["watch", watchDocument(lookAt(watchedAt(firing({}), 7, { cone: "5" })))],
  ["watch", watchDocument(lookAt(watchedAt(firing({}), 7, { plan: schedule({ cone: "5" }) })))],
  ["watch", watchDocument(lookAt(watchedAt(firing({}), 12)))],
  ["watch", watchDocument(lookAt(null))],
  ["problems", problemDocument([problem])],
  ["review-line", reviewDocument(sampleReview())],
  ["review-line", unreadLogLine({ name: "a.csv", path: "logs/a.csv" }, [problem])],
  ["compare-line", comparedLine(comparisonPart(sampleReview()))],
  ["compare-line", comparisonLine(sampleComparison())],
  ["compare-line", unreadLogLine({ name: "a.csv", path: "logs/a.csv" }, [problem])],
];

const ajv = new Ajv2020({ strict: true });
const validators = new Map(
  DOCUMENT_NAMES.map((name) => [name, ajv.compile(documentJsonSchema(name))]),
);

function errorsOf(name: DocumentName, document: unknown) {
  const validate = validators.get(name);
  if (!validate) throw new RangeError(`errorsOf: no schema named ${name}`);
  validate(JSON.parse(JSON.stringify(document)));
  return validate.errors ?? [];
}

/** Every object inside a document, itself first. */
function objectsIn(value: unknown): readonly Record<string, unknown>[] {
  if (Array.isArray(value)) return value.flatMap(objectsIn);
  if (value === null || typeof value !== "object") return [];
  const object = value as Record<string, unknown>;
  return [object, ...Object.values(object).flatMap(objectsIn)];
}

describe("documents", () => {
  it("have a sample each, so that none goes untested", () => {
    expect(new Set(samples.map(([name]) => name))).toEqual(new Set(DOCUMENT_NAMES));
  });

  it.each(samples)("of %s keep to their JSON Schema", (name, document) => {
    expect(errorsOf(name, document)).toEqual([]);
  });

  it.each(samples)("of %s may hold no unknown key, however deep", (name, document) => {
    const copy: unknown = JSON.parse(JSON.stringify(document));
    for (const object of objectsIn(copy)) {
      object.surprise = 1;
      expect(errorsOf(name, copy)).not.toEqual([]);
      delete object.surprise;
    }
  });

  it.each(samples)("of %s lose nothing on their way through JSON", (_name, document) => {
    expect(JSON.parse(JSON.stringify(document))).toEqual(document);
  });

  it("carry numbers unrounded", () => {
    const zone = reviewDocument(sampleReview()).zones[0];
    expect(zone?.peakC).toBe(1187.3);
    expect(zone?.crossings[2]?.fastestCPerHour).toBe(-83.6);
    expect(zone?.heatwork.sigmaCones).toBe(0.58);
  });

  it("count the rows left out by reason", () => {
    expect(reviewDocument(sampleReview()).log.rejected).toEqual([
      { reason: "the time goes back by 1 h", count: 1 },
      { reason: "no number in either temperature column", count: 11 },
    ]);
  });

  it("write findings in °C with the unit of every number", () => {
    const [worst] = reviewDocument(sampleReview()).findings;
    expect(worst?.severity).toBe("warning");
    expect(worst?.text).toContain("84 °C/h");
    expect(worst?.evidence[0]).toEqual({
      name: "fastest",
      value: -83.6,
      kind: "rate",
      unit: "°C/h",
    });
  });

  it("of a failure need at least one problem", () => {
    expect(() => problemDocument([])).toThrow(RangeError);
  });
});
