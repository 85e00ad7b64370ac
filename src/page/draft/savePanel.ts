import { html, type TemplateResult } from "lit-html";
import { answerHtml } from "../../core/answers/answerHtml.ts";
import { draftAnswer } from "../../core/answers/draftAnswer.ts";
import { draftCharts } from "../../core/charts/chartsOf.ts";
import { draftDocument } from "../../core/reports/documents/draftDocument.ts";
import type { Draft } from "../../core/schedule/draftSchedule.ts";
import type { Schedule } from "../../core/schedule/Schedule.ts";
import { scheduleYaml } from "../../core/schedule/scheduleFile.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import { drawnChart } from "../drawing/drawnChart.ts";
import { download, fileStem } from "../parts/files.ts";
import type { Bench } from "../state/state.ts";
import { restedDraft } from "./changeDraft.ts";
import { assumedOf } from "./draftReport.ts";

/** Saves the schedule as its file, and the report as a page or as data, the same as the command's. */
export function savePanel(bench: Bench, schedule: Schedule): TemplateResult {
  const { work } = bench.state();
  const full = restedDraft(bench.state());
  const stem = fileStem(schedule.title);
  return html`<section class="panel" aria-labelledby="save-title"><h3 id="save-title">Take away</h3>
    <div class="actions">
      <button type="button" class="chief" @click=${() => download(`${stem}.yaml`, scheduleYaml(schedule), "application/yaml")}>Save the schedule (.yaml)</button>
      <button type="button" @click=${() => window.print()}>Print the kiln card</button>
      <button type="button" ?disabled=${full === null} @click=${() => full && download(`${stem}.html`, reportPage(full, work.unit), "text/html")}>Save the report (.html)</button>
      <button type="button" ?disabled=${full === null} @click=${() => full && download(`${stem}.json`, `${JSON.stringify(draftDocument(full), null, 2)}\n`, "application/json")}>Save the numbers (.json)</button>
    </div>
  </section>`;
}

function reportPage(draft: Draft, unit: TemperatureUnit): string {
  const { firing, cooling, cones, strain } = draftCharts(draft);
  const pair = (make: typeof firing, name: string) => ({
    light: drawnChart(make({ unit }), `${name}-light`),
    dark: drawnChart(make({ unit, dark: true }), `${name}-dark`),
  });
  return answerHtml(
    draftAnswer(draft, {
      unit,
      assumed: assumedOf(draft.schedule),
      charts: {
        firing: pair(firing, "firing"),
        cooling: pair(cooling, "cooling"),
        cones: pair(cones, "cones"),
        ...(strain && { strain: pair(strain, "strain") }),
      },
    }),
  );
}
