import {
  alongLine,
  correctedPhoto,
  crossingsUnder,
  type LineCrossing,
  linesUnder,
  type PhotoCorrections,
  type Stroke,
} from "../../core/photo/correctedPhoto.ts";
import type { Crossings } from "../../core/photo/crossings.ts";
import type { PhotoMeasurement } from "../../core/photo/PhotoMeasurement.ts";
import type { Result } from "../../core/problem.ts";
import { remembered } from "../parts/controls.ts";
import {
  EMPTY_PHOTO,
  type PhotoArea,
  type PhotoDesk,
  type PhotoWork,
  type ShownLines,
} from "../state/photoState.ts";
import type { Bench } from "../state/state.ts";

/** Changes the work on the photograph, as a step that can be undone. */
export function changePhoto(
  bench: Bench,
  what: string,
  change: Partial<PhotoWork>,
  options: { readonly merge?: string } = {},
): void {
  bench.change(what, (work) => ({ ...work, photo: { ...work.photo, ...change } }), options);
}

/** Changes what is measured and where; crossings corrected by hand lie on other lines then, and go. */
export function changePart(
  bench: Bench,
  { what, merge }: { readonly what: string; readonly merge?: string },
  change: Partial<PhotoWork>,
): void {
  const cleared = { takenAway: [], added: [] };
  changePhoto(bench, what, { ...cleared, ...change }, merge === undefined ? {} : { merge });
}

/** Lays another photograph down; nothing of the one before stays. */
export function layPhoto(bench: Bench, what: string, change: Partial<PhotoWork>): void {
  bench.change(what, (work) => ({ ...work, photo: { ...EMPTY_PHOTO.work, ...change } }));
}

/** Sets what is worked out beside the photograph. */
export function showPhoto(bench: Bench, change: Partial<PhotoDesk>): void {
  bench.show((state) => ({ ...state, photo: { ...state.photo, ...change } }));
}

type Measured = NonNullable<PhotoDesk["measured"]>;

/** The measurement with what was corrected by hand worked in. */
export const correctedOf = remembered(
  (
    { found, part }: Measured,
    takenAway: PhotoWork["takenAway"],
    added: PhotoWork["added"],
    leftOut: PhotoWork["leftOut"],
  ): Result<PhotoMeasurement> => {
    const corrections: PhotoCorrections = {
      takenAway,
      added,
      leftOut: leftOut.map((area) => inMask(area, { found, part })),
    };
    return correctedPhoto(found, corrections, part.input);
  },
);

function inMask({ x, y, width, height }: PhotoArea, { found, part }: Measured): PhotoArea {
  const { factor } = found.found;
  return {
    x: (x - part.area.x) / factor,
    y: (y - part.area.y) / factor,
    width: width / factor,
    height: height / factor,
  };
}

/** Whether a test line of this direction is shown. */
export function isShown(shown: ShownLines, { line }: Crossings): boolean {
  if (shown === "all") return true;
  return line.angleDeg % 90 === (shown === "straight" ? 0 : 45);
}

/** Takes away what a stroke lies over, or adds where it meets test lines [px of the picture]. */
export function strokeDone(bench: Bench, tool: "take" | "add", reachPx: number): void {
  const { photo, work } = bench.state();
  if (photo.measured === null || photo.stroke === null) return;
  const { found } = photo.measured.found;
  const stroke = strokeInMask(photo.stroke, photo.measured);
  const lookUp = {
    stroke,
    reach: reachPx / found.factor,
    isMeant: (line: Crossings) => isShown(photo.shown, line),
  };
  const now = correctedOf(photo.measured, work.photo.takenAway, work.photo.added, NONE);
  const counted = now.ok ? now.value.found.counted : found.counted;
  if (tool === "take") takeAway(bench, crossingsUnder(counted, lookUp));
  else addCrossings(bench, linesUnder(counted, lookUp));
}

/** No area; the same list each time, so that what is worked out from it is remembered. */
const NONE: PhotoWork["leftOut"] = [];

function strokeInMask({ from, to }: Stroke, { found, part }: Measured): Stroke {
  const { factor } = found.found;
  const place = ({ x, y }: Stroke["from"]) => ({
    x: (x - part.area.x) / factor,
    y: (y - part.area.y) / factor,
  });
  return { from: place(from), to: place(to) };
}

/** Takes crossings away; one that was added by hand is only not added. */
export function takeAway(bench: Bench, crossings: readonly LineCrossing[]): void {
  if (crossings.length === 0) return;
  const { takenAway, added } = bench.state().work.photo;
  const isAmong = (list: readonly LineCrossing[], one: LineCrossing) =>
    list.some((each) => isSame(each, one));
  changePhoto(bench, `taking away ${counted(crossings.length)}`, {
    added: added.filter((each) => !isAmong(crossings, each)),
    takenAway: [...takenAway, ...crossings.filter((each) => !isAmong(added, each))],
  });
  say(bench, `${counted(crossings.length)} taken away.`);
}

/** Adds crossings; one that was taken away before comes back. */
export function addCrossings(bench: Bench, crossings: readonly LineCrossing[]): void {
  if (crossings.length === 0) return;
  const { added } = bench.state().work.photo;
  changePhoto(bench, `adding ${counted(crossings.length)}`, { added: [...added, ...crossings] });
  say(bench, `${counted(crossings.length)} added.`);
}

/** Puts a crossing back that was taken away. */
export function putBack(bench: Bench, crossing: LineCrossing): void {
  const { takenAway } = bench.state().work.photo;
  changePhoto(bench, "putting a crossing back", {
    takenAway: takenAway.filter((each) => !isSame(each, crossing)),
  });
  say(bench, "The crossing is back.");
}

/** Leaves an area out of the count [px of the picture]. */
export function leaveOut(bench: Bench, area: PhotoArea): void {
  const { leftOut } = bench.state().work.photo;
  changePhoto(bench, "leaving an area out", { leftOut: [...leftOut, area] });
  say(bench, "The area is left out.");
}

/** Brings back what was found. */
export function resetCount(bench: Bench): void {
  changePhoto(bench, "bringing back what was found", { takenAway: [], added: [], leftOut: [] });
  say(bench, "The count is as it was found.");
}

function say(bench: Bench, said: string): void {
  bench.show((state) => ({ ...state, said }));
}

function counted(count: number): string {
  return `${count} crossing${count === 1 ? "" : "s"}`;
}

function isSame(a: LineCrossing, b: LineCrossing): boolean {
  return a.line === b.line && Math.abs(a.along - b.along) < 1e-6;
}

/** A crossing of a line, where it lies along it, and what became of it. */
export interface ListedCrossing extends LineCrossing {
  readonly is: "found" | "added" | "taken away";
}

/** All crossings of a line in their order: found, added, taken away. */
export function crossingsOn(
  counted: readonly Crossings[],
  line: number,
  work: PhotoWork,
): readonly ListedCrossing[] {
  const on = (list: readonly LineCrossing[]) => list.filter((each) => each.line === line);
  const [away, more] = [on(work.takenAway), on(work.added)];
  const each = counted[line];
  const found = each === undefined ? [] : alongLine(each);
  return [
    ...found.map((along): ListedCrossing => {
      const isAway = away.some((other) => Math.abs(other.along - along) < 0.5);
      return { line, along, is: isAway ? "taken away" : "found" };
    }),
    ...more.map(({ along }): ListedCrossing => ({ line, along, is: "added" })),
  ].sort((a, b) => a.along - b.along);
}
