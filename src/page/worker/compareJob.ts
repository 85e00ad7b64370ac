import type { TopLevelSpec } from "vega-lite";
import { compareAnswer } from "../../core/answers/compareAnswer.ts";
import { type ChartStyle, comparisonChart, studyCharts } from "../../core/charts/chartsOf.ts";
import { firedGlaze } from "../../core/glaze/firedGlaze.ts";
import type { Glaze } from "../../core/glaze/Glaze.ts";
import { parseGlaze } from "../../core/glaze/glazeFile.ts";
import { ok, type Result } from "../../core/problem.ts";
import type { Block } from "../../core/reports/Block.ts";
import { comparisonBlocks, comparisonTitle } from "../../core/reports/comparisonBlocks.ts";
import { comparisonDocument } from "../../core/reports/documents/comparisonDocument.ts";
import type { Alignment } from "../../core/review/alignment.ts";
import {
  type Comparison,
  type ComparisonPart,
  compareParts,
} from "../../core/review/compareFirings.ts";
import { scheduleYaml } from "../../core/schedule/scheduleFile.ts";
import type { FiringStudy } from "../../core/trials/FiringStudy.ts";
import type { PlannedFiring } from "../../core/trials/NextTest.ts";
import { nextSchedule } from "../../core/trials/nextTestOf.ts";
import { studyFirings } from "../../core/trials/studyFirings.ts";
import { type NamedWare, nameKey } from "../../core/trials/tileFits.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import { parseBody } from "../../core/ware/ownBody.ts";
import type { Body } from "../../core/ware/Ware.ts";
import type { KeptFile } from "../parts/KeptFile.ts";
import { type CompareAnswer, type KilnAsked, knownKiln, type NamedCharts } from "./answers.ts";
import { textOf } from "./readGroup.ts";

/** Firings that were read, in order, their study, and how they are laid beside each other. */
interface CompareAsked {
  readonly parts: readonly ComparisonPart[];
  readonly study: FiringStudy;
  /** Some record names trial tiles, so that one firing is enough. */
  readonly hasTrials: boolean;
  readonly alignment: Alignment;
  /** Place of the firing that the others are held against. */
  readonly base: number;
  readonly unit: TemperatureUnit;
  readonly dark: boolean;
}

interface Compared {
  readonly comparison: Comparison;
  readonly study: FiringStudy;
}

/** Compares firings that were read and studied, as the command does. */
export function compareJob(asked: CompareAsked): Result<CompareAnswer> {
  const { parts, study, hasTrials, alignment, base } = asked;
  const comparison = compareParts(parts, hasTrials ? 1 : 2);
  if (!comparison.ok) return comparison;
  const compared = { comparison: comparison.value, study };
  const makers = chartMakers(compared, alignment);
  const next = nextSchedule(study);
  return ok({
    title: comparisonTitle(comparison.value),
    screen: { C: screenIn("C", { asked, compared }), F: screenIn("F", { asked, compared }) },
    blocks: {
      C: blocksIn("C", { asked, compared, makers }),
      F: blocksIn("F", { asked, compared, makers }),
    },
    charts: chartsIn(makers, asked),
    json: JSON.stringify(comparisonDocument(comparison.value, { study, alignment, base }), null, 2),
    nextSchedule: next.ok ? scheduleYaml(next.value) : null,
    tiles: study.tiles.tiles.length,
  });
}

type Maker = (style: ChartStyle) => TopLevelSpec;

/** Charts of spacing have the name of their glaze after this. */
const SPACING = "spacing: ";

function chartMakers(
  { comparison, study }: Compared,
  alignment: Alignment,
): ReadonlyMap<string, Maker> {
  const { firings, causes, fits, spacing } = studyCharts(comparison, study);
  const overlay = comparisonChart(comparison, alignment);
  return new Map<string, Maker>([
    ...(overlay === null ? [] : [["overlay", overlay] as const]),
    ["firings", firings],
    ...(causes === null ? [] : [["causes", causes] as const]),
    ...(fits === null ? [] : [["fits", fits] as const]),
    ...spacing.map(({ glaze, chart }) => [`${SPACING}${glaze}`, chart] as const),
  ]);
}

function chartsIn(makers: ReadonlyMap<string, Maker>, { unit, dark }: CompareAsked): NamedCharts {
  const texts = (isDark: boolean) =>
    Object.fromEntries(
      [...makers].map(([name, make]) => [name, JSON.stringify(make({ unit, dark: isDark }))]),
    );
  return { unit, light: texts(false), dark: dark ? texts(true) : null };
}

function screenIn(
  unit: TemperatureUnit,
  { asked, compared }: { readonly asked: CompareAsked; readonly compared: Compared },
): readonly Block[] {
  const { alignment, base } = asked;
  const shown = { unit, study: compared.study, alignment, base, hasCommands: false };
  return compareAnswer(compared.comparison, shown).screen;
}

function blocksIn(
  unit: TemperatureUnit,
  {
    asked,
    compared,
    makers,
  }: {
    readonly asked: CompareAsked;
    readonly compared: Compared;
    readonly makers: ReadonlyMap<string, Maker>;
  },
): readonly Block[] {
  const pairs = Object.fromEntries(
    [...makers.keys()].map((name) => [name, { light: name, dark: name }]),
  );
  const ofGlazes = Object.entries(pairs).filter(([name]) => name.startsWith(SPACING));
  return comparisonBlocks(compared.comparison, {
    unit,
    study: compared.study,
    alignment: asked.alignment,
    base: asked.base,
    hasCommands: false,
    charts: {
      ...pairs,
      spacing: Object.fromEntries(
        ofGlazes.map(([name, pair]) => [name.slice(SPACING.length), pair]),
      ),
    },
  });
}

