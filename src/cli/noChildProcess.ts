/**
 * Stands in for `node:child_process` in the built command: no command of ours is another program,
 * and loading the real module would cost every start several milliseconds.
 * @throws RangeError when the option parser asks for another program all the same.
 */
export function spawn(): never {
  throw new RangeError("spawn: undunted starts no other programs");
}
