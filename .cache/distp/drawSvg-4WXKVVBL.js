import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  textWidth
} from "./chunk-OEDHJ3SZ.js";
import {
  inert
} from "./chunk-C7Q5CZLC.js";
import "./chunk-TBHH23HK.js";

// src/node/drawSvg.ts
import { createHash } from "node:crypto";
async function drawSvg(spec, options = {}) {
  const [vega, vegaLite] = await Promise.all([import("./vega.module-BYAYF4RF.js"), import("./build-MYA723P4.js")]);
  measureTextLikeUs(vega);
  const logger = vega.logger(
    vega.Warn,
    void 0,
    (_method, _level, input) => options.onWarning?.(input.map(String).join(" "))
  );
  const { spec: compiled } = vegaLite.compile(spec, { logger });
  const view = new vega.View(vega.parse(compiled), { renderer: "none", logger });
  try {
    return inert(described(withOwnIds(await view.toSVG()), spec.description));
  } finally {
    view.finalize();
  }
}
function measureTextLikeUs(vega) {
  const { textMetrics } = vega;
  textMetrics.width = (item, text) => textWidth(String(text ?? ""), item.fontSize ?? 11);
}
function withOwnIds(svg) {
  const numbers = /* @__PURE__ */ new Map();
  const numbered = svg.replace(
    /\bid="clip(\d+)"|url\(#clip(\d+)\)/g,
    (_, own, used) => {
      const found = own ?? used ?? "";
      const number = numbers.get(found) ?? String(numbers.size + 1);
      numbers.set(found, number);
      return own === void 0 ? `url(#clip-${number})` : `id="clip-${number}"`;
    }
  );
  const name = createHash("sha256").update(numbered).digest("hex").slice(0, 8);
  return numbered.replaceAll('id="clip-', `id="clip-${name}-`).replaceAll("url(#clip-", `url(#clip-${name}-`);
}
function described(svg, description) {
  if (description === void 0) return svg;
  const text = description.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
  return svg.replace(
    /<svg [^>]*>/,
    (open) => `${open.slice(0, -1)} role="img"><title>${text}</title>`
  );
}
export {
  drawSvg
};
