import { extname } from "node:path";
import type { TopLevelSpec } from "vega-lite";
import { failed, ok, type Result } from "../core/problem.ts";
import { writeOutput } from "../node/writeOutput.ts";
import { type CommonOptions, say } from "./conversation.ts";

/** A chart as SVG for a light and for a dark page. */
export interface DrawnChart {
  readonly light: string;
  readonly dark: string;
}

/** Makes a chart's spec for light or dark. */
export type ChartIn = (dark: boolean) => TopLevelSpec;

/** Draws named charts, light and dark. */
export async function drawn<Name extends string>(
  charts: Readonly<Record<Name, ChartIn>>,
): Promise<Readonly<Record<Name, DrawnChart>>> {
  const { drawSvg } = await import("../node/drawSvg.ts");
  const result: Partial<Record<Name, DrawnChart>> = {};
  for (const name of Object.keys(charts) as Name[])
    result[name] = {
      light: await drawSvg(charts[name](false)),
      dark: await drawSvg(charts[name](true)),
    };
  return result as Record<Name, DrawnChart>;
}

/** Writes what `--html` and `--chart` ask for, and says what was written. */
export async function writePictures(
  options: CommonOptions,
  make: { readonly html: () => Promise<string>; readonly picture: () => TopLevelSpec },
): Promise<Result<null>> {
  if (options.html !== undefined) {
    const written = await writeOutput(options.html, await make.html(), {
      force: options.force === true,
    });
    if (!written.ok) return written;
    say(`wrote ${written.value}`, options);
  }
  if (options.chart === undefined) return ok(null);
  const content = await chartFile(options.chart, make.picture);
  if (!content.ok) return content;
  const written = await writeOutput(options.chart, content.value, {
    force: options.force === true,
  });
  if (!written.ok) return written;
  say(`wrote ${written.value}`, options);
  return ok(null);
}

async function chartFile(
  path: string,
  picture: () => TopLevelSpec,
): Promise<Result<string | Uint8Array>> {
  const ending = extname(path).toLowerCase();
  if (ending !== ".svg" && ending !== ".png")
    return failed({
      code: "command/chart-ending",
      where: `--chart ${path}`,
      what: `a chart cannot be written as ${ending === "" ? "a file without an ending" : ending}`,
      expected: "a name that ends in .svg or .png",
      fix: `--chart ${path.slice(0, path.length - ending.length)}.svg`,
    });
  const { drawSvg } = await import("../node/drawSvg.ts");
  const svg = await drawSvg(picture());
  if (ending === ".svg") return ok(svg);
  const { drawPng } = await import("../node/drawPng.ts");
  return ok(await drawPng(svg, { scale: 2 }));
}
