import type { NextTime, NextTimePaths } from "../advice/NextFiring.ts";
import { nextTimeOf } from "../advice/nextTime.ts";
import { type Caution, cautionsFor } from "../cautions/cautions.ts";
import type { ConeSeries } from "../cones/cone.ts";
import { CONE_MODELS } from "../cones/coneModel.ts";
import { heatworkOf } from "../cones/heatwork.ts";
import { type Witness, witnessOffset } from "../cones/witnessOffset.ts";
import type { Curve } from "../curve/Curve.ts";
import { crackFacts } from "../diagnosis/crackFacts.ts";
import type { DiagnosedCause } from "../diagnosis/Diagnosis.ts";
import { diagnosisOf } from "../diagnosis/diagnose.ts";
import { ordered } from "../findings/Finding.ts";
import { type FiringFacts, hottestZone, kilnOpened, whileShut } from "../firing/FiringFacts.ts";
import { firedCrossings, firedPieces, firedStrains, strainsOnce } from "../firing/firedPieces.ts";
import { firingFindings } from "../firing/firingFindings.ts";
import { kilnFiringOf } from "../firing/kilnFiring.ts";
import { knownOpening, openingInLog } from "../firing/knownOpening.ts";
import { placedSounds, placedUnloading } from "../firing/placedMoments.ts";
import { powerLosses } from "../firing/powerLoss.ts";
import { type KnownWire, knownWire, usualOffsetOf } from "../firing/thermocoupleBehaviour.ts";
import { comparedWithPlan, firmPeak, zoneReview, zoneSpread } from "../firing/zoneReview.ts";
import {
  type EarlierLog,
  type FiringHistory,
  historyOf,
  type PastFiring,
} from "../history/history.ts";
import type { LogReading } from "../log/reading/LogReading.ts";
import { failed, ok, type Problem, type Result } from "../problem.ts";
import type { FiringRecord } from "../record/FiringRecord.ts";
import type { SoundSaid } from "../record/moment.ts";
import { recordLines } from "../record/recordLines.ts";
import type { Schedule } from "../schedule/Schedule.ts";
import type { FiringReview } from "./FiringReview.ts";

/** A firing that happened, and what is known beside its log. */
export interface FiringInput {
  readonly reading: LogReading;
  readonly record: FiringRecord | null;
  /** The schedule that was fired, or that it is to be held against. */
  readonly plan: Schedule | null;
  /** Which cones; else those of the record, of the plan, or self-supporting ones. */
  readonly series?: ConeSeries;
  /** What was heard beside what the record says, as written. */
  readonly heard?: readonly SoundSaid[];
  /** Logs of the same kiln from before, to say what has changed. */
  readonly earlier?: readonly EarlierLog[];
  /** Files by their names, to say what to change next time; without it that is left out. */
  readonly next?: NextTimePaths;
}

/**
 * What a firing did: cone, inversions, holds, plan, spread, and what the sounds speak for.
 * Witness cones are solved for the hottest zone, and their offset goes into that zone's cone only.
 *
 * @returns `firing/no-temperature`, `firing/no-such-cone`, `firing/not-a-moment` or
 * `firing/no-clock`, all that apply at once.
 */
export function reviewFiring(input: FiringInput): Result<FiringReview> {
  const { reading, record, plan } = input;
  const series = input.series ?? record?.series ?? plan?.series ?? "self-supporting";
  const channels = temperatureChannels(reading);
  const hottest = hottestChannel(channels);
  if (!hottest) return failed(noTemperature(reading));
  const witnesses = record?.witnesses ?? [];
  const unknown = unknownCones(witnesses, series, record?.name ?? "");
  if (unknown.length > 0) return failed(...unknown);
  const witness =
    witnesses.length === 0
      ? null
      : solved(hottest.curve, { series, witnesses, wire: knownWire(record, reading) });
  const measured = channels.map(({ name, curve }) =>
    zoneReview(name, curve, {
      series,
      witnessed: curve === hottest.curve ? (witness?.offset ?? null) : null,
      wire: knownWire(record, reading),
    }),
  );
  const zone = measured.find(({ curve }) => curve === hottest.curve) ?? hottestZone(measured);
  const sounds = placedSounds(reading, zone, { record, heard: input.heard ?? [] });
  const logged = openingInLog(reading, measured);
  const unloading = placedUnloading(reading, zone, record, logged);
  if (!sounds.ok || !unloading.ok) return bothProblems(sounds, unloading);
  const opening = knownOpening(unloading.value, logged, zone);
  const pieces = firedPieces(record, plan);
  const opened = kilnOpened(zone.curve, { opening, logged });
  const shut = whileShut(zone.curve, opened);
  const strainOf = strainsOnce();
  const zones = measured.map((each) => ({
    ...each,
    crossings: firedCrossings(each.curve, {
      pieces,
      strainOf,
      opened,
      shut: each === zone ? shut : whileShut(each.curve, opened),
    }),
  }));
  const comparison = plan && comparedWithPlan(zone, plan);
  const facts: FiringFacts = {
    reading,
    record,
    plan,
    zones,
    spread: zoneSpread(zones),
    witness,
    comparison,
    powerLosses: powerLosses(zone.curve, zone.peakAtSeconds, comparison?.planned ?? null),
    heard: sounds.value,
    unloading: unloading.value,
    logged,
    opening,
    strains: firedStrains(shut, {
      pieces,
      strainOf,
      openedC: opening.tempC,
    }),
  };
  const { causes: diagnosis, pieces: diagnosedPieces } = diagnosisOf(crackFacts(facts));
  const { history, nextTime } = beforeAndNext(facts, {
    diagnosis,
    earlier: input.earlier ?? [],
    next: input.next ?? null,
  });
  return ok({
    title: record?.title ?? reading.name,
    reading,
    zones,
    openingInLog: logged.main,
    spread: facts.spread,
    pieces,
    strains: facts.strains,
    offset: witness?.offset ?? null,
    comparison,
    heard: sounds.value.map(({ what, atSeconds, tempC, note }) => ({
      what,
      atSeconds,
      tempC,
      note,
    })),
    recordLines: record ? recordLines(record) : [],
    diagnosis,
    diagnosedPieces,
    nextTime,
    findings: ordered([...firingFindings(facts), ...(history?.findings ?? [])]),
    cautions: cautionsOf(facts),
  });
}

