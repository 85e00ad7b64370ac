import { LONG_TERM_YEARS } from "../glaze/crackedWall.ts";
import type { Standing, ThroughPart } from "../glaze/GlazeFitParts.ts";
import type { GlazeFit } from "../glaze/glazeFit.ts";
import type { Spread } from "../math/statistics.ts";
import { slowCrackExponent } from "../pings/omoriLaw.ts";
import { cited } from "../sources/bibliography.ts";
import {
  asGiven,
  fewDigits,
  printTemperature,
  sharePer100,
  spreadWords,
} from "../text/quantities.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { type Block, section } from "./Block.ts";

/** Whether the coat cracks, how closely, how deep, and what time adds. */
export function glazeCrackBlocks(fit: GlazeFit, unit: TemperatureUnit): readonly Block[] {
  return [
    ...section("Crackle", [...crackleBlocks(fit, unit), ...spacingBlocks(fit)]),
    ...section("Into the wall", throughBlocks(fit)),
    ...section("Later", laterBlocks(fit)),
  ];
}

const CRACKLE: Readonly<Record<Standing, string>> = {
  "speaks for": "this speaks for crackle",
  open: "this leaves crackle open",
  "speaks against": "this speaks against crackle",
};

function crackleBlocks(
  { crazing, mismatch, piece, roomC }: GlazeFit,
  unit: TemperatureUnit,
): readonly Block[] {
  const facts = [
    {
      label: "cracks from",
      text: `${spreadWords(crazing.thresholdMPa, "MPa")} of pull in this coat`,
    },
    {
      label: "pull over that",
      text: `${spreadWords(crazing.overThreshold, "")}; from 1 on it can`,
    },
    ...(crazing.leastCoatMm === null
      ? []
      : [
          {
            label: "thinnest coat",
            text: `${spreadWords(crazing.leastCoatMm, "mm")} can crack${crazing.coatShare === 1 ? "" : `, in the ${sharePer100(crazing.coatShare)} draws in which any does`}`,
          },
        ]),
    ...(crazing.firstPingC === null
      ? []
      : [
          {
            label: "first ping",
            text: `${temperatures(crazing.firstPingC, unit)}, where it cracks on cooling`,
          },
        ]),
  ];
  const { tempC, strain } = mismatch.greatest;
  const isEarly = tempC.median > roomC + 50 && strain.median > 0 && crazing.share >= 0.1;
  return [
    {
      kind: "lead",
      text: `In ${sharePer100(crazing.share)} draws a coat of ${asGiven(piece.coatMm)} mm can crack: ${CRACKLE[crazing.standing]}.`,
    },
    { kind: "facts", facts },
    ...(isEarly
      ? [
          {
            kind: "sentence" as const,
            text: `The pull is greatest about ${printTemperature(tempC.median, unit)}, before quartz or cristobalite of the body squeezes it; cracks made there stay, even if the glaze is squeezed when cold.`,
          },
        ]
      : []),
  ];
}

function temperatures({ low, median, high }: Spread, unit: TemperatureUnit): string {
  const number = (tempC: number) => printTemperature(tempC, unit).split(" ")[0];
  return `${printTemperature(median, unit)} (${number(low)} to ${number(high)})`;
}

function spacingBlocks({ spacing }: GlazeFit): readonly Block[] {
  if (spacing === null) return [];
  const { low, median, high } = spacing.meanMm;
  const row = (what: string, each: Spread) => [
    what,
    fewDigits(each.median),
    `${fewDigits(each.low)} to ${fewDigits(each.high)}`,
  ];
  const late = spacing.lateMeanMm;
  return [
    {
      kind: "table",
      caption: "Distance between cracks where it cracks [mm]",
      columns: [
        { head: "which", align: "left" },
        { head: "middle", align: "right" },
        { head: "range", align: "right" },
      ],
      rows: [
        row("closest that cracks fill in", spacing.leastMm),
        row("mean", { low, median, high }),
        row("widest left between", spacing.widestMm),
        row("mean as counted along lines", spacing.alongLinesMm),
        ...(late === null ? [] : [row("mean after months or years", late)]),
      ],
    },
    {
      kind: "list",
      items: [
        "a wider crackle than this comes from few starting flaws, or from a pull that only just cracks it",
        ...thickerWords(spacing.thickerCoat),
        ...(spacing.wideShare >= 0.1
          ? [
              `in ${sharePer100(spacing.wideShare)} of these draws the pull only just cracks it and cracks stand more than 150 coats apart`,
            ]
          : []),
        ...(spacing.fineShare >= 0.1
          ? [
              `in ${sharePer100(spacing.fineShare)} of these draws cracks come closer than one coat, past the table`,
            ]
          : []),
      ],
    },
  ];
}

function thickerWords(
  thickerCoat: NonNullable<GlazeFit["spacing"]>["thickerCoat"],
): readonly string[] {
  if (thickerCoat === null)
    return [
      "in the middle of all draws this coat stays whole; near there a thicker coat crackles more closely",
    ];
  if (thickerCoat === "hardly changes")
    return ["a somewhat thicker coat hardly changes the distance: it is near its least here"];
  return [
    thickerCoat === "closer"
      ? "a thicker coat crackles more closely here: this coat only just cracks; thicker still, the distance grows again, so one distance may come of two coats"
      : "a thicker coat crackles more widely here, about as the square root of the coat",
  ];
}

