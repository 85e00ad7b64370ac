import { escapeHtml } from "../../core/reports/blockHtml.ts";

/** How far a drawing reaches [px], from the top left corner of its plot. */
export interface Reach {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A piece of a drawing: SVG, and how far it reaches. */
export interface Ink {
  readonly svg: string;
  readonly reach: Reach | null;
}

/** The reach of several pieces together. */
export function reachOf(pieces: readonly Ink[]): Reach {
  const known = pieces.flatMap(({ reach }) => (reach === null ? [] : [reach]));
  return {
    left: Math.min(0, ...known.map(({ left }) => left)),
    right: Math.max(0, ...known.map(({ right }) => right)),
    top: Math.min(0, ...known.map(({ top }) => top)),
    bottom: Math.max(0, ...known.map(({ bottom }) => bottom)),
  };
}

/** An SVG element; what is undefined is left out. */
export function element(
  name: string,
  attributes: Readonly<Record<string, string | number | undefined>>,
  content = "",
): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(
      ([key, value]) =>
        ` ${key}="${typeof value === "number" ? px(value) : escapeHtml(value as string)}"`,
    );
  return content === ""
    ? `<${name}${written.join("")}/>`
    : `<${name}${written.join("")}>${content}</${name}>`;
}

/** A number of pixels to a hundredth. */
export function px(value: number): string {
  return String(Math.round(value * 100) / 100);
}
