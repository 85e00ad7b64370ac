import fc from "fast-check";
import { problemText, type Result } from "../../src/core/problem.ts";
import type { Schedule, Segment } from "../../src/core/schedule/Schedule.ts";

/** The value of a result, or an error that says its problems. */
export function valued<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problems.map(problemText).join("\n"));
  return result.value;
}

/** A segment; its rate signed in °C/h, its hold in minutes. */
export function segment(
  toC: number,
  rateCPerHour: number | "free",
  holdMinutes: number = 0,
): Segment {
  return { toC, rateCPerHour, holdSeconds: holdMinutes * 60, why: null };
}

/** Whether every target and every rate is a whole number of degrees of the schedule's unit. */
export function isWhole({ unit, segments }: Schedule): boolean {
  const size = unit === "C" ? 1 : 1.8;
  const numbers = segments.flatMap(({ toC, rateCPerHour: rate }) => [
    unit === "C" ? toC : toC * size + 32,
    ...(typeof rate === "number" ? [rate * size] : []),
  ]);
  return numbers.every((value) => Math.abs(value - Math.round(value)) < 1e-6);
}

/** Whether two neighbours go on the same way at the same rate, with no hold between them. */
export function hasAlikeNeighbours({ startC, segments }: Schedule): boolean {
  return segments.some(({ toC, rateCPerHour, holdSeconds }, index) => {
    const next = segments[index + 1];
    const fromC = segments[index - 1]?.toC ?? startC;
    const goesOn = next !== undefined && toC > fromC === next.toC > toC;
    return goesOn && holdSeconds === 0 && next.rateCPerHour === rateCPerHour;
  });
}

/** A schedule of dry, ordinary parts, with what a test cares about put in. */
export function schedule(parts: Partial<Schedule> = {}): Schedule {
  return {
    title: "A firing",
    unit: "C",
    cone: null,
    series: "self-supporting",
    startC: 20,
    segments: [segment(1186, 60)],
    ware: { thickestMm: null, widestMm: null, state: null, crackle: false },
    notes: null,
    basis: null,
    ...parts,
  };
}

/** Any schedule that a file could hold, in whole °C or °F. */
export const anySchedule: fc.Arbitrary<Schedule> = fc
  .record({
    unit: fc.constantFrom("C" as const, "F" as const),
    title: fc.string({ minLength: 1, maxLength: 40 }),
    cone: fc.constantFrom(null, "05", "5", "10"),
    series: fc.constantFrom("self-supporting" as const, "large" as const),
    start: fc.integer({ min: 40, max: 90 }),
    steps: fc.array(
      fc.record({
        to: fc.integer({ min: 100, max: 1390 }),
        rate: fc.oneof(fc.constant("free" as const), fc.integer({ min: 1, max: 1500 })),
        holdSeconds: fc.integer({ min: 0, max: 36_000 }),
        why: fc.option(fc.string({ maxLength: 40 })),
      }),
      { minLength: 1, maxLength: 12 },
    ),
    thickestMm: fc.option(fc.integer({ min: 1, max: 100 })),
    crackle: fc.boolean(),
    state: fc.constantFrom(null, "damp" as const, "glazed on bisque" as const),
    notes: fc.option(fc.string({ maxLength: 80 })),
    basis: fc.option(fc.string({ maxLength: 80 })),
  })
  .map((made) => {
    const size = made.unit === "C" ? 1 : 1.8;
    const tempC = (value: number) => (made.unit === "C" ? value : (value - 32) / 1.8);
    const segments: Segment[] = [];
    let from = made.start;
    for (const { to, rate, holdSeconds, why } of made.steps) {
      if (to === from) continue;
      const signed = rate === "free" ? rate : ((to > from ? 1 : -1) * rate) / size;
      segments.push({ toC: tempC(to), rateCPerHour: signed, holdSeconds, why });
      from = to;
    }
    return {
      ...schedule({ segments: segments.length > 0 ? segments : [segment(tempC(99), 60 / size)] }),
      unit: made.unit,
      title: made.title,
      cone: made.cone,
      series: made.series,
      startC: tempC(made.start),
      ware: {
        thickestMm: made.thickestMm,
        widestMm: null,
        state: made.state,
        crackle: made.crackle,
      },
      notes: made.notes,
      basis: made.basis,
    };
  });
