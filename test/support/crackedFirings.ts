import { makeCurve } from "../../src/core/curve/Curve.ts";
import type { CrackKind } from "../../src/core/diagnosis/Diagnosis.ts";
import type { LogReading } from "../../src/core/log/reading/LogReading.ts";
import { problemText } from "../../src/core/problem.ts";
import { parseRecord } from "../../src/core/record/parseRecord.ts";
import { reviewFiring } from "../../src/core/review/reviewFiring.ts";
import type { Leg } from "./demo/controller.ts";
import { DEMO_FIRINGS } from "./demo/demoFiles.ts";
import { type FiringPlan, fire } from "./demo/fire.ts";
import { type KilnBuild, type Opening, SHUT, TEST_KILN_60, TOP_LOADER_180 } from "./demo/kiln.ts";

/** A firing made up with one fault, and the cause that a potter who knew of it would name. */
export interface CrackedFiring {
  readonly name: string;
  readonly cause: CrackKind;
  readonly kiln?: KilnBuild;
  readonly legs?: readonly Leg[];
  /** The lid, a prop or a vent. */
  readonly opened?: readonly { readonly belowC: number; readonly opening: Opening }[];
  readonly stopBelowC?: number;
  readonly intervalSeconds?: number;
  readonly noiseK?: number;
  readonly seed?: number;
  /** The record without its head, as a person would write it. */
  readonly record: string;
}

const LID_OFF: Opening = { wattPerK: 60, m2: 0.1 };
const PROPPED: Opening = { wattPerK: 16, m2: 0.03 };
const lid = (belowC: number) => [{ belowC, opening: LID_OFF }];

const CONE_6: readonly Leg[] = [
  { toC: 110, rateCPerHour: 60 },
  { toC: 1090, rateCPerHour: 190 },
  { toC: 1205, rateCPerHour: 80, holdMinutes: 15 },
];
const BISQUE: readonly Leg[] = [
  { toC: 120, rateCPerHour: 60, holdMinutes: 60 },
  { toC: 600, rateCPerHour: 90 },
  { toC: 1000, rateCPerHour: 150 },
];
const HASTY_BISQUE: readonly Leg[] = [{ toC: 1000, rateCPerHour: 300 }];
const EARTHENWARE: readonly Leg[] = [
  { toC: 600, rateCPerHour: 150 },
  { toC: 1060, rateCPerHour: 120, holdMinutes: 10 },
];
/** Forced through quartz with vents open, then shut again. */
const HURRIED_AT_QUARTZ = [
  { belowC: 720, opening: { wattPerK: 30, m2: 0.06 } },
  { belowC: 480, opening: SHUT },
];
/** Air let in from 320 to 150 °C, a lid that is propped and shut again. */
const HURRIED_BELOW_300 = [
  { belowC: 320, opening: PROPPED },
  { belowC: 140, opening: SHUT },
];

const MUGS =
  "ware: [{ name: mugs, clay: buff, body: stoneware cone 6, state: glazed on bisque, wall: 5 mm, base: 8 mm, widest: 90 mm, count: 20 }]\n";
const PLATTERS =
  "ware: [{ name: platters, clay: buff, body: stoneware cone 6, state: glazed on bisque, thickest: 12 mm, widest: 400 mm, count: 3 }]\n";
const CRISTOBALITIC =
  "ware: [{ name: casseroles, clay: iron clay, body: cristobalitic stoneware, state: glazed on bisque, wall: 8 mm, base: 11 mm, widest: 220 mm }]\n";

