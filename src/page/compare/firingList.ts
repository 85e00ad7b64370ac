import { html, nothing, type TemplateResult } from "lit-html";
import { repeat } from "lit-html/directives/repeat.js";
import type { Result } from "../../core/problem.ts";
import { inert } from "../../core/text/escape.ts";
import { printTemperature } from "../../core/text/quantities.ts";
import { problemList } from "../parts/controls.ts";
import { type KeptFile, sameFile } from "../parts/KeptFile.ts";
import { stemOf } from "../review/changeReview.ts";
import { NOTHING_TOLD } from "../state/reviewState.ts";
import type { Bench } from "../state/state.ts";
import type { ComparedLog } from "../worker/answers.ts";
import type { FiringGroup } from "../worker/readGroup.ts";
import { changeCompare, compareGroups, looseFiles, otherKind } from "./changeCompare.ts";

/** The firings in their order, each with what was read of it and what can be done with it. */
export function firingList(bench: Bench): TemplateResult {
  const { files } = bench.state().work.compare;
  const groups = compareGroups(files);
  const loose = looseFiles(files);
  return html`${
    groups.length === 0
      ? nothing
      : html`<ol class="laid-firings" aria-label="Firings in the order of the comparison">${repeat(
          groups,
          ({ log }) => log.name,
          (group, at) => firing(bench, group, { at, count: groups.length }),
        )}</ol>`
  }${
    loose.length === 0
      ? nothing
      : html`<ul class="files">${loose.map((file) => looseItem(bench, file))}</ul>`
  }`;
}

interface Place {
  readonly at: number;
  readonly count: number;
}

function firing(bench: Bench, group: FiringGroup, { at, count }: Place): TemplateResult {
  const { log, record } = group;
  const read = bench.state().compare.reads.get(log);
  const name = inert(log.name);
  const title = read?.ok ? read.value.facts.title : log.name;
  const base = baseName(bench);
  const written = recordFromReview(bench, group);
  return html`<li id=${itemId(log)} class="laid-firing">
    <div class="laid-what">
      <p class="laid-title">${inert(title)}</p>
      <p class="laid-files"><span class="file-name">${name}</span> ${record === null ? html`<span class="file-kind">without a record</span>` : html`<span class="file-kind">with ${inert(record.name)}</span>`}</p>
      ${readWords(bench, read)}
    </div>
    <div class="laid-controls">
      ${
        read?.ok && count > 1
          ? html`<label class="base-choice"><input type="radio" name="base" .checked=${base === log.name}
              @change=${() => changeCompare(bench, `holding the others against ${log.name}`, { base: log.name })}>
              <span>Hold the others against it<span class="out-of-sight">: ${name}</span></span></label>`
          : nothing
      }
      ${written === null ? nothing : html`<button type="button" class="slim" @click=${() => takeRecord(bench, group, written)}>Take the record from Review<span class="out-of-sight"> ${name}</span></button>`}
      <button type="button" class="slim" ?disabled=${at === 0} data-move="up" @click=${() => move(bench, log, -1)}>Up<span class="out-of-sight"> ${name}</span></button>
      <button type="button" class="slim" ?disabled=${at === count - 1} data-move="down" @click=${() => move(bench, log, 1)}>Down<span class="out-of-sight"> ${name}</span></button>
      <button type="button" class="slim" @click=${() => reviewFiringAgain(bench, group)}>Review it<span class="out-of-sight"> ${name}</span></button>
      <button type="button" class="slim" @click=${() => take(bench, [log, record])}>Take away<span class="out-of-sight"> ${name}</span></button>
    </div>
  </li>`;
}

/** Name of the log that the others are held against: the one chosen, or the first that can be read. */
function baseName(bench: Bench): string | null {
  const { files, base } = bench.state().work.compare;
  const { reads } = bench.state().compare;
  const read = compareGroups(files).filter(({ log }) => reads.get(log)?.ok);
  const chosen = read.find(({ log }) => log.name === base) ?? read[0];
  return chosen?.log.name ?? null;
}

function readWords(bench: Bench, read: Result<ComparedLog> | undefined): TemplateResult {
  if (read === undefined) return html`<p class="hint">not read yet</p>`;
  if (!read.ok) return html`${problemList(read.problems)}`;
  const { unit } = bench.state().work;
  const { rows, coneLabel, peakC, tiles } = read.value.facts;
  return html`<p class="laid-facts">
    <span>${coneLabel}</span> <span>peak ${printTemperature(peakC, unit)}</span>
    <span>${rows.accepted === rows.total ? `${rows.total} rows` : `${rows.accepted} of ${rows.total} rows`}</span>
    <span>${tiles === null ? "no record" : tiles === 0 ? "no tiles" : `${tiles} ${tiles === 1 ? "tile" : "tiles"}`}</span>
  </p>`;
}

