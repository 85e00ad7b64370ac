import { failed, ok, type Result } from "../problem.ts";
import { type Block, type Paint, plainPaint } from "../reports/Block.ts";
import { blockText, REPORT_WIDTH } from "../reports/reportText.ts";
import { inert } from "../text/escape.ts";
import { nearWord } from "../text/nearWord.ts";
import { visibleWidth, wrap } from "../text/wrap.ts";

/** A part of an answer that is shown to those who ask for it by name. */
export interface Room {
  /** One word, as it is asked for: `cooling`. */
  readonly name: string;
  readonly blocks: readonly Block[];
}

/**
 * The answer to one question. The screen says what happened, what it means, what to do and the few
 * numbers behind it; all the rest is in rooms. Both are made of the same blocks, for every shell.
 */
export interface Answer {
  readonly title: string;
  /** When it was or will be: stands at the end of the title's line; null where no clock is known. */
  readonly when: string | null;
  readonly screen: readonly Block[];
  readonly rooms: readonly Room[];
}

/** An answer whose rooms are made when somebody asks for them: a page shows many screens and few rooms. */
export function answerWith(shown: Omit<Answer, "rooms">, make: () => readonly Room[]): Answer {
  let rooms: readonly Room[] | null = null;
  return {
    ...shown,
    get rooms() {
      rooms ??= make();
      return rooms;
    },
  };
}

/** A piece of a screen. What matters least is left out first, where not all of it fits. */
export interface ScreenPart {
  /** Left out first where it is greatest; 0 is never left out. */
  readonly rank: number;
  readonly blocks: readonly Block[];
}

/** Lines of a screen, its title and the line that names the rooms among them. */
export const SCREEN_LINES = 30;
/** Lines that title, room list and the empty lines beside them take. */
const AROUND = 4;

/** The parts that fit on one screen, in their order: what matters most is given room first. */
export function screenOf(parts: readonly ScreenPart[], lines = SCREEN_LINES): readonly Block[] {
  const kept = new Set<ScreenPart>();
  for (const part of parts.toSorted((a, b) => a.rank - b.rank)) {
    const wanted = parts.filter((each) => kept.has(each) || each === part);
    if (part.rank === 0 || lengthOf(wanted) <= lines - AROUND) kept.add(part);
  }
  return parts.filter((part) => kept.has(part)).flatMap(({ blocks }) => blocks);
}

function lengthOf(parts: readonly ScreenPart[]): number {
  return blockText(
    parts.flatMap(({ blocks }) => blocks),
    plainPaint,
  ).length;
}

/** Asks for every room, and the screen before them. */
const ALL = "all";

/**
 * The rooms that are asked for, by name: `cracks,cooling`, `all`.
 * @param asked As given, several in one text or one each; null asks for none.
 * @returns `answer/room` for a name that this answer has not.
 */
export function askedRooms(
  answer: Answer,
  asked: readonly string[] | null,
): Result<readonly Room[] | null> {
  if (asked === null) return ok(null);
  const names = asked.flatMap((text) => text.split(/[\s,]+/)).filter((name) => name !== "");
  const known = [...answer.rooms.map(({ name }) => name), ALL];
  const unknown = names.filter((name) => !known.includes(name));
  if (unknown.length > 0 || names.length === 0)
    return failed(
      ...(unknown.length === 0 ? [""] : unknown).map((name) => {
        const near = nearWord(name, known);
        return {
          code: "answer/room",
          where: "the parts that are asked for",
          what: name === "" ? "no part is named" : `there is no part "${name}" here`,
          expected: `one or more of ${known.join(", ")}`,
          fix: near === null ? "name one of them, or all" : `write ${near}`,
        } as const;
      }),
    );
  if (names.includes(ALL)) return ok(answer.rooms);
  return ok(answer.rooms.filter(({ name }) => names.includes(name)));
}

/** How an answer is shown as text. */
export interface AnswerShown {
  readonly paint: Paint;
  /** Says how the parts with these names are asked for. */
  readonly more: (names: string) => string;
}

/**
 * An answer as lines for a terminal, at most 80 columns: the screen, or the rooms that were asked for,
 * with the screen before them where all were.
 */
export function answerText(
  answer: Answer,
  rooms: readonly Room[] | null,
  { paint, more }: AnswerShown,
): string {
  const alarms = answer.screen.filter(({ kind }) => kind === "alarm");
  const screen = answer.screen.filter(({ kind }) => kind !== "alarm");
  const isWhole = rooms === null || rooms === answer.rooms;
  const held = (rooms ?? []).flatMap(({ blocks }) => blocks);
  const lines = [
    ...alarms.flatMap((block) => [...blockText([block], paint), ""]),
    ...titleLines(answer, paint),
    ...(isWhole ? blockText(screen, paint) : []),
    ...(rooms === null ? ["", ...moreLines(answer, { paint, more })] : []),
    ...(rooms === null ? [] : [...(isWhole ? [""] : []), ...blockText(held, paint)]),
  ];
  return `${lines.join("\n")}\n`;
}

function titleLines({ title, when }: Answer, paint: Paint): readonly string[] {
  const lines = wrap(inert(title), { width: REPORT_WIDTH });
  const painted = lines.map((line) => paint("heading", line));
  if (when === null) return painted;
  const last = lines.at(-1)!;
  const gap = REPORT_WIDTH - visibleWidth(last) - visibleWidth(when);
  if (gap < 2) return [...painted, paint("faint", when)];
  return [...painted.slice(0, -1), `${painted.at(-1)}${" ".repeat(gap)}${paint("faint", when)}`];
}

function moreLines({ rooms }: Answer, { paint, more }: AnswerShown): readonly string[] {
  const names = [...rooms.map(({ name }) => name), ALL].join(", ");
  const lines = wrap(more(names), { width: REPORT_WIDTH, rest: "  " });
  return lines.map((line) => paint("faint", line));
}
