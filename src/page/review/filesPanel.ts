import { html, nothing, type TemplateResult } from "lit-html";
import demoLog from "../../../logs/2026-05-23-b.csv?raw";
import demoRecord from "../../../logs/2026-05-23-b.yaml?raw";
import { failed, ok, type Problem, type Result } from "../../core/problem.ts";
import { parseRecordFile } from "../../core/record/parseRecord.ts";
import { parseSchedule } from "../../core/schedule/scheduleFile.ts";
import { fileDrop } from "../parts/files.ts";
import { type KeptFile, sameFiring } from "../parts/KeptFile.ts";
import { isEmpty, NOTHING_TOLD, type ReviewWork } from "../state/reviewState.ts";
import type { Bench } from "../state/state.ts";
import { firingGroups, textOf, withLaid } from "../worker/readGroup.ts";
import { changeReview, columnsOf, showReview } from "./changeReview.ts";

/** The files on the table, and places to lay more. */
export function filesPanel(bench: Bench): TemplateResult {
  const { review, unitChosen } = bench.state().work;
  const { isFollowed } = bench.state().review;
  const drop = fileDrop({
    id: "review-files",
    button: review.log === null ? "Pick a log" : "Pick other files",
    hint: "or drop it here: any table of times and temperatures, with its record and its schedule (.yaml) if you have them",
    multiple: true,
    onFiles: (files) => layFiles(bench, files),
  });
  if (isEmpty(review)) return emptyTable(bench, drop);
  return html`${drop}<ul class="files">
    ${fileItem(bench, "log")}${fileItem(bench, "record")}${fileItem(bench, "schedule")}
  </ul>${isFollowed && !unitChosen ? html`<p class="hint">This log is in °F, so the page shows °F now. The switch above shows all in °C; what is stored stays the same.</p>` : nothing}${review.log === null ? html`<p class="lead">The log is still missing: drop or pick it.</p>` : nothing}`;
}

function emptyTable(bench: Bench, drop: TemplateResult): TemplateResult {
  return html`<div class="empty-table">
    <p class="lead">Lay down the log of a firing, and read what it did to the ware.</p>
    ${drop}
    <p>The log is a file from your controller or your logger, of any make. The page tells you how it read it, the cone that was reached, how fast it went through the inversions, and what to change next time.</p>
    <p><button type="button" @click=${() => changeReview(bench, "laying down the demo firing", demoFiring())}>Try it with a demo firing</button>
      <span class="hint">invented: platters that cracked in a kiln opened too hot</span></p>
  </div>`;
}

const WHAT = { log: "log", record: "record", schedule: "schedule" } as const;

function fileItem(bench: Bench, kind: keyof typeof WHAT): TemplateResult | typeof nothing {
  const file = bench.state().work.review[kind];
  if (file === null) return nothing;
  return html`<li><span class="file-kind">${WHAT[kind]}</span> <span class="file-name">${file.name}</span>
    <button type="button" class="slim" @click=${() => changeReview(bench, `taking away ${file.name}`, { [kind]: null })}>Take away<span class="out-of-sight"> ${file.name}</span></button></li>`;
}

/** Earlier firings of the kiln: what has changed since shows among the findings. */
export function earlierPanel(bench: Bench): TemplateResult {
  const { earlier } = bench.state().work.review;
  return html`<section class="report-part" id="earlier" aria-labelledby="earlier-title">
    <h3 id="earlier-title">Earlier firings of this kiln</h3>
    <p>With earlier logs and their records, the findings say what has changed: elements that pull less, a thermocouple that has drifted.</p>
    ${fileDrop({
      id: "earlier-files",
      button: "Pick earlier logs",
      hint: "or drop them here, each with the record of the same name",
      multiple: true,
      onFiles: (files) => layEarlier(bench, files),
    })}
    ${
      earlier.length === 0
        ? nothing
        : html`<ul class="files">${earlier.map(
            (file, at) => html`<li><span class="file-name">${file.name}</span>
          <button type="button" class="slim" @click=${() =>
            changeReview(bench, `taking away ${file.name}`, {
              earlier: earlier.filter((_, each) => each !== at),
            })}>Take away<span class="out-of-sight"> ${file.name}</span></button></li>`,
          )}</ul>`
    }
  </section>`;
}

function layEarlier(bench: Bench, files: Result<readonly KeptFile[]>): void {
  const sorted = files.ok ? withLogs(files.value) : files;
  if (!sorted.ok) {
    showReview(bench, { refused: sorted.problems });
    return;
  }
  const { earlier } = bench.state().work.review;
  changeReview(bench, "laying down earlier logs", { earlier: withLaid(earlier, sorted.value) });
}

function withLogs(files: readonly KeptFile[]): Result<readonly KeptFile[]> {
  if (firingGroups(files).length > 0) return { ok: true, value: files };
  return failed({
    code: "page/no-log",
    where: files.map(({ name }) => name).join(", "),
    what: "there is no log among these files",
    expected: "earlier logs, each with the record of the same name if there is one",
    fix: "pick the logs together with their records",
  });
}

/** An invented firing to try the table with: its log and record; its schedule comes with the page. */
function demoFiring(): ReviewWork {
  return {
    log: fileOf("2026-05-23-b.csv", demoLog),
    record: fileOf("2026-05-23-b.yaml", demoRecord),
    schedule: null,
    earlier: [],
    told: NOTHING_TOLD,
  };
}

