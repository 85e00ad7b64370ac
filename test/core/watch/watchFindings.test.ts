import { describe, expect, it } from "vitest";
import { type Curve, makeCurve } from "../../../src/core/curve/Curve.ts";
import { type Finding, statementText } from "../../../src/core/findings/Finding.ts";
import type { LogReading } from "../../../src/core/log/reading/LogReading.ts";
import { limitsFor } from "../../../src/core/schedule/coolingLimits.ts";
import { QUARTZ_BAND } from "../../../src/core/ware/inversions.ts";
import { corners, sampled } from "../../support/curves.ts";
import { readingOf } from "../../support/firings.ts";
import { schedule, segment } from "../../support/schedules.ts";
import { cooledOf, demoLogUntil, watchedAt, watchedReading } from "../../support/watching.ts";

/** Up in 19 h, then down at one rate [°C/h] from 1160 °C. */
function falling(rateCPerHour: number): Curve {
  return sampled(corners([0, 20], [19, 1160], [19 + 1100 / rateCPerHour, 60]), 60);
}

/** Hours at which a fall from 1160 °C is at a temperature. */
function hoursAt(tempC: number, rateCPerHour: number): number {
  return 19 + (1160 - tempC) / rateCPerHour;
}

function about(findings: readonly Finding[], topic: string): Finding | undefined {
  return findings.find((finding) => finding.topic === topic);
}

/** A log of a thermocouple and a set point. */
function withSetPoint(kiln: Curve, setPoint: Curve): LogReading {
  const reading = readingOf({ kiln, "set point": setPoint });
  const channels = reading.channels.map((channel) =>
    channel.name === "kiln" ? channel : ({ ...channel, role: "set-point" } as const),
  );
  return { ...reading, channels };
}

describe("what a watched firing finds in cooling", () => {
  const platters = schedule({
    ware: { thickestMm: 14, widestMm: 400, state: null, crackle: false },
  });
  const guide = limitsFor(platters.ware)(QUARTZ_BAND)?.limitCPerHour as number;
  const watched = (rate: number, tempC: number, plan = platters) =>
    watchedAt(falling(rate), hoursAt(tempC, rate), { plan });

  it.each([
    [0.8, "note", "borne"],
    [1.2, "note", "borne"],
    [1.7, "caution", "well over the guide"],
    [2.5, "warning", "more than twice the guide"],
  ])("at %d times the guide in the quartz inversion is a %s", (times, severity, words) => {
    const rate = Math.round(times * guide);
    const state = watched(rate, 580);
    const finding = about(state.findings, "cooling through quartz") as Finding;
    expect(finding.severity).toBe(severity);
    expect(statementText(finding, "C")).toContain(
      `going through the quartz inversion at ${rate} °C/h`,
    );
    expect(statementText(finding, "C")).toContain(words);
  });

  it("speaks of an inversion half an hour before, by how fast the kiln will still be", () => {
    const rate = Math.round(2.5 * guide);
    const state = watched(rate, 660);
    const finding = about(state.findings, "cooling through quartz") as Finding;
    expect(finding.severity).toBe("caution");
    const minutes = Math.round((40 / rate) * 60);
    expect(statementText(finding, "C")).toContain(`begins in ${minutes} min, at 620 °C`);
    expect(about(watched(rate, 900).findings, "cooling through quartz")).toBe(undefined);
  });

  it("trusts a plan that slows the fall before the inversion", () => {
    const plan = schedule({
      ware: platters.ware,
      segments: [segment(1160, 60), segment(640, "free"), segment(500, -40)],
    });
    const state = watched(Math.round(2.5 * guide), 680, plan);
    expect(about(state.findings, "cooling through quartz")).toBe(undefined);
  });

  it("keeps what went too fast when it is over", () => {
    const state = watched(Math.round(2.5 * guide), 400);
    expect(about(state.findings, "cooling through quartz")).toMatchObject({ severity: "warning" });
  });
});

describe("a kiln that is opened hot", () => {
  const state = watchedReading(demoLogUntil("2026-05-23-b", 14.15 * 3600));

  it("is told, and is no longer reckoned with its lid shut", () => {
    // Its record calls it cooled in a hurry, and open at 280 °C.
    expect(about(state.findings, "opened hot")).toMatchObject({ severity: "caution" });
    expect(state.cooling?.basis).toContain("as an opened kiln falls");
  });

  it("is not thought to follow a slow plan any more", () => {
    const plan = schedule({
      segments: [segment(1171, 60), segment(550, "free"), segment(100, -20)],
    });
    const stopped = watchedReading(demoLogUntil("2026-05-23-b", 14.15 * 3600), { plan });
    expect(stopped.tempC).toBeLessThan(550);
    // As planned, 300 °C at 20 °C/h would take 15 hours.
    expect((cooledOf(stopped, 200).atSeconds - stopped.nowSeconds) / 3600).toBeLessThan(4);
  });

  it("is reckoned by how it falls now", () => {
    const hours = (cooledOf(state, 200).atSeconds - state.nowSeconds) / 3600;
    // 300 °C at well over 100 °C/h on the way: under four hours, where a shut kiln takes seven.
    expect(hours).toBeLessThan(4);
  });
});

