import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makeCurve } from "../../../src/core/curve/Curve.ts";
import {
  type KilnFiring,
  type LearnedKiln,
  type LearnOptions,
  lossKPerSecond,
} from "../../../src/core/kiln/LearnedKiln.ts";
import { learnKiln } from "../../../src/core/kiln/learnKiln.ts";
import { asAssumedKiln } from "../../../src/core/kiln/reach.ts";
import { demoFiring } from "../../support/kilns.ts";

function learned(firings: readonly KilnFiring[], options: LearnOptions = {}): LearnedKiln {
  const result = learnKiln(firings, options);
  if (!result.ok) throw new RangeError(result.problems.map(({ what }) => what).join("; "));
  return result.value;
}

const codes = (firings: readonly KilnFiring[]) => {
  const result = learnKiln(firings);
  return result.ok ? [] : result.problems.map(({ code }) => code);
};

const BISQUE = demoFiring("2026-02-07-a");
const TIRED = demoFiring("2026-06-06-a");
const NATURAL = demoFiring("2026-02-21-b", { withOutput: false });
const SLOW_COOLED = demoFiring("2026-03-14-b", { withOutput: false });
const OPENED = demoFiring("2026-05-23-b");

/** The part of a log up to some hours. */
function until(firing: KilnFiring, hours: number): KilnFiring {
  const { timesSeconds, tempsC } = firing.curve;
  const count = timesSeconds.findIndex((seconds) => seconds > hours * 3600);
  return {
    ...firing,
    curve: makeCurve(timesSeconds.slice(0, count), tempsC.slice(0, count)),
  };
}

function fallAt(kiln: LearnedKiln, tempC: number): number {
  return 3600 * lossKPerSecond(kiln.cooling, tempC, kiln.roomC);
}

describe("learning how a kiln falls by itself", () => {
  const uncontrolled = learned([NATURAL]);

  it("takes no controlled slow cooling for natural cooling, even without an output column", () => {
    const kiln = learned([SLOW_COOLED]);
    for (const tempC of [900, 573, 300, 226])
      expect(fallAt(kiln, tempC) / fallAt(uncontrolled, tempC)).toBeCloseTo(1, 1);
  });

  it("finds the same with the output column as without", () => {
    const kiln = learned([demoFiring("2026-03-14-b")]);
    for (const tempC of [900, 573, 300, 226])
      expect(fallAt(kiln, tempC) / fallAt(learned([SLOW_COOLED]), tempC)).toBeCloseTo(1, 1);
  });

  it.each([true, false])(
    "learns nothing from after the lid was propped (output logged: %s)",
    (withOutput) => {
      const kiln = learned([demoFiring("2026-05-23-b", { withOutput })]);
      const opened = kiln.firings[0]?.openedAtSeconds as number;
      expect(kiln.cooling.lowestC).toBeGreaterThan(700);
      expect(opened / 3600).toBeGreaterThan(12.5);
      expect(opened / 3600).toBeLessThan(14);
    },
  );

  it("works out when it will be cool from a log that ends hot", () => {
    const whole = learned([NATURAL]).firings[0]?.cooledTo.find(({ tempC }) => tempC === 100);
    const cut = learned([until(NATURAL, 17)]).firings[0]?.cooledTo.find(
      ({ tempC }) => tempC === 100,
    );
    expect(whole?.how).toBe("measured");
    expect(cut?.how).toBe("worked out");
    const ratio = (cut?.secondsFromPeak as number) / (whole?.secondsFromPeak as number);
    expect(Math.abs(ratio - 1)).toBeLessThan(0.06);
  });
});

describe("learning the power", () => {
  it("sees elements at 62.5 % of their power in the pull at equal temperature", () => {
    const finding = learned([BISQUE, TIRED]).findings.find(({ topic }) => topic === "elements");
    expect(finding?.severity).toBe("caution");
    expect(finding?.evidence.find(({ name }) => name === "less")?.value).toBeCloseTo(0.375, 1);
  });

  it("puts firings in the order of their start before it compares them", () => {
    expect(learned([TIRED, BISQUE]).firings.map(({ name }) => name)).toEqual([
      BISQUE.name,
      TIRED.name,
    ]);
  });

  it("says that the fastest climb is the least the kiln can do when no output was logged", () => {
    const kiln = learned([NATURAL]);
    expect(kiln.power.from).toBe("fastest climb");
    expect(kiln.findings.map(({ topic }) => topic)).toContain("power");
  });

  it("reckons energy only with a wattage, and cost only with a tariff", () => {
    const [bare] = learned([BISQUE]).firings;
    const [priced] = learned([BISQUE], { powerWatt: 10_500, tariffPerKWh: 0.3 }).firings;
    expect(bare?.energyKWh).toBeNull();
    expect(bare?.cost).toBeNull();
    expect(priced?.cost).toBeCloseTo(0.3 * (priced?.energyKWh as number), 9);
  });
});

describe("the thermocouple", () => {
  it("scatters as much as the simulated one, within a fifth", () => {
    expect(learned([BISQUE]).firings[0]?.noiseK).toBeCloseTo(0.35, 1);
  });

  it("lags as the simulated one does, within half a step of the log", () => {
    expect(Math.abs((learned([BISQUE]).twoNode?.lagSeconds as number) - 95)).toBeLessThan(30);
  });
});

describe("a learned kiln as the assumed one", () => {
  const kiln = asAssumedKiln(learned([BISQUE], { powerWatt: 10_500 }));

  it("falls faster and climbs more slowly the hotter it is, for any two temperatures", () => {
    const tempC = fc.double({ min: 60, max: 1250, noNaN: true });
    fc.assert(
      fc.property(tempC, tempC, (one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        expect(kiln.naturalCoolingCPerHour(high)).toBeGreaterThanOrEqual(
          kiln.naturalCoolingCPerHour(low),
        );
        expect(kiln.fullHeatingCPerHour(high)).toBeLessThanOrEqual(kiln.fullHeatingCPerHour(low));
      }),
    );
  });

  it("says which logs it was learned from", () => {
    expect(kiln.basis).toBe("your kiln as learned from 2026-02-07-a");
  });
});

describe("what a log cannot tell", () => {
  it("is refused without any firing", () => {
    expect(codes([])).toEqual(["kiln/no-firing"]);
  });

  it("is refused when the log is too short", () => {
    expect(codes([until(BISQUE, 1.5)])).toEqual(["kiln/too-short"]);
  });

  it("is refused when the logger stopped at the peak", () => {
    expect(codes([until(NATURAL, 8)])).toEqual(["kiln/no-natural-cooling"]);
  });

  it("is refused when the log begins near the peak", () => {
    const { timesSeconds, tempsC } = NATURAL.curve;
    const from = tempsC.findIndex((tempC) => tempC > 1100);
    const curve = makeCurve(timesSeconds.slice(from), tempsC.slice(from));
    expect(codes([{ ...NATURAL, curve }])).toEqual(["kiln/no-climb"]);
  });

  it("is refused when the records name two kilns", () => {
    expect(
      codes([
        { ...BISQUE, kiln: "the Wren" },
        { ...OPENED, kiln: "Old Hilda" },
      ]),
    ).toEqual(["kiln/several-kilns"]);
  });

  it("says what was found, what is needed and what to do", () => {
    const result = learnKiln([until(NATURAL, 8)]);
    expect(result.ok ? null : result.problems[0]).toMatchObject({
      what: expect.stringContaining("2026-02-21-b ends at"),
      fix: expect.stringContaining("overnight"),
    });
  });
});
