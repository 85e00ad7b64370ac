import { type Answer, answerText } from "../../src/core/answers/Answer.ts";
import { answerHtml } from "../../src/core/answers/answerHtml.ts";
import { compareAnswer } from "../../src/core/answers/compareAnswer.ts";
import { draftAnswer } from "../../src/core/answers/draftAnswer.ts";
import { reviewAnswer } from "../../src/core/answers/reviewAnswer.ts";
import { glazeAnswer, pingsAnswer } from "../../src/core/answers/sideAnswers.ts";
import type { Paint } from "../../src/core/reports/Block.ts";

/** An answer as text with every part of it. */
function whole(answer: Answer, { paint }: { readonly paint: Paint }): string {
  return answerText(answer, answer.rooms, { paint, more: (names) => names });
}

type With<Context> = Context & { readonly paint: Paint };
type Of<Make extends (subject: never, context: never) => Answer> = Parameters<Make>;

/** Each kind of answer as text, whole, and as a page. */
export const reviewText = (
  review: Of<typeof reviewAnswer>[0],
  options: With<Of<typeof reviewAnswer>[1]>,
) => whole(reviewAnswer(review, options), options);
export const reviewHtml = (...given: Of<typeof reviewAnswer>) => answerHtml(reviewAnswer(...given));
export const draftText = (
  draft: Of<typeof draftAnswer>[0],
  options: With<Of<typeof draftAnswer>[1]>,
) => whole(draftAnswer(draft, options), options);
export const draftHtml = (...given: Of<typeof draftAnswer>) => answerHtml(draftAnswer(...given));
export const comparisonText = (
  comparison: Of<typeof compareAnswer>[0],
  options: With<Of<typeof compareAnswer>[1]>,
) => whole(compareAnswer(comparison, options), options);
export const comparisonHtml = (...given: Of<typeof compareAnswer>) =>
  answerHtml(compareAnswer(...given));
export const glazeText = (
  works: Of<typeof glazeAnswer>[0],
  options: With<Of<typeof glazeAnswer>[1]>,
) => whole(glazeAnswer(works, options), options);
export const glazeHtml = (...given: Of<typeof glazeAnswer>) => answerHtml(glazeAnswer(...given));
export const pingsText = (
  review: Of<typeof pingsAnswer>[0],
  options: With<Of<typeof pingsAnswer>[1]>,
) => whole(pingsAnswer(review, options), options);
export const pingsHtml = (...given: Of<typeof pingsAnswer>) => answerHtml(pingsAnswer(...given));
