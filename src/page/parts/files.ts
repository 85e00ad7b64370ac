import { html, type TemplateResult } from "lit-html";
import { failed, ok, type Problem, type Result } from "../../core/problem.ts";
import type { KeptFile } from "./KeptFile.ts";

/** A place to drop or pick files. */
interface FileDropOptions {
  readonly id: string;
  /** On the button: `Pick a schedule`. */
  readonly button: string;
  /** Beside it: `or drop it here`. */
  readonly hint: string;
  /** Endings, as a file field takes them; every file when left out. */
  readonly accept?: string;
  readonly multiple?: boolean;
  readonly onFiles: (files: Result<readonly KeptFile[]>) => void;
}

/** A place for files: they are dropped on it, or picked by its button with mouse or keyboard. */
export function fileDrop(options: FileDropOptions): TemplateResult {
  const { id, button, hint, accept, multiple = false, onFiles } = options;
  const take = async (list: FileList | null | undefined) => {
    const files = [...(list ?? [])];
    if (files.length > 0) onFiles(await keptFiles(multiple ? files : files.slice(0, 1)));
  };
  const picked = async ({ target }: Event) => {
    const input = target as HTMLInputElement;
    await take(input.files);
    input.value = "";
  };
  return html`<div class="drop" @dragover=${over} @dragleave=${leave} @drop=${(
    event: DragEvent,
  ) => {
    leave(event);
    event.preventDefault();
    void take(event.dataTransfer?.files);
  }}>
    <input class="out-of-sight" type="file" id=${id} accept=${accept ?? ""} ?multiple=${multiple} @change=${picked}>
    <label class="button" for=${id}>${button}</label>
    <span class="hint">${hint}</span>
  </div>`;
}

function over(event: DragEvent): void {
  event.preventDefault();
  (event.currentTarget as Element).classList.add("is-over");
}

function leave(event: DragEvent): void {
  (event.currentTarget as Element).classList.remove("is-over");
}

async function keptFiles(files: readonly File[]): Promise<Result<readonly KeptFile[]>> {
  const kept: KeptFile[] = [];
  const problems: Problem[] = [];
  for (const file of files)
    try {
      kept.push({ name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) });
    } catch {
      problems.push({
        code: "file/not-read",
        where: file.name,
        what: "the browser could not read it",
        expected: "a single file that this computer may read, not a folder",
        fix: "copy it to another place and pick it there",
      });
    }
  return problems.length > 0 ? failed(...problems) : ok(kept);
}

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
