/** A file's name as a word of a command that cannot be taken for an option: `./-odd.csv`. */
export function asFile(path: string): string {
  return path.startsWith("-") && path !== "-" ? `./${path}` : path;
}
