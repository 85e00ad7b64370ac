/** What a piece of text is, so that a terminal may colour it. */
export type PaintStyle = "heading" | "strong" | "faint" | "warning" | "caution" | "note" | "good";

/**
 * Colours a piece of text for where it is shown, or leaves it alone.
 * It may only add escape codes; the visible text stays, because the meaning is in the words.
 */
export type Paint = (style: PaintStyle, text: string) => string;

/** Paint for a file, a pipe or a reader who wants no colour. */
export const plainPaint: Paint = (_style, text) => text;
