import { describe, expect, it } from "vitest";
import { USUAL_SETTINGS } from "../../../src/core/pings/Ping.ts";
import {
  addClicks,
  addFan,
  addHiss,
  addHum,
  addPink,
  addSpeech,
  clicksAt,
  heard,
  scored,
  silence,
} from "../../support/clicks.ts";

const RATE = 16_000;
const NOISE_RMS = 0.003;

const NOISES = {
  hiss: (sound: Float64Array) => addHiss(sound, NOISE_RMS, 1),
  pink: (sound: Float64Array) => addPink(sound, NOISE_RMS, 2),
  fan: (sound: Float64Array) => addFan(sound, RATE, { rms: NOISE_RMS, seed: 3 }),
} as const;

const grounds = new Map<keyof typeof NOISES, Float64Array>();

/** Ninety seconds of hum and a noise; made once, to be copied. */
function ground(noise: keyof typeof NOISES): Float64Array {
  const made = grounds.get(noise);
  if (made !== undefined) return made;
  const sound = silence(90, RATE);
  addHum(sound, RATE, { mainsHz: 50, peak: 0.02 });
  NOISES[noise](sound);
  grounds.set(noise, sound);
  return sound;
}

/** Hum, a noise, and a hundred clicks whose peak stands so far over the noise's root mean square. */
function recording(noise: keyof typeof NOISES, peakDb: number) {
  const sound = ground(noise).slice();
  const made = clicksAt({
    count: 100,
    fromSeconds: 1,
    toSeconds: 89,
    apartSeconds: 0.3,
    peak: NOISE_RMS * 10 ** (peakDb / 20),
    pitchesHz: [900, 1800, 3000, 4500, 6200],
    seed: 9,
  });
  addClicks(sound, RATE, made);
  return { made, sound };
}

describe.each(["hiss", "pink", "fan"] as const)("clicks in hum and %s", (noise) => {
  it.each([
    [10, 0.65, 0.01],
    [14, 0.97, 0.01],
    [20, 1, 0.003],
    [30, 1, 0.003],
  ])(
    "%i dB over it: enough are found, nothing else is, times hold",
    (peakDb, recall, withinSeconds) => {
      const { made, sound } = recording(noise, peakDb);
      const score = scored(made, heard(sound, RATE).pings);
      expect(score.precision).toBe(1);
      expect(score.recall).toBeGreaterThanOrEqual(recall);
      expect(score.worstSeconds).toBeLessThan(withinSeconds);
    },
  );
});

describe("what is no ping", () => {
  it.each([8000, 16_000, 44_100])(
    "steady noise with hum at %i Hz, three minutes: nothing",
    (rate) => {
      const sound = silence(180, rate);
      addHum(sound, rate, { mainsHz: 60, peak: 0.02 });
      addPink(sound, NOISE_RMS, 11);
      expect(heard(sound, rate).pings).toEqual([]);
    },
  );

  it("speech over noise: nothing, though its sounds are 30 dB louder", () => {
    const sound = silence(60, RATE);
    addPink(sound, NOISE_RMS, 2);
    addSpeech(sound, RATE, { from: 20, to: 40, peak: 0.1, seed: 4 });
    const found = heard(sound, RATE);
    expect(found.pings.length).toBeLessThanOrEqual(2);
  });

  it("thuds: a tone of 90 Hz that starts at once is counted as a thud", () => {
    const sound = silence(30, RATE);
    addPink(sound, NOISE_RMS, 2);
    const thuds = [6, 12, 18].map((atSeconds) => ({
      atSeconds,
      pitchHz: 90,
      peak: 0.5,
      dyingSeconds: 0.08,
    }));
    addClicks(sound, RATE, thuds);
    const found = heard(sound, RATE);
    expect(found.pings).toEqual([]);
    expect(found.others.thuds + found.others.slow).toBeGreaterThanOrEqual(3);
  });

  it("a motor that starts at once and stays", () => {
    const sound = silence(40, RATE);
    addPink(sound, NOISE_RMS, 2);
    const motor = silence(40, RATE);
    addHiss(motor, 0.05, 5);
    for (let i = 20 * RATE; i < sound.length; i++)
      sound[i] = (sound[i] as number) + (motor[i] as number);
    const found = heard(sound, RATE);
    expect(found.pings).toEqual([]);
    expect(found.others.lasting).toBeGreaterThan(0);
  });
});

