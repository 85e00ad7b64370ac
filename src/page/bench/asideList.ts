import { html, nothing, type TemplateResult } from "lit-html";
import { inert } from "../../core/reports/inert.ts";
import { download } from "../parts/download.ts";
import type { AsideWork } from "./keep.ts";
import { layAside, throwAway } from "./keepOnChange.ts";
import { plainJson } from "./packed.ts";
import type { Bench } from "./store.ts";

/** Work in this browser's store that does not lie on the bench, and what can be done with it. */
export function asideList(bench: Bench): TemplateResult | typeof nothing {
  const { aside } = bench.state();
  if (aside.length === 0) return nothing;
  return html`<section class="aside-work" aria-labelledby="aside-title">
    <h2 id="aside-title">Put aside, nothing lost</h2>
    <ul>${aside.map((each) => asideItem(bench, each))}</ul>
  </section>`;
}

function asideItem(bench: Bench, aside: AsideWork): TemplateResult {
  const when = aside.savedMs === null ? "" : ` on ${dayAndClock(aside.savedMs)}`;
  const name = `undunted-aside${aside.savedMs === null ? "" : `-${aside.savedMs}`}.json`;
  const ask = (question: { title: string; text: string; yes: string; onYes: () => void }) =>
    bench.show((state) => ({ ...state, question }));
  return html`<li>
    <p>${
      aside.work === null
        ? html`What this browser kept${when} cannot be read by this page (${inert(aside.why)}). It stays as it is until you throw it away.`
        : html`Another window of this page kept other work${when}. What lies here does not replace it.`
    }</p>
    <p class="aside-acts">
      ${
        aside.work === null
          ? nothing
          : html`<button type="button" @click=${() =>
              ask({
                title: "Open what lay aside?",
                text: "It takes the place of what lies on all three tables now. Undo brings that back while the page is open; save the whole bench first to keep it as a file.",
                yes: "Open it",
                onYes: () => void layAside(bench, aside),
              })}>Open it…</button>`
      }
      <button type="button" @click=${() => download(name, plainJson(aside.raw), "application/json")}>Save it as a file</button>
      <button type="button" class="grave" @click=${() =>
        ask({
          title: "Throw it away?",
          text: "It is taken out of this browser for good. Save it as a file first if you want any of it again.",
          yes: "Throw it away",
          onYes: () => void throwAway(bench, aside),
        })}>Throw it away…</button>
    </p>
  </li>`;
}

/** `Sat 28 Nov, 14:03`, by this computer's clock. */
function dayAndClock(savedMs: number): string {
  const at = new Date(savedMs);
  const day = at.toLocaleDateString("en-GB", { weekday: "short", day: "numeric", month: "short" });
  const clock = at.toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit" });
  return `${day}, ${clock}`;
}
