import { describe, expect, it } from "vitest";
import { samplesOf, waveFormat } from "../../../src/core/pings/waveFormat.ts";

const format = (sampleBytes: number, channels = 1, coding: "whole" | "float" = "whole") => ({
  coding,
  sampleBytes,
  channels,
  sampleRateHz: 8000,
});

describe("samples", () => {
  it.each<[number, readonly number[], readonly number[]]>([
    // Half of full scale up and down, worked by hand: 64, 0x4000, 0x400000, 0x40000000.
    [1, [0xc0, 0x40, 0x80], [0.5, -0.5, 0]],
    [2, [0x00, 0x40, 0x00, 0xc0], [0.5, -0.5]],
    [3, [0x00, 0x00, 0x40, 0x00, 0x00, 0xc0, 0x01, 0x00, 0x00], [0.5, -0.5, 1 / 8388608]],
    [4, [0x00, 0x00, 0x00, 0x40, 0x00, 0x00, 0x00, 0xc0], [0.5, -0.5]],
  ])("of %i bytes are whole numbers over full scale", (bytes, data, values) => {
    expect([...samplesOf(Uint8Array.from(data), format(bytes), "left")]).toEqual(values);
  });

  it("of floating point are as they are, and 0 where they are no number", () => {
    const data = new Uint8Array(Float32Array.from([0.25, Number.NaN, -1]).buffer);
    expect([...samplesOf(data, format(4, 1, "float"), "left")]).toEqual([0.25, 0, -1]);
  });

  it("of two channels are told apart, or averaged", () => {
    const data = Uint8Array.from([0xc0, 0x80, 0x40, 0x80]);
    expect([...samplesOf(data, format(1, 2), "left")]).toEqual([0.5, -0.5]);
    expect([...samplesOf(data, format(1, 2), "right")]).toEqual([0, 0]);
    expect([...samplesOf(data, format(1, 2), "mix")]).toEqual([0.25, -0.25]);
  });

  it("that are no whole frames break a promise", () => {
    expect(() => samplesOf(new Uint8Array(3), format(2), "left")).toThrow(RangeError);
  });
});

describe("the description of samples", () => {
  it("that is cut off, or of 12 bits in floating point, is a problem", () => {
    const cut = waveFormat(new Uint8Array(8), "a.wav");
    expect(cut.ok ? "" : cut.problems[0]?.code).toBe("sound/format");
    const odd = Uint8Array.from([3, 0, 1, 0, 64, 31, 0, 0, 0, 0, 0, 0, 2, 0, 12, 0]);
    const bits = waveFormat(odd, "a.wav");
    expect(bits.ok ? "" : bits.problems[0]?.code).toBe("sound/bits");
  });
});
