import type { GlazeFit } from "../glaze/glazeFit.ts";
import type { Glazing } from "../glaze/laminate.ts";
import type { Spread } from "../math/statistics.ts";
import { cited } from "../sources/bibliography.ts";
import { asGiven, fewDigits, printTemperature, spreadWords } from "../text/quantities.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { type Block, section } from "./Block.ts";
import { glazeCrackBlocks } from "./glazeCrackBlocks.ts";
import { glazeMeasuredBlocks } from "./glazeExpansionBlocks.ts";

const PER_DEGREE = "millionths per °C";

/** How a wall is glazed, in a potter's words. */
const GLAZED: Readonly<Record<Glazing, string>> = {
  "both faces": "both faces glazed",
  "one face, wall held": "one face glazed, closed shape that cannot bend",
  "one face, free to bend": "one face glazed, flat and free to bend",
};

/** Where squeezed glazes begin to flake off edges, in common teaching [MPa]. */
const FLAKING_MPA = 80;

/** The fit of a glaze on its body: shrinking, stress, cracks, time, and what was measured. */
export function glazeStressBlocks(fit: GlazeFit, unit: TemperatureUnit): readonly Block[] {
  return [
    ...section("Fit on the body", [
      { kind: "lead", text: leadOf(fit) },
      ...shrinkingBlocks(fit, unit),
    ]),
    ...section("Stress when cold", stressBlocks(fit)),
    ...glazeCrackBlocks(fit, unit),
    ...glazeMeasuredBlocks(fit, unit),
    ...section("How far to trust this", trustBlocks(fit, unit)),
  ];
}

function leadOf({ mismatch: { strain }, crazing }: GlazeFit): string {
  if (strain.low > 0)
    return "The glaze shrinks more than the body and is pulled: it leans to crackle.";
  if (strain.high < 0) {
    const before = crazing.share > 0.2 ? " once cold, though it may be pulled on the way down" : "";
    return `The glaze shrinks less than the body and is squeezed${before}.`;
  }
  return "Whether the glaze is pulled or squeezed lies within what is not known of glaze and body.";
}

function shrinkingBlocks(
  { mismatch, piece, roomC }: GlazeFit,
  unit: TemperatureUnit,
): readonly Block[] {
  const fall = `from ${printTemperature(mismatch.setC.median, unit)} down to ${printTemperature(roomC, unit)}`;
  return [
    {
      kind: "facts",
      facts: [
        {
          label: "piece",
          text: `${asGiven(piece.coatMm)} mm of glaze on ${asGiven(piece.wallMm)} mm of wall, ${GLAZED[piece.glazing]}`,
        },
        { label: "glaze shrinks", text: spreadWords(mismatch.glazePerK, PER_DEGREE, 1e6) },
        {
          label: "body shrinks",
          text: `${spreadWords(mismatch.bodyPerK, PER_DEGREE, 1e6)}, ${fall}`,
        },
        {
          label: "difference",
          text: `${spreadWords(mismatch.perK, PER_DEGREE, 1e6)}, or ${spreadWords(mismatch.strain, "mm a metre", 1000)}; more than 0 pulls the glaze`,
        },
        {
          label: "quartz and cristobalite",
          text: `${spreadWords(mismatch.silicaStrain, "mm a metre", 1000)} of what the body shrinks`,
        },
      ],
    },
    {
      kind: "sentence",
      text: "In brackets: where eight of ten draws of all that is uncertain lie.",
    },
    { kind: "sentence", text: stepSentence(mismatch, unit) },
  ];
}

/** Differences under this are not worth a sentence [length over length]. */
const SMALL_STRAIN = 0.0001;

function stepSentence(mismatch: GlazeFit["mismatch"], unit: TemperatureUnit): string {
  const straight = mismatch.strainByMeanTo500;
  const mean = fewDigits(mismatch.bodyTo500PerK * 1e6);
  const to500 = printTemperature(500, unit);
  if (Math.abs(straight - mismatch.strain.median) < SMALL_STRAIN)
    return `The body's mean to ${to500}, ${mean} ${PER_DEGREE}, gives about the same.`;
  return `The body's mean to ${to500}, ${mean} ${PER_DEGREE}, would make the difference ${fewDigits(straight * 1000)} mm a metre: it hides what quartz does above it.`;
}

function stressBlocks({ stress, piece }: GlazeFit): readonly Block[] {
  const row = (where: string, { low, median, high }: Spread) => [
    where,
    fewDigits(median),
    `${fewDigits(low)} to ${fewDigits(high)}`,
  ];
  return [
    {
      kind: "table",
      caption: "Stress [MPa] before any crack: pull over 0, squeeze under 0",
      columns: [
        { head: "where", align: "left" },
        { head: "middle", align: "right" },
        { head: "range", align: "right" },
      ],
      rows: [
        row("in the glaze", stress.glazeMPa),
        row("in the body under it", stress.underGlazeMPa),
        ...(stress.bareFaceMPa === null ? [] : [row("on the bare face", stress.bareFaceMPa)]),
        row("in the glaze, had the wall no give", stress.thickBodyMPa),
      ],
    },
    ...(stress.bowMm === null ? [] : [bowSentence(stress.bowMm, piece.wallMm)]),
    ...squeezeBlocks(stress.glazeMPa),
  ];
}

function bowSentence(bowMm: Spread, wallMm: number): Block {
  const bow = spreadWords(bowMm, "mm");
  return {
    kind: "sentence",
    text: `A flat bar of this wall (${asGiven(wallMm)} mm) glazed on one face bows by ${bow} over 100 mm, hollow on the glazed face where that is over 0: lay a straight edge on it to check.`,
  };
}

function squeezeBlocks({ low, median }: Spread): readonly Block[] {
  if (low > -FLAKING_MPA) return [];
  const how = median < -FLAKING_MPA ? "is" : "may be";
  return [
    {
      kind: "sentence",
      text: `The glaze ${how} squeezed by more than ${FLAKING_MPA} MPa, the upper end of what is wanted: look for slivers off edges and rims (${cited("glaze-squeeze")}).`,
    },
  ];
}

function trustBlocks(
  { mismatch, limits, runs }: GlazeFit,
  unit: TemperatureUnit,
): readonly Block[] {
  const known = `${printTemperature(mismatch.knownFromC, unit)} to ${printTemperature(mismatch.knownToC, unit)}`;
  const carried =
    mismatch.setC.median > mismatch.knownToC
      ? [
          `the expansion of the glaze is known for ${known} and carried on to the set point; glasses shrink a little more up there`,
        ]
      : [];
  return [
    {
      kind: "sentence",
      text: `Numbers are from ${runs} draws of all that is uncertain; they rank glazes and coats and foretell no single pot.`,
    },
    {
      kind: "list",
      items: [
        ...carried,
        `for scale: on four porous bodies, glazes that shrank over 1.0 ${PER_DEGREE} more than the body cracked in the kiln, 0 to 1.0 more perhaps days later, and less than the body not even in steam (${cited("four-porous-bodies")})`,
        "left out: the layer where glaze and body react, bubbles, crystals, uneven cooling, refiring",
        ...limits,
        `rests on: layered walls (${cited("timoshenko-1925")}); cracks through a coat and their spacing (${cited("channel-elements")}, checked against ${cited("hutchinson-suo-1992")} and ${cited("beuth-1992")}; ${cited("thouless-1990")}); depth (${cited("depth-weight-functions")}, and for unlike stiffness ${cited("depth-stiffness")}); moisture with the fourth root of time (${cited("wilson-2003")})`,
      ],
    },
  ];
}
