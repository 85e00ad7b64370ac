import { html, nothing, type TemplateResult } from "lit-html";
import type { Block } from "../../core/reports/Block.ts";
import { momentText, startOfDayOf } from "../../core/reports/moments.ts";
import { crossingBlocks } from "../../core/reports/sections/crossingBlocks.ts";
import { findingBlocks } from "../../core/reports/sections/findingBlocks.ts";
import { strainRatioText } from "../../core/reports/sections/strainRatioText.ts";
import { pieceOf } from "../../core/schedule/pieceOf.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import { isJudged, strainRisk } from "../../core/ware/strainRisk.ts";
import { blockList } from "../parts/blockList.ts";
import { remembered } from "../parts/remembered.ts";
import { lightBlocks } from "./lightBlocks.ts";
import type { LightDraft } from "./lightDraft.ts";

/** What the schedule does, at every change: cone, times, stress, findings, crossings. */
export const answerPanel = remembered(answerOf);

function answerOf(light: LightDraft, unit: TemperatureUnit): TemplateResult {
  const { draft } = light;
  const when = { unit, startOfDaySeconds: startOfDayOf(draft.start) };
  const [lead, sentence] = lightBlocks(draft, unit);
  const total = draft.expansion.timeline.at(-1)?.endSeconds ?? 0;
  const blocks: readonly Block[] = [
    ...(lead && sentence ? [lead, sentence] : []),
    { kind: "sentence", text: `It ends ${momentText(when.startOfDaySeconds, total)}.` },
    ...strainNow(light, when),
    ...findingBlocks(draft.findings, when),
    { kind: "heading", text: "Through the inversions" },
    ...crossingBlocks(draft.crossings, { caption: "How fast it goes", ...when }),
  ];
  return html`<div class="answer">${blocks.length === 0 ? nothing : blockList(blocks, "answer")}</div>`;
}

/** The stress on the way down by the middle properties of the body; the rest is in the report. */
function strainNow(
  { draft, worst }: LightDraft,
  when: { readonly unit: TemperatureUnit; readonly startOfDaySeconds: number | null },
): readonly Block[] {
  const { body } = pieceOf(draft.schedule.ware).ware;
  return [
    {
      kind: "table",
      caption: "Stress over strength at its worst, cooling",
      columns: [
        { head: "through", align: "left" },
        { head: { lines: ["stress over", "strength"] }, align: "right" },
        { head: "", align: "left" },
        { head: "when", align: "left" },
      ],
      rows: worst
        .filter((each) => isJudged(each, body))
        .map(({ band, ratio, atSeconds }) => {
          const risk = strainRisk(ratio);
          return [
            band.replace(/ inversion$/, ""),
            strainRatioText(ratio),
            {
              lines: [risk],
              style: risk === "high" ? "warning" : risk === "watch" ? "caution" : "good",
            },
            momentText(when.startOfDaySeconds, atSeconds),
          ];
        }),
    },
  ];
}
