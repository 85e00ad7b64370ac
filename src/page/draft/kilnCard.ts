import { html, type TemplateResult } from "lit-html";
import type { Block } from "../../core/reports/Block.ts";
import { inert } from "../../core/reports/inert.ts";
import { momentText, startOfDayOf } from "../../core/reports/moments.ts";
import type { Draft } from "../../core/schedule/draftSchedule.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import { blockList } from "../parts/blockList.ts";
import { remembered } from "../parts/remembered.ts";
import { momentsOf } from "./clockPanel.ts";
import type { DeskKiln } from "./draftState.ts";
import { lightBlocks } from "./lightBlocks.ts";

/** One sheet to hang beside the kiln: segments, clock times, cone, cautions, room for notes. */
export const kilnCard = remembered(cardOf);

function cardOf(draft: Draft, unit: TemperatureUnit, kiln: DeskKiln | null): TemplateResult {
  const blocks = lightBlocks(draft, unit);
  const startOfDay = startOfDayOf(draft.start);
  const start =
    draft.start === null
      ? "Start: ____________"
      : `Start: ${draft.start.replace("T", " ").slice(0, 16)}`;
  const kept = blocks.filter(isOnCard);
  return html`<section class="card" aria-label="Kiln card">
    <h2>${inert(draft.schedule.title)}</h2>
    <p class="card-start">${start}</p>
    ${blockList(
      kept.filter(({ kind }) => kind !== "caution"),
      "card",
    )}
    <ul class="moments">${momentsOf(draft, unit, kiln).map(({ what, seconds }) => html`<li>${what}: ${momentText(startOfDay, seconds)}</li>`)}</ul>
    ${blockList(warningsOf(blocks), "card-findings")}
    ${blockList(
      kept.filter(({ kind }) => kind === "caution"),
      "card-cautions",
    )}
    <div class="card-notes"><p>Witness cones, times, what was heard:</p></div>
  </section>`;
}

function isOnCard(block: Block): boolean {
  return (
    block.kind === "lead" ||
    block.kind === "caution" ||
    (block.kind === "table" && block.caption === "Segment by segment")
  );
}

/** Only what somebody has to mind; notes stay in the report. */
function warningsOf(blocks: readonly Block[]): readonly Block[] {
  return blocks.filter((block) => block.kind === "finding" && block.severity !== "note");
}