describe("a found click", () => {
  const sound = silence(30, RATE);
  addHiss(sound, 0.0005, 8);
  addClicks(sound, RATE, [
    { atSeconds: 10, pitchHz: 3000, peak: 0.5, dyingSeconds: 0.02 },
    { atSeconds: 20, pitchHz: 1000, peak: 0.05, dyingSeconds: 0.01 },
  ]);
  const { pings } = heard(sound, RATE);
  const [light, deep] = pings;

  it("has its tone to a tenth", () => {
    expect(pings).toHaveLength(2);
    expect(light?.pitchHz).toBeGreaterThan(2700);
    expect(light?.pitchHz).toBeLessThan(3300);
    expect(deep?.pitchHz).toBeGreaterThan(900);
    expect(deep?.pitchHz).toBeLessThan(1100);
  });

  it("dies away by 20 dB in ln 10 times its dying time", () => {
    expect(light?.decayMs).toBeGreaterThan(0.9 * 20 * Math.LN10);
    expect(light?.decayMs).toBeLessThan(1.1 * 20 * Math.LN10);
    expect(deep?.decayMs).toBeGreaterThan(0.85 * 10 * Math.LN10);
    expect(deep?.decayMs).toBeLessThan(1.15 * 10 * Math.LN10);
  });

  it("has its peak in dB of full scale: half is −6, a tenth of that 20 lower", () => {
    expect(light?.levelDbfs).toBeGreaterThan(-8);
    expect(light?.levelDbfs).toBeLessThan(-5);
    expect((light?.levelDbfs ?? 0) - (deep?.levelDbfs ?? 0)).toBeGreaterThan(17.5);
    expect((light?.levelDbfs ?? 0) - (deep?.levelDbfs ?? 0)).toBeLessThan(22.5);
  });

  it("that is cut off at full scale says so", () => {
    const loud = sound.map((value) => Math.max(-1, Math.min(1, 4 * value)));
    expect(heard(loud, RATE).pings.map(({ isClipped }) => isClipped)).toEqual([true, false]);
  });
});

describe("the settings", () => {
  const { made, sound } = recording("pink", 20);

  it("with a threshold above the clicks find none, with one below find all", () => {
    const at = (thresholdDb: number) =>
      heard(sound, RATE, { ...USUAL_SETTINGS, thresholdDb }).pings;
    expect(at(60)).toEqual([]);
    expect(scored(made, at(12)).recall).toBe(1);
  });

  it("take clicks closer than asked as one", () => {
    const pair = silence(20, RATE);
    addPink(pair, NOISE_RMS, 2);
    const click = { pitchHz: 3000, peak: 0.3, dyingSeconds: 0.004 };
    addClicks(pair, RATE, [
      { ...click, atSeconds: 10 },
      { ...click, atSeconds: 10.04 },
      { ...click, atSeconds: 12 },
      { ...click, atSeconds: 12.1 },
    ]);
    expect(heard(pair, RATE).pings).toHaveLength(3);
    expect(heard(pair, RATE, { ...USUAL_SETTINGS, apartSeconds: 0.02 }).pings).toHaveLength(4);
  });
});

describe("listening in blocks", () => {
  it("gives the same whatever the blocks, over several stretches of a minute", () => {
    const sound = silence(200, 8000);
    addPink(sound, NOISE_RMS, 6);
    const made = clicksAt({
      count: 150,
      fromSeconds: 1,
      toSeconds: 199,
      apartSeconds: 0.2,
      peak: 0.05,
      pitchesHz: [1000, 2000, 3000],
      seed: 3,
    });
    addClicks(sound, 8000, made);
    const whole = heard(sound, 8000, USUAL_SETTINGS, sound.length);
    expect(scored(made, whole.pings)).toMatchObject({ recall: 1, precision: 1 });
    expect(whole.seconds).toBeCloseTo(200, 6);
    expect(heard(sound, 8000, USUAL_SETTINGS, 777)).toEqual(whole);
  });

  it("counts every sample and every thud once, though stretches overlap", () => {
    const sound = silence(200, 8000);
    addPink(sound, NOISE_RMS, 6);
    for (let i = 0; i < 80_000; i++) sound[i] = 0;
    const thuds = [70, 100, 128, 160].map((atSeconds) => ({
      atSeconds,
      pitchHz: 90,
      peak: 0.9,
      dyingSeconds: 0.08,
    }));
    addClicks(sound, 8000, thuds);
    const { others, zeroShare } = heard(sound, 8000);
    // The fifth is the noise itself, which begins after ten seconds.
    expect(others.thuds + others.slow + others.lasting).toBe(5);
    expect(zeroShare).toBeCloseTo(0.05, 3);
  });
});
