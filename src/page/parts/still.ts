import type { TemplateResult } from "lit-html";
import { guard } from "lit-html/directives/guard.js";

/** A part of a view that is only gone through again when it is another one than before: see `remembered`. */
export function still(part: TemplateResult): unknown {
  return guard([part], () => part);
}
