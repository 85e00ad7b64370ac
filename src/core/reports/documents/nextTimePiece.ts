import { z } from "zod";
import type { NextTime } from "../../advice/NextFiring.ts";
import { statementText } from "../../findings/Finding.ts";
import { evidencePiece } from "./pieces.ts";
import { evidenceShape } from "./shapes.ts";

/** What to change in the next firing, as it stands in a document. */
export const nextTimeShape = z.strictObject({
  changes: z
    .array(
      z.strictObject({
        about: z.enum([
          "lid",
          "cooling",
          "cone",
          "climb",
          "glaze",
          "clay",
          "drying",
          "bisque",
          "elements",
          "thermocouple",
          "hold",
          "power",
          "log",
          "record",
        ]),
        change: z.string(),
        because: z.string(),
        evidence: z.array(evidenceShape),
        standing: z
          .enum(["firm", "worth trying", "too close to tell"])
          .describe("too close to tell: the reason is within its own uncertainty"),
        inSchedule: z.boolean().describe("the command carries it out"),
        ask: z
          .union([
            z.strictObject({
              kind: z.literal("pace"),
              fromC: z.number(),
              toC: z.number(),
              mostCPerHour: z.number(),
            }),
            z.strictObject({ kind: z.literal("cone"), cone: z.string() }),
            z.strictObject({ kind: z.literal("climb") }),
          ])
          .nullable()
          .describe("what the next schedule keeps to, in numbers; null where it stays as it is"),
      }),
    )
    .describe("most needed first"),
  advice: z.array(z.string()),
  command: z
    .string()
    .nullable()
    .describe(
      "one line for a POSIX shell, from the folder in which review ran; null when none runs",
    ),
  commandSays: z.string().describe("what the command does, or why there is none"),
});

/** What to change in the next firing, sentences in °C and numbers unrounded; null when not asked for. */
export function nextTimePiece(nextTime: NextTime | null): z.infer<typeof nextTimeShape> | null {
  if (nextTime === null) return null;
  const { changes, advice, command, commandSays } = nextTime;
  return {
    changes: changes.map((change) => {
      const placed = (statement: string) =>
        statementText({ topic: change.about, statement, evidence: change.evidence }, "C");
      return {
        about: change.about,
        change: placed(change.change),
        because: placed(change.because),
        evidence: evidencePiece(change.evidence),
        standing: change.standing,
        inSchedule: change.inSchedule,
        ask: change.ask,
      };
    }),
    advice: [...advice],
    command,
    commandSays,
  };
}
