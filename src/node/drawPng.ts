import { createRequire } from "node:module";

/** Font files that are shipped, in the two weights that charts use. */
const FONT_FILES = [
  "@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf",
  "@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf",
];

/**
 * An SVG as PNG, with the shipped font only, so that every machine draws the same.
 *
 * @param options.scale Pixels per unit of the SVG, 2 when not said; over 0.
 */
export async function drawPng(
  svg: string,
  options: { readonly scale?: number } = {},
): Promise<Uint8Array> {
  const { renderAsync } = await import("@resvg/resvg-js");
  const { resolve } = createRequire(import.meta.url);
  const image = await renderAsync(svg, {
    fitTo: { mode: "zoom", value: options.scale ?? 2 },
    font: {
      loadSystemFonts: false,
      fontFiles: FONT_FILES.map((file) => resolve(file)),
      defaultFontFamily: "Source Sans 3",
      sansSerifFamily: "Source Sans 3",
    },
  });
  return image.asPng();
}
