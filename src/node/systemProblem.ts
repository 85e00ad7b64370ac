import type { Problem } from "../core/problem.ts";

/** An error of the operating system as a problem that a person can fix. */
export function systemProblem(error: unknown, path: string, doing: "read" | "write"): Problem {
  const code = error instanceof Error && "code" in error ? String(error.code) : "unknown";
  const known = KNOWN[code];
  if (known) return { code: `file/${known.code}`, where: path, ...known.say };
  return {
    code: `file/cannot-${doing}`,
    where: path,
    what: `the system says ${code}`,
    expected: `a file that can be ${doing === "read" ? "read" : "written"}`,
    fix: "try another place, or a copy of the file",
  };
}

const KNOWN: Readonly<
  Record<
    string,
    {
      readonly code: string;
      readonly say: Pick<Problem, "what" | "expected" | "fix">;
    }
  >
> = {
  ENOENT: {
    code: "missing",
    say: {
      what: "there is no such file",
      expected: "the name of a file that exists",
      fix: "check the spelling and the folder",
    },
  },
  EISDIR: {
    code: "folder",
    say: {
      what: "it is a folder",
      expected: "one file",
      fix: "name a file inside it",
    },
  },
  ENOTDIR: {
    code: "missing",
    say: {
      what: "a part of the path is a file, not a folder",
      expected: "the name of a file that exists",
      fix: "check the spelling and the folder",
    },
  },
  EACCES: {
    code: "forbidden",
    say: {
      what: "you may not open it",
      expected: "a file that you may open",
      fix: "change its permissions, or use a copy",
    },
  },
};