/** What a study is made of. */
interface StudyAsked {
  readonly planned: readonly PlannedFiring[];
  /** Files of glazes and bodies. */
  readonly ware: readonly KeptFile[];
  /** The kiln that the next test goes into; null for the one that is assumed. */
  readonly kiln: KilnAsked | null;
}

/** A study of firings and their tiles, and which file stands for which glaze and clay. */
export interface StudyAnswer {
  readonly study: FiringStudy;
  /** Names of glazes and clays by the name of the file. */
  readonly uses: Readonly<Record<string, readonly string[]>>;
}

/** Studies firings that were read and their tiles, as the command does. */
export function studyJob({ planned, ware, kiln }: StudyAsked): Result<StudyAnswer> {
  const { named, uses } = wareOnBench(planned, ware);
  const known = kiln === null ? null : knownKiln(kiln);
  const study = studyFirings(planned, {
    named,
    ...(known?.kiln && { known: { kiln: known.kiln, offsetK: known.offsetK } }),
  });
  return ok({ study, uses });
}

/** Glazes and bodies of the tiles, and which files they are of. */
interface WareOnBench {
  readonly named: NamedWare;
  /** Names of the glazes and clays that a file stands for, by the name of the file. */
  readonly uses: Readonly<Record<string, readonly string[]>>;
}

/**
 * The files of the glazes and clays that the tiles of some firings name: a glaze by its title or
 * by being called glaze-NAME.yaml or NAME.yaml, a body by being called body-NAME.yaml or NAME.yaml
 * or by its name. Of two files that are as near, the one laid down last counts.
 */
function wareOnBench(firings: readonly PlannedFiring[], files: readonly KeptFile[]): WareOnBench {
  const trials = firings.flatMap(({ record }) => record?.trials ?? []);
  const glazes = readAs("glaze", files, glazeOfFile);
  const bodies = readAs("body", files, bodyOfFile);
  const uses: Record<string, string[]> = {};
  const found = <T>(names: readonly string[], fileFor: (key: string) => Read<T> | undefined) =>
    new Map(
      [...new Map(names.map((name) => [nameKey(name), name]))].flatMap(([key, name]) => {
        const read = fileFor(key);
        if (read === undefined) return [];
        uses[read.name] = [...(uses[read.name] ?? []), name];
        return [[key, read.ware] as const];
      }),
    );
  const clays = trials.flatMap(({ clay, body }) => (body === null ? [clay] : []));
  return {
    named: {
      glazes: found(
        trials.map(({ glaze }) => glaze),
        (key) => ownNamed(glazes, key) ?? fileNamed(glazes, "glaze", key),
      ),
      bodies: found(clays, (key) => fileNamed(bodies, "body", key) ?? ownNamed(bodies, key)),
    },
    uses,
  };
}

interface Read<T> {
  /** Of the file. */
  readonly name: string;
  /** Name of the file and the one inside it, each through {@link nameKey}. */
  readonly fileKey: string;
  readonly ownKey: string;
  readonly ware: T;
}

/** Files of a kind that can be read; those that cannot were not laid down. */
function readAs<T extends { readonly name: string }>(
  kind: WareKind,
  files: readonly KeptFile[],
  read: (file: KeptFile) => Result<T>,
): readonly Read<T>[] {
  return files.flatMap((file): readonly Read<T>[] => {
    const ware = wareKind(file) === kind ? read(file) : null;
    if (!ware?.ok) return [];
    const fileKey = nameKey(file.name.replace(/\.[^.]+$/, ""));
    return [{ name: file.name, fileKey, ownKey: nameKey(ware.value.name), ware: ware.value }];
  });
}

function ownNamed<T>(reads: readonly Read<T>[], key: string): Read<T> | undefined {
  return reads.findLast(({ ownKey }) => ownKey === key);
}

function fileNamed<T>(reads: readonly Read<T>[], kind: WareKind, key: string) {
  const named = (wanted: string) => reads.findLast(({ fileKey }) => fileKey === wanted);
  return named(`${kind}-${key}`) ?? named(key);
}

/** What a file of ware tells of. */
export type WareKind = "glaze" | "body";

/** What a file looks to tell of, by the keys that only such files have; null for neither. */
export function wareKind(file: KeptFile): WareKind | null {
  const text = textOf(file);
  if (!text.ok) return null;
  const has = (keys: string) => new RegExp(`^[{,]?\\s*"?(?:${keys})"?\\s*:`, "m").test(text.value);
  if (has("recipe|oxides")) return "glaze";
  return has("base|youngGPa|ruptureMPa|quartzFraction|matrixExpansionPerK") ? "body" : null;
}

/** The fired glaze of a file. */
export function glazeOfFile(file: KeptFile): Result<Glaze> {
  const text = textOf(file);
  if (!text.ok) return text;
  const parsed = parseGlaze(text.value, file.name);
  if (!parsed.ok) return parsed;
  const fired = firedGlaze(parsed.value, file.name);
  return fired.ok ? { ok: true, value: fired.value.glaze } : fired;
}

/** The clay body of a file. */
export function bodyOfFile(file: KeptFile): Result<Body> {
  const text = textOf(file);
  return text.ok ? parseBody(text.value, file.name) : text;
}