function looseItem(bench: Bench, file: KeptFile): TemplateResult {
  return html`<li><span class="file-kind">${looseWords(bench, file)}</span> <span class="file-name">${inert(file.name)}</span>
    <button type="button" class="slim" @click=${() => take(bench, [file])}>Take away<span class="out-of-sight"> ${inert(file.name)}</span></button></li>`;
}

const LOOSE = {
  schedule: "schedule",
  record: "record; its log is still missing",
  nothing: "of no use without its log",
  stranger: "record of another log of this name; its own is not here",
} as const;

/** What a file is that belongs to no single log, and of ware what it stands for. */
function looseWords(bench: Bench, file: KeptFile): string {
  const kind = otherKind(file);
  if (file.of !== undefined && hasLogOfItsName(bench, file)) return LOOSE.stranger;
  if (kind !== "glaze" && kind !== "body") return LOOSE[kind];
  const thing = kind === "glaze" ? "glaze" : "clay";
  const { uses } = bench.state().compare;
  const names = uses?.[file.name] ?? [];
  if (uses === null || names.length > 0) return inert([thing, names.join(", ")].join(" ").trim());
  return kind === "glaze"
    ? "glaze; no tile here has one of its title"
    : "clay; no tile here is of it without a body of its own in the record";
}

function hasLogOfItsName(bench: Bench, file: KeptFile): boolean {
  const groups = compareGroups(bench.state().work.compare.files);
  return groups.some(({ log }) => stemOf(log.name) === stemOf(file.name));
}

/** Takes files off the table. */
function take(bench: Bench, gone: readonly (KeptFile | null)[]): void {
  const { files } = bench.state().work.compare;
  const [first] = gone;
  changeCompare(bench, `taking away ${first?.name ?? "a file"}`, {
    files: files.filter((file) => !gone.includes(file)),
  });
}

/** Moves a firing one place from where it stands now, which may be newer than what is drawn, the keyboard with it. */
function move(bench: Bench, log: KeptFile, by: 1 | -1): void {
  const { files } = bench.state().work.compare;
  const logs = compareGroups(files).map((group) => group.log);
  const at = logs.indexOf(log);
  const other = logs[at + by];
  if (at < 0 || other === undefined) return;
  const swapped = files.map((file) => (file === log ? other : file === other ? log : file));
  const now = at + by + 1;
  changeCompare(bench, `moving ${log.name}`, { files: swapped });
  bench.show((state) => ({ ...state, said: `${log.name} is firing ${now} of ${logs.length}.` }));
  requestAnimationFrame(() => focusMove(log, by));
}

function focusMove(log: KeptFile, by: 1 | -1): void {
  const item = document.getElementById(itemId(log));
  const [wanted, other] = by < 0 ? ["up", "down"] : ["down", "up"];
  const button = (which: string | undefined) =>
    item?.querySelector<HTMLButtonElement>(`[data-move="${which}"]:not(:disabled)`);
  (button(wanted) ?? button(other))?.focus();
}

function itemId({ name }: KeptFile): string {
  return `laid-${name}`;
}

/** The record of this firing as it stands on the Review table; null when it is the one that lies here. */
function recordFromReview(bench: Bench, { log, record }: FiringGroup): KeptFile | null {
  const { review } = bench.state().work;
  if (review.record === null || review.log === null || !sameFile(review.log, log)) return null;
  const own = stemOf(review.record.name) === stemOf(log.name);
  const name = own ? review.record.name : `${stemOf(log.name)}.yaml`;
  const written = { name, bytes: review.record.bytes };
  return record !== null && sameFile(record, written) ? null : written;
}

/** Lays that record beside its log, in the place of the one that lies here. */
function takeRecord(bench: Bench, { log, record }: FiringGroup, written: KeptFile): void {
  const { files } = bench.state().work.compare;
  const others = files.filter((file) => file !== record);
  changeCompare(bench, `taking the record of ${log.name}`, { files: [...others, written] });
}

/** Lays a firing on the Review table, where its reading can be told and its record written. */
function reviewFiringAgain(bench: Bench, { log, record, others }: FiringGroup): void {
  const { review } = bench.state().work;
  const lies = review.log === log && review.record === record;
  if (!lies)
    bench.change(`reviewing ${log.name}`, (work) => ({
      ...work,
      review: { ...work.review, log, record, schedule: scheduleOf(others), told: NOTHING_TOLD },
    }));
  bench.show((state) => ({
    ...state,
    table: "review",
    said: `${log.name} lies on the Review table.`,
  }));
  requestAnimationFrame(() => document.getElementById("tab-review")?.focus());
}

/** The schedule that was dropped, when it is the only one. */
function scheduleOf(others: FiringGroup["others"]): FiringGroup["others"][number] | null {
  return others.length === 1 ? (others[0] ?? null) : null;
}
