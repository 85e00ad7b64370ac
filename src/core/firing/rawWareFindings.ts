import type { Finding } from "../findings/Finding.ts";
import { carbonFindings } from "../schedule/checks/carbon.ts";
import type { RawWare } from "../schedule/checks/Judged.ts";
import { waterFindings } from "../schedule/checks/water.ts";
import { type FiringFacts, zoneNamed } from "./FiringFacts.ts";
import { hottestZone } from "./hottestZone.ts";

const RAW: ReadonlySet<string> = new Set(["bone dry", "damp", "glazed raw"]);

/** Steam and carbon of raw ware on the way up, judged as a schedule's are. */
export function rawWareFindings(facts: FiringFacts): readonly Finding[] {
  const zone = hottestZone(facts.zones);
  const { curve, peakC } = zone;
  const ware: RawWare = { ...rawOf(facts), curve, peakC, tense: "past" };
  const name = zoneNamed(facts, zone);
  return [...waterFindings(ware), ...carbonFindings(ware)].map((each) => ({ ...each, zone: name }));
}

/** The raw pieces of the record; where it says nothing of state, those of the plan. */
function rawOf({ record, plan }: FiringFacts): Pick<RawWare, "isRaw" | "isDamp" | "thickestMm"> {
  const said = (record?.ware ?? []).filter(({ state }) => state !== null);
  if (said.length > 0) {
    const raw = said.filter(({ state }) => RAW.has(state as string));
    return {
      isRaw: raw.length > 0,
      isDamp: raw.some(({ state }) => state === "damp"),
      thickestMm: greatest(
        raw.flatMap(({ thickestMm, wallMm, baseMm }) => [thickestMm, wallMm, baseMm]),
      ),
    };
  }
  const state = plan?.ware.state ?? null;
  return {
    isRaw: state === null ? null : RAW.has(state),
    isDamp: state === "damp",
    thickestMm: plan?.ware.thickestMm ?? null,
  };
}

function greatest(sizes: readonly (number | null)[]): number | null {
  const known = sizes.filter((size) => size !== null);
  return known.length === 0 ? null : Math.max(...known);
}
