import { html, nothing, type TemplateResult } from "lit-html";
import type { Block } from "../../core/reports/Block.ts";
import { momentText, startOfDayOf } from "../../core/reports/moments.ts";
import { crossingBlocks } from "../../core/reports/sections/crossingBlocks.ts";
import { findingBlocks } from "../../core/reports/sections/findingBlocks.ts";
import { strainRatioText } from "../../core/reports/sections/strainRatioText.ts";
import type { TemperatureUnit } from "../../core/units/temperature.ts";
import { heatingOf } from "../../core/ware/pieceStrain.ts";
import { passageRisk } from "../../core/ware/strainRisk.ts";
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

/** The stress by the middle properties of the body; its range is in the report, when the schedule rests. */
function strainNow(
  { draft, worst }: LightDraft,
  when: { readonly startOfDaySeconds: number | null },
): readonly Block[] {
  if (worst === null)
    return [
      {
        kind: "sentence",
        style: "faint",
        text: "Name the body below, and the stress in the ware is computed too.",
      },
    ];
  const known = worst.filter(
    ({ direction }) =>
      direction === "cooling" || heatingOf(draft.schedule.ware.state) === "computed",
  );
  return [
    {
      kind: "table",
      caption: "Stress over strength at its worst, good to a factor of two either way",
      columns: [
        { head: "through", align: "left" },
        { head: { lines: ["stress over", "strength"] }, align: "right" },
        { head: "", align: "left" },
        { head: "when", align: "left" },
      ],
      rows: known.map(({ band, direction, ratio, atSeconds }) => {
        const risk = passageRisk(direction, ratio);
        return [
          `${band.replace(/ inversion$/, "")}, ${direction}`,
          strainRatioText(ratio),
          risk === null
            ? ""
            : {
                lines: [risk],
                style: risk === "high" ? "warning" : risk === "watch" ? "caution" : "good",
              },
          momentText(when.startOfDaySeconds, atSeconds),
        ];
      }),
    },
  ];
}
