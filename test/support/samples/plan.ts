import type { Schedule } from "../../../src/core/schedule/Schedule.ts";

/** A made-up plan: 1080 °C in six hours, slowly to 1190 °C, and down by itself. */
export const PLAN: Schedule = {
  title: "the plan",
  unit: "C",
  cone: "5",
  series: "self-supporting",
  startC: 20,
  segments: [
    { toC: 1080, rateCPerHour: 1060 / 6, holdSeconds: 0, why: null },
    { toC: 1190, rateCPerHour: 55, holdSeconds: 0, why: null },
    { toC: 60, rateCPerHour: "free", holdSeconds: 0, why: null },
  ],
  ware: { thickestMm: null, widestMm: null, state: null, crackle: true },
  notes: null,
};
