import { decodePhoto } from "../state/decodePhoto.ts";
import { measuredPart, type PhotoWork, photoInput } from "../state/photoState.ts";
import type { Bench, BenchState } from "../state/state.ts";
import { hire } from "../worker/hire.ts";
import { showPhoto } from "./changePhoto.ts";

const counter = hire();

/** How long scale and part have to rest before cracks are counted [ms]. */
const REST_MS = 400;

/** Reads the photograph when another is laid down, and counts anew when its scale or its part change. */
export function watchPhoto(bench: Bench): void {
  let timer = 0;
  bench.listen((before) => {
    const now = bench.state();
    if (before.work.photo.file !== now.work.photo.file) void open(bench);
    if (!isOther(before, now)) return;
    counter.stop();
    if (areOtherLines(before.work.photo, now.work.photo))
      showPhoto(bench, { measured: null, line: null, crossing: null, done: "" });
    clearTimeout(timer);
    timer = window.setTimeout(() => void countCracks(bench), REST_MS);
  });
}

/** Stops the count that is under way. */
export function stopCounting(bench: Bench): void {
  counter.stop();
  showPhoto(bench, { busy: null, isStopped: true });
}

/** What a count hangs on. */
const COUNTED_FROM: readonly (keyof PhotoWork)[] = [
  "file",
  "scaleBy",
  "ends",
  "distanceMm",
  "widthMm",
  "region",
  "pattern",
  "thresholdShare",
];

function isOther(before: BenchState, now: BenchState): boolean {
  return (
    before.photo.picture !== now.photo.picture ||
    COUNTED_FROM.some((key) => before.work.photo[key] !== now.work.photo[key])
  );
}

/** Another part, or other cracks in it: the test lines that were counted lie elsewhere now. */
function areOtherLines(was: PhotoWork, is: PhotoWork): boolean {
  return was.region !== is.region || was.thresholdShare !== is.thresholdShare;
}

async function open(bench: Bench): Promise<void> {
  const { file } = bench.state().work.photo;
  const cleared = { picture: null, measured: null, problems: [], line: null, crossing: null };
  showPhoto(bench, { ...cleared, tool: "points", zoom: 1, done: "", lens: null, busy: null });
  if (file === null) return;
  showPhoto(bench, { busy: { fraction: 0, at: `opening ${file.name}` } });
  const decoded = await decodePhoto(file);
  if (bench.state().work.photo.file !== file) return;
  showPhoto(bench, decoded.ok ? { picture: decoded.value, busy: null } : failedWith(decoded));
}

function failedWith({ problems }: { readonly problems: BenchState["problems"] }) {
  return { busy: null, measured: null, problems };
}

/** Counts the cracks as scale and part now are; an earlier count that still runs is ended. */
export async function countCracks(bench: Bench): Promise<void> {
  const { work, photo } = bench.state();
  counter.stop();
  if (photo.picture === null || photo.picture.file !== work.photo.file) return;
  const part = measuredPart(work.photo, photo.picture.picture);
  if (part === null || !part.ok) {
    showPhoto(bench, failedWith(part ?? { problems: [] }));
    return;
  }
  showPhoto(bench, { busy: { fraction: 0, at: "handing over the picture" }, isStopped: false });
  const input = photoInput(part.value, photo.picture.picture);
  const answer = await counter.run("photo", { input }, (fraction, at) =>
    showPhoto(bench, { busy: { fraction, at } }),
  );
  if (answer === null) return;
  const measured = answer.ok ? { found: answer.value, part: part.value } : null;
  showPhoto(bench, { busy: null, measured, problems: answer.ok ? [] : answer.problems });
  const said = answer.ok ? "The cracks are counted." : "The cracks cannot be counted as it is.";
  bench.show((state) => ({ ...state, said }));
}
