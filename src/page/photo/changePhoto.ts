import type { Bench } from "../bench/store.ts";
import { EMPTY_PHOTO, type PhotoDesk, type PhotoWork } from "./photoState.ts";

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