const THROUGH: Readonly<Record<Standing, string>> = {
  "speaks for": "this speaks for cracks through the wall",
  open: "this leaves cracks through the wall open",
  "speaks against": "this speaks against cracks through the wall",
};

function throughBlocks({ through, mismatch, piece }: GlazeFit): readonly Block[] {
  const reasons = through.reasons.map(({ direction, text }) => `${direction}: ${text}`);
  const isPulled = mismatch.greatest.strain.high > 0 && through.pullMPaRootM.high > 0;
  return [
    ...(isPulled
      ? [
          {
            kind: "lead" as const,
            text: `A glaze crack runs on through the wall in ${sharePer100(through.share)} draws: ${THROUGH[through.standing]}. A ranking, no verdict: how tough a body is is hardly ever known.`,
          },
          { kind: "facts" as const, facts: depthFacts(through) },
          { kind: "list" as const, items: reasons },
          {
            kind: "sentence" as const,
            text: "Half the coat halves the pull on such a crack. Heat shock and the quartz step add to it.",
          },
        ]
      : []),
    ...bodyPullBlocks(
      through,
      piece.glazing === "one face, wall held" && mismatch.strain.median < 0,
    ),
  ];
}

function depthFacts(through: ThroughPart): readonly { label: string; text: string }[] {
  return [
    {
      label: "least pull on it",
      text: `${spreadWords(through.pullMPaRootM, "MPa√m")} on the way through`,
    },
    {
      label: "body bears",
      text: `${spreadWords(through.bodyToughnessMPaRootM, "MPa√m")}, ${through.toughnessSource}`,
    },
    ...(through.stopsAtMm === null
      ? []
      : [
          {
            label: "else it stops",
            text: `${spreadWords(through.stopsAtMm, "mm")} deep in the body`,
          },
        ]),
  ];
}

/** Share of strength from which on the pull in the body is worth telling. */
const TELLING_SHARE = 0.25;

/** The other sign: the body pulled by a squeezed glaze, or its bare face by a bending one. */
function bodyPullBlocks(through: ThroughPart, maySplit: boolean): readonly Block[] {
  const { bodyPullOverRupture: inWall, rimPullOverRupture: atRim } = through;
  if (Math.max(inWall.high, atRim.high) < TELLING_SHARE) return [];
  const isRim = atRim.high > 1.2 * inWall.high;
  const where = isRim ? "At a rim or a cut, where the wall can bend, the body" : "The body itself";
  const pull = spreadWords(isRim ? through.rimPullMPa : through.bodyPullMPa, "MPa");
  const split = maySplit
    ? " A closed wall split by a squeezed glaze inside is such a case; note it apart from crackle."
    : "";
  return [
    {
      kind: "sentence",
      text: `${where} is pulled by ${pull}: ${spreadWords(isRim ? atRim : inWall, "")} of its strength in bending.${split}`,
    },
  ];
}

/** Evenness of flaws and speed of cracks in glass as it comes. */
const [WEIBULL, GROWTH] = [8, 18];

function laterBlocks({ delayed, crazing }: GlazeFit): readonly Block[] {
  const fade = (slowCrackExponent(WEIBULL, GROWTH) * 100).toFixed(0);
  return [
    {
      kind: "list",
      items: [
        `moisture swells the body by ${spreadWords(delayed.growth, "mm a metre", 1000)} in ${LONG_TERM_YEARS} years and pulls the glaze by ${spreadWords(delayed.addedMPa, "MPa")} more (${delayed.growthSource})`,
        `whole at first, then crazed by moisture within ${LONG_TERM_YEARS} years: ${sharePer100(delayed.moistureShare)} draws${yearsWords(delayed.moistureYears)}`,
        `whole at first, but pulled enough for cracks to creep in damp air: ${sharePer100(delayed.slowShare)} draws${windowWords(delayed.slowFromMm, crazing.leastCoatMm)} (${cited("glass-slow-growth")})`,
        `pings from creeping cracks thin out about as time to the power 0.${fade}, from moisture to 0.75 (worked out; no record of pinging was found); steady pinging means a temperature still on the move`,
      ],
    },
  ];
}

function yearsWords(years: Spread | null): string {
  if (years === null) return "";
  return `, after ${spanWords(years.median)} (${spanWords(years.low)} to ${spanWords(years.high)})`;
}

function spanWords(years: number): string {
  if (years >= 0.95) return `${fewDigits(years)} years`;
  const days = years * 365.25;
  if (days >= 45) return `${Math.round(days / 30.44)} months`;
  if (days < 1) return "less than a day";
  return days < 1.5 ? "a day" : `${Math.round(days)} days`;
}

function windowWords(from: Spread | null, to: Spread | null): string {
  if (from === null || to === null || from.median >= to.median) return "";
  return `, at coats of about ${fewDigits(from.median)} to ${fewDigits(to.median)} mm`;
}
