import { z } from "zod";

/** A file that a person dropped or picked, kept as it is. */
export interface KeptFile {
  readonly name: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** A kept file inside what is stored. */
export const keptFileShape = z.strictObject({
  name: z.string().min(1).max(400),
  bytes: z.instanceof(Uint8Array<ArrayBuffer>),
});
