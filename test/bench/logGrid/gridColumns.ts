import { type Seeded, seeded } from "../../support/demo/seeded.ts";
import type { Levels } from "./axes.ts";
import type { FiredZones } from "./firedZones.ts";
import { inUnit, markedNumber, printedNumber } from "./writtenNumber.ts";

/** What a column truly is. */
type TrueRole = "temperature" | "wild" | "set-point" | "output" | "cold-junction" | "other";

/** A column of a made-up log beside its time. */
export interface GridColumn {
  readonly name: string;
  /** Text for its cell in a unit row, and for brackets behind its name. */
  readonly unitText: string;
  readonly role: TrueRole;
  readonly cells: readonly string[];
  /** What the cells say [°C], NaN where there is no reading; empty for what is no temperature. */
  readonly tempsC: Float64Array;
  /** Rows in which a wild thermocouple jumps about. */
  readonly wildFrom: number;
}

const ZONE_NAMES: readonly (readonly string[])[] = [
  ["Top", "Middle", "Bottom", "Front", "Back", "Lid"],
  ["TC1", "TC2", "TC3", "TC4", "TC5", "TC6"],
  ["Zone 1", "Zone 2", "Zone 3", "Zone 4", "Zone 5", "Zone 6"],
  ["Temp 1", "Temp 2", "Temp 3", "Temp 4", "Temp 5", "Temp 6"],
  ["T1", "T2", "T3", "T4", "T5", "T6"],
  ["Kiln", "Kiln left", "Kiln right", "Kiln door", "Kiln rear", "Kiln floor"],
];
const LONE_NAMES = ["Temperature", "Temp", "Kiln", "Thermocouple", "Temperatur", "Furnace"];
const UNIT_TEXTS: Readonly<Record<Levels["unit"], readonly string[]>> = {
  C: ["°C", "°C", "C", "degC", "Celsius"],
  F: ["°F", "°F", "F", "degF", "Fahrenheit"],
  K: ["K", "K", "K", "kelvin", "K"],
};
/** Share of cells without a reading, one by one or in short runs. */
const MISSING_RUNS = 0.01;

/** The columns of a log: zones first, then what stands beside them. */
export function gridColumns(
  levels: Levels,
  fired: FiredZones,
  seed: number,
): readonly GridColumn[] {
  const random = seeded(seed);
  const pick = <T>(list: readonly T[]) => list[Math.floor(random.even() * list.length)] as T;
  const count = fired.zonesC.length;
  const names = count === 1 ? [pick(LONE_NAMES)] : pick(ZONE_NAMES);
  const unitText = pick(UNIT_TEXTS[levels.unit]);
  const wildZone = levels.zones.includes("wild") ? count - 1 : -1;
  const zones = fired.zonesC.map((tempsC, zone) =>
    zone === wildZone
      ? wildColumn(levels, tempsC, { name: names[zone] as string, unitText, random })
      : zoneColumn(levels, tempsC, { name: names[zone] as string, unitText, random, zone }),
  );
  return [...zones, ...extraColumns(levels, fired, { random, unitText })];
}

interface ColumnPlan {
  readonly name: string;
  readonly unitText: string;
  readonly random: Seeded;
}

function zoneColumn(
  levels: Levels,
  zoneC: readonly number[],
  plan: ColumnPlan & { readonly zone: number },
): GridColumn {
  const missing =
    levels.missing === "none" || plan.zone > 1
      ? new Set<number>()
      : missingRows(zoneC, plan.random);
  const printed = zoneC.map((tempC) => printedNumber(tempC, levels));
  return {
    name: plan.name,
    unitText: plan.unitText,
    role: "temperature",
    cells: printed.map(({ text }, i) =>
      missing.has(i) ? missingText(levels) : text + cellUnit(levels),
    ),
    tempsC: Float64Array.from(printed, ({ tempC }, i) => (missing.has(i) ? Number.NaN : tempC)),
    wildFrom: Number.POSITIVE_INFINITY,
  };
}

/** Runs of one to four rows; none near a temperature at which an end of scale would not stand out. */
function missingRows(zoneC: readonly number[], random: Seeded): ReadonlySet<number> {
  const rows = new Set<number>();
  const runs = Math.max(1, Math.floor(MISSING_RUNS * zoneC.length));
  for (let run = 0; run < runs; run++) {
    const from = 2 + Math.floor(random.even() * (zoneC.length - 8));
    const length = 1 + Math.floor(random.even() * 4);
    for (let i = from; i < from + length; i++) rows.add(i);
  }
  return rows;
}

function missingText(levels: Levels): string {
  if (levels.missing === "blank") return "";
  if (levels.missing !== "end of scale") return levels.missing;
  const decimals = levels.digits.startsWith("0.") ? 1 : 0;
  return markedNumber(inUnit(1372, levels.unit), decimals, levels) + cellUnit(levels);
}