/** Firings that the shares were looked at with. */
export const LOOKED_AT: readonly CrackedFiring[] = [
  {
    name: "platters forced through quartz",
    cause: "dunting at quartz",
    opened: HURRIED_AT_QUARTZ,
    record: `${PLATTERS}unloaded: { temperature: 70 }\nfound: [{ piece: platter, what: through-crack, edges: sharp, pattern: one long line, when: at unloading }]\n`,
  },
  {
    name: "a plate, nothing noted but the crack, a knock at quartz",
    cause: "dunting at quartz",
    opened: HURRIED_AT_QUARTZ,
    intervalSeconds: 120,
    record:
      'ware: [{ name: dinner plates, clay: buff, body: stoneware cone 6, state: glazed on bisque, thickest: 9 mm, widest: 280 mm }]\nheard: [{ what: a loud knock, at: "+13:20" }]\nfound: [{ piece: dinner plate, what: dunt }]\n',
  },
  {
    name: "casseroles of a cristobalitic body, air let in below 300 °C, opened cool by the record",
    cause: "dunting at cristobalite",
    opened: HURRIED_BELOW_300,
    record: `${CRISTOBALITIC}unloaded: { temperature: 60 }\nfound: [{ piece: casserole, what: through-crack, edges: sharp, when: at unloading }]\n`,
  },
  {
    name: "a cristobalitic jar that cracked audibly, kiln shut",
    cause: "dunting at cristobalite",
    record: `${CRISTOBALITIC}unloaded: { temperature: 60 }\nheard: [{ what: a crack, at: "+22:30" }]\nfound: [{ piece: casserole lid, what: crack, edges: sharp, where: base }]\n`,
  },
  {
    name: "a lid taken off at 260 °C, recorded",
    cause: "lid opened hot",
    opened: lid(260),
    record: `${PLATTERS}unloaded: { temperature: 260 }\nfound: [{ piece: platter, what: through-crack, edges: sharp, where: rim, when: at unloading }]\n`,
  },
  {
    name: "a lid taken off at 240 °C that nobody wrote down",
    cause: "lid opened hot",
    opened: lid(240),
    kiln: TEST_KILN_60,
    record: `${MUGS}found: [{ piece: mug, what: split in two, edges: sharp }]\n`,
  },
  {
    name: "thick glaze inside only, mugs split, shut kiln",
    cause: "one-sided glaze",
    record:
      "ware: [{ name: tall cups, clay: red, body: stoneware cone 6, state: glazed on bisque, wall: 4 mm, base: 6 mm, widest: 80 mm, glazedSides: one }]\nunloaded: { temperature: 60 }\nfound: [{ piece: tall cup, what: through-crack, edges: sharp, where: wall, when: days later }]\n",
  },
  {
    name: "a one-sided tile with the thickest coat",
    cause: "one-sided glaze",
    record:
      "unloaded: { temperature: 70 }\ntrials:\n  - { piece: A, clay: c, glaze: g, coat: 0.5 mm, glazedSides: one, cracked: crackle }\n  - { piece: B, clay: c, glaze: g, coat: 1.5 mm, glazedSides: one, cracked: through, wall: 5 mm }\n",
  },
  {
    name: "damp sculpture heated fast, a bang on the way up",
    cause: "heating crack",
    legs: HASTY_BISQUE,
    record:
      'ware: [{ name: heads, clay: grog, state: damp, thickest: 25 mm }]\nheard: [{ what: a bang, at: "+0:40" }]\nfound: [{ piece: head, what: burst, when: at unloading }]\n',
  },
  {
    name: "bone dry pots, thick, heated at 300 °C/h, cracked",
    cause: "heating crack",
    legs: HASTY_BISQUE,
    record:
      "ware: [{ name: planters, clay: grog, state: bone dry, thickest: 20 mm, widest: 350 mm }]\nunloaded: { temperature: 80 }\nfound: [{ piece: planter, what: through-crack, when: at unloading }]\n",
  },
  {
    name: "a crack seen in the bisque, glazed over",
    cause: "bisque crack",
    record: `${MUGS}unloaded: { temperature: 60 }\nfound: [{ piece: mug, what: crack, edges: rounded under glaze, note: already there in the bisque }]\n`,
  },
  {
    name: "called a bisque crack",
    cause: "bisque crack",
    record: `${MUGS}found: [{ piece: mug, what: bisque crack, where: rim }]\n`,
  },
  {
    name: "a drying crack at a handle",
    cause: "drying crack",
    record: `${MUGS}unloaded: { temperature: 60 }\nfound: [{ piece: mug, what: crack, where: handle, edges: rounded under glaze, note: cracked while drying I think }]\n`,
  },
  {
    name: "called a drying crack in a bisque",
    cause: "drying crack",
    legs: BISQUE,
    record:
      "ware: [{ name: bowls, clay: buff, state: bone dry, wall: 7 mm }]\nfound: [{ piece: bowl, what: drying crack, where: rim }]\n",
  },
  {
    name: "an S in the base",
    cause: "S-crack",
    record: `${MUGS}unloaded: { temperature: 60 }\nfound: [{ piece: mug, what: crack, pattern: S, where: base }]\n`,
  },
  {
    name: "called an S-crack in the notes only",
    cause: "S-crack",
    record: `${MUGS}notes: "Good firing. Two mugs have an S-crack in the bottom."\n`,
  },
  {
    name: "glaze flakes off rims",
    cause: "shivering",
    record: `${MUGS}unloaded: { temperature: 60 }\nfound: [{ piece: mug, what: shivering, where: rim, when: days later }]\n`,
  },
  {
    name: "glaze flakes, told in words",
    cause: "shivering",
    record: `${MUGS}found: [{ piece: mug, note: glaze flaking off the rim and handle in slivers }]\n`,
  },
  {
    name: "crackle that was meant",
    cause: "crackle by fit",
    record:
      'unloaded: { temperature: 70 }\nheard: [{ what: pinging, at: "+27:00" }]\ntrials:\n  - { piece: A, clay: c, glaze: g, coat: 0.5 mm, glazedSides: both, cracked: crackle }\n  - { piece: B, clay: c, glaze: g, coat: 1 mm, glazedSides: both, cracked: crackle }\n',
  },
  {
    name: "crackle, and the lid was off at 200 °C",
    cause: "crackle by fit",
    opened: lid(200),
    record: `${MUGS}found: [{ piece: mugs, what: crackle, pattern: network, when: at unloading }]\n`,
  },
  {
    name: "pinging alone, with nothing found",
    cause: "crackle by fit",
    opened: lid(110),
    record: `heard: [{ what: pinging, at: "+26:00" }]\n`,
  },
  {
    name: "earthenware crazed after weeks",
    cause: "delayed crazing",
    legs: EARTHENWARE,
    record:
      "ware: [{ name: tiles, clay: red, body: earthenware, state: bisqued, wall: 8 mm }]\nunloaded: { temperature: 60 }\nfound: [{ piece: tiles, what: crazing, when: days later }]\n",
  },
  {
    name: "still pinging the next day, crazed later",
    cause: "delayed crazing",
    legs: EARTHENWARE,
    record:
      'ware: [{ name: bowls, clay: red, body: earthenware, state: bisqued }]\nunloaded: { at: "+22:00", temperature: 60 }\nheard: [{ what: pinging, at: "+48:00" }]\nfound: [{ piece: bowl, what: crazing, note: "fine when I unloaded, seen after three days" }]\n',
  },
];

