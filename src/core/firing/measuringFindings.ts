import { type Finding, quoted, type Severity } from "../findings/Finding.ts";
import { type LogFault, rejectedCount } from "../log/reading/LogReading.ts";
import { basedOn } from "../sources/bibliography.ts";
import { CRISTOBALITE_BAND, QUARTZ_BAND } from "../ware/inversions.ts";
import type { FiringFacts, ZoneReview } from "./FiringFacts.ts";

/**
 * Zones apart by more than this at the peak are worth a caution [K].
 * @see SOURCES["ams-2750"]
 */
const WIDE_SPREAD_K = 28;

const SEVERITY: Readonly<Record<LogFault["kind"], Severity>> = {
  spike: "note",
  stuck: "caution",
  open: "caution",
  gap: "note",
  clock: "note",
  coarse: "note",
};

const ABOUT: Readonly<Record<LogFault["kind"], string>> = {
  spike: "spikes in the readings",
  stuck: "a reading that stood still",
  open: "an open thermocouple",
  gap: "gaps in the readings",
  clock: "the log's clock",
  coarse: "coarse readings",
};

const LEFT_OUT =
  "found while the log was read; such readings are left out, nothing is put in their place";
const KEPT = "found while the log was read; the readings are kept as they are";

const FAULT_BASIS: Readonly<Record<LogFault["kind"], string>> = {
  gap: "nothing is measured or assumed inside a gap",
  spike: LEFT_OUT,
  open: LEFT_OUT,
  stuck: KEPT,
  clock: "found while the log was read; every row that is left out is listed",
  coarse: KEPT,
};

/** What was wrong with the measuring, rows left out, and how far the zones were apart. */
export function measuringFindings(facts: FiringFacts): readonly Finding[] {
  return [...faultFindings(facts), ...rejectedRows(facts), ...spreadFindings(facts)];
}

/** One finding for all faults of a kind in a channel. */
function faultFindings(facts: FiringFacts): readonly Finding[] {
  const groups = new Map<string, LogFault[]>();
  for (const fault of facts.reading.faults) {
    const key = `${fault.kind} ${fault.channel ?? ""}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [fault]);
    else group.push(fault);
  }
  return [...groups.values()].map((faults) => faultFinding(faults, facts));
}

function faultFinding(faults: readonly LogFault[], facts: FiringFacts): Finding {
  const [first] = faults as readonly [LogFault, ...LogFault[]];
  const more = faults.length > 1 ? " There are {places} such places in all." : "";
  const hides = first.kind === "gap" ? hiddenPart(faults, facts.zones) : null;
  return {
    topic: ABOUT[first.kind],
    severity: hides === null ? SEVERITY[first.kind] : "caution",
    statement: `${sentence(first.what)}${more}${hides === null ? "" : ` The gap hides ${hides}.`}`,
    evidence: [
      { name: "places", value: faults.length, kind: "count" },
      {
        name: "readings",
        value: faults.reduce((sum, fault) => sum + fault.count, 0),
        kind: "count",
      },
    ],
    basis: FAULT_BASIS[first.kind],
    advice: first.kind === "stuck" || first.kind === "open" ? "Check the thermocouple." : "",
    zone: facts.zones.length > 1 ? first.channel : null,
    span: {
      fromSeconds: Math.min(...faults.map((fault) => fault.fromSeconds)),
      toSeconds: Math.max(...faults.map((fault) => fault.toSeconds)),
    },
  };
}

/** What matters most of that which lies in a gap; null when nothing does. */
function hiddenPart(gaps: readonly LogFault[], zones: readonly ZoneReview[]): string | null {
  for (const zone of zones) {
    const { timesSeconds, tempsC } = zone.curve;
    for (const gap of gaps) {
      const from = timesSeconds.findLastIndex((t) => t <= gap.fromSeconds);
      const to = timesSeconds.findIndex((t) => t >= gap.toSeconds);
      if (from < 0 || to < 0) continue;
      const ends = [tempsC[from]!, tempsC[to]!] as const;
      if (Math.max(...ends) >= zone.peakC - 50) return "a part near the peak";
      const isCooling = timesSeconds[from]! > zone.peakAtSeconds;
      const band = [QUARTZ_BAND, CRISTOBALITE_BAND].find(
        ({ lowC, highC }) => Math.max(...ends) > lowC && Math.min(...ends) < highC,
      );
      if (isCooling && band) return `some of the cooling through the ${band.name}`;
    }
  }
  return null;
}

function rejectedRows(facts: FiringFacts): readonly Finding[] {
  const { rows } = facts.reading;
  const count = rejectedCount(rows);
  if (count === 0) return [];
  const share = count / rows.total;
  return [
    {
      topic: "rows left out",
      severity: share > 0.05 ? "caution" : "note",
      statement: `{rejected} of {rows} rows of the log gave no reading and ${count === 1 ? "was" : "were"} left out.`,
      evidence: [
        { name: "rejected", value: count, kind: "count" },
        { name: "rows", value: rows.total, kind: "count" },
      ],
      basis:
        rows.unlisted === undefined
          ? "each rejected row is listed with its reason"
          : "the first rejected rows are listed, all of them are counted by reason",
      advice: share > 0.05 ? "Look at the list of rejected rows." : "",
      zone: null,
      span: null,
    },
  ];
}

function spreadFindings(facts: FiringFacts): readonly Finding[] {
  const { spread, zones } = facts;
  if (spread === null) return [];
  const cones = conesApart(zones);
  return [
    {
      topic: "zones apart",
      severity: spread.atPeakC > WIDE_SPREAD_K ? "caution" : "note",
      statement: `The zones were {at peak} apart at the peak and at most {largest}, at {largest at}${cones === null ? "" : "; in heatwork {cones apart} cones apart"}.`,
      evidence: [
        { name: "at peak", value: spread.atPeakC, kind: "difference" },
        { name: "largest", value: spread.largestC, kind: "difference" },
        { name: "largest at", value: spread.largestAtSeconds, kind: "elapsed" },
        ...(cones === null ? [] : [{ name: "cones apart", value: cones, kind: "cones" } as const]),
      ],
      basis: basedOn(
        "zones at the same moments; a caution above ± 28 °C (± 50 °F), the widest class of industrial furnaces in AMS 2750",
        "ams-2750",
      ),
      advice:
        spread.atPeakC > WIDE_SPREAD_K
          ? "Put witness cones by every thermocouple, and hold longer at the peak."
          : "",
      zone: null,
      span: null,
    },
  ];
}

function conesApart(zones: readonly ZoneReview[]): number | null {
  const indices = zones.map((zone) => zone.heatwork.position.index);
  const known = indices.filter((index) => index !== null);
  return known.length < indices.length ? null : Math.max(...known) - Math.min(...known);
}

function sentence(text: string): string {
  const flat = quoted(text);
  const begun = flat.charAt(0).toUpperCase() + flat.slice(1);
  return /[.!?]$/.test(begun) ? begun : `${begun}.`;
}
