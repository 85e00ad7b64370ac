import { describe, expect, it } from "vitest";
import { USUAL_SETTINGS } from "../../../src/core/pings/Ping.ts";
import type { SoundChannel } from "../../../src/core/pings/waveFormat.ts";
import { problemText } from "../../../src/core/problem.ts";
import { readSound } from "../../../src/node/readSound.ts";
import { addClicks, addHiss, silence } from "../../support/clicks.ts";
import { fileWith } from "../../support/undunted.ts";
import { type WaveShape, waveFile } from "../../support/waves.ts";

const RATE = 8000;
const TIMES = [4, 7.5, 12];

/** Twelve to sixteen seconds of faint noise with three clicks. */
function sound(seed = 1): Float64Array {
  const samples = silence(16, RATE);
  addHiss(samples, 0.01, seed);
  addClicks(
    samples,
    RATE,
    TIMES.map((atSeconds) => ({ atSeconds, pitchHz: 2000, peak: 0.6, dyingSeconds: 0.008 })),
  );
  return samples;
}

function read(bytes: Uint8Array, channel: SoundChannel | null = null) {
  return readSound(fileWith("ticks.wav", bytes), { channel, settings: USUAL_SETTINGS });
}

async function heardTimes(bytes: Uint8Array, channel: SoundChannel | null = null) {
  const result = await read(bytes, channel);
  if (!result.ok) throw new Error(result.problems.map(problemText).join("\n"));
  return result.value.heard.pings.map(({ atSeconds }) => Math.round(atSeconds * 100) / 100);
}

async function problem(bytes: Uint8Array, channel: SoundChannel | null = null): Promise<string> {
  const result = await read(bytes, channel);
  return result.ok ? "" : result.problems.map(problemText).join("\n");
}

const wave = (shape: Partial<WaveShape> = {}, ...channels: Float64Array[]) =>
  waveFile(channels.length === 0 ? [sound()] : channels, { sampleRateHz: RATE, ...shape });

const LIST = { id: "LIST", bytes: Uint8Array.from([73, 78, 70, 79, 1]) };

describe("a recording is read by its content", () => {
  it.each<[string, Partial<WaveShape>]>([
    ["8 bits", { bits: 8 }],
    ["16 bits", { bits: 16 }],
    ["24 bits", { bits: 24 }],
    ["32 bits", { bits: 32 }],
    ["32 bits, floating point", { bits: 32, isFloat: true }],
    ["64 bits, floating point", { bits: 64, isFloat: true }],
    ["the long description", { bits: 24, isExtensible: true }],
    ["the long description, floating point", { bits: 32, isFloat: true, isExtensible: true }],
    ["sizes over 4 GB (RF64)", { isLong: true }],
    ["a LIST chunk of odd length in between", { between: [LIST] }],
  ])("%s", async (_, shape) => {
    expect(await heardTimes(wave(shape))).toEqual(TIMES);
  });

  it("up to where it was cut off, and says how much is missing", async () => {
    const whole = wave();
    const result = await read(whole.subarray(0, 44 + 2 * RATE * 11));
    if (!result.ok) throw new Error("not read");
    expect(result.value.heard.pings).toHaveLength(2);
    expect(result.value.sound.notes.join()).toContain("claims 5 s more than it holds");
  });

  it("to its end when its size was never filled in", async () => {
    expect(await heardTimes(wave({ claimedBytes: 0 }))).toEqual(TIMES);
    expect(await heardTimes(wave({ claimedBytes: 0xffffffff }))).toEqual(TIMES);
  });
});

describe("two channels", () => {
  const [quiet, other] = [silence(16, RATE), sound(2)];

  it("that are the same need no choice, and neither do they when one is dead", async () => {
    expect(await heardTimes(wave({}, sound(), sound()))).toEqual(TIMES);
    expect(await heardTimes(wave({}, quiet, sound()))).toEqual(TIMES);
  });

  it("that differ do", async () => {
    const text = await problem(wave({}, sound(), other));
    expect(text).toContain("its two channels differ");
    expect(text).toContain("--channel left, right or mix");
    expect(text).toContain("(sound/channels)");
    for (const channel of ["left", "right", "mix"] as const)
      expect(await heardTimes(wave({}, sound(), other), channel)).toEqual(TIMES);
  });
});

describe("what is no recording to hear pings in", () => {
  it.each<[string, Uint8Array, string]>([
    ["text", Buffer.from("time,temp\n1,2\n3,4\n"), "(sound/not-wav)"],
    ["nothing", new Uint8Array(0), "it is empty"],
    ["an MP3 file named .wav", Buffer.from("ID3\u0004 and so on and on"), "it is an MP3 file"],
    ["a telephone's recording", Buffer.from("\0\0\0\u0020ftypM4A and more"), "MP4 or M4A"],
    ["compressed samples", wave({ code: 17 }), "save as uncompressed WAV"],
    ["fewer than 4000 samples a second", wave({ sampleRateHz: 3000 }), "(sound/slow-sampling)"],
    ["five seconds", wave({}, sound().subarray(0, 5 * RATE)), "(sound/too-short)"],
    ["silence", wave({}, silence(16, RATE)), "it is silent throughout"],
    ["a header without samples", wave().subarray(0, 36), "it holds no samples"],
    [
      "a fifth of the samples at full scale",
      wave(
        {},
        sound().map((value, i) => (i % 5 === 0 ? 1 : value)),
      ),
      "20 % of its samples are at full scale",
    ],
  ])("%s", async (_, bytes, words) => {
    expect(await problem(bytes)).toContain(words);
  });

  it("a right channel where there is one only", async () => {
    expect(await problem(wave(), "right")).toContain("(sound/no-such-channel)");
  });

  it("a file that is not there", async () => {
    const result = await readSound("no-such.wav", { channel: null, settings: USUAL_SETTINGS });
    expect(result.ok ? "" : result.problems[0]?.code).toBe("file/missing");
  });
});
