import type { Block, ChartPair } from "./Block.ts";

/** A chart as a block, when there is one. */
export function chartBlocks(description: string, chart: ChartPair | undefined): readonly Block[] {
  return chart === undefined ? [] : [{ kind: "chart", description, chart }];
}
