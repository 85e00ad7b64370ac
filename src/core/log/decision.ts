import type { Decision, LogSaid } from "./LogReading.ts";

/** A decision; runner-up and option are null unless given. */
export function decision(
  about: string,
  choice: string,
  rest: {
    readonly confidence: Decision["confidence"];
    readonly because: string;
    readonly runnerUp?: string | null;
    readonly option?: string | null;
    readonly says?: LogSaid;
  },
): Decision {
  return {
    about,
    choice,
    confidence: rest.confidence,
    because: rest.because,
    runnerUp: rest.runnerUp ?? null,
    option: rest.option ?? null,
    ...(rest.says && { says: rest.says }),
  };
}
