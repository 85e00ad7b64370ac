import type { Result } from "../../core/problem.ts";
import { nameKey } from "../../core/trials/nameKey.ts";
import type { PlannedFiring } from "../../core/trials/PlannedFiring.ts";
import type { NamedWare } from "../../core/trials/tileFits.ts";
import type { KeptFile } from "../bench/KeptFile.ts";
import { bodyOfFile, glazeOfFile, type WareKind, wareKind } from "./wareKind.ts";

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
export function wareOnBench(
  firings: readonly PlannedFiring[],
  files: readonly KeptFile[],
): WareOnBench {
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
