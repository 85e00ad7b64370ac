/** Hands a file to the browser to save. */
export function download(name: string, content: string, type: string): void {
  const address = URL.createObjectURL(new Blob([content], { type: `${type};charset=utf-8` }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** A title as the name of a file, without its ending: small letters, numbers and hyphens. */
export function fileStem(title: string): string {
  const plain = title
    .normalize("NFKD")
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, "-");
  return plain.replaceAll(/^-+|-+$/g, "").slice(0, 60) || "schedule";
}
