import { z } from "zod";
import type { ConeInput, ConesInput } from "../coneBlocks.ts";
import { opening } from "./shapes.ts";

/** The document of `cones`: the table of a series, or what rates do to one cone of it. */
export const conesDocumentSchema = z.strictObject({
  ...opening("cones"),
  series: z.string(),
  cone: z.string().nullable().describe("the cone asked about; null for the whole table"),
  ratesCPerHour: z.array(z.number()),
  rows: z
    .array(
      z.strictObject({
        cone: z.string(),
        cells: z.array(
          z
            .strictObject({
              tempC: z.number(),
              confidence: z.enum(["two-copies", "one-copy", "from-memory"]),
            })
            .nullable(),
        ),
      }),
    )
    .describe("the published table, one cell per rate; empty when one cone is asked about"),
  endPoints: z
    .array(
      z.strictObject({
        rateCPerHour: z.number(),
        tempC: z.number(),
        sigmaK: z.number(),
        basis: z.enum(["printed", "model"]),
        confidence: z
          .enum(["two-copies", "one-copy", "from-memory"])
          .nullable()
          .describe("how well a printed end point is attested; null for the model"),
        extrapolated: z.boolean(),
      }),
    )
    .describe("where the cone asked about goes down; empty for the whole table"),
  sources: z.array(z.string()),
});

/** What `cones --json` prints. */
export type ConesDocument = z.infer<typeof conesDocumentSchema>;

/** The table of a series, or what rates do to one cone, as its JSON document. */
export function conesDocument(input: ConesInput | ConeInput): ConesDocument {
  const opened: Pick<ConesDocument, "schemaVersion" | "ok" | "command" | "series" | "sources"> = {
    schemaVersion: 1,
    ok: true,
    command: "cones",
    series: input.series,
    sources: [...input.sources],
  };
  if ("cone" in input)
    return {
      ...opened,
      cone: input.cone,
      ratesCPerHour: input.rows.map((row) => row.rateCPerHour),
      rows: [],
      endPoints: input.rows.map((row) => ({
        rateCPerHour: row.rateCPerHour,
        tempC: row.tempC,
        sigmaK: row.sigmaK,
        basis: row.basis,
        confidence: row.confidence,
        extrapolated: row.extrapolated,
      })),
    };
  return {
    ...opened,
    cone: null,
    ratesCPerHour: [...input.ratesCPerHour],
    rows: input.rows.map(({ cone, cells }) => ({
      cone,
      cells: cells.map((cell) => cell && { tempC: cell.tempC, confidence: cell.confidence }),
    })),
    endPoints: [],
  };
}
