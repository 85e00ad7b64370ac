import { ok, type Result } from "../../core/problem.ts";
import type { FiringStudy } from "../../core/trials/FiringStudy.ts";
import type { PlannedFiring } from "../../core/trials/PlannedFiring.ts";
import { studyFirings } from "../../core/trials/studyFirings.ts";
import type { KeptFile } from "../bench/KeptFile.ts";
import { type KilnAsked, knownKiln } from "./KilnAsked.ts";
import { wareOnBench } from "./wareOnBench.ts";

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
