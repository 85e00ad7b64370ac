import { describe, expect, it } from "vitest";
import { theme } from "../../../src/core/charts/theme.ts";

/** Relative luminance and contrast as the Web Content Accessibility Guidelines 2 define them; from memory. */
function luminance(hex: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(a: string, b: string): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

describe.each([
  { name: "light", colours: theme(false) },
  { name: "dark", colours: theme(true) },
])("$name theme", ({ colours }) => {
  it("has words that stand out at 4.5 to 1 or more", () => {
    expect(contrast(colours.ink, colours.paper)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(colours.quiet, colours.paper)).toBeGreaterThanOrEqual(4.5);
  });

  it("has lines that stand out at 3 to 1 or more", () => {
    for (const style of [...colours.measured, colours.planned, ...colours.compared])
      expect(contrast(style.stroke, colours.paper)).toBeGreaterThanOrEqual(3);
    expect(contrast(colours.ember, colours.paper)).toBeGreaterThanOrEqual(3);
  });

  it("tells every two lines apart without hue, by width or dash", () => {
    for (const styles of [[...colours.measured, colours.planned], colours.compared]) {
      const looks = styles.map((style) => JSON.stringify([style.strokeWidth, style.strokeDash]));
      expect(new Set(looks).size).toBe(styles.length);
    }
  });

  it("prints the first two thermocouples in greys that differ", () => {
    const [first, second] = colours.measured;
    expect(contrast(first!.stroke, second!.stroke)).toBeGreaterThanOrEqual(1.5);
  });
});
