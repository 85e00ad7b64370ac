import type { OffsetTrend } from "../cones/usualOffset.ts";
import { type Finding, quoted } from "../findings/Finding.ts";
import type { FiringHistory, ThermocoupleDrift } from "./history.ts";

/** Topic of all that earlier logs say; `since earlier firings, thermocouple` and the like. */
const TOPIC = "since earlier firings";

const DRIFT_BASIS =
  "offsets by witness cones: this firing's minus the median of the earlier ones; between them the interval that all the cones allow. A difference only: cones bend alike in both, so their own error is mostly the same";

interface HistoryParts {
  readonly now: { readonly name: string };
  readonly used: readonly string[];
  readonly leftOut: FiringHistory["leftOut"];
  /** Used, though no record says which kiln it was. */
  readonly unnamed: readonly string[];
  /** Left out of the drift: another type of thermocouple. */
  readonly otherProbes: readonly string[];
  readonly drift: ThermocoupleDrift | null;
  /** Over all firings in a row; null when too few pin it. */
  readonly trend: OffsetTrend | null;
  readonly whyNoKiln: string | null;
  readonly changes: readonly Finding[];
}

/** What has changed since earlier firings, what cannot be told, and which logs were left out. */
export function historyFindings(parts: HistoryParts): readonly Finding[] {
  const { used, changes, drift, trend, whyNoKiln } = parts;
  return [
    ...leftOut(parts),
    ...(used.length === 0 ? [] : unnamed(parts)),
    ...(used.length > 0 && whyNoKiln !== null ? [cannotLearn(whyNoKiln)] : []),
    ...changes,
    ...(used.length === 0
      ? []
      : [
          trend?.isPlain
            ? plainDrift(trend)
            : drift === null
              ? noDrift(parts)
              : drifted(drift, parts),
        ]),
    ...(used.length > 0 && whyNoKiln === null && changes.length === 0 ? [unchanged(parts)] : []),
  ];
}

function leftOut({ leftOut: logs, used }: HistoryParts): readonly Finding[] {
  if (logs.length === 0) return [];
  const why = logs.map(({ name, why }) => `${quoted(name)} (${quoted(why)})`).join("; ");
  const rest = used.length === 0 ? "; none is left to compare with" : "";
  return [
    note(
      "logs left out",
      `{count} of {given} earlier logs ${logs.length === 1 ? "was" : "were"} left out: ${why}${rest}.`,
      {
        evidence: [
          { name: "count", value: logs.length, kind: "count" },
          { name: "given", value: logs.length + used.length, kind: "count" },
        ],
        basis: "the logs and the records beside them",
      },
    ),
  ];
}

function unnamed({ unnamed: logs }: HistoryParts): readonly Finding[] {
  if (logs.length === 0) return [];
  return [
    note(
      "kiln not named",
      `No record says which kiln ${listed(logs)} ${logs.length === 1 ? "was" : "were"} fired in; taken for this one because you gave ${logs.length === 1 ? "it" : "them"}.`,
      { evidence: [], basis: "the records beside the logs" },
    ),
  ];
}

function cannotLearn(why: string): Finding {
  return note("kiln", `Whether the kiln has changed cannot be told: ${quoted(why)}.`, {
    evidence: [],
    basis: "what a kiln can be learned from: a whole climb, and a fall by itself with the lid shut",
  });
}

function unchanged({ used, now }: HistoryParts): Finding {
  return note(
    "kiln",
    `Nothing that these logs show of the kiln differs enough to be told between ${listed(used)} and ${quoted(now.name)}.`,
    {
      evidence: [],
      basis:
        "pull at equal temperature, share of the time fully on, fall by itself, scatter of the readings",
    },
  );
}

/** Many firings together tell what no two of them can. */
function plainDrift({ driftK, sigmaK, firings }: OffsetTrend): Finding {
  return {
    ...note(
      "thermocouple",
      `By the witness cones of {firings} firings in a row the thermocouple came to read {drift} ${driftK > 0 ? "lower" : "higher"} than it did, give or take {sigma}.`,
      {
        evidence: [
          { name: "firings", value: firings, kind: "count" },
          { name: "drift", value: Math.abs(driftK), kind: "difference" },
          { name: "sigma", value: sigmaK, kind: "difference" },
        ],
        basis:
          "a line through the middles of what the witness cones of each firing allow; plain from three sigmas on",
        advice: "Renew the thermocouple; until then go by the cones.",
      },
    ),
    severity: "caution",
  };
}

function noDrift({ now, used, otherProbes }: HistoryParts): Finding {
  const others =
    otherProbes.length === 0
      ? ""
      : ` ${listed(otherProbes)} had another type of thermocouple by ${otherProbes.length === 1 ? "its record" : "their records"} and ${otherProbes.length === 1 ? "says" : "say"} nothing of this one.`;
  return note(
    "thermocouple",
    `Whether the thermocouple has drifted cannot be told: it takes witness cones that pin its offset from both sides in ${quoted(now.name)} and in an earlier firing (${listed(used)}).${others}`,
    {
      evidence: [],
      basis: DRIFT_BASIS,
      advice:
        "Set three cones in a row every time: one that falls, the one you want, one that stands.",
    },
  );
}

function drifted(drift: ThermocoupleDrift, { now, otherProbes }: HistoryParts): Finding {
  const { driftK, lowK, highK, earlier, nowK, beforeK } = drift;
  const tooClose = lowK <= 0 && highK >= 0;
  const before =
    earlier.firings === 1
      ? "in the one earlier firing"
      : "in the middle of {firings} earlier firings";
  const way = driftK > 0 ? "lower" : "higher";
  const verdict = tooClose
    ? "That is too close to tell: the cones allow {lowest} to {highest}"
    : `So it reads {drift} ${way} than it did (the cones allow {lowest} to {highest} between them)`;
  const others =
    otherProbes.length === 0
      ? ""
      : ` Left out, for another type of thermocouple: ${listed(otherProbes)}.`;
  return note(
    "thermocouple",
    `By witness cones {now} was to be added to the readings in ${quoted(now.name)} and {before} ${before}. ${verdict}.${others}`,
    {
      evidence: [
        { name: "now", value: nowK, kind: "difference" },
        { name: "before", value: beforeK, kind: "difference" },
        { name: "firings", value: earlier.firings, kind: "count" },
        { name: "drift", value: Math.abs(driftK), kind: "difference" },
        { name: "lowest", value: lowK, kind: "difference" },
        { name: "highest", value: highK, kind: "difference" },
      ],
      basis: DRIFT_BASIS,
      advice: tooClose
        ? ""
        : "Look at the tip and where it sits; a thermocouple that keeps moving wants replacing.",
    },
  );
}

function note(
  about: string,
  statement: string,
  rest: {
    readonly evidence: Finding["evidence"];
    readonly basis: string;
    readonly advice?: string;
  },
): Finding {
  return {
    topic: `${TOPIC}, ${about}`,
    severity: "note",
    statement,
    advice: "",
    ...rest,
    zone: null,
    span: null,
  };
}

function listed(names: readonly string[]): string {
  const words = names.map(quoted);
  const end = words.at(-1) ?? "";
  return words.length < 2 ? end : `${words.slice(0, -1).join(", ")} and ${end}`;
}
