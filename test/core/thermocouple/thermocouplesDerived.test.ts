import { describe, expect, it } from "vitest";
import {
  compensated,
  emfMillivolts,
  seebeckMicrovoltsPerK,
  shownC,
  THERMOCOUPLE_TYPES,
  type ThermocoupleType,
  temperatureFromEmf,
  trueC,
} from "../../../src/core/thermocouple/emf.ts";

function readC(type: ThermocoupleType, emfMv: number): number {
  const read = temperatureFromEmf(type, emfMv);
  if (read.kind !== "temperature") throw new Error(`${type} at ${emfMv} mV is ${read.kind}`);
  return read.tempC;
}

/** Worked out from the same functions outside this program, printed to the digits given. */
describe("derived: Seebeck coefficients [µV/°C] at 25, 600, 1000 and 1280 °C", () => {
  it.each([
    ["K", [40.5, 42.5, 39.0, 35.3]],
    ["S", [6.0, 10.2, 11.5, 12.1]],
    ["R", [5.9, 11.4, 13.2, 14.1]],
    ["B", [0.05, 6.0, 9.1, 10.8]],
  ] as const)("type %s within the printed digit", (type, printed) => {
    for (const [i, tempC] of [25, 600, 1000, 1280].entries())
      expect(
        Math.abs((seebeckMicrovoltsPerK(type, tempC) as number) - (printed[i] as number)),
      ).toBeLessThanOrEqual(0.055);
  });

  it.each(THERMOCOUPLE_TYPES)("type %s is the slope of the emf", (type) => {
    for (const tempC of [30, 180, 350]) {
      const rise =
        (emfMillivolts(type, tempC + 0.01) as number) -
        (emfMillivolts(type, tempC - 0.01) as number);
      expect(seebeckMicrovoltsPerK(type, tempC)).toBeCloseTo((1000 * rise) / 0.02, 5);
    }
  });
});

describe("derived: the cold junction", () => {
  it.each([
    ["K", 974],
    ["S", 988],
    ["R", 989],
  ] as const)(
    "type %s at 1000 °C reads %i °C when 25 °C at the terminals is not made up for",
    (type, shown) => {
      const emfMv = (emfMillivolts(type, 1000) as number) - (emfMillivolts(type, 25) as number);
      expect(Math.abs(readC(type, emfMv) - shown)).toBeLessThanOrEqual(0.5);
      const made = compensated(type, { emfMv, coldJunctionC: 25 });
      expect(made.kind === "temperature" && made.tempC).toBeCloseTo(1000, 6);
    },
  );

  it.each([
    ["K", -0.6],
    ["S", 12.6],
    ["R", 14.4],
  ] as const)(
    "adding 25 degrees instead of their emf sets type %s off by %f °C at 1000 °C",
    (type, off) => {
      const emfMv = (emfMillivolts(type, 1000) as number) - (emfMillivolts(type, 25) as number);
      expect(readC(type, emfMv) + 25 - 1000).toBeCloseTo(off, 1);
    },
  );

  it.each([
    ["K", 1.04, 1.12],
    ["S", 0.52, 0.5],
    ["R", 0.45, 0.43],
    ["B", 0.005, 0.004],
  ] as const)(
    "a degree at the terminals moves type %s by %f °C at 1000 and %f °C at 1222 °C",
    (type, at1000, at1222) => {
      const share = (tempC: number) =>
        (seebeckMicrovoltsPerK(type, 25) as number) /
        (seebeckMicrovoltsPerK(type, tempC) as number);
      expect(Math.abs(share(1000) - at1000)).toBeLessThanOrEqual(0.006);
      expect(Math.abs(share(1222) - at1222)).toBeLessThanOrEqual(0.006);
    },
  );

  it("at 0 °C: a meter that takes every 0.041 mV for a degree shows 1210.7 °C for type K at 1222 °C", () => {
    expect((emfMillivolts("K", 1222) as number) / 0.041).toBeCloseTo(1210.7, 0);
  });
});

/** Terminals at 0 °C, where instrument and wire agree; printed to whole degrees. */
describe("derived: a wire read as another type, true 1000 and 1222 °C", () => {
  it.each([
    ["K", "N", 1131, null],
    ["K", "J", 734, 864],
    ["S", "K", 236, 300],
    ["R", "S", 1079, 1331],
    ["S", "R", 930, 1127],
    ["N", "K", 873, 1088],
    ["K", "S", null, null],
  ] as const)("%s wire read as %s shows %s and %s", (wire, setTo, at1000, at1222) => {
    const wrong = { wire, setTo, coldJunctionC: 0 };
    for (const [tempC, shown] of [
      [1000, at1000],
      [1222, at1222],
    ] as const) {
      const found = shownC(tempC, wrong);
      if (shown === null) expect(found).toBeNull();
      else {
        expect(Math.abs((found as number) - shown)).toBeLessThanOrEqual(1);
        expect(trueC(found as number, wrong)).toBeCloseTo(tempC, 6);
      }
    }
  });
});
