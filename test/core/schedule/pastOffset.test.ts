import { describe, expect, it } from "vitest";
import { pastOffset } from "../../../src/core/schedule/pastOffset.ts";

const offset = (offsetK: number, lowK: number | null, highK: number | null) => ({
  series: "self-supporting" as const,
  offsetK,
  lowK,
  highK,
  witnesses: [],
});

describe("pastOffset", () => {
  it("is the median of the firings, with the lowest and the highest", () => {
    const firings = [offset(9, 8, 10), offset(-3, -5, -1), offset(4, 2, 6)];
    expect(pastOffset(firings)).toEqual({ offsetK: 4, lowK: -3, highK: 9, firings: 3 });
    expect(pastOffset(firings.slice(0, 2))).toMatchObject({ offsetK: 3, firings: 2 });
  });

  it("keeps what the cones of a single firing allow", () => {
    expect(pastOffset([offset(9, 6, 12)])).toEqual({ offsetK: 9, lowK: 6, highK: 12, firings: 1 });
  });

  it("leaves out firings that only bound the offset, and says nothing without any other", () => {
    expect(pastOffset([offset(0, null, 12)])).toBeNull();
  });
});
