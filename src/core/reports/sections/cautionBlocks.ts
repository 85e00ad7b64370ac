import type { Caution } from "../../cautions/Caution.ts";
import type { Block } from "../Block.ts";

/** What can hurt, each said once, at the end of every report. */
export function cautionBlocks(cautions: readonly Caution[]): readonly Block[] {
  const once = cautions.filter(
    (caution, index) => cautions.findIndex((other) => other.text === caution.text) === index,
  );
  if (once.length === 0) return [];
  return [
    { kind: "heading", text: "Take care" },
    ...once.map(({ topic, text }): Block => ({ kind: "caution", topic, text })),
  ];
}