function fileOf(name: string, text: string): KeptFile {
  return { name, bytes: new Uint8Array(new TextEncoder().encode(text)) };
}

/**
 * Lays dropped files on the table; a wrong drop changes nothing and says why.
 * A record belongs to the log that it was laid down with: when the log of another firing comes,
 * whatever its name, the old record goes with the old log, which is asked about first.
 */
async function layFiles(bench: Bench, files: Result<readonly KeptFile[]>): Promise<void> {
  const sorted = files.ok ? sortFiles(files.value) : files;
  const log = sorted.ok ? sorted.value.log : null;
  const looked = log === null ? ok([]) : await columnsOf(log, NOTHING_TOLD);
  if (looked === null) return;
  if (!sorted.ok || !looked.ok) {
    showReview(bench, {
      refused: [sorted, looked].flatMap((part) => (part.ok ? [] : part.problems)),
    });
    return;
  }
  const now = bench.state().work.review;
  const isOther = log !== null && now.log !== null && !sameFiring(log, now.log);
  const lay = () => laid(bench, sorted.value, isOther);
  if (isOther && now.record !== null && sorted.value.record === null) askFirst(bench, log, lay);
  else lay();
}

function laid(bench: Bench, { log, record, schedule }: SortedFiles, isOther: boolean): void {
  const now = bench.state().work.review;
  const isSame = log !== null && now.log !== null && !isOther;
  const names = [log, record, schedule].flatMap((file) => file?.name ?? []);
  changeReview(bench, `laying down ${names.join(", ")}`, {
    ...(log !== null && { log, told: isSame ? now.told : NOTHING_TOLD }),
    ...(isOther && { record: null, schedule: null }),
    ...(record !== null && { record }),
    ...(schedule !== null && { schedule }),
  });
}

function askFirst(bench: Bench, log: KeptFile, lay: () => void): void {
  const { review } = bench.state().work;
  const [old, record] = [review.log?.name ?? "the log", review.record?.name ?? "its record"];
  const twin = old === log.name ? "another firing of the same name" : "another firing";
  bench.show((state) => ({
    ...state,
    question: {
      title: "Lay down another firing?",
      text: `${log.name} is the log of ${twin}. The record that lies here, ${record}, belongs to ${old} and is put away with it, your answers included. Save the record first if you want it as a file; Undo brings both back while the page is open.`,
      yes: "Lay it down",
      onYes: lay,
    },
  }));
}

/** Files of one firing, told apart by what is in them. */
interface SortedFiles {
  readonly log: KeptFile | null;
  readonly record: KeptFile | null;
  readonly schedule: KeptFile | null;
}

type Kind = keyof SortedFiles;

/** Longest text that can be a record or a schedule [bytes]. */
const LONGEST_DOCUMENT = 500_000;

/**
 * Files that were dropped together as log, record and schedule; all that is wrong with them.
 * Whether a log is one is for its reader to say.
 */
export function sortFiles(files: readonly KeptFile[]): Result<SortedFiles> {
  const problems: Problem[] = [];
  const sorted: Record<Kind, KeptFile | null> = { log: null, record: null, schedule: null };
  for (const file of files) {
    const kind = kindOf(file);
    const wrong = kind === "bench" ? [isBench(file)] : wrongWith(file, kind);
    problems.push(...wrong);
    if (kind === "bench") continue;
    const other = sorted[kind];
    if (other !== null) problems.push(twice(kind, [other, file]));
    sorted[kind] = file;
  }
  return problems.length > 0 ? failed(...problems) : ok(sorted);
}

function kindOf(file: KeptFile): Kind | "bench" {
  if (file.bytes.length > LONGEST_DOCUMENT * 2) return "log";
  const text = textOf(file);
  if (!text.ok) return "log";
  const has = (key: string) => new RegExp(`^\\s*[{,]?\\s*"?${key}"?\\s*:`, "m").test(text.value);
  if (has("undunted") && has("formatVersion")) return "bench";
  if (has("segments")) return "schedule";
  return has("formatVersion") || /\.(?:ya?ml|json)$/i.test(file.name) ? "record" : "log";
}

function wrongWith(file: KeptFile, kind: Kind): readonly Problem[] {
  if (kind === "log") return [];
  const text = textOf(file);
  if (!text.ok) return text.problems;
  const read =
    kind === "record"
      ? parseRecordFile(text.value, file.name)
      : parseSchedule(text.value, file.name);
  return read.ok ? [] : read.problems;
}

function isBench(file: KeptFile): Problem {
  return {
    code: "page/whole-bench",
    where: file.name,
    what: "it is a whole bench, saved from this page",
    expected: "a log, its record or its schedule",
    fix: "open it with “Whole bench”, above",
  };
}

function twice(kind: Kind, files: readonly KeptFile[]): Problem {
  return {
    code: "page/two-of-a-kind",
    where: files.map(({ name }) => name).join(" and "),
    what: `each is a ${kind}`,
    expected: `one ${kind}: this table holds one firing`,
    fix:
      kind === "log"
        ? "drop one here; several firings go side by side on the Compare table, and earlier ones of this kiln on their own place below"
        : "drop one of them",
  };
}
