import { agreed, type Finding, ordered, quoted } from "../findings/Finding.ts";
import { carbonFindings, waterFindings } from "../schedule/heatingChecks.ts";
import type { RawWare } from "../schedule/Judged.ts";
import { basedOn } from "../sources/bibliography.ts";
import { CRISTOBALITE_BAND, QUARTZ_BAND } from "../ware/inversions.ts";
import { coneFindings } from "./coneFindings.ts";
import { coolingFindings } from "./coolingFindings.ts";
import {
  type FiringFacts,
  hottestZone,
  type PlanComparison,
  type ZoneReview,
  zoneNamed,
} from "./FiringFacts.ts";
import { measuringFindings } from "./measuringFindings.ts";
import { openingFindings } from "./openingFindings.ts";
import type { PlacedSound } from "./placedMoments.ts";
import type { PowerLoss } from "./powerLoss.ts";
import { runawayFindings, standingFindings } from "./runawayFindings.ts";
import { thermocoupleFindings } from "./thermocoupleFindings.ts";

/** Everything worth saying about a firing, worst first, then by time. */
export function firingFindings(facts: FiringFacts): readonly Finding[] {
  return ordered([
    ...runawayFindings(facts.reading, facts.plan),
    ...standingFindings(facts.reading),
    ...agreed([...coneFindings(facts), ...coolingFindings(facts), ...rawWareFindings(facts)]),
    ...heardFindings(facts),
    ...openingFindings(facts),
    ...planFindings(facts),
    ...measuringFindings(facts),
    ...thermocoupleFindings(facts),
  ]);
}

const BASIS =
  "what is known of how glaze and clay contract: glaze that fits badly cracks at any temperature below the one where it sets, clay cracks where its quartz or cristobalite changes; evidence to weigh, not a verdict";

/** What was heard, how hot it was then, and what that speaks for. */
function heardFindings(facts: FiringFacts): readonly Finding[] {
  const zone = hottestZone(facts.zones);
  return facts.heard.map((sound) => {
    const opened = facts.opening.atSeconds;
    const words = speaksFor(sound, zone, opened !== null && sound.atSeconds >= opened);
    const note = sound.note === null ? "" : ` Noted: ${quoted(sound.note)}.`;
    return {
      topic: "what was heard",
      severity: "note",
      statement: `"${quoted(sound.what)}" was heard at {heard at}${sound.tempC === null ? "" : ", at {temperature}"}: ${words}.${note}`,
      evidence: [
        { name: "heard at", value: sound.atSeconds, kind: "elapsed" },
        ...(sound.tempC === null
          ? []
          : [{ name: "temperature", value: sound.tempC, kind: "temperature" } as const]),
        ...(sound.orElse?.tempC == null
          ? []
          : [{ name: "or else", value: sound.orElse.tempC, kind: "temperature" } as const]),
      ],
      basis: BASIS,
      advice: sound.orElse === null ? "" : sayTheDay(sound, facts),
      zone: null,
      span: { fromSeconds: sound.atSeconds, toSeconds: sound.atSeconds },
    };
  });
}

/** How to say which of two days was meant. */
function sayTheDay({ said, orElse }: PlacedSound, { reading }: FiringFacts): string {
  const date = reading.start?.slice(0, 10) ?? null;
  const how =
    date === null
      ? 'the time since the first reading, such as "+14:05"'
      : `its date before it: "${date} ${said}" or the day after`;
  return `${said} comes more than once in this log${orElse?.tempC == null ? "" : ", at {or else} the other time"}. Write ${how}.`;
}

function speaksFor(sound: PlacedSound, zone: ZoneReview, isOpened: boolean): string {
  const begin = zone.curve.timesSeconds[0]!;
  if (isOpened) return openedWords(sound.tempC);
  if (sound.atSeconds < begin) return "before the first reading, so its temperature is not known";
  if (sound.atSeconds > zone.lastReadingAtSeconds)
    return "after the last reading, so its temperature is not known; cooler than that, it speaks for the fit of the glaze rather than for an inversion";
  if (sound.tempC === null) return "inside a gap in the readings, so its temperature is not known";
  if (sound.atSeconds < zone.peakAtSeconds)
    return "while the kiln was heating, when glaze is not yet pulled tight; it speaks for ware or shelves moving or cracking on the way up";
  return coolingWords(sound.tempC);
}

function openedWords(tempC: number | null): string {
  return tempC !== null && tempC >= CRISTOBALITE_BAND.lowC
    ? "after the kiln was opened, still hot enough for a draught to crack the wall (dunting); look for that first, and read nothing of the fit of the glaze from it"
    : "after the kiln was opened; a burst then comes of the draught and says little, pinging that goes on in ware that is evenly cool speaks for the fit of the glaze";
}

