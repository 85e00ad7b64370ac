import type { z } from "zod";

/** What is read of a zod schema, whichever kind it is. */
interface SchemaPart {
  readonly description?: string | undefined;
  readonly def: {
    readonly innerType?: unknown;
    readonly element?: unknown;
    /** What stands under every key of a record. */
    readonly valueType?: unknown;
    /** Of a union. */
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

/**
 * What a schema of groups, records, lists and unions says of the place at a path; null when it
 * knows none there. Where a union offers several, the keys are those of all, the description the
 * first.
 */
export function schemaAt(schema: z.ZodType, path: readonly PropertyKey[]): SchemaPlace | null {
  let places = choicesOf(schema);
  for (const step of path) {
    places = places.flatMap((layers) => {
      const next = stepInto(layers, step);
      return next === undefined ? [] : choicesOf(next);
    });
    if (places.length === 0) return null;
  }
  const parts = places.flat();
  return {
    keys: [...new Set(parts.flatMap((part) => Object.keys(part.def.shape ?? {})))],
    description: parts.find((part) => part.description !== undefined)?.description ?? null,
  };
}

function stepInto(layers: readonly SchemaPart[], step: PropertyKey): unknown {
  const { def } = layers.at(-1) as SchemaPart;
  if (typeof step === "number") return def.element;
  return ownPart(def.shape, String(step)) ?? def.valueType;
}

function ownPart(shape: SchemaPart["def"]["shape"], key: string): unknown {
  return shape !== undefined && Object.hasOwn(shape, key) ? shape[key] : undefined;
}

/** A schema and what it wraps (optional, default), from the outside in; of a union each option. */
function choicesOf(schema: unknown): readonly (readonly SchemaPart[])[] {
  const layers = [schema as SchemaPart];
  for (let inner = layers[0]?.def.innerType; inner !== undefined; ) {
    layers.push(inner as SchemaPart);
    inner = (inner as SchemaPart).def.innerType;
  }
  const options = layers.at(-1)?.def.options;
  if (options === undefined) return [layers];
  return options.flatMap((option) => choicesOf(option).map((inside) => [...layers, ...inside]));
}
