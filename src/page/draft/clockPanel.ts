import { html, nothing, type TemplateResult } from "lit-html";
import { asAssumedKiln } from "../../core/kiln/asAssumedKiln.ts";
import { momentText, startOfDayOf } from "../../core/reports/moments.ts";
import { calendarText, type FiringMoment, firingMoments } from "../../core/schedule/calendar.ts";
import { parseStart } from "../../core/schedule/clock.ts";
import type { Draft } from "../../core/schedule/draftSchedule.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import type { Bench } from "../bench/store.ts";
import { download, fileStem } from "../parts/download.ts";
import { remembered } from "../parts/remembered.ts";
import { changeDraft } from "./changeDraft.ts";
import type { DeskKiln } from "./draftState.ts";

/** When the kiln is switched on, what happens when, and a calendar of it. */
export function clockPanel(bench: Bench, draft: Draft): TemplateResult {
  const { start } = draft;
  const moments = momentsOf(draft, bench.state().work.unit, bench.state().draft.kiln);
  const startOfDay = startOfDayOf(start);
  return html`<section class="panel" aria-labelledby="clock-title"><h3 id="clock-title">By the clock</h3>
    <div class="fields"><div class="field"><label for="start">The kiln is switched on</label>
      <input type="datetime-local" id="start" .value=${start?.slice(0, 16) ?? ""} @change=${(event: Event) => setStart(bench, (event.target as HTMLInputElement).value)}>
    </div></div>
    <ul class="moments">${moments.map(({ what, seconds }) => html`<li>${what}: ${momentText(startOfDay, seconds)}</li>`)}</ul>
    ${start === null ? html`<p class="hint">Choose a start, and every time is told by the clock too.</p>` : nothing}
    <button type="button" ?disabled=${start === null} @click=${() => start !== null && download(`${fileStem(draft.schedule.title)}.ics`, calendarText(moments, { title: draft.schedule.title, start }), "text/calendar")}>Save as a calendar (.ics)</button>
  </section>`;
}

/** The moments of a draft, for the kiln on the table. */
export const momentsOf = remembered(
  (draft: Draft, unit: TemperatureUnit, own: DeskKiln | null): readonly FiringMoment[] => {
    const kiln = own === null ? {} : { kiln: asAssumedKiln(own.learned) };
    return firingMoments(draft, { unit, ...kiln });
  },
);

function setStart(bench: Bench, text: string): void {
  const start = parseStart(text, "the start");
  changeDraft(bench, "changing the start", { start: start.ok ? start.value : null });
}
