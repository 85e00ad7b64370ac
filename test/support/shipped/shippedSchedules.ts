import type { Schedule } from "../../../src/core/schedule/Schedule.ts";
import type { TemperatureUnit } from "../../../src/core/units/temperature.ts";

/** How a shipped schedule cools. */
type ShippedCooling =
  | { readonly kind: "by itself" }
  /** Slow through the quartz inversion, and the cristobalite inversion where the ware may have it. */
  | { readonly kind: "slow"; readonly cristobalite: boolean }
  /** Held so far below the peak. */
  | {
      readonly kind: "held";
      readonly belowPeakK: number;
      readonly minutes: number;
      readonly why: string;
    }
  /** Slow while crystals grow. */
  | {
      readonly kind: "crystals";
      readonly fromC: number;
      readonly toC: number;
      readonly rateCPerHour: number;
      readonly why: string;
    };

/** What a shipped schedule is for; its segments are worked out from this. */
export interface ShippedSchedule {
  readonly name: string;
  readonly title: string;
  readonly unit: TemperatureUnit;
  readonly cone: string;
  /** A peak to begin with [°C]. */
  readonly aboutC: number;
  readonly peakHoldMinutes: number;
  readonly ware: Partial<Schedule["ware"]> & Pick<Schedule["ware"], "state">;
  readonly cooling: ShippedCooling;
  readonly notes?: string;
  readonly basis: string;
}

const TOP = "top and hold so that the cone falls by the end of the hold, by the cone model";
const GLAZED =
  "start inside the published 33 to 139 °C/h, held for the water of the glaze; quickest and middle rate of the cone chart above";
const GLAZED_F =
  "start inside the published 60 to 250 °F/h, held for the water of the glaze; quickest and middle rate of the cone chart above";
const SLOW =
  "quartz inversion at 0.8 of the textbook 50 °C/h, or of 60 °C/h at 12 mm and less in proportion where the ware is thicker";
const CRISTOBALITE =
  "for the cristobalite inversion no rate is published, so half of the limit at quartz, by caution";

/** Every schedule that we ship. */
export const SHIPPED: readonly ShippedSchedule[] = [
  {
    name: "bisque-cone-04.yaml",
    title: "Bisque to cone 04, 100 to 60 °C/h, walls up to 8 mm, falling by itself",
    unit: "C",
    cone: "04",
    aboutC: 1055,
    peakHoldMinutes: 15,
    ware: { thickestMm: 8, state: "bone dry" },
    cooling: { kind: "by itself" },
    basis: `Start between the published 33 and 139 °C/h by the square of the wall; 100 °C/h while bound water leaves and 80 °C/h while carbon burns out, both published; ${TOP}.`,
  },
  {
    name: "bisque-cone-06-thick-ware.yaml",
    title: "Bisque to cone 06 of damp ware up to 25 mm, 30 to 60 °C/h, held for water and carbon",
    unit: "C",
    cone: "06",
    aboutC: 990,
    peakHoldMinutes: 15,
    ware: { thickestMm: 25, state: "damp" },
    cooling: { kind: "slow", cristobalite: false },
    basis: `Start at the slow end of the published 33 to 139 °C/h; drying 1 h at 10 mm by the square of the wall, beside the published 1 to 4 h for damp ware and 6 h and more for sculpture; about 1 h at 815 °C for carbon, as published; ${SLOW}; ${TOP}.`,
  },
  {
    name: "cone-5-glaze.yaml",
    title: "Cone 5, 270 to 108 °F/h, falling by itself",
    unit: "F",
    cone: "5",
    aboutC: 1173,
    peakHoldMinutes: 15,
    ware: { thickestMm: 6.35, state: "glazed on bisque" },
    cooling: { kind: "by itself" },
    basis: `By published ranges: ${GLAZED_F}; ${TOP}.`,
  },
  {
    name: "cone-5-slow-cool.yaml",
    title: "Cone 5, 150 to 60 °C/h, slow through both inversions",
    unit: "C",
    cone: "5",
    aboutC: 1173,
    peakHoldMinutes: 10,
    ware: { state: "glazed on bisque" },
    cooling: { kind: "slow", cristobalite: true },
    basis: `By published ranges: ${GLAZED}; ${SLOW}; ${CRISTOBALITE}; ${TOP}.`,
  },
  {
    name: "cone-5-crackle-tiles.yaml",
    title: "Cone 5 for crackle tiles, slow through both inversions",
    unit: "C",
    cone: "5",
    aboutC: 1167,
    peakHoldMinutes: 20,
    ware: { thickestMm: 8, widestMm: 150, state: "glazed on bisque", crackle: true },
    cooling: { kind: "slow", cristobalite: true },
    notes: "Leave the lid shut to the end; crackle goes on for days.",
    basis: `By published ranges: ${GLAZED}; ${SLOW}; ${CRISTOBALITE}; ${TOP}.`,
  },
  {
    name: "cone-6-drop-and-hold.yaml",
    title: "Cone 6, held again 110 °F lower against pinholes",
    unit: "F",
    cone: "6",
    aboutC: 1203,
    peakHoldMinutes: 15,
    ware: { thickestMm: 6.35, state: "glazed on bisque" },
    cooling: {
      kind: "held",
      belowPeakK: 61,
      minutes: 20,
      why: "craters of bubbles level",
    },
    basis: `By published ranges: ${GLAZED_F}; held again 110 °F lower, where a glaze is some five times stiffer (own estimate), for the 20 min that are published as enough for gloss; ${TOP}.`,
  },
  {
    name: "cone-6-slow-cool.yaml",
    title: "Cone 6, 60 °C/h from 1050 to 850 °C for matt glazes and crystals",
    unit: "C",
    cone: "6",
    aboutC: 1208,
    peakHoldMinutes: 15,
    ware: { thickestMm: 6, state: "glazed on bisque" },
    cooling: {
      kind: "crystals",
      fromC: 1050,
      toC: 850,
      rateCPerHour: 60,
      why: "crystals grow while the glaze is still soft",
    },
    basis: `By published ranges: ${GLAZED}; some hours between about 1050 and 850 °C for crystals, common practice; ${TOP}.`,
  },
  {
    name: "cone-6-thick-ware.yaml",
    title: "Cone 6 for ware up to 18 mm thick or 350 mm wide, slow up and down",
    unit: "C",
    cone: "6",
    aboutC: 1200,
    peakHoldMinutes: 20,
    ware: { thickestMm: 18, widestMm: 350, state: "glazed on bisque" },
    cooling: { kind: "slow", cristobalite: true },
    basis: `Climb at the published 100 °C/h, less in proportion above 12 mm through quartz; ${SLOW}; ${CRISTOBALITE}; ${TOP}.`,
  },
  {
    name: "cone-10-oxidation.yaml",
    title: "Cone 10 in oxidation, 150 to 60 °C/h, slow through both inversions",
    unit: "C",
    cone: "10",
    aboutC: 1263,
    peakHoldMinutes: 20,
    ware: { thickestMm: 7, state: "glazed on bisque" },
    cooling: { kind: "slow", cristobalite: true },
    basis: `By published ranges: ${GLAZED}; ${SLOW}; ${CRISTOBALITE}, and stoneware of cone 10 may grow it; ${TOP}.`,
  },
];
