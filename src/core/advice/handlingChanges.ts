import { tellingApart } from "../diagnosis/tellingApart.ts";
import { quoted } from "../findings/Finding.ts";
import type { NextChange, NextContext, WantedChange } from "./NextFiring.ts";

/**
 * Opening hotter than this is against common practice, and hotter than the second above even the
 * boldest of it [°C].
 * @see SOURCES["opening-practice"]
 */
const FIRST_CRACK_C = 200;
const BOLDEST_C = 250;
/** Cool enough to open: the caution says so of every kiln [°C]. */
export const COOL_C = 100;
/** Readings that end above this leave the end of cooling unknown [°C]. */
const STILL_HOT_C = 120;
/** A thermocouple that is off by less is good enough for a studio [K]; our own choice. */
const OFF_K = 5;
/** Elements that give this share less are firm to look at; our own choice. */
const FIRMLY_WEAKER = 0.2;

/** What to do differently with lid, elements, thermocouple, log and record; the schedule stays. */
export function handlingChanges(context: NextContext): readonly WantedChange[] {
  return [
    ...openedHot(context),
    ...weakElements(context),
    ...thermocouple(context),
    ...driftedProbe(context),
    ...endedHot(context),
    ...record(context),
  ];
}

function openedHot({ facts }: NextContext): readonly WantedChange[] {
  const { tempC, from } = facts.opening;
  if (tempC === null || tempC <= FIRST_CRACK_C) return [];
  return [
    {
      about: "lid",
      change: "Leave the kiln shut until it is below {cool}.",
      because: `It ${from === "log" ? "seems to have been" : "was"} opened at {opened}; cold air on ware as hot as that cracks it.`,
      evidence: [
        { name: "cool", value: COOL_C, kind: "temperature" },
        { name: "opened", value: tempC, kind: "temperature" },
      ],
      standing: tempC > BOLDEST_C ? "firm" : "worth trying",
      ask: null,
    },
  ];
}

function weakElements({ history, reachC }: NextContext): readonly WantedChange[] {
  const weakerBy = history?.weakerBy ?? null;
  // Out of the cone's reach that is said with the rest of it.
  if (weakerBy === null || reachC !== null) return [];
  return [
    {
      about: "elements",
      change:
        "Have a licensed electrician measure the elements, kiln isolated and cold, before the next hot firing.",
      because:
        "At the same temperatures they gave {less} less than in the strongest earlier firing; a heavier load or low mains would look the same.",
      evidence: [{ name: "less", value: weakerBy, kind: "percent" }],
      standing: weakerBy >= FIRMLY_WEAKER ? "firm" : "worth trying",
      ask: null,
    },
  ];
}

function thermocouple({ facts }: NextContext): readonly WantedChange[] {
  const offset = facts.witness?.offset;
  if (!offset || offset.lowK === null || offset.highK === null) return [];
  if (!offset.agree)
    return [
      plain(
        "thermocouple",
        "Set fresh witness cones beside the thermocouple, three in a row, and check their numbers.",
        "The witness cones of this firing contradict one another.",
      ),
    ];
  const { offsetK, sigmaK } = offset;
  const awayK = Math.abs(offsetK - offset.usual.offsetK);
  if (awayK < OFF_K || awayK < sigmaK) return [];
  return [
    {
      about: "thermocouple",
      change: `Reckon with a thermocouple that reads about {off} too ${offsetK > 0 ? "low" : "high"}: in the draft or in the controller, not in both.`,
      because: "The witness cones allow {lowest} to {highest} to be added to its readings.",
      evidence: [
        { name: "off", value: Math.abs(offsetK), kind: "difference" },
        { name: "lowest", value: offset.lowK, kind: "difference" },
        { name: "highest", value: offset.highK, kind: "difference" },
      ],
      standing: awayK > 2 * sigmaK ? "firm" : "worth trying",
      ask: null,
    },
  ];
}

function driftedProbe({ history }: NextContext): readonly WantedChange[] {
  const drift = history?.drift;
  if (!drift || (drift.lowK <= 0 && drift.highK >= 0)) return [];
  return [
    {
      about: "thermocouple",
      change: "Look at the thermocouple: its tip, its terminals, how deep it sits.",
      because: `It reads {drift} ${drift.driftK > 0 ? "lower" : "higher"} than in the middle of {firings} earlier firings; the cones allow {lowest} to {highest} between them.`,
      evidence: [
        { name: "drift", value: Math.abs(drift.driftK), kind: "difference" },
        { name: "firings", value: drift.earlier.firings, kind: "count" },
        { name: "lowest", value: drift.lowK, kind: "difference" },
        { name: "highest", value: drift.highK, kind: "difference" },
      ],
      standing: "worth trying",
      ask: null,
    },
  ];
}

function endedHot({ zone }: NextContext): readonly WantedChange[] {
  if (zone.lastReadingC <= STILL_HOT_C) return [];
  return [
    {
      about: "log",
      change: "Let the log run until the kiln is opened.",
      because: "The readings end at {last}; nothing is known of how it cooled from there.",
      evidence: [{ name: "last", value: zone.lastReadingC, kind: "temperature" }],
      standing: "firm",
      ask: null,
    },
  ];
}

/** What would tell the two most likely kinds of crack apart, and witness cones where there are none. */
function record({ facts, diagnosis }: NextContext): readonly WantedChange[] {
  const [first, second] = diagnosis.filter(
    ({ standing, evidence }) => standing !== "speaks against" && evidence.length > 0,
  );
  const apart = first && second ? tellingApart(diagnosis)[0] : undefined;
  return [
    ...(first && second && apart
      ? [
          plain(
            "record",
            `Note what tells ${first.name} from ${second.name}. ${quoted(apart.ask)} ${quoted(apart.look)}`.trim(),
            "Both kinds of crack are left standing by this firing.",
          ),
        ]
      : []),
    ...(facts.witness === null
      ? [
          plain(
            "record",
            "Stand three witness cones beside the thermocouple: one that falls, the one you want, one that stands.",
            "Without them the cone is computed from a thermocouple that nothing has checked.",
          ),
        ]
      : []),
  ];
}

function plain(about: NextChange["about"], change: string, because: string): WantedChange {
  return { about, change, because, evidence: [], standing: "worth trying", ask: null };
}
