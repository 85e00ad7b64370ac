import type { Problem } from "../core/problem.ts";
/** An error of the operating system as a problem that a person can fix. */
export declare function systemProblem(
  error: unknown,
  path: string,
  doing: "read" | "write",
): Problem;
