import { z } from "zod";
import type { Problem } from "../../problem.ts";

/** Problems as any document holds them; at least one. */
export const problemsShape = z
  .array(
    z.strictObject({
      code: z
        .string()
        .regex(/^[^/]+\/[^/]+$/)
        .describe("stable name: room/kebab"),
      what: z.string(),
      where: z.string(),
      expected: z.string(),
      fix: z.string(),
    }),
  )
  .min(1);

/** The document of any command that could not answer. */
export const problemDocumentSchema = z.strictObject({
  schemaVersion: z.literal(1),
  ok: z.literal(false),
  problems: problemsShape,
});

/** What any command prints with `--json` when it could not answer. */
export type ProblemDocument = z.infer<typeof problemDocumentSchema>;

/** Problems as their JSON document; at least one, else a RangeError. */
export function problemDocument(problems: readonly Problem[]): ProblemDocument {
  if (problems.length === 0) throw new RangeError("problemDocument: needs at least one problem");
  return {
    schemaVersion: 1,
    ok: false,
    problems: problems.map(({ code, what, where, expected, fix }) => ({
      code,
      what,
      where,
      expected,
      fix,
    })),
  };
}
