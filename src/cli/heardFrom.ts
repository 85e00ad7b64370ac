import { MOMENT_FORMS, parseMoment } from "../core/firing/moment.ts";
import { type SoundSaid, soundSaid } from "../core/firing/soundSaid.ts";
import { failed, ok, type Problem, type Result } from "../core/problem.ts";

/** What was heard, from `--heard "a crack 14:05" +11:30`; a `command/heard` for each without a time. */
export function heardFrom(given: readonly string[]): Result<readonly SoundSaid[]> {
  const sounds = given.map(soundSaid);
  const understood = sounds.filter((sound) => sound !== null);
  if (understood.length === given.length) return ok(understood);
  const together = given.join(" ");
  if (given.length > 1 && soundSaid(together) !== null && understood.length < 2)
    return failed({
      ...problem(together, `"${given.find((_, i) => sounds[i] === null)}" has no time`),
      fix: `put what was heard in quotes, together with its time: --heard "${together}"`,
    });
  return failed(...given.filter((_, i) => sounds[i] === null).map((text) => timeless(text)));
}

/** The end of a line that looks like a moment. */
const LIKE_A_MOMENT = /(?:\+\s*)?\d[\d:.T -]*(?:\s*[ap]\.?m\.?|h)?$/i;

function timeless(text: string): Problem {
  const misread = LIKE_A_MOMENT.exec(text)?.[0];
  if (misread === undefined)
    return problem(text, `"${text}" has no time, so it cannot be placed in the log`);
  if (parseMoment(misread) !== null)
    return {
      ...problem("", `"${text}" names more than one time`),
      fix: 'one pair of quotes for each sound: --heard "a crack 14:05" "a crack 15:10"',
    };
  const words = text.slice(0, -misread.length);
  return problem(words, `"${misread}" is not a moment that can be read`);
}

function problem(words: string, what: string): Problem {
  const before = words.trim() === "" ? "" : `${words.trim()} `;
  return {
    code: "command/heard",
    where: "--heard",
    what,
    expected: `words, then when it was heard: ${MOMENT_FORMS}`,
    fix: `--heard "${before}14:05", with a 24-hour clock`,
  };
}
