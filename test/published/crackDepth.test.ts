import { describe, expect, it } from "vitest";
import { edgeCrack } from "../support/edgeCrack.ts";

describe("an edge crack in a strip under tension, F of K = F σ √(πa)", () => {
  // Tada, Paris & Irwin, The Stress Analysis of Cracks Handbook; F to half a per cent.
  it.each([
    [0.2, 1.367],
    [0.3, 1.66],
    [0.5, 2.827],
  ])("%d of the width: %d within 1 % (the weight function's own accuracy)", (share, printed) => {
    const found = edgeCrack(() => 1, share, 1) / Math.sqrt(Math.PI * share);
    expect(Math.abs(found / printed - 1)).toBeLessThan(0.01);
  });
});
