import { comparisonChart } from "../../core/charts/chartsOf.ts";
import { compareFirings } from "../../core/firing/compareFirings.ts";
import type { FiringReview } from "../../core/firing/FiringReview.ts";
import { reviewFiring } from "../../core/firing/reviewFiring.ts";
import type { Problem } from "../../core/problem.ts";
import { comparisonHtml } from "../../core/reports/comparisonHtml.ts";
import { comparisonText } from "../../core/reports/comparisonText.ts";
import { comparisonDocument } from "../../core/reports/documents/comparisonDocument.ts";
import { readFiring } from "../../node/readFiring.ts";
import { answer, answerJson, type CommonOptions, EXIT, paintFor, refuse } from "../conversation.ts";
import { type LogCommandOptions, logOptionsFrom } from "../options.ts";
import { drawn, writePictures } from "../pictures.ts";

/** `undunted compare LOG…`: several firings side by side. */
export async function run(
  paths: readonly string[],
  options: CommonOptions & LogCommandOptions,
): Promise<number> {
  const logOptions = logOptionsFrom(options);
  if (!logOptions.ok) return refuse(logOptions.problems, options);
  const reviews: FiringReview[] = [];
  const problems: Problem[] = [];
  for (const path of paths) {
    const files = await readFiring(path, {
      options: logOptions.value,
      recordPath: null,
      schedulePath: null,
    });
    const review = files.ok ? reviewFiring({ ...files.value, heard: [] }) : files;
    if (review.ok) reviews.push(review.value);
    else problems.push(...review.problems);
  }
  if (problems.length > 0) return refuse(problems, options);
  const comparison = compareFirings(reviews);
  if (!comparison.ok) return refuse(comparison.problems, options);
  const unit = options.unit ?? (reviews.every(({ reading }) => reading.unit === "F") ? "F" : "C");
  const written = await writePictures(options, {
    html: async () =>
      comparisonHtml(comparison.value, {
        unit,
        charts: await drawn({
          overlay: (dark) => comparisonChart(comparison.value, { unit, dark }),
        }),
      }),
    picture: () => comparisonChart(comparison.value, { unit }),
  });
  if (!written.ok) return refuse(written.problems, options);
  if (options.json) answerJson(comparisonDocument(comparison.value));
  else answer(comparisonText(comparison.value, { unit, paint: paintFor(options) }));
  return EXIT.fine;
}