/** Firings kept apart: written before any share was changed, never looked at one by one. */
export const KEPT_APART: readonly CrackedFiring[] = [
  {
    name: "a 300 mm plate, vents left open from 750 °F up",
    cause: "dunting at quartz",
    kiln: TEST_KILN_60,
    opened: [
      { belowC: 680, opening: { wattPerK: 12, m2: 0.03 } },
      { belowC: 500, opening: SHUT },
    ],
    seed: 31,
    record:
      "unit: F\nware: [{ name: plates, clay: speckled, body: stoneware cone 6, state: glazed on bisque, thickest: 3/8 in, widest: 12 in }]\nunloaded: { temperature: 150 }\nfound: [{ piece: plate, what: cracked right through, edges: sharp, note: rim to rim in one straight line }]\n",
  },
  {
    name: "a sharp crack heard at quartz, ware unnamed",
    cause: "dunting at quartz",
    opened: HURRIED_AT_QUARTZ,
    noiseK: 1.2,
    seed: 5,
    record:
      'heard: [{ what: loud crack, at: "+13:10" }]\nfound: [{ piece: vase, what: through-crack, edges: sharp }]\n',
  },
  {
    name: "cristobalitic pot, log every ten minutes",
    cause: "dunting at cristobalite",
    opened: HURRIED_BELOW_300,
    intervalSeconds: 600,
    seed: 12,
    record:
      "ware: [{ name: jars, clay: brown, body: cristobalitic stoneware, state: glazed on bisque, wall: 9 mm, widest: 180 mm }]\nunloaded: { temperature: 50 }\nfound: [{ piece: jar, what: split, edges: sharp }]\n",
  },
  {
    name: "lid off at 500 °F, not written down, ware unnamed, long line from the rim",
    cause: "lid opened hot",
    opened: lid(262),
    seed: 77,
    intervalSeconds: 300,
    record:
      "unit: F\nfound: [{ piece: big bowl, what: through-crack, note: 'sharp edges, runs from the rim down, heard it go on the shelf' }]\n",
  },
  {
    name: "propped at 300 °C and off at 250 °C",
    cause: "lid opened hot",
    opened: [
      { belowC: 300, opening: PROPPED },
      { belowC: 250, opening: LID_OFF },
    ],
    noiseK: 1,
    seed: 3,
    record: `${PLATTERS}found: [{ piece: platter, what: dunt, when: before unloading }]\n`,
  },
  {
    name: "liner glaze thick, nothing outside",
    cause: "one-sided glaze",
    seed: 8,
    record:
      "ware: [{ name: tumblers, clay: c, body: porcelain cone 6, state: glazed on bisque, wall: 3 mm, glazedSides: one }]\nunloaded: { temperature: 55 }\nfound: [{ piece: tumbler, what: through-crack, edges: sharp, pattern: spiral }]\n",
  },
  {
    name: "raw glazed and steamed",
    cause: "heating crack",
    legs: HASTY_BISQUE,
    kiln: TEST_KILN_60,
    seed: 21,
    record:
      "ware: [{ name: pots, clay: c, state: glazed raw, thickest: 15 mm }]\nfound: [{ piece: pot, what: blew up }]\n",
  },
  {
    name: "rounded crack at the foot, nothing else",
    cause: "bisque crack",
    seed: 40,
    record: `${MUGS}unloaded: { temperature: 60 }\nfound: [{ piece: mug, what: crack, note: had cracked in the bisque and I glazed it anyway }]\n`,
  },
  {
    name: "dry cracks, in words",
    cause: "drying crack",
    seed: 41,
    record: `${MUGS}found: [{ piece: mug, what: hairline crack, where: rim, when: before firing, note: cracked as it dried too fast }]\n`,
  },
  {
    name: "S crack with glaze in it",
    cause: "S-crack",
    seed: 42,
    record:
      "ware: [{ name: bowls, clay: c, state: glazed on bisque }]\nunloaded: { temperature: 90 }\nfound: [{ piece: bowl, what: S crack, edges: rounded under glaze }]\n",
  },
  {
    name: "S crack by its form",
    cause: "S-crack",
    seed: 43,
    record: `${MUGS}found: [{ piece: mug, note: crack in the shape of an s-shaped line across the floor }]\n`,
  },
  {
    name: "rim slivers",
    cause: "shivering",
    seed: 44,
    record: `found: [{ piece: mugs, what: glaze peeling off the lip }]\n`,
  },
  {
    name: "crazed the moment the kiln was opened",
    cause: "crackle by fit",
    opened: lid(150),
    seed: 45,
    record: `${MUGS}found: [{ piece: mugs, what: crazed all over, when: at unloading }]\n`,
  },
  {
    name: "pinging at 300 °C with the kiln shut",
    cause: "crackle by fit",
    seed: 46,
    record: `heard: [{ what: tinkling, at: "+19:30" }]\n`,
  },
  {
    name: "crazing after a month, wording of its own",
    cause: "delayed crazing",
    legs: EARTHENWARE,
    seed: 47,
    record:
      "unit: F\nware: [{ name: cups, clay: terracotta, body: earthenware, state: bisqued }]\nunloaded: { temperature: 120 }\nfound: [{ piece: cups, what: fine crazing, note: noticed two months later }]\n",
  },
  {
    name: "pinging two days on, nothing seen",
    cause: "delayed crazing",
    legs: EARTHENWARE,
    seed: 48,
    record: `unloaded: { at: "+24:00", temperature: 50 }\nheard: [{ what: pinging, at: "+70:00" }]\n`,
  },
];

