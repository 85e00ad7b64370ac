import { join } from "node:path";
import type { TopLevelSpec } from "vega-lite";
import { describe, expect, it } from "vitest";
import {
  comparisonChart,
  draftCharts,
  reviewCharts,
  studyCharts,
} from "../../src/core/charts/chartsOf.ts";
import { AT_PEAK } from "../../src/core/review/alignment.ts";
import { type Comparison, compareFirings } from "../../src/core/review/compareFirings.ts";
import { reviewFiring } from "../../src/core/review/reviewFiring.ts";
import { draftSchedule } from "../../src/core/schedule/draftSchedule.ts";
import { studyFirings } from "../../src/core/trials/studyFirings.ts";
import { UNKNOWN_BODY } from "../../src/core/ware/bodies.ts";
import { drawSvg } from "../../src/node/drawSvg.ts";
import { readFiring, readSchedule } from "../../src/node/readFiring.ts";
import { drawnChart } from "../../src/page/drawing/drawnChart.ts";
import { valued } from "../support/schedules.ts";

/** How a log is read without a word from anybody. */
const NOTHING_TOLD = { options: {}, recordPath: null, schedulePath: null };

const ROOT = join(import.meta.dirname, "../..");

/** Both place words by the font's middle or foot, which they know to within this [px]. */
const TOLERANCE_PX = 1.5;

async function charts(): Promise<readonly (readonly [string, TopLevelSpec])[]> {
  const schedule = valued(await readSchedule(join(ROOT, "schedules/cone-5-crackle-tiles.yaml")));
  const draft = draftSchedule({
    schedule: { ...schedule, ware: { ...schedule.ware, body: UNKNOWN_BODY } },
    start: "2026-12-01T18:00:00",
  });
  const reviews = await Promise.all(["2026-05-23-b.csv", "2026-03-14-b.csv"].map(reviewed));
  const named = (what: string, made: ReturnType<typeof draftCharts>) =>
    (["firing", "cooling", "cones", "strain"] as const).flatMap((name) => {
      const make = made[name];
      return make === null
        ? []
        : [
            [`${what}, ${name}, °C`, make({ unit: "C" })] as const,
            [`${what}, ${name}, °F, dark`, make({ unit: "F", dark: true })] as const,
          ];
    });
  return [
    ...named("draft", draftCharts(draft)),
    ...reviews.flatMap((review, i) => named(`review ${i + 1}`, reviewCharts(review))),
    ...comparisons(valued(compareFirings(reviews))),
    ...(await spacings()),
  ];
}

function comparisons(comparison: Comparison): readonly (readonly [string, TopLevelSpec])[] {
  const at = { at: "falling", tempC: 600 } as const;
  return [AT_PEAK, at].flatMap((alignment) => {
    const make = comparisonChart(comparison, alignment);
    return make === null ? [] : [[`comparison at ${alignment.at}`, make({ unit: "C" })] as const];
  });
}

/** Crack spacing against coat, on logarithms, with points of several shapes. */
async function spacings(): Promise<readonly (readonly [string, TopLevelSpec])[]> {
  const planned = await Promise.all(
    ["2026-03-14-b.csv", "2026-04-11-a.csv"].map(async (name) => {
      const files = valued(await readFiring(join(ROOT, "logs", name), NOTHING_TOLD));
      return { ...files, review: valued(reviewFiring(files)) };
    }),
  );
  const comparison = valued(compareFirings(planned.map(({ review }) => review)));
  return studyCharts(comparison, studyFirings(planned)).spacing.map(({ glaze, chart }) => [
    `spacing of ${glaze}`,
    chart({ unit: "C" }),
  ]);
}

async function reviewed(name: string) {
  const path = join(ROOT, "logs", name);
  return valued(reviewFiring(valued(await readFiring(path, NOTHING_TOLD))));
}

interface Placed {
  readonly what: string;
  readonly x: number;
  readonly y: number;
}

