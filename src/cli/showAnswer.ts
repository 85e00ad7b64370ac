import { type Answer, answerText, askedRooms } from "../core/answers/Answer.ts";
import { failed, ok, type Result } from "../core/problem.ts";
import type { Paint } from "../core/reports/Block.ts";

/** Options about how much of an answer is printed. */
export interface MoreOptions {
  /** Names of further parts, `cracks,cooling` or one each; `all` for everything. */
  readonly more?: readonly string[];
}

/** How further parts are asked for here. */
const MORE = (names: string) => `More by --more NAME: ${names}`;

/** The text of an answer: its screen, or the parts that `--more` names. */
export function textOfAnswer(answer: Answer, { more }: MoreOptions, paint: Paint): Result<string> {
  const rooms = askedRooms(answer, more ?? null);
  if (rooms.ok) return ok(answerText(answer, rooms.value, { paint, more: MORE }));
  return failed(...rooms.problems.map((problem) => ({ ...problem, where: "--more" })));
}
