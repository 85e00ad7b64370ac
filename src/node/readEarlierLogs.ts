import type { EarlierLog } from "../core/firing/FiringHistory.ts";
import { pastFiringOf } from "../core/firing/pastFiringOf.ts";
import { readFiring } from "./readFiring.ts";

/** Earlier logs of a kiln, each with the record beside it. One that cannot be read says why. */
export async function readEarlierLogs(paths: readonly string[]): Promise<readonly EarlierLog[]> {
  const logs: EarlierLog[] = [];
  for (const path of paths) {
    const files = await readFiring(path, { options: {}, recordPath: null, schedulePath: null });
    logs.push(
      files.ok
        ? pastFiringOf(path, files.value)
        : { name: path, broken: files.problems.map(({ what }) => what).join("; ") },
    );
  }
  return logs;
}
