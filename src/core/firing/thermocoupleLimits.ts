import type { Finding } from "../findings/Finding.ts";
import { ratingFindings } from "../schedule/checks/ratings.ts";
import { basedOn } from "../sources/basedOn.ts";
import type { SourceId } from "../sources/bibliography.ts";
import { newWireLimit } from "../thermocouple/newWireLimits.ts";
import type { FiringFacts } from "./FiringFacts.ts";
import { zoneNamed } from "./FiringFacts.ts";
import type { ZoneReview } from "./FiringReview.ts";
import { hottestZone } from "./hottestZone.ts";
import { type KnownWire, knownWire } from "./thermocoupleWire.ts";

/** A top above what the record, the plan or an option say that kiln and thermocouple are made for. */
export function ratedFindings(facts: FiringFacts): readonly Finding[] {
  const { record, reading, plan } = facts;
  const zone = hottestZone(facts.zones);
  return ratingFindings({
    peakC: zone.peakC,
    type: record?.thermocouple?.type ?? reading.thermocouple ?? plan?.thermocouple?.type ?? null,
    wireMm: record?.thermocouple?.wireMm ?? plan?.thermocouple?.wireMm ?? null,
    kilnRatingC: record?.kilnRatingC ?? plan?.kilnRatingC ?? null,
    tense: "past",
  }).map((each) => ({ ...each, zone: zoneNamed(facts, zone) }));
}

/** How far new wire may be off at the peak, or that no standard says so; empty without a type. */
export function limitFindings(facts: FiringFacts): readonly Finding[] {
  const wire = knownWire(facts.record, facts.reading);
  if (wire === null) return [];
  const zone = hottestZone(facts.zones);
  const { limitK, range } = newWireLimit(wire.type, wire.wireClass, zone.peakC);
  const zoneName = zoneNamed(facts, zone);
  if (limitK !== null) return [withinRange(wire, zone, { limitK, zoneName })];
  return [
    range === null ? noSuchClass(wire, zoneName) : beyondRange(wire, zone, { range, zoneName }),
  ];
}

function withinRange(
  wire: KnownWire,
  zone: ZoneReview,
  { limitK, zoneName }: { readonly limitK: number; readonly zoneName: string | null },
): Finding {
  const other = newWireLimit(wire.type, "class 2", zone.peakC);
  const isPastIec = wire.wireClass === "standard" && other.limitK === null && other.range !== null;
  const iec = isPastIec ? " The limits of IEC 60584-1 end at {IEC end} already." : "";
  return {
    topic: "new-wire limits",
    severity: "note",
    statement: `New wire of type ${wire.type}, ${wire.wireClass}, may be off by up to {limit} either way at the peak of {peak}${wire.assumed === "" ? "" : `; ${wire.assumed}`}.${iec}`,
    evidence: [
      { name: "limit", value: limitK, kind: "difference" },
      { name: "peak", value: zone.peakC, kind: "temperature" },
      ...(isPastIec
        ? [{ name: "IEC end", value: other.range?.toC ?? 0, kind: "temperature" } as const]
        : []),
    ],
    basis: basedOn(
      "new-wire limits: they bind the maker of unused wire and are not the accuracy of this log, since wire in use may be off by more",
      standardOf(wire),
      "webster-2021",
    ),
    advice: "",
    zone: zoneName,
    span: null,
  };
}

function beyondRange(
  wire: KnownWire,
  zone: ZoneReview,
  given: {
    readonly range: { readonly fromC: number; readonly toC: number };
    readonly zoneName: string | null;
  },
): Finding {
  const isOver = zone.peakC > given.range.toC;
  return {
    topic: "wire out of its range",
    severity: isOver ? "caution" : "note",
    statement: `The peak of {peak} lies ${isOver ? "above" : "below"} {end}, where the new-wire limits of type ${wire.type}, ${wire.wireClass}, ${isOver ? "end" : "begin"}: no standard says how far even new wire may be off there${wire.assumed === "" ? "" : `; ${wire.assumed}`}.`,
    evidence: [
      { name: "peak", value: zone.peakC, kind: "temperature" },
      { name: "end", value: isOver ? given.range.toC : given.range.fromC, kind: "temperature" },
    ],
    basis: basedOn("the range for which limits of new wire are given", standardOf(wire)),
    advice: isOver ? "Go by witness cones there, and renew the thermocouple more often." : "",
    zone: given.zoneName,
    span: null,
  };
}

function noSuchClass(wire: KnownWire, zoneName: string | null): Finding {
  return {
    topic: "new-wire limits",
    severity: "note",
    statement: `There is no ${wire.wireClass} of type ${wire.type}, so that nothing is known of the limits of its wire.`,
    evidence: [],
    basis: basedOn("the classes of wire", standardOf(wire)),
    advice: "Look at the order or the label of the thermocouple.",
    zone: zoneName,
    span: null,
  };
}

function standardOf({ wireClass }: KnownWire): SourceId {
  return wireClass === "standard" || wireClass === "special" ? "astm-e230" : "iec-60584-tolerances";
}
