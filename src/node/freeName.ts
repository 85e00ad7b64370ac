import { access } from "node:fs/promises";

/** A file name like `next.yaml` that is not there yet: else `next-2.yaml`, `next-3.yaml`, … */
export async function freeName(stem: string, ending: string): Promise<string> {
  for (let count = 1; ; count++) {
    const name = count === 1 ? `${stem}${ending}` : `${stem}-${count}${ending}`;
    if (!(await isThere(name))) return name;
  }
}

async function isThere(path: string): Promise<boolean> {
  return access(path).then(
    () => true,
    () => false,
  );
}
