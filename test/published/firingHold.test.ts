import { describe, expect, it } from "vitest";
import { type Curve, makeCurve } from "../../src/core/curve/Curve.ts";
import { isStableHold } from "../../src/core/firing/segments.ts";
import { cited } from "../../src/core/sources/bibliography.ts";

/**
 * EN ISO 1182:2020, 7.2.4 (public excerpt): stabilized for at least 10 min at (750 ± 5) °C; drift by
 * linear regression not more than 2 °C during these 10 min; maximum deviation from the average not
 * more than 10 °C in 10 min. Each row stands just inside or just outside one of these limits.
 */
const SOURCE = `${cited("iso-1182-2020")}, EN ISO 1182, 7.2.4`;

/** 10 min (or other) read every 30 s: a mean, a drift over 10 min, one reading off. */
function furnace(given: {
  readonly minutes?: number;
  readonly meanC: number;
  readonly driftK?: number;
  readonly oneOffK?: number;
}): Curve {
  const count = (given.minutes ?? 10) * 2 + 1;
  const middle = (count - 1) / 2;
  const temps = Array.from(
    { length: count },
    (_, i) => given.meanC + ((i - middle) / 20) * (given.driftK ?? 0),
  );
  temps[middle] = (temps[middle] as number) + (given.oneOffK ?? 0);
  return makeCurve(
    temps.map((_, i) => i * 30),
    temps,
  );
}

const published = [
  { what: "750 °C without drift", curve: furnace({ meanC: 750 }), stable: true },
  { what: "a mean of 754.9 °C", curve: furnace({ meanC: 754.9 }), stable: true },
  { what: "a mean of 755.1 °C", curve: furnace({ meanC: 755.1 }), stable: false },
  { what: "a mean of 744.9 °C", curve: furnace({ meanC: 744.9 }), stable: false },
  { what: "a drift of 1.9 °C", curve: furnace({ meanC: 750, driftK: 1.9 }), stable: true },
  { what: "a drift of 2.1 °C", curve: furnace({ meanC: 750, driftK: 2.1 }), stable: false },
  { what: "a drift of −2.1 °C", curve: furnace({ meanC: 750, driftK: -2.1 }), stable: false },
  // One reading d off its 20 neighbours stands 20/21 d from the mean of all.
  {
    what: "one reading 9.9 °C off the mean",
    curve: furnace({ meanC: 750, oneOffK: (9.9 * 21) / 20 }),
    stable: true,
  },
  {
    what: "one reading 10.1 °C off the mean",
    curve: furnace({ meanC: 750, oneOffK: (10.1 * 21) / 20 }),
    stable: false,
  },
  { what: "only 9 min", curve: furnace({ meanC: 750, minutes: 9 }), stable: false },
] as const;

describe.each(published)(`${SOURCE}: $what`, ({ curve, stable }) => {
  it(`is ${stable ? "" : "not "}a stable furnace (limits printed to 1 °C, tested 0.1 °C beside)`, () => {
    const toSeconds = curve.timesSeconds.at(-1) as number;
    expect(isStableHold(curve, { fromSeconds: 0, toSeconds, targetC: 750 })).toBe(stable);
  });
});
