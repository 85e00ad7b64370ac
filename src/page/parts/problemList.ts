import { html, nothing, type TemplateResult } from "lit-html";
import type { Problem } from "../../core/problem.ts";
import { inert } from "../../core/reports/inert.ts";

/** What a person can fix, in the four parts that the command prints too; nothing when there is none. */
export function problemList(problems: readonly Problem[]): TemplateResult | typeof nothing {
  if (problems.length === 0) return nothing;
  return html`<div role="alert"><ul class="problems">${problems.map(
    ({ where, what, expected, fix, code }) => html`<li>
      <p class="problem-what"><span class="problem-where">${inert(where)}:</span> ${inert(what)}</p>
      <dl><dt>expected</dt><dd>${inert(expected)}</dd><dt>try</dt><dd>${inert(fix)}</dd></dl>
      <p class="problem-code">${code}</p>
    </li>`,
  )}</ul></div>`;
}
