import { z } from "zod";

/** A length as a file writes it. */
export const WrittenLength = z
  .union([z.number().nonnegative(), z.string()])
  .describe('millimetres, or with its unit: "0.8 mm", "1/4 in"');

/** A moment as a file writes it. */
export const WrittenMoment = z
  .string()
  .describe(
    'a clock time "09:10", "3:40 pm" or "2026-03-15 09:10", or since the start of the log "+14:05"',
  );

/** Text that is not empty. */
export const Words = z.string().min(1);
