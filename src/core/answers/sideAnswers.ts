import type { GlazeWork } from "../glaze/glazeWork.ts";
import type { LearnedKiln } from "../kiln/LearnedKiln.ts";
import type { PhotoMeasurement } from "../photo/PhotoMeasurement.ts";
import type { PingReview } from "../pings/PingReview.ts";
import { type GlazeView, glazeBlocks } from "../reports/glazeBlocks.ts";
import { type KilnContext, kilnBlocks } from "../reports/kilnBlocks.ts";
import { type MeasureContext, measureBlocks } from "../reports/measureBlocks.ts";
import { type PingsContext, pingsBlocks } from "../reports/pingsBlocks.ts";
import type { Answer } from "./Answer.ts";
import { reportAnswer } from "./reportAnswer.ts";

/** What the logs of one kiln teach: its speed first. */
export function kilnAnswer(
  kiln: LearnedKiln,
  context: KilnContext & { readonly title: string },
): Answer {
  const blocks = kilnBlocks(kiln, context);
  return reportAnswer({ title: context.title, blocks, lead: "power", key: { speed: 1 } });
}

/** One glaze or several: how they fit, whether they crackle, what to weigh. */
export function glazeAnswer(
  works: readonly GlazeWork[],
  view: GlazeView & { readonly title: string },
): Answer {
  const key = { fit: 2, crackle: 1, batch: 1, expansion: 1 };
  return reportAnswer({ title: view.title, blocks: glazeBlocks(works, view), lead: "glaze", key });
}

/** A recording of clicks: how many pings, how hot it was, when. */
export function pingsAnswer(review: PingReview, context: PingsContext): Answer {
  return reportAnswer({
    title: `Pings in ${review.sound.name}`,
    blocks: pingsBlocks(review, context),
    lead: "sound",
    key: { heat: 2, times: 1, record: 1 },
  });
}

/** A measured photograph: how far apart its cracks are, and the lines for the record. */
export function measureAnswer(measured: PhotoMeasurement, context: MeasureContext): Answer {
  return reportAnswer({
    title: `Crackle in ${measured.name}`,
    blocks: measureBlocks(measured, context),
    lead: "cracks",
    key: { record: 2 },
  });
}