function cellUnit(levels: Levels): string {
  if (levels.unitPlace !== "cell") return "";
  const letter = levels.unit === "K" ? "K" : `°${levels.unit}`;
  return levels.delimiter === "blanks" || levels.delimiter === "fixed width"
    ? letter
    : ` ${letter}`;
}

/** A failing thermocouple: right at first, then anything between cold and white hot. */
function wildColumn(levels: Levels, zoneC: readonly number[], plan: ColumnPlan): GridColumn {
  const wildFrom = Math.floor(zoneC.length * (0.3 + 0.3 * plan.random.even()));
  const printed = zoneC.map((tempC, i) =>
    printedNumber(i < wildFrom ? tempC : 20 + plan.random.even() * 1300, levels),
  );
  return {
    name: plan.name,
    unitText: plan.unitText,
    role: "wild",
    cells: printed.map(({ text }) => text + cellUnit(levels)),
    tempsC: Float64Array.from(printed, ({ tempC }) => tempC),
    wildFrom,
  };
}

function extraColumns(
  levels: Levels,
  fired: FiredZones,
  plan: { readonly random: Seeded; readonly unitText: string },
): readonly GridColumn[] {
  if (levels.extra === "none") return [];
  if (levels.extra === "set point and output")
    return [
      setPointColumn(levels, fired, { ...plan, name: "Set point" }),
      ...extraColumns({ ...levels, extra: "output 0 to 100" }, fired, plan),
    ];
  if (levels.extra === "set point")
    return [setPointColumn(levels, fired, { ...plan, name: pickName(plan.random) })];
  if (levels.extra === "set point unnamed")
    return [setPointColumn(levels, fired, { ...plan, name: "Channel 9" })];
  return [otherColumn(levels, fired, plan.random)];
}

function pickName(random: Seeded): string {
  const names = ["Set point", "SP", "Target", "Sollwert", "Consigne", "SV", "Setpoint 1"];
  return names[Math.floor(random.even() * names.length)] as string;
}

function setPointColumn(levels: Levels, fired: FiredZones, plan: ColumnPlan): GridColumn {
  const printed = fired.setPointC.map((tempC) => printedNumber(tempC, levels));
  return {
    name: plan.name,
    unitText: plan.unitText,
    role: "set-point",
    cells: printed.map(({ text }) => text + cellUnit(levels)),
    tempsC: Float64Array.from(printed, ({ tempC }) => tempC),
    wildFrom: Number.POSITIVE_INFINITY,
  };
}

/** Columns that are no kiln temperature, with what they hold at a sample. */
const OTHERS: Readonly<
  Record<
    string,
    {
      readonly name: string;
      readonly unitText: string;
      readonly role: TrueRole;
      readonly decimals: number;
      readonly value: (
        i: number,
        at: { readonly tempC: number; readonly random: Seeded },
      ) => number;
    }
  >
> = {
  "output 0 to 1": {
    name: "Output",
    unitText: "",
    role: "output",
    decimals: 2,
    value: (_, { random }) => random.even(),
  },
  "output 0 to 100": {
    name: "Output",
    unitText: "%",
    role: "output",
    decimals: 0,
    value: (_, { random }) => Math.round(random.even() * 100),
  },
  "on and off": {
    name: "Relay",
    unitText: "",
    role: "output",
    decimals: 0,
    value: (_, { random }) => (random.even() < 0.6 ? 1 : 0),
  },
  "heat flux": {
    name: "Heat flux",
    unitText: "kW/m2",
    role: "other",
    decimals: 2,
    value: (_, { tempC, random }) => tempC / 40 + random.even(),
  },
  battery: {
    name: "Battery",
    unitText: "V",
    role: "other",
    decimals: 2,
    value: (i) => 4.1 - 0.3 * Math.min(1, i / 3000),
  },
  "cold junction": {
    name: "Cold junction",
    unitText: "unit of the log",
    role: "cold-junction",
    decimals: 1,
    value: (_, { tempC, random }) => 22 + tempC / 100 + 0.2 * random.even(),
  },
  counter: {
    name: "Record",
    unitText: "",
    role: "other",
    decimals: 0,
    value: (i) => i + 1,
  },
};

function otherColumn(levels: Levels, fired: FiredZones, random: Seeded): GridColumn {
  const other = OTHERS[levels.extra] as (typeof OTHERS)[string];
  const isJunction = levels.extra === "cold junction";
  const plain: Levels = { ...levels, thousands: "none" };
  const cells = (fired.zonesC[0] ?? []).map((tempC, i) => {
    const value = other.value(i, { tempC, random });
    return isJunction
      ? markedNumber(inUnit(value, levels.unit), 1, plain) + cellUnit(levels)
      : markedNumber(value, other.decimals, plain);
  });
  const unitText = isJunction ? (UNIT_TEXTS[levels.unit][0] as string) : other.unitText;
  const { name, role } = other;
  return {
    name,
    unitText,
    role,
    cells,
    tempsC: new Float64Array(0),
    wildFrom: Number.POSITIVE_INFINITY,
  };
}