interface TemperatureChannel {
  readonly name: string;
  readonly curve: Curve;
}

function temperatureChannels(reading: LogReading): readonly TemperatureChannel[] {
  return reading.channels.flatMap(({ name, role, curve }) =>
    role === "temperature" && curve ? [{ name, curve }] : [],
  );
}

function hottestChannel(channels: readonly TemperatureChannel[]): TemperatureChannel | undefined {
  return channels
    .map((channel) => ({ channel, peakC: firmPeak(channel.curve).tempC }))
    .reduce<{ channel: TemperatureChannel; peakC: number } | undefined>(
      (best, each) => (best && best.peakC >= each.peakC ? best : each),
      undefined,
    )?.channel;
}

function solved(
  curve: Curve,
  given: {
    readonly series: ConeSeries;
    readonly witnesses: readonly Witness[];
    readonly wire: KnownWire | null;
  },
): FiringFacts["witness"] {
  const { series, witnesses, wire } = given;
  const usual = usualOffsetOf(wire, firmPeak(curve).tempC);
  return {
    offset: witnessOffset({ curve, series, witnesses, usual }),
    labelAsRead: heatworkOf(curve, { series }).position.label,
  };
}

function unknownCones(
  witnesses: readonly Witness[],
  series: ConeSeries,
  name: string,
): readonly Problem[] {
  const known = CONE_MODELS[series].map((model) => model.cone);
  return witnesses.flatMap(({ cone }, i) =>
    known.includes(cone)
      ? []
      : [
          {
            code: "firing/no-such-cone",
            what: `cone ${cone} has no model in the ${series} series`,
            where: `${name}: witnessCones[${i}].cone`,
            expected: `a cone from ${known[0]} to ${known.at(-1)}`,
            fix: "check the cone's number and the series; without a model it cannot judge the thermocouple",
          } as const,
        ],
  );
}

function noTemperature(reading: LogReading): Problem {
  const columns = reading.channels.map((channel) => channel.name).join(", ");
  return {
    code: "firing/no-temperature",
    what: `no temperature was found among the columns ${columns || "(none)"}`,
    where: reading.name,
    expected: "at least one column of measured temperatures with two readings or more",
    fix: "name the column with --column",
  };
}

function bothProblems(...results: readonly Result<unknown>[]): Result<never> {
  return failed(...results.flatMap((result) => (result.ok ? [] : result.problems)));
}

function cautionsOf(facts: FiringFacts): readonly Caution[] {
  const trials = facts.record?.trials ?? [];
  const ware = facts.record?.ware ?? [];
  const found = facts.record?.found ?? [];
  return cautionsFor({
    kiln: true,
    opening: true,
    crackle:
      facts.plan?.ware.crackle === true ||
      trials.some((trial) => trial.cracked === "crackle") ||
      found.some(({ what }) => what === "crackle" || what === "crazing"),
    dampWare: ware.some(({ state }) => state === "damp" || state === "glazed raw"),
    estimate: true,
  });
}

/** What a firing is held against in time: those before it, and the one to come. */
interface BeforeAndNext {
  /** Null when no earlier logs were given. */
  readonly history: FiringHistory | null;
  /** Null when it was not asked for. */
  readonly nextTime: NextTime | null;
}

/** What has changed since earlier firings, and what to change in the next one. */
function beforeAndNext(
  facts: FiringFacts,
  asked: {
    readonly diagnosis: readonly DiagnosedCause[];
    readonly earlier: readonly EarlierLog[];
    readonly next: NextTimePaths | null;
  },
): BeforeAndNext {
  const { reading, record, witness } = facts;
  const now: PastFiring = {
    name: reading.name,
    path: asked.next?.log ?? null,
    firing: kilnFiringOf(reading, record),
    offset: witness?.offset ?? null,
    thermocouple: record?.thermocouple?.type ?? null,
  };
  const history = asked.earlier.length === 0 ? null : historyOf(now, asked.earlier);
  const { diagnosis, next } = asked;
  return {
    history,
    nextTime: next && nextTimeOf(facts, { diagnosis, now, history }, next),
  };
}

/** What a log of the past, with what lies beside it, says about its kiln and its thermocouple. */
export function pastFiringOf(
  path: string,
  files: {
    readonly reading: LogReading;
    readonly record: FiringRecord | null;
    readonly plan: Schedule | null;
  },
): PastFiring {
  const { reading, record, plan } = files;
  const review = record === null ? null : reviewFiring({ reading, record, plan });
  return {
    name: reading.name,
    path,
    firing: kilnFiringOf(reading, record),
    offset: review?.ok ? review.value.offset : null,
    thermocouple: record?.thermocouple?.type ?? null,
  };
}
