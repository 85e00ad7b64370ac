/**
 * A drawing whose ids carry a prefix, so that several can stand in one page without one taking
 * the clip path of another.
 * @throws RangeError when it is not an SVG element, or holds a script: charts are our own drawings.
 */
export function withOwnIds(svg: string, prefix: string): string {
  const drawing = svg.replace(/^\s*<\?xml[^>]*\?>\s*/, "").trim();
  if (!drawing.startsWith("<svg") || /<script/i.test(drawing))
    throw new RangeError(`withOwnIds: ${prefix} is not a drawing without scripts`);
  return drawing
    .replace(/(\sid=["'])([^"']+)/g, `$1${prefix}-$2`)
    .replace(/url\((["']?)#/g, `url($1#${prefix}-`)
    .replace(/((?:xlink:)?href=["'])#/g, `$1#${prefix}-`);
}
