import { CONE_TABLES, type Heatwork, printedEndPoint } from "../cones/cone.ts";
import { USUAL_OFFSET_BASIS } from "../cones/usualOffset.ts";
import type { Finding } from "../findings/Finding.ts";
import type { FiredPiece } from "../firing/firedPieces.ts";
import { printDifference, printMm, printRate, printTemperature } from "../text/quantities.ts";
import { capitalised, stopped } from "../text/wrap.ts";
import type { TemperatureUnit } from "../units/temperature.ts";
import { distinctBodies, FROM_MEMORY, OWN_ESTIMATE } from "../ware/bodies.ts";
import type { Crossing } from "../ware/inversions.ts";
import { BODY_PROPERTIES, type BodyProperty, YOURS } from "../ware/ownBody.ts";
import type { Body, Property, WareGeometry } from "../ware/Ware.ts";
import { type Block, type Cell, section } from "./Block.ts";
import { seriesName } from "./coneBlocks.ts";

/** What a report rests on: the cone model, the guides, the basis of each finding, sources. */
export function basisBlocks(
  input: {
    readonly heatwork: Heatwork | null;
    readonly crossings: readonly Crossing[];
    readonly findings: readonly Finding[];
    readonly sources: readonly string[];
  },
  unit: TemperatureUnit,
): readonly Block[] {
  const items = [
    ...(input.heatwork === null ? [] : coneItems(input.heatwork, unit)),
    ...guideItems(input.crossings),
    ...input.findings
      .filter((finding) => finding.basis !== "" && !isGuide(finding.basis, input.crossings))
      .map((finding) => `${capitalised(finding.topic)}: ${stopped(finding.basis)}`),
    ...input.sources.map(stopped),
  ];
  return section(
    "What this rests on",
    items.length === 0 ? [] : [{ kind: "list", items: [...new Set(items)] }],
  );
}

function isGuide(basis: string, crossings: readonly Crossing[]): boolean {
  return crossings.some((crossing) => crossing.limitBasis === basis);
}

/** Where the guides come from, once. */
function guideItems(crossings: readonly Crossing[]): readonly string[] {
  const bases = crossings.flatMap(({ limitBasis }) => (limitBasis === null ? [] : [limitBasis]));
  return [...new Set(bases)].map((basis) => `Guides for cooling: ${stopped(basis)}`);
}

/** Which printed end points about the cone reached could not be read again in any copy. */
function memoryItems({ series, position }: Heatwork, unit: TemperatureUnit): readonly string[] {
  const table = CONE_TABLES[series];
  const cones = [position.cone, position.next].filter((cone) => cone !== null);
  return cones.flatMap((cone) => {
    const rates = table.ratesCPerHour.filter(
      (rate) => printedEndPoint(table, cone, rate)?.confidence === "from-memory",
    );
    const said = rates.flatMap((rate) => (rate === null ? [] : [printRate(rate, unit)]));
    return said.length === 0
      ? []
      : [`Cone ${cone}: its end point at ${said.join(" and ")} is from memory, not read again.`];
  });
}

function coneItems(heatwork: Heatwork, unit: TemperatureUnit): readonly string[] {
  const { series, offsetK, offsetIs, extrapolations } = heatwork;
  const shift = Math.abs(offsetK);
  return [
    `Cones: a heatwork model of the whole curve, held to the published end points of ${seriesName(series)}. The ± is one standard deviation.`,
    ...(shift < 0.5
      ? []
      : [
          `${printDifference(shift, unit)} was ${offsetK < 0 ? "taken off" : "added to"} the readings before the cone was worked out, ${offsetIs === "usual" ? `as kilns are usually out. From ${USUAL_OFFSET_BASIS}.` : "after the witness cones."}`,
        ]),
    ...memoryItems(heatwork, unit),
    ...extrapolations.map((reason) => `Beyond what was published: ${stopped(reason)}`),
  ];
}

/** A piece as far as it is shown here. */
type ShownPiece = Pick<FiredPiece, "name" | "ware" | "assumed">;

/** What is known beside the pieces. */
interface BodyContext {
  readonly unit: TemperatureUnit;
  readonly ownIn: string;
}

/** How a property is called and printed. */
interface Shown {
  readonly label: string;
  readonly unit: string;
  /** Shown number over the number in the body. */
  readonly scale: number;
}

