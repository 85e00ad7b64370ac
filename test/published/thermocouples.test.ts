import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  emfMillivolts,
  emfRangeC,
  printedInverse,
  seebeckMicrovoltsPerK,
  shownC,
  THERMOCOUPLE_TYPES,
  type ThermocoupleType,
  temperatureFromEmf,
} from "../../src/core/thermocouple/emf.ts";
import { REFERENCE_FUNCTIONS } from "../../src/core/thermocouple/referenceFunctions.ts";
import { newWireLimit, wireClassOf } from "../../src/core/thermocouple/wireLimits.ts";

/** NIST Monograph 175 prints emf to 0.001 mV, so that half of it, and the arithmetic, may lie between. */
const HALF_DIGIT_MV = 0.0005 + 1e-9;

const POINTS = readFileSync(
  new URL("../fixtures/thermocouples/its90-check-points.csv", import.meta.url),
  "utf8",
)
  .split("\n")
  .slice(2)
  .filter((line) => line !== "")
  .map((line) => line.split(","))
  .map(([type, tempC, emfMv]) => ({
    type: type as ThermocoupleType,
    tempC: Number(tempC),
    emfMv: Number(emfMv),
  }));

function of(type: ThermocoupleType) {
  return POINTS.filter((point) => point.type === type);
}

function readC(type: ThermocoupleType, emfMv: number): number {
  const read = temperatureFromEmf(type, emfMv);
  if (read.kind !== "temperature") throw new Error(`${type} at ${emfMv} mV is ${read.kind}`);
  return read.tempC;
}

describe("NIST Monograph 175 (1993), printed emf", () => {
  it.each([
    ["K", 166],
    ["N", 158],
    ["S", 187],
    ["R", 187],
    ["B", 184],
    ["J", 142],
    ["T", 68],
  ] as const)(
    "type %s: all %i values within half the last printed digit, 0.001 mV",
    (type, count) => {
      const points = of(type);
      expect(points.length).toBe(count);
      for (const { tempC, emfMv } of points) {
        const found = emfMillivolts(type, tempC) as number;
        expect(Math.abs(found - emfMv), `${tempC} °C`).toBeLessThanOrEqual(HALF_DIGIT_MV);
      }
    },
  );

  it.each(THERMOCOUPLE_TYPES)("type %s: direct stretches join within 0.001 µV", (type) => {
    const { direct } = REFERENCE_FUNCTIONS[type];
    for (const [i, segment] of direct.slice(1).entries()) {
      const joint = segment.fromC;
      expect(direct[i]?.toC).toBe(joint);
      const jump =
        (emfMillivolts(type, joint + 1e-9) as number) -
        (emfMillivolts(type, joint - 1e-9) as number);
      expect(Math.abs(jump)).toBeLessThan(1e-6);
    }
  });

  it.each(THERMOCOUPLE_TYPES)(
    "type %s: the printed inverse errs no more than is printed beside it",
    (type) => {
      const lowest = REFERENCE_FUNCTIONS[type].inverse[0]?.fromC as number;
      for (const { tempC } of of(type).filter((point) => point.tempC >= lowest)) {
        const inverse = printedInverse(type, emfMillivolts(type, tempC) as number);
        if (inverse === null) throw new Error(`no inverse at ${tempC} °C`);
        // The bounds are printed to one digit, so that half of it may be over.
        const [least, greatest] = inverse.errorK;
        const error = inverse.tempC - tempC;
        expect(error, `${tempC} °C`).toBeGreaterThan(1.5 * least);
        expect(error, `${tempC} °C`).toBeLessThan(1.5 * greatest);
      }
    },
  );

  it.each(THERMOCOUPLE_TYPES)(
    "type %s: from temperature to emf and back is the same within 1e-6 °C",
    (type) => {
      const lowest = REFERENCE_FUNCTIONS[type].inverse[0]?.fromC as number;
      for (let tempC = lowest; tempC <= emfRangeC(type).toC; tempC += 0.73)
        expect(
          Math.abs(readC(type, emfMillivolts(type, tempC) as number) - tempC),
          `${tempC} °C`,
        ).toBeLessThan(1e-6);
    },
  );

  it("takes the inverse of smaller printed error where two of S and R overlap", () => {
    expect(printedInverse("S", 11)?.errorK).toEqual([-0.0002, 0.0002]);
    expect(printedInverse("R", 12)?.errorK).toEqual([-0.0005, 0.001]);
    expect(printedInverse("S", 10.2)?.errorK).toEqual([-0.01, 0.01]);
  });

  it("gives no temperature of type B below 0.291 mV, 250 °C, and says why", () => {
    expect(temperatureFromEmf("B", 0.29)).toEqual({ kind: "ambiguous" });
    expect(temperatureFromEmf("B", 0)).toEqual({ kind: "ambiguous" });
    expect(temperatureFromEmf("B", -0.1)).toEqual({ kind: "below" });
    expect(readC("B", 0.292)).toBeGreaterThan(250);
  });

  it("says over and under the range instead of reaching beyond it", () => {
    expect(temperatureFromEmf("K", 54.9)).toEqual({ kind: "above" });
    expect(temperatureFromEmf("K", -6)).toEqual({ kind: "below" });
    expect(emfMillivolts("K", 1372.1)).toBeNull();
    expect(seebeckMicrovoltsPerK("T", 401)).toBeNull();
  });
});

