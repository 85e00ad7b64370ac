import type { RecordedTrial } from "./FiringRecord.ts";
import type { MeasuredSpacing, TrialCoat } from "./TrialMeasurements.ts";

/** A test piece as one line to show; what was worked out says from what, and how well it is known. */
export function trialText(trial: RecordedTrial): string {
  return [
    `${trial.glaze} on ${trial.clay}`,
    coatText(trial.coat),
    trial.glazedSides === "one" ? "glazed on one side" : "glazed on both sides",
    trial.shape,
    trial.wallMm && `wall ${length(trial.wallMm)}`,
    trial.place,
    spacingText(trial),
    trial.cracked && CRACKED[trial.cracked],
    trial.stain && `stained with ${trial.stain}`,
    trial.pings && pingsText(trial.pings.count),
    trial.note,
  ]
    .filter((part) => part)
    .join(", ");
}

const CRACKED = {
  none: "no cracks",
  crackle: "glaze crackled",
  through: "cracked through the wall",
} as const;

const HOW = {
  raw: "worked out from the dry coat",
  wet: "worked out from the wet coat",
  mass: "worked out from the dry mass",
} as const;

function coatText({ firedMm, sigmaMm, sigmaIs, how, taken }: TrialCoat): string {
  const known = sigmaIs === "assumed" ? "" : ` ± ${Number(sigmaMm.toPrecision(2))}`;
  const coat = known === "" ? `coat ${length(firedMm)}` : `coat ${figure(firedMm)}${known} mm`;
  if (how === "fired") return coat;
  const because = taken.length > 0 ? `, taking ${taken.join(" and ")}` : "";
  return `${coat} (${HOW[how]}${because})`;
}

function spacingText({ spacing, size }: RecordedTrial): string | null {
  if (spacing.kind === "measured") return measuredText(spacing);
  if (spacing.kind === "not measured") return null;
  return spacing.from === "size" && size !== null
    ? `nothing on ${figure(size.longMm)} by ${figure(size.shortMm)} mm`
    : `no crack met on a line of ${length(spacing.atLeastMm)}`;
}

function measuredText(spacing: MeasuredSpacing): string {
  const { lowMm, highMm, interceptMm } = spacing;
  const range =
    lowMm === null || highMm === null ? "" : ` (${figure(lowMm)} to ${length(highMm)}, 95 in 100)`;
  const from = spacing.from === "photo" ? ", from a photo" : "";
  const apart = `cracks ${length(spacing.pitchMm)} apart${range}${from}`;
  if (interceptMm === null) return apart;
  const on = spacing.lines === 1 ? "one line" : `${spacing.lines} lines`;
  const counted = `${spacing.crossings} on ${length(spacing.lengthMm)} of ${on}, ${length(interceptMm)} from crack to crack along a line`;
  return `${apart}: ${[counted, waysText(spacing)].filter((part) => part).join("; ")}`;
}

function waysText({ directions, alongOverAcross }: MeasuredSpacing): string | null {
  if (directions.length === 0) return null;
  const ways = directions.map(({ direction, interceptMm }) =>
    interceptMm === null ? `none met ${direction}` : `${length(interceptMm)} ${direction}`,
  );
  const ratio = alongOverAcross === null ? [] : [`ratio ${alongOverAcross.toFixed(2)}`];
  return [...ways, ...ratio].join(", ");
}

function pingsText(count: number): string {
  return count === 1 ? "one ping heard" : `${count} pings heard`;
}

function length(mm: number): string {
  return `${figure(mm)} mm`;
}

function figure(mm: number): string {
  return `${Number(mm.toFixed(mm < 10 ? 2 : 0))}`;
}
