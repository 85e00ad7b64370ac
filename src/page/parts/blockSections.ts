import type { Block } from "../../core/reports/Block.ts";
import { remembered } from "./remembered.ts";

/** Blocks of a report under one heading. */
export interface BlockSection {
  /** Null of what stands before the first heading. */
  readonly heading: string | null;
  readonly blocks: readonly Block[];
}

/** A report's blocks by heading, the heading with them; the same list for the same blocks. */
export const blockSections = remembered((blocks: readonly Block[]): readonly BlockSection[] => {
  const sections: { heading: string | null; blocks: Block[] }[] = [{ heading: null, blocks: [] }];
  for (const block of blocks)
    if (block.kind === "heading") sections.push({ heading: block.text, blocks: [block] });
    else sections.at(-1)?.blocks.push(block);
  return sections;
});
