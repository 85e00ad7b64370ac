import { draftCharts } from "../../core/charts/chartsOf.ts";
import { reviewPicture } from "../../core/charts/reviewPicture.ts";
import { hasWarning } from "../../core/findings/ordered.ts";
import { ok } from "../../core/problem.ts";
import { draftDocument } from "../../core/reports/documents/draftDocument.ts";
import { draftHtml } from "../../core/reports/draftHtml.ts";
import { draftText } from "../../core/reports/draftText.ts";
import { parseStart } from "../../core/schedule/clock.ts";
import { draftSchedule } from "../../core/schedule/draftSchedule.ts";
import { readSchedule } from "../../node/readSchedule.ts";
import { answer, answerJson, type CommonOptions, EXIT, paintFor, refuse } from "../conversation.ts";
import { offsetFrom } from "../options.ts";
import { drawn, writePictures } from "../pictures.ts";

interface DraftOptions extends CommonOptions {
  readonly start?: string;
  readonly offset?: string;
}

/** `undunted draft SCHEDULE`: what this schedule will do. */
export async function run(path: string, options: DraftOptions): Promise<number> {
  const schedule = await readSchedule(path);
  const start = options.start === undefined ? ok(null) : parseStart(options.start, "--start");
  const offset = offsetFrom(options.offset);
  if (!schedule.ok || !start.ok || !offset.ok)
    return refuse(
      [schedule, start, offset].flatMap((result) => (result.ok ? [] : result.problems)),
      options,
    );
  const draft = draftSchedule({
    schedule: schedule.value,
    start: start.value,
    offsetK: offset.value,
  });
  const unit = options.unit ?? schedule.value.unit;
  const charts = draftCharts(draft);
  const written = await writePictures(options, {
    html: async () =>
      draftHtml(draft, {
        unit,
        charts: await drawn({
          firing: (dark) => charts.firing({ unit, dark }),
          cooling: (dark) => charts.cooling({ unit, dark }),
          cones: (dark) => charts.cones({ unit, dark }),
        }),
      }),
    picture: () =>
      reviewPicture([charts.firing({ unit }), charts.cooling({ unit }), charts.cones({ unit })]),
  });
  if (!written.ok) return refuse(written.problems, options);
  if (options.json) answerJson(draftDocument(draft));
  else answer(draftText(draft, { unit, paint: paintFor(options) }));
  return hasWarning(draft.findings) ? EXIT.no : EXIT.fine;
}
