import type { Block } from "./Block.ts";

/** Blocks under a heading; nothing at all when there are none. */
export function section(text: string, blocks: readonly Block[]): readonly Block[] {
  return blocks.length === 0 ? [] : [{ kind: "heading", text }, ...blocks];
}
