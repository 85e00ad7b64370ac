import { draftBlocks } from "../../core/reports/draftBlocks.ts";
import { remembered } from "../parts/remembered.ts";

/** The blocks of a draft as it stands, made once for all who show a part of them. */
export const lightBlocks = remembered((draft: Parameters<typeof draftBlocks>[0], unit: "C" | "F") =>
  draftBlocks(draft, { unit }),
);
