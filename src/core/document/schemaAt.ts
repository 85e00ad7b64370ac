import type { z } from "zod";

/** What is read of a zod schema, whichever kind it is. */
interface SchemaPart {
  readonly description?: string | undefined;
  readonly def: {
    readonly innerType?: unknown;
    readonly element?: unknown;
    /** Of a choice. */
    readonly options?: readonly unknown[];
    readonly shape?: Readonly<Record<string, unknown>>;
  };
}

/** What a schema says of one place in a document. */
export interface SchemaPlace {
  /** Keys that may stand there; empty when it is no group of keys. */
  readonly keys: readonly string[];
  /** The schema's own description of the place. */
  readonly description: string | null;
}

/** What a schema of groups, lists and choices says of the place at a path; null when it knows none there. */
export function schemaAt(schema: z.ZodType, path: readonly PropertyKey[]): SchemaPlace | null {
  let layers = layersOf(schema);
  for (const step of path) {
    const [next] = choicesOf(layers).flatMap(({ def }) => {
      const part = typeof step === "number" ? def.element : ownPart(def.shape, String(step));
      return part === undefined ? [] : [part];
    });
    if (next === undefined) return null;
    layers = layersOf(next);
  }
  return {
    keys: choicesOf(layers).flatMap(({ def }) => Object.keys(def.shape ?? {})),
    description: layers.find((layer) => layer.description !== undefined)?.description ?? null,
  };
}

/** What may be written there: the innermost schema, or each of those to choose from. */
function choicesOf(layers: readonly SchemaPart[]): readonly SchemaPart[] {
  const inner = layers.at(-1) as SchemaPart;
  return inner.def.options?.flatMap((option) => choicesOf(layersOf(option))) ?? [inner];
}

function ownPart(shape: SchemaPart["def"]["shape"], key: string): unknown {
  return shape !== undefined && Object.hasOwn(shape, key) ? shape[key] : undefined;
}

/** A schema and what it wraps (optional, default), from the outside in. */
function layersOf(schema: unknown): readonly SchemaPart[] {
  const layers = [schema as SchemaPart];
  for (let inner = layers[0]?.def.innerType; inner !== undefined; ) {
    layers.push(inner as SchemaPart);
    inner = (inner as SchemaPart).def.innerType;
  }
  return layers;
}
