import type { z } from "zod";

type Issue = z.core.$ZodIssue;

/**
 * Issues with those of a choice put in its place, where only one of the shapes to choose from is
 * of the kind that was written: then what is wrong inside it can be said where it stands.
 */
export function flatIssues(issues: readonly Issue[]): readonly Issue[] {
  return issues.flatMap((issue) => {
    if (issue.code !== "invalid_union") return [issue];
    const meant = issue.errors.filter((branch) => !branch.some(isOtherKind));
    const [only] = meant;
    if (only === undefined || meant.length > 1) return [issue];
    return flatIssues(only.map((inner) => ({ ...inner, path: [...issue.path, ...inner.path] })));
  });
}

function isOtherKind(issue: Issue): boolean {
  return issue.code === "invalid_type" && issue.path.length === 0;
}
