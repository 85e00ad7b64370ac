import { bodyNamed } from "../../ware/bodies.ts";
import type { Body } from "../../ware/Ware.ts";
import type { FiringRecord, RecordedWare } from "../FiringRecord.ts";

/** The ware as the drafting command is told of it; null where nothing is said. */
export interface NextWare {
  readonly body: Body | null;
  /** Names of the bodies of one's own, which no word of the command line can say. */
  readonly ownBodies: readonly string[];
  readonly wallMm: number | null;
  readonly baseMm: number | null;
  readonly widestMm: number | null;
  readonly damp: boolean;
}

const NOTHING: NextWare = {
  body: null,
  ownBodies: [],
  wallMm: null,
  baseMm: null,
  widestMm: null,
  damp: false,
};

/**
 * The thickest ware of a record in the words of the command line. One piece of unknown thickness
 * leaves the thickness unsaid, as it does for the limits; a body that is not of the list is left out
 * and named.
 */
export function nextWare(record: FiringRecord | null): NextWare {
  const ware = record?.ware ?? [];
  if (ware.length === 0) return NOTHING;
  const bodied = ware.filter(({ body }) => body !== null && isListed(body));
  const among = bodied.length > 0 ? bodied : ware;
  const worst = among.toSorted((a, b) => thickness(b) - thickness(a))[0] as RecordedWare;
  const sized = bodied.length > 0 || ware.every((piece) => thickness(piece) > 0);
  const widths = among.flatMap(({ widestMm }) => widestMm ?? []);
  return {
    body: bodied.length > 0 ? worst.body : null,
    ownBodies: [
      ...new Set(ware.flatMap(({ body }) => (body === null || isListed(body) ? [] : [body.name]))),
    ],
    wallMm: sized ? (worst.wallMm ?? worst.thickestMm) : null,
    baseMm: sized ? (worst.baseMm ?? worst.thickestMm) : null,
    widestMm: widths.length === 0 ? null : Math.max(...widths),
    damp: ware.some(({ state }) => state === "damp"),
  };
}

function thickness({ wallMm, baseMm, thickestMm }: RecordedWare): number {
  return Math.max(wallMm ?? 0, baseMm ?? 0, thickestMm ?? 0);
}

function isListed(body: Body): boolean {
  const named = bodyNamed(body.name, "");
  return named.ok && JSON.stringify(named.value) === JSON.stringify(body);
}