describe("what a watched firing finds in climbing", () => {
  const stalling = sampled(corners([0, 20], [10, 920], [11, 920]), 60);

  it("is a stalled climb when the plan climbs", () => {
    const plan = schedule({ cone: "5", segments: [segment(1180, 90)] });
    const { findings } = watchedAt(stalling, 11, { plan });
    expect(about(findings, "stalled climb")).toMatchObject({ severity: "warning" });
    expect(about(findings, "behind the plan")).toBeDefined();
  });

  it("is a stalled climb when the set point goes on", () => {
    const setPoint = sampled(corners([0, 20], [11, 1010]), 60);
    const { findings } = watchedReading(withSetPoint(stalling, setPoint));
    expect(about(findings, "stalled climb")).toMatchObject({ severity: "warning" });
  });

  it("is no stall on a planned hold, nor where nothing says that it should climb", () => {
    const plan = schedule({ segments: [segment(920, 90, 90), segment(1180, 60)] });
    expect(about(watchedAt(stalling, 11, { plan }).findings, "stalled climb")).toBe(undefined);
    expect(watchedAt(stalling, 11).findings).toEqual([]);
  });

  it("is a set point that the kiln cannot follow", () => {
    const kiln = sampled(corners([0, 20], [10, 920]), 60);
    const setPoint = sampled(corners([0, 20], [10, 980]), 60);
    const finding = about(
      watchedReading(withSetPoint(kiln, setPoint)).findings,
      "behind the set point",
    );
    expect(statementText(finding as Finding, "C")).toBe(
      "It is 60 °C below its set point of 980 °C.",
    );
  });

  it("is a fall before the cone is down", () => {
    const curve = sampled(corners([0, 20], [10, 920], [10.5, 850]), 60);
    const { findings } = watchedAt(curve, 10.5, { cone: "5" });
    expect(about(findings, "falling before the cone is down")).toMatchObject({
      severity: "warning",
    });
    expect(about(watchedAt(curve, 10.5).findings, "falling before the cone is down")).toBe(
      undefined,
    );
  });

  it("is a cone that will be down before the peak of the plan", () => {
    // Cone 5 goes down at 1186 °C on this ramp, the chart says; 1240 °C comes 54 min later.
    const curve = sampled(corners([0, 20], [22, 1340]), 60);
    const plan = schedule({ cone: "5", segments: [segment(1240, 60)] });
    const finding = about(watchedAt(curve, 18, { plan }).findings, "overshoot ahead") as Finding;
    expect(finding.severity).toBe("warning");
    expect(statementText(finding, "C")).toMatch(/Cone 5 is expected down 5\d min before/);
  });

  it("is a kiln that goes on when the cone is down, a warning when the next is down too", () => {
    // Cone 5 at 1186 °C after 19.4 h, cone 6 at 1222 °C after 20.0 h.
    const curve = sampled(corners([0, 20], [22, 1340]), 60);
    const still = (hours: number) =>
      about(watchedAt(curve, hours, { cone: "5" }).findings, "still hot after the cone");
    expect(still(19.3)).toBe(undefined);
    expect(still(19.6)).toMatchObject({ severity: "caution" });
    expect(still(20.2)).toMatchObject({ severity: "warning" });
  });
});

describe("what a watched firing finds in its thermocouples", () => {
  const kiln = sampled(corners([0, 20], [5, 500]), 60);
  const open = (toSeconds: number) => ({
    kind: "open" as const,
    channel: "kiln",
    fromSeconds: 5 * 3600 - 600,
    toSeconds,
    count: 9,
    what: "kiln gave 9 values that no thermocouple gives.",
  });

  it("is an open circuit that lasts to the end of the log", () => {
    const early = sampled(corners([0, 20], [5 - 1 / 6, 480]), 60);
    const reading = readingOf({ kiln: early }, [open(5 * 3600)]);
    expect(about(watchedReading(reading).findings, "open thermocouple")).toMatchObject({
      severity: "warning",
    });
  });

  it("is less when it reads again", () => {
    const finding = about(
      watchedReading(readingOf({ kiln }, [open(4.95 * 3600)])).findings,
      "open thermocouple",
    ) as Finding;
    expect(finding.severity).toBe("caution");
    expect(finding.statement).toContain("reads again");
  });

  it("is one that falls silent while the other goes on", () => {
    const short = makeCurve(kiln.timesSeconds.slice(0, 280), kiln.tempsC.slice(0, 280));
    const { findings } = watchedReading(readingOf({ Top: kiln, Bottom: short }));
    const finding = about(findings, "silent thermocouple") as Finding;
    // 301 readings a minute apart against 280.
    expect(statementText(finding, "C")).toContain("Bottom has given no reading for 21 min");
  });

  it("is a log whose last rows give nothing", () => {
    const reading = readingOf({ kiln });
    const rejected = [4, 303, 304].map((line) => ({
      line,
      reason: "no temperature in it",
      text: "",
    }));
    const broken = { ...reading, rows: { total: 304, accepted: 301, rejected } };
    const finding = about(
      watchedReading(broken, { lines: 304 }).findings,
      "rows without a reading",
    );
    expect(statementText(finding as Finding, "C")).toContain("The last 2 rows");
    expect(watchedReading(broken, { lines: 305 }).findings).toEqual([]);
  });
});