/** Words and starts of lines of an SVG with where they stand on the sheet. */
function placed(svg: string): readonly Placed[] {
  const found: Placed[] = [];
  const shifts: { x: number; y: number }[] = [{ x: 0, y: 0 }];
  for (const [tag] of svg.matchAll(/<[^>]+>(?:[^<]*(?=<\/text>))?/g)) {
    const here = shifts.at(-1) as { x: number; y: number };
    const [, dx = "0", dy = "0"] = /translate\(([-\d.e]+),\s*([-\d.e]+)\)/.exec(tag) ?? [];
    const at = { x: here.x + Number(dx), y: here.y + Number(dy) };
    if (tag.startsWith("</g")) shifts.pop();
    else if (tag.startsWith("<g")) shifts.push(at);
    else if (tag.startsWith("<text")) found.push(textAt(tag, at));
    else if (/^<line[^>]*stroke="/.test(tag)) found.push(lineAt(tag, at));
    else if (
      /^<path[^>]*stroke="/.test(tag) &&
      / d="M[^"]*"/.test(tag) &&
      !/ d="M[^"]*Z"/.test(tag)
    )
      found.push(pathAt(tag, at));
  }
  return found;
}

function textAt(tag: string, at: { readonly x: number; readonly y: number }): Placed {
  const number = (name: string) => Number(new RegExp(` ${name}="([-\\d.]+)"`).exec(tag)?.[1] ?? 0);
  return { what: tag.slice(tag.indexOf(">") + 1), x: at.x + number("x"), y: at.y + number("y") };
}

function lineAt(tag: string, at: { readonly x: number; readonly y: number }): Placed {
  const [, x = "0"] = / x1="([-\d.]+)"/.exec(tag) ?? [];
  const [, y = "0"] = / y1="([-\d.]+)"/.exec(tag) ?? [];
  const stroke = /stroke="([^"]+)"/.exec(tag)?.[1];
  return { what: `line ${stroke}`, x: at.x + Number(x), y: at.y + Number(y) };
}

function pathAt(tag: string, at: { readonly x: number; readonly y: number }): Placed {
  const [, x = "0", y = "0"] = / d="M([-\d.]+),([-\d.]+)/.exec(tag) ?? [];
  const stroke = /stroke="([^"]+)"/.exec(tag)?.[1];
  return { what: `line ${stroke}`, x: at.x + Number(x), y: at.y + Number(y) };
}

/** Places measured from the first label of the horizontal axis, sorted, so that margins do not count. */
function fromAxis(all: readonly Placed[], origin: string): readonly Placed[] {
  const zero = all.find(({ what }) => what === origin) as Placed;
  return all
    .filter(({ what }) => !/fcf8f2|1e1a17/.test(what))
    .map(({ what, x, y }) => ({ what, x: x - zero.x, y: y - zero.y }))
    .toSorted((a, b) => a.what.localeCompare(b.what) || a.x - b.x || a.y - b.y);
}

describe("the page's own drawing of a chart", async () => {
  const all = await charts();
  it.each(all)("puts every word and line of %s where vega puts it", async (_, spec) => {
    const ours = placed(drawnChart(spec, "a"));
    const theirs = placed(await drawSvg(spec));
    // A subtitle of several lines is one text there and several here.
    const subtitle = (spec as { title: { subtitle: unknown } }).title.subtitle;
    const apart = new Set<unknown>(Array.isArray(subtitle) ? ["", ...subtitle] : []);
    const origin =
      (spec as { layer: { encoding: { x: { title: string } } }[] }).layer[0]?.encoding.x.title ??
      "";
    const kept = (each: readonly Placed[]) =>
      fromAxis(each, origin).filter(({ what }) => !apart.has(what));
    const a = kept(ours);
    const b = kept(theirs);
    expect(a.filter(({ what }) => !what.startsWith("line")).map(({ what }) => what)).toEqual(
      b.filter(({ what }) => !what.startsWith("line")).map(({ what }) => what),
    );
    const far = a.filter((mark) => {
      const same = b.filter(({ what }) => what === mark.what);
      if (same.length === 0) return false;
      return !same.some(
        ({ x, y }) => Math.abs(x - mark.x) <= TOLERANCE_PX && Math.abs(y - mark.y) <= TOLERANCE_PX,
      );
    });
    expect(far).toEqual([]);
  });

  it("escapes whatever a title says", () => {
    const [, spec] = all[0] as readonly [string, TopLevelSpec];
    const evil = {
      ...spec,
      title: { text: "<script>alert(1)</script>", subtitle: '"><img src=x>' },
    };
    const svg = drawnChart(evil as TopLevelSpec, "a");
    expect(svg).not.toContain("<script");
    expect(svg).not.toContain("<img");
  });
});
