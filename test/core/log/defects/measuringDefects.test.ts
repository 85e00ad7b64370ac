import { describe, expect, it } from "vitest";
import { type DefectLog, expectAsMade, readFixture } from "./defectLog.ts";

const ZONES = ["Top (°C): temperature", "Bottom (°C): temperature"];

/** Two zones from 500 °C and 495 °C on, 12.5 K more each row; two cells of the first are none. */
function twoCells(file: string, is: string, what: RegExp): DefectLog {
  return { file, is, tempsC: [500, 787.5], columns: ZONES, faults: [["open", 2, what]] };
}

const NO_THERMOCOUPLE = /Top \(°C\) gave 2 values that no thermocouple gives, .*left out/;

const CELLS: readonly DefectLog[] = [
  twoCells("sentinel-9999.csv", "9999 for no reading", NO_THERMOCOUPLE),
  twoCells("sentinel-32767.csv", "32767 for no reading", NO_THERMOCOUPLE),
  twoCells("sentinel-3276.7.csv", "3276.7 for no reading", NO_THERMOCOUPLE),
  twoCells("open-circuit-minus-999.csv", "−999 for an open circuit", NO_THERMOCOUPLE),
  twoCells("scale-end-1372.csv", "the end of the scale of type K", NO_THERMOCOUPLE),
  twoCells("nought-in-mid-firing.csv", "nought in the middle of a firing", NO_THERMOCOUPLE),
  twoCells(
    "spreadsheet-error.csv",
    "errors of a spreadsheet",
    /2 cells without a number \(#DIV\/0!\)/,
  ),
  twoCells("sentinel-word.csv", "a word for an open circuit", /2 cells without a number \(OPEN\)/),
];

const THERMOCOUPLES: readonly DefectLog[] = [
  // The log begins at 20 °C, its first reading is the fourth row.
  {
    file: "open-circuit-at-start.csv",
    is: "an open circuit at its start",
    from: 900,
    tempsC: [57.5, 307.5],
    faults: [["open", 3, /3 values that no thermocouple gives/]],
  },
  {
    file: "scale-end-to-the-end.csv",
    is: "an open circuit from an hour and a half on",
    lasts: 18 * 300,
    tempsC: [500, 725],
    faults: [["open", 5, /5 values that no thermocouple gives/]],
  },
  {
    // Rows 8 to 24 at 600 °C; row 25 is 17 steps of 12.5 K above row 8.
    file: "stuck-alone.csv",
    is: "one thermocouple that stands still and lets go",
    readings: 36,
    tempsC: [500, 937.5],
    faults: [["stuck", 17, /stays at exactly 600 °C, then jumps by 21[23] K/]],
  },
  {
    // Rows 12 to 35; the set point makes 23 steps of 12.5 K meanwhile.
    file: "stuck-beside-set-point.csv",
    is: "a thermocouple that stands still while its set point climbs",
    readings: 36,
    tempsC: [495, 645],
    columns: ["Set point (°C): set-point", "Kiln (°C): temperature"],
    faults: [["stuck", 24, /stays at exactly 645 °C while Set point \(°C\) moves by 28[78] K/]],
  },
  {
    file: "zone-reversed.csv",
    is: "one of two thermocouples with its leads swapped",
    readings: 25,
    step: 180,
    tempsC: [20, 140],
    columns: ZONES,
    found: { "thermocouple reversed": /falls from 30 °C to −106 °C/ },
  },
  {
    file: "spike.csv",
    is: "one reading 225 K too high",
    tempsC: [500, 787.5],
    columns: ZONES,
    faults: [["spike", 1, /Top \(°C\) has 1 reading far off .*\(850 °C\); left out/]],
  },
  {
    // Rows 12 to 26; the other zone makes 14 steps of 12.5 K meanwhile.
    file: "stuck-thermocouple.csv",
    is: "a zone that stands still while the other climbs",
    readings: 36,
    tempsC: [500, 937.5],
    columns: ZONES,
    faults: [
      ["stuck", 15, /Bottom \(°C\) stays at exactly 645 °C while Top \(°C\) moves by 175 K/],
    ],
    found: { "a reading that stood still": /645 °C/ },
  },
  {
    // 20 °C reads as twice the emf of the terminals (25 °C) less its own, and 140 °C likewise.
    file: "thermocouple-reversed.csv",
    is: "a thermocouple with its leads swapped",
    readings: 25,
    step: 180,
    tempsC: [29.9, -106.2],
    found: { "thermocouple reversed": /falls from 30 °C to −106 °C.*leads.*swapped/ },
  },
  {
    // Made with a scatter of 5 K.
    file: "thermocouple-noisy.csv",
    is: "readings that jump about",
    readings: 120,
    step: 30,
    tempsC: [498.7, 642.5],
    found: { "readings that jump about": /jump about by [456] °C either way/ },
  },
  {
    // Up to 1220 °C in truth, by the published emf of types S and K, terminals at 25 °C.
    file: "thermocouple-type-s-read-as-k.csv",
    is: "a thermocouple of type S read as type K",
    readings: 40,
    step: 900,
    tempsC: [24.3, 117],
    faults: [["coarse", 40, /one reading in 15 min/]],
    found: {
      "wrong thermocouple type?":
        /peaks at 320 °C.*[Tt]ype S wire at an instrument set to K would mean a peak of 12[12]\d °C/,
    },
  },
  {
    // 5 K apart up to row 15, at 445 °C; from there 2 K more each row, 53 K in the last.
    file: "zones-parting.csv",
    is: "zones that part",
    readings: 40,
    tempsC: [220, 805],
    columns: ZONES,
    found: {
      "zones that part": /5 °C apart early on.* and 4\d °C near the peak, Top \(°C\) higher/,
      "zones apart": /53 °C apart at the peak/,
    },
  },
];

const COLUMNS: readonly DefectLog[] = [
  {
    file: "zones-in-two-units.csv",
    is: "one zone in °C and one in °F",
    columns: ["Top (°C): temperature", "Bottom (°F): temperature"],
    found: { "zones apart": /5 °C apart at the peak and at most 5 °C/ },
  },
  // Blank cells are counted as dropped, without a fault.
  { file: "blank-cells.csv", is: "blank cells in one zone", tempsC: [500, 787.5], columns: ZONES },
  {
    file: "columns-of-many-kinds.csv",
    is: "a set point, output, heat flux, battery and cold junction beside it",
    tempsC: [16.6, 303.6],
    columns: [
      "Set point (°C): set-point",
      "Kiln (°C): temperature",
      "Output (%): output",
      "Heat flux (kW/m2): other",
      "Battery (V): other",
      "Cold junction (°C): cold-junction",
    ],
  },
  {
    file: "columns-that-switch.csv",
    is: "a relay, a fan, a counter and a balance beside it",
    columns: [
      "Kiln (°C): temperature",
      "Relay: output",
      "Fan: other",
      "Sample: other",
      "Mass (kg): other",
    ],
  },
  {
    file: "output-as-a-share.csv",
    is: "an output from nought to one beside it",
    columns: ["Kiln (°C): temperature", "Output: output"],
  },
];

describe("a log with", () => {
  it.each([...CELLS, ...THERMOCOUPLES, ...COLUMNS])(
    "$is reads as it was made ($file)",
    expectAsMade,
  );

  it("two cells of one zone that are none keeps the other zone whole", () => {
    for (const file of [...CELLS.map((each) => each.file), "blank-cells.csv"])
      expect(
        readFixture(file).channels.map(({ readings, dropped }) => [readings, dropped]),
      ).toEqual([
        [22, 2],
        [24, 0],
      ]);
  });
});
