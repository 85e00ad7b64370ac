import { html, type TemplateResult } from "lit-html";
import { draftCharts } from "../../core/charts/chartsOf.ts";
import { draftBlocks } from "../../core/reports/draftBlocks.ts";
import { pieceOf } from "../../core/schedule/coolingLimits.ts";
import type { Draft } from "../../core/schedule/draftSchedule.ts";
import type { Schedule } from "../../core/schedule/Schedule.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import { blockList } from "../parts/blockList.ts";
import { remembered, still } from "../parts/controls.ts";
import { pageCharts } from "../parts/pageCharts.ts";
import type { BenchState } from "../state/state.ts";
import { restedDraft } from "./changeDraft.ts";

/** The whole report of the schedule as it last rested, in the words of the command. */
export function draftReport(state: BenchState): TemplateResult {
  const { draft, work, dark } = state;
  if (draft.full === null) return html`<p role="status">Working out the stress and its range…</p>`;
  const isStale = restedDraft(state) === null;
  return html`<div class="report ${isStale ? "is-stale" : ""}" aria-busy=${isStale}>${still(reportOf(draft.full.draft, work.unit, dark))}</div>`;
}

/** Drawn and laid out once for each draft that rested. */
const reportOf = remembered((draft: Draft, unit: TemperatureUnit, dark: boolean) => {
  const { firing, cooling, cones, strain } = draftCharts(draft);
  const { pairs, specs } = pageCharts({ firing, cooling, cones, strain }, { unit, dark });
  const assumed = assumedOf(draft.schedule);
  return blockList(draftBlocks(draft, { unit, assumed, charts: pairs }), "report", specs);
});

/** What was assumed of the ware, as the command says it. */
export function assumedOf({ ware }: Schedule): readonly string[] {
  return pieceOf(ware).assumed;
}