function coolingWords(tempC: number): string {
  if (tempC > QUARTZ_BAND.highC)
    return "hotter than both inversions, where most glazes are still soft; kiln and shelves make such sounds too";
  if (tempC >= QUARTZ_BAND.lowC)
    return "while passing the quartz inversion; look for a long crack through the wall (dunting) first, though glaze that fits badly may crack here as well";
  if (tempC > CRISTOBALITE_BAND.highC)
    return "between the inversions; that speaks for glaze crackle, and so early for a strong misfit of glaze and clay, rather than for dunting";
  if (tempC >= CRISTOBALITE_BAND.lowC)
    return "while passing the cristobalite inversion; look for a long crack through the wall (dunting) first, though glaze that fits badly cracks here as well";
  return "below both inversions; that speaks for glaze crackle from the fit of glaze and clay rather than for dunting";
}

/**
 * Peak off the planned one by more than this is worth a caution [K]: about twice what thermocouple and
 * place in the kiln make of one firing (12 K); whether the cone was missed is said by itself.
 */
const PEAK_OFF_K = 25;

/** Area off by more than this is worth a caution: twice the conformity limit after the first hour. */
const AREA_OFF = 0.05;

/** How the firing went against its plan, and whether the kiln lost power on the way up. */
function planFindings(facts: FiringFacts): readonly Finding[] {
  const { comparison } = facts;
  return [
    ...(facts.plan && !comparison ? [notComparable(facts.plan.title)] : []),
    ...(comparison ? againstPlan(comparison, facts) : []),
    ...facts.powerLosses.map((loss) => powerLost(loss, facts)),
  ];
}

function againstPlan(comparison: PlanComparison, facts: FiringFacts): readonly Finding[] {
  const zone = facts.zones.length > 1 ? comparison.zone : null;
  const isOff =
    Math.abs(comparison.peakDeviationC) > PEAK_OFF_K ||
    Math.abs(comparison.areaDeviation) > AREA_OFF;
  return [
    {
      topic: "against the schedule",
      severity: isOff ? "caution" : "note",
      statement: `The peak was {peak off} ${comparison.peakDeviationC < 0 ? "below" : "above"} the planned one and came {peak delay} ${comparison.peakDelaySeconds < 0 ? "early" : "late"}; at most it was {largest} ${comparison.largestDeviationC < 0 ? "below" : "above"}, at {largest at}, and the area under its curve was ${areaWords(comparison.areaDeviation)}.`,
      evidence: [
        { name: "peak off", value: Math.abs(comparison.peakDeviationC), kind: "difference" },
        { name: "peak delay", value: Math.abs(comparison.peakDelaySeconds), kind: "duration" },
        { name: "largest", value: Math.abs(comparison.largestDeviationC), kind: "difference" },
        { name: "largest at", value: comparison.largestDeviationAtSeconds, kind: "elapsed" },
        { name: "area", value: Math.abs(comparison.areaDeviation), kind: "percent" },
      ],
      basis: basedOn(
        "lined up where both pass the same low temperature on the way up, compared until the plan leaves the cooling to the kiln; area as the Fire Test Procedures Code judges furnace curves, where 2.5 % is allowed after the first hour",
        "imo-ftp-2010",
      ),
      advice: isOff
        ? "If the kiln fell behind, have a licensed electrician check elements, relays and mains under your local code, kiln isolated and cold."
        : "",
      zone,
      span: null,
    },
  ];
}

/** Area off by less than half of one in a hundred is no difference. */
function areaWords(deviation: number): string {
  if (Math.abs(deviation) < 0.005) return "the same within 1 %";
  return `{area} ${deviation < 0 ? "smaller" : "larger"}`;
}

function notComparable(title: string): Finding {
  return {
    topic: "against the schedule",
    severity: "note",
    statement: `The log and the schedule "${quoted(title)}" share no rise by which they could be lined up.`,
    evidence: [],
    basis: "the first temperature that both should pass on the way up",
    advice: "Check that this is the schedule that was fired.",
    zone: null,
    span: null,
  };
}

function powerLost(loss: PowerLoss, facts: FiringFacts): Finding {
  const gap = loss.hasGap ? " Part of it was not measured." : "";
  return {
    topic: "power loss",
    severity: "caution",
    statement: `On the way up, at {when}, it fell from {from} to {lowest} and took {away} to come back: the power may have failed, or the kiln was stopped or opened.${gap}`,
    evidence: [
      { name: "when", value: loss.fromSeconds, kind: "elapsed" },
      { name: "from", value: loss.fromC, kind: "temperature" },
      { name: "lowest", value: loss.lowestC, kind: "temperature" },
      { name: "away", value: loss.toSeconds - loss.fromSeconds, kind: "duration" },
    ],
    basis: `a fall of more than 15 °C (27 °F) for 10 min or more before the peak${facts.plan ? " that the schedule does not ask for" : "; there is no schedule to compare it with"}`,
    advice:
      "Look at the record of that hour; have a licensed electrician check mains and relays under your local code.",
    zone: zoneNamed(facts, hottestZone(facts.zones)),
    span: { fromSeconds: loss.fromSeconds, toSeconds: loss.toSeconds },
  };
}

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
