import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { controllerAfter, controllerAt, relayShare } from "./controller.ts";
import { type KilnState, kilnAfter, SHUT, TOP_LOADER_180 } from "./kiln.ts";
import { seeded } from "./seeded.ts";

const ROOM_C = 20;

function coasting(state: KilnState, power: number): KilnState {
  return kilnAfter(TOP_LOADER_180, state, { power, roomC: ROOM_C, opening: SHUT, seconds: 5 });
}

describe("simulated kiln", () => {
  it("stays at room temperature with the power off", () => {
    const state = coasting({ hotC: ROOM_C, brickC: ROOM_C }, 0);
    expect(state.hotC).toBeCloseTo(ROOM_C, 9);
    expect(state.brickC).toBeCloseTo(ROOM_C, 9);
  });

  it("cools between 60 and 100 °C/h through 573 °C with the lid shut, as studio kilns do", () => {
    let state: KilnState = { hotC: 1200, brickC: 700 };
    let before = state;
    while (state.hotC > 573) {
      before = state;
      state = coasting(state, 0);
    }
    const rateCPerHour = ((before.hotC - state.hotC) / 5) * 3600;
    expect(rateCPerHour).toBeGreaterThan(60);
    expect(rateCPerHour).toBeLessThan(100);
  });

  it("never falls below the room with the power off, for any state above it", () => {
    const tempC = fc.double({ min: ROOM_C, max: 1300, noNaN: true });
    fc.assert(
      fc.property(tempC, tempC, (hotC, brickC) => {
        const state = coasting({ hotC, brickC }, 0);
        expect(Math.min(state.hotC, state.brickC)).toBeGreaterThanOrEqual(ROOM_C - 1e-9);
      }),
    );
  });
});

describe("simulated controller", () => {
  it("waits for a kiln that cannot follow: the set point stops 12 K ahead", () => {
    let state = controllerAt(ROOM_C);
    for (let step = 0; step < 500; step++)
      state = controllerAfter([{ toC: 900, rateCPerHour: 300 }], state, {
        readingC: ROOM_C,
        seconds: 5,
      });
    expect(state.setC).toBeGreaterThan(ROOM_C + 12);
    expect(state.setC).toBeLessThan(ROOM_C + 13);
    expect(state.output).toBeLessThanOrEqual(1);
  });

  it("closes the relay for the asked share of a cycle, for any output", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (output) => {
        const shares = [0, 5, 10, 15].map((from) => relayShare(output, from, 5));
        expect(shares.reduce((sum, share) => sum + share, 0) / 4).toBeCloseTo(output, 9);
      }),
    );
  });
});

describe("seeded numbers", () => {
  it("repeat for one seed and differ for another", () => {
    const three = (seed: number) => {
      const random = seeded(seed);
      return [random.even(), random.even(), random.normal()];
    };
    expect(three(7)).toEqual(three(7));
    expect(three(7)).not.toEqual(three(8));
  });

  it("lie in [0, 1), for any seed", () => {
    fc.assert(
      fc.property(fc.integer(), (seed) => {
        const value = seeded(seed).even();
        expect(value).toBeGreaterThanOrEqual(0);
        expect(value).toBeLessThan(1);
      }),
    );
  });
});