const probe = DEMO_FIRINGS[0]?.plan.probes[0] as FiringPlan["probes"][number];

/** The log that a firing leaves, as read. */
function readingOfFiring(made: CrackedFiring): LogReading {
  const { samples } = fire({
    seed: made.seed ?? 1,
    build: made.kiln ?? TOP_LOADER_180,
    elements: 1,
    roomC: 19,
    legs: made.legs ?? CONE_6,
    probes: [{ ...probe, noiseK: made.noiseK ?? 0.4 }],
    opened: made.opened ?? [],
    stopBelowC: made.stopBelowC ?? 48,
    stopAfterHours: 80,
    intervalSeconds: made.intervalSeconds ?? 60,
    switchedOffAfterHours: null,
  });
  const curve = makeCurve(
    samples.map(({ seconds }) => seconds),
    samples.map(({ readingsC }) => readingsC[0] as number),
  );
  return {
    name: "firing.csv",
    decisions: [],
    rows: { total: samples.length, accepted: samples.length, rejected: [] },
    unit: "C",
    channels: [{ name: "kiln", role: "temperature", curve, readings: samples.length, dropped: 0 }],
    start: "2026-03-14T17:00:00",
    startOfDaySeconds: 17 * 3600,
    intervalSeconds: made.intervalSeconds ?? 60,
    gaps: [],
    faults: [],
  };
}

/** A review of a firing that was made up. */
export function reviewOfCracked(made: CrackedFiring) {
  const record = parseRecord(`formatVersion: 1\ntitle: Made up\n${made.record}`, "firing.yaml");
  if (!record.ok) throw new Error(record.problems.map(problemText).join("\n"));
  const result = reviewFiring({
    reading: readingOfFiring(made),
    record: record.value,
    plan: null,
  });
  if (!result.ok) throw new Error(result.problems.map(problemText).join("\n"));
  return result.value;
}
