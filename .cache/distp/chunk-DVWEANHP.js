import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);

// src/node/drawPng.ts
import { createRequire } from "node:module";
var FONT_FILES = [
  "@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf",
  "@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf"
];
async function drawPng(svg, options = {}) {
  const { renderAsync } = await import("@resvg/resvg-js");
  const { resolve } = createRequire(import.meta.url);
  const image = await renderAsync(svg, {
    fitTo: { mode: "zoom", value: options.scale ?? 2 },
    font: {
      loadSystemFonts: false,
      fontFiles: FONT_FILES.map((file) => resolve(file)),
      defaultFontFamily: "Source Sans 3",
      sansSerifFamily: "Source Sans 3"
    }
  });
  return image.asPng();
}

export {
  drawPng
};