describe("a wire read as another type", () => {
  it("by the printed tables at 25 °C: S at 1000 °C gives 9.587 − 0.143 mV, and K adds 1.000 mV and shows 257 °C", () => {
    // K prints 10.153 mV at 250 °C and 10.561 mV at 260 °C.
    const printed = 250 + (10 * (9.587 - 0.143 + 1.0 - 10.153)) / (10.561 - 10.153);
    const found = shownC(1000, { wire: "S", setTo: "K", coldJunctionC: 25 }) as number;
    expect(Math.abs(found - printed)).toBeLessThanOrEqual(0.1);
  });
});

/** Summaries of ASTM E230/E230M and IEC 60584-1; percentages worked out by hand, printed to 0.1 °C. */
describe("new-wire limits", () => {
  it.each([
    ["K", "standard", [4.3, 7.5, 7.9, 9.2, null]],
    ["K", "special", [2.3, 4.0, 4.2, 4.9, null]],
    ["K", "class 2", [4.3, 7.5, 7.9, null, null]],
    ["N", "standard", [4.3, 7.5, 7.9, 9.2, null]],
    ["S", "standard", [1.5, 2.5, 2.6, 3.1, 3.2]],
    ["R", "special", [0.6, 1.0, 1.1, 1.2, 1.3]],
    ["B", "standard", [null, 5.0, 5.3, 6.1, 6.4]],
  ] as const)("type %s, %s, at 573, 1000, 1060, 1222 and 1280 °C", (type, wireClass, printed) => {
    for (const [i, tempC] of [573, 1000, 1060, 1222, 1280].entries()) {
      const { limitK } = newWireLimit(type, wireClass, tempC);
      const expected = printed[i] as number | null;
      if (expected === null) expect(limitK, `${tempC} °C`).toBeNull();
      else
        expect(Math.abs((limitK as number) - expected), `${tempC} °C`).toBeLessThanOrEqual(0.051);
    }
  });

  it("says where they end: type K at 1260 °C, class 2 at 1200 °C, S at 1480 °C", () => {
    expect(newWireLimit("K", "standard", 1280).range).toMatchObject({ toC: 1260 });
    expect(newWireLimit("K", "class 2", 1280).range).toMatchObject({ toC: 1200 });
    expect(newWireLimit("S", "standard", 1280).range).toMatchObject({ toC: 1480 });
    expect(newWireLimit("S", "class 3", 100)).toEqual({ limitK: null, range: null });
  });

  it("S of class 1 is 1 °C up to 1100 °C and 1 + 0.003 (t − 1100) above: 1.6 °C at 1300 °C", () => {
    expect(newWireLimit("S", "class 1", 900).limitK).toBe(1);
    expect(newWireLimit("S", "class 1", 1300).limitK).toBeCloseTo(1.6, 9);
  });

  it("is 1.5 % of the size of the temperature for K of class 3 below −167 °C", () => {
    expect(newWireLimit("K", "class 3", -180).limitK).toBeCloseTo(2.7, 9);
  });

  it("knows a class as it is written, and no other words", () => {
    expect(["standard", "Special", "1", "class 2", "IEC class 3"].map(wireClassOf)).toEqual([
      "standard",
      "special",
      "class 1",
      "class 2",
      "class 3",
    ]);
    expect(wireClassOf("the good one")).toBeNull();
  });
});
