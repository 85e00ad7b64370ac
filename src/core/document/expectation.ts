import type { z } from "zod";

type Issue = z.core.$ZodIssue;

const TYPES: ReadonlyMap<string, string> = new Map([
  ["string", "text"],
  ["number", "a number"],
  ["int", "a whole number"],
  ["boolean", "true or false"],
  ["array", "a list, one line each beginning with -"],
  ["object", "a group of lines, each a key and its value"],
]);

/** What a schema wanted where it found something else, in plain words: `C or F`, `a number`. */
export function expectation(issue: Issue): string {
  switch (issue.code) {
    case "invalid_type":
      return TYPES.get(issue.expected) ?? issue.expected;
    case "invalid_value":
      return listed(issue.values.map(String));
    case "invalid_union":
      return [...new Set(issue.errors.flat().map(expectation))].join(" or ");
    case "too_small":
      return sizeText(issue.inclusive === false ? "more than" : "at least", issue.minimum, issue);
    case "too_big":
      return sizeText(issue.inclusive === false ? "less than" : "at most", issue.maximum, issue);
    default:
      return issue.message;
  }
}

/** Words as a list to choose from: `none, crackle or through`. */
export function listed(words: readonly string[]): string {
  return words.join(", ").replace(/, ([^,]+)$/, " or $1");
}

function sizeText(bound: string, limit: number | bigint, issue: { readonly origin: string }) {
  if (issue.origin === "string" && limit === 1) return "text that is not empty";
  if (issue.origin === "string") return `text of ${bound} ${limit} characters`;
  if (issue.origin === "array") return `a list of ${bound} ${limit}`;
  return `a number, ${bound} ${limit}`;
}
