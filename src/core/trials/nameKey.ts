/** A name of a clay or a glaze without capitals, blanks and marks, so that a file can be named by it. */
export function nameKey(name: string): string {
  return name
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "")
    .join("-");
}
