import { expect, it } from "vitest";
import { byteTape } from "../../../../src/core/log/text/bytes.ts";

const text = (bytes: Uint8Array) => new TextDecoder().decode(bytes);

it("gives the bytes from the beginning of any line, over parts and kinds of line ends", () => {
  const tape = byteTape();
  for (const part of ["one\r", "\ntwo\rth", "ree\n\nfi", "ve"])
    tape.add(new TextEncoder().encode(part));
  const from = (line: number) => text(tape.fromLine(line));
  expect(from(1)).toBe("one\r\ntwo\rthree\n\nfive");
  expect(from(2)).toBe("two\rthree\n\nfive");
  expect(from(3)).toBe("three\n\nfive");
  expect(from(4)).toBe("\nfive");
  expect(from(5)).toBe("five");
  expect(from(6)).toBe("");
});

it("goes on from the nearest noted line", () => {
  const tape = byteTape();
  const lines = Array.from({ length: 1000 }, (_, i) => `line ${i + 1}\n`);
  tape.add(new TextEncoder().encode(lines.join("")));
  tape.mark(500, lines.slice(0, 499).join("").length);
  expect(tape.nextMark()).toBe(564);
  for (const line of [1, 64, 499, 500, 501, 1000])
    expect(text(tape.fromLine(line)).split("\n")[0]).toBe(`line ${line}`);
});

it("keeps 64 MB and no more", () => {
  const tape = byteTape();
  const million = new Uint8Array(1 << 20).fill(10);
  for (let i = 0; i < 70; i++) tape.add(million);
  tape.mark(1 + 63 * 2 ** 20, 63 * 2 ** 20);
  tape.mark(1 + 65 * 2 ** 20, 65 * 2 ** 20);
  expect(tape.fromLine(1 + 63 * 2 ** 20).length).toBe(4096);
  expect(tape.fromLine(1 + 65 * 2 ** 20).length).toBe(0);
});