const SHOWN: Readonly<Record<BodyProperty, Shown>> = {
  densityKgPerM3: { label: "density", unit: "kg/m³", scale: 1 },
  heatCapacityJPerKgK: { label: "heat capacity", unit: "J/kgK", scale: 1 },
  conductivityWPerMK: { label: "heat conducted", unit: "W/mK", scale: 1 },
  youngGPa: { label: "stiffness (Young's modulus)", unit: "GPa", scale: 1 },
  ruptureMPa: { label: "strength in bending", unit: "MPa", scale: 1 },
  quartzFraction: { label: "free quartz, by volume", unit: "%", scale: 100 },
  cristobaliteFraction: { label: "cristobalite, by volume", unit: "%", scale: 100 },
  matrixExpansionPerK: { label: "expansion of the rest", unit: "×10⁻⁶/K", scale: 1e6 },
};

const GLAZED = {
  none: null,
  one: "glazed on one side (noted, not computed)",
  both: "glazed on both sides (noted, not computed)",
} as const;

const PROPORTION =
  "Where a number of yours was given without low and high, its range is in proportion to that of the body it started from.";

/**
 * What the stress was computed with: each piece's shape and what was assumed of it, then each body
 * once with all its numbers, their ranges and their sources; nothing when no body is named.
 *
 * @param context `ownIn`: where numbers of one's own are written, `the firing record under ware, body`.
 */
export function bodyBlocks(pieces: readonly ShownPiece[], context: BodyContext): readonly Block[] {
  if (pieces.length === 0) return [];
  const bodies = distinctBodies(pieces.map(({ ware }) => ware));
  return section("What the ware was taken to be", [
    { kind: "list", items: pieces.map(pieceText) },
    ...bodies.flatMap((body): readonly Block[] => [
      bodyTable(body),
      ...weakSentences(body).map((text) => ({ kind: "sentence", text }) as const),
    ]),
    ...(bodies.some(hasOwn) ? [{ kind: "sentence", text: PROPORTION } as const] : []),
    {
      kind: "sentence",
      text: `Each range is the middle 80 % (10 to 90 %) of what such bodies may be; how uncertain the computed stress is rests on these ranges. Every number may be replaced, with a source of your own, in ${context.ownIn}. Heat capacity is that at ${printTemperature(573, context.unit)}.`,
    },
  ]);
}

function pieceText({ name, ware, assumed }: ShownPiece): string {
  const { geometry, body } = ware;
  const said = `${capitalised(name)}: ${body.name}, ${geometryText(geometry)}`;
  return [said, ...assumed].map((each) => capitalised(stopped(each))).join(" ");
}

function geometryText(geometry: WareGeometry): string {
  return [
    `wall ${length(geometry.wallMm)}`,
    `base ${length(geometry.baseMm)}`,
    `${length(geometry.footprintRadiusMm * 2)} wide`,
    `shelf ${length(geometry.shelfMm)}`,
    `${length(geometry.footGapMm)} of air under the foot`,
    GLAZED[geometry.glazedSides],
  ]
    .filter((part) => part !== null)
    .join(", ");
}

function bodyTable(body: Body): Block {
  return {
    kind: "table",
    caption: `The numbers of ${body.name}`,
    columns: [
      { head: "property", align: "left" },
      { head: "value", align: "right" },
      { head: "from … to", align: "left" },
      { head: "source", align: "left" },
    ],
    rows: BODY_PROPERTIES.map((name) => propertyRow(SHOWN[name], body[name])),
  };
}

function propertyRow(
  { label, unit, scale }: Shown,
  { value, low, high, source }: Property,
): readonly Cell[] {
  const range = low === high ? "exact" : `${printed(low * scale)} to ${printed(high * scale)}`;
  return [label, `${printed(value * scale)} ${unit}`, range, source];
}

/** Which numbers of a body nobody measured, and which were not read again. */
function weakSentences(body: Body): readonly string[] {
  const labels = (weak: (source: string) => boolean) =>
    BODY_PROPERTIES.filter((name) => weak(body[name].source)).map((name) => SHOWN[name].label);
  const remembered = labels((source) => source.includes(FROM_MEMORY));
  const guessed = labels((source) => source === OWN_ESTIMATE);
  return [
    ...(remembered.length === 0
      ? []
      : [`From memory, whole or in part, and not read again: ${remembered.join("; ")}.`]),
    ...(guessed.length === 0 ? [] : [`Our own estimate: ${guessed.join("; ")}.`]),
  ];
}

function hasOwn(body: Body): boolean {
  return BODY_PROPERTIES.some((name) => body[name].source === YOURS);
}

function length(mm: number): string {
  return printMm(mm);
}

function printed(value: number): string {
  return String(Number(value.toPrecision(4)));
}
