import type { Evidence, Finding } from "../findings/Finding.ts";
import { basedOn } from "../sources/bibliography.ts";
import type { PingReview } from "./PingReview.ts";

/** What findings are made from. */
export type Heard = Omit<PingReview, "findings" | "cautions">;

/** From these on a fault of the recording is said; our own choices. */
const CLIPPED_PINGS_SHARE = 0.05;
const SILENT_SHARE = 0.2;
const NOISY_SHARE = 0.1;
const FEW_HZ = 8000;

const MEASURED = "counted in the recording";

/** What was heard at all, and what the recording itself lets be heard. */
export function hearingFindings(review: Heard): readonly Finding[] {
  return [
    ...countFindings(review),
    ...begunFindings(review),
    ...clippedFindings(review),
    ...noiseFindings(review),
    ...rateFindings(review),
    ...kindFindings(review),
  ];
}

function finding(
  topic: string,
  severity: Finding["severity"],
  said: {
    readonly statement: string;
    readonly advice?: string;
    readonly basis?: string;
    readonly evidence?: readonly Evidence[];
    readonly span?: Finding["span"];
  },
): Finding {
  return {
    topic,
    severity,
    statement: said.statement,
    evidence: said.evidence ?? [],
    basis: said.basis ?? MEASURED,
    advice: said.advice ?? "",
    zone: null,
    span: said.span ?? null,
  };
}

function countFindings({ pings, heard }: Heard): readonly Finding[] {
  const length: Evidence = { name: "length", value: heard.seconds, kind: "duration" };
  if (pings.length === 0)
    return [
      finding("count", "note", {
        statement:
          "No ping was found in {length}. That is no proof that the glaze is quiet: what is fainter than the threshold, or falls into noise, is not heard.",
        advice: "Listen to the recording; try a lower --threshold if you hear clicks in it.",
        evidence: [length],
      }),
    ];
  return [
    finding("count", "note", {
      statement: `{pings} ${pings.length === 1 ? "ping was" : "pings were"} found in {length}. The count is a lower bound: faint ones, those within a moment of another, and those under noise are missed.`,
      evidence: [{ name: "pings", value: pings.length, kind: "count" }, length],
    }),
  ];
}

function begunFindings({ isBegun, pings }: Heard): readonly Finding[] {
  if (!isBegun) return [];
  return [
    finding("beginning", "note", {
      statement:
        "Pings came from the very start of the recording, the first after {first}. If the pinging began earlier, its beginning was missed, and counts and shares leave it out.",
      advice: "Start the next recording earlier, at a safe distance from the kiln.",
      evidence: [{ name: "first", value: pings[0]?.atSeconds ?? 0, kind: "duration" }],
    }),
  ];
}

function clippedFindings({ pings }: Heard): readonly Finding[] {
  const share = pings.filter(({ isClipped }) => isClipped).length / Math.max(1, pings.length);
  if (share < CLIPPED_PINGS_SHARE) return [];
  return [
    finding("clipped", "caution", {
      statement:
        "{share} of the pings reach full scale, so they were louder than recorded: their number stands, their loudness is a lower bound.",
      advice: "Record at a lower level next time.",
      evidence: [{ name: "share", value: share, kind: "percent" }],
    }),
  ];
}

function noiseFindings({ heard }: Heard): readonly Finding[] {
  const noisy = heard.noisySeconds / heard.seconds;
  return [
    ...(heard.zeroShare < SILENT_SHARE
      ? []
      : [
          finding("gaps of silence", "caution", {
            statement:
              "{silent} of the samples are exactly zero: the recorder switches itself off when it is quiet (a noise gate), and faint pings are lost with it.",
            advice: "Switch off noise reduction and automatic level in the recorder.",
            evidence: [{ name: "silent", value: heard.zeroShare, kind: "percent" }],
          }),
        ]),
    ...(noisy < NOISY_SHARE
      ? []
      : [
          finding("noise", "caution", {
            statement:
              "For {noisy}, noise made the ear at least 12 dB duller than usual: pings are missed there, and rates come out too low.",
            advice: "Put the recorder where nobody talks and no fan blows.",
            evidence: [{ name: "noisy", value: heard.noisySeconds, kind: "duration" }],
          }),
        ]),
  ];
}

function rateFindings({ heard }: Heard): readonly Finding[] {
  if (heard.sampleRateHz >= FEW_HZ) return [];
  return [
    finding("sample rate", "caution", {
      statement: `The recording has ${heard.sampleRateHz} samples a second, fewer than ${FEW_HZ}: it carries nothing above ${Math.round((heard.sampleRateHz * 0.45) / 100) / 10} kHz, where light ticks are loudest.`,
      advice: "Record at 44.1 or 48 kHz.",
    }),
  ];
}

function kindFindings({ kinds, pings }: Heard): readonly Finding[] {
  const [deep, light] = kinds.kinds;
  if (!deep || !light || kinds.mixedShare === null) return [];
  const louder = deep.overFloorDb - light.overFloorDb;
  return [
    finding("two kinds", "note", {
      statement: `Two kinds of ping can be told apart by their tone: {deep} deep ones about ${khz(deep.pitchHz)} and {light} light ones about ${khz(light.pitchHz)}; the deep ones are ${Math.abs(louder).toFixed(0)} dB ${louder < 0 ? "fainter" : "louder"}. ${kinds.mixedShare < 0.01 ? "Fewer than 1 %" : "About {mixed}"} of the {pings} may stand with the wrong kind.`,
      basis: `two bell curves against one for the logarithm of the tone; ${basedOn("very strong evidence is asked for", "kass-raftery-1995")}, and ${basedOn("groups clearly apart", "ashman-1994")}; that single deep cracks come from the wall and light ticks from the glaze is lore, not measured`,
      advice:
        "Look whether the deep ones go with a crack through the wall: tap the pieces once they are cold; a dull ring speaks for one.",
      evidence: [
        { name: "deep", value: deep.count, kind: "count" },
        { name: "light", value: light.count, kind: "count" },
        { name: "mixed", value: kinds.mixedShare, kind: "percent" },
        { name: "pings", value: pings.length, kind: "count" },
      ],
    }),
  ];
}

function khz(hertz: number): string {
  return `${(hertz / 1000).toFixed(1)} kHz`;
}
