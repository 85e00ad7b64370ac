import { z } from "zod";
import { failed, ok, type Result } from "../../core/problem.ts";
import { draftWorkShape, packDraft, unpackDraft } from "./draftState.ts";
import { EMPTY_PHOTO, photoWorkShape } from "./photoState.ts";
import { reviewWorkShape } from "./reviewState.ts";
import { compareWorkShape, type Work } from "./state.ts";

/** The whole work as it is stored and exported: plain values, schedules as the text of their files. */
const packedShape = z.strictObject({
  undunted: z.literal("bench"),
  formatVersion: z.literal(1),
  unit: z.enum(["C", "F"]),
  unitChosen: z.boolean().default(false),
  draft: draftWorkShape,
  review: reviewWorkShape,
  compare: compareWorkShape,
  /** Absent in benches kept before there was a place for it. */
  photo: photoWorkShape.default(EMPTY_PHOTO.work),
});

/** The whole work as it is stored. */
type Packed = z.infer<typeof packedShape>;

/** The work as plain values, bytes as bytes. */
export function packed(work: Work): Packed {
  const { unit, unitChosen, draft, review, compare, photo } = work;
  return {
    undunted: "bench",
    formatVersion: 1,
    unit,
    unitChosen,
    draft: packDraft(draft),
    review,
    compare: { ...compare, files: [...compare.files] },
    photo,
  };
}

/**
 * The work from stored values.
 * @returns `page/not-a-bench` for anything else; the problems of its schedule.
 */
export function unpacked(value: unknown, where: string): Result<Work> {
  const parsed = packedShape.safeParse(value);
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    return failed({
      code: "page/not-a-bench",
      where,
      what: `it is not a whole bench as this page saves it (${issue?.path.join(".") || "the whole"}: ${issue?.message ?? "not understood"})`,
      expected: "a file saved with “Save the whole bench”",
      fix: "pick that file; single schedules and logs are dropped on their own table",
    });
  }
  const { unit, unitChosen, draft, review, compare, photo } = parsed.data;
  const drafted = unpackDraft(draft);
  return drafted.ok
    ? ok({ unit, unitChosen, draft: drafted.value, review, compare, photo })
    : drafted;
}

/** The work as the text of one file; bytes as base64. */
export function benchJson(work: Work): string {
  return plainJson(packed(work));
}

/** Any stored value as the text of a file; bytes as base64. */
export function plainJson(value: unknown): string {
  return JSON.stringify(
    value,
    (_, each) => (each instanceof Uint8Array ? { base64: base64Of(each) } : each),
    1,
  );
}

/** The work from the text of such a file. */
export function benchFromJson(text: string, where: string): Result<Work> {
  try {
    return unpacked(JSON.parse(text, revived), where);
  } catch {
    return unpacked(null, where);
  }
}

function revived(_: string, value: unknown): unknown {
  if (typeof value !== "object" || value === null || !("base64" in value)) return value;
  return typeof value.base64 === "string" ? bytesOf(value.base64) : value;
}

/** Bytes that are turned into one string at a time. */
const PIECE = 0x8000;

function base64Of(bytes: Uint8Array): string {
  let binary = "";
  for (let at = 0; at < bytes.length; at += PIECE)
    binary += String.fromCharCode(...bytes.subarray(at, at + PIECE));
  return btoa(binary);
}

function bytesOf(base64: string): Uint8Array {
  return Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
}
