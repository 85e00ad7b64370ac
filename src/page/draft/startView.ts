import { html, nothing, type TemplateResult } from "lit-html";
import { type ConeSeries, parseCone } from "../../core/cones/cone.ts";
import { CONE_MODELS } from "../../core/cones/coneModel.ts";
import { failed, ok, type Result } from "../../core/problem.ts";
import type { WantedCooling } from "../../core/schedule/newCooling.ts";
import { parseSchedule } from "../../core/schedule/scheduleFile.ts";
import { glued } from "../../core/text/wrap.ts";
import {
  parseDuration,
  parseTemperature,
  type TemperatureUnit,
} from "../../core/units/temperature.ts";
import { BODIES } from "../../core/ware/bodies.ts";
import { sizedAsMug, wareLength } from "../../core/ware/givenWare.ts";
import { problemList, remembered } from "../parts/controls.ts";
import { fileDrop } from "../parts/files.ts";
import type { KeptFile } from "../parts/KeptFile.ts";
import { type Bench, followedUnit } from "../state/state.ts";
import { hire } from "../worker/hire.ts";
import type { Asked } from "../worker/jobs.ts";
import { SHIPPED_SCHEDULES, textOf } from "../worker/readGroup.ts";
import { deskDraft, draftProblems, kilnAsked, laySchedule } from "./changeDraft.ts";
import { toldOffset } from "./kilnPanel.ts";

/** Where new schedules are worked out. */
const LANE = hire();

/** What a new schedule is asked for by: a cone, the ware, the cooling. */
function wishForm(bench: Bench): TemplateResult {
  const { busy } = bench.state().draft;
  const { unit } = bench.state().work;
  return html`<form class="wishes" novalidate @submit=${(event: SubmitEvent) => submit(bench, event)}>
    <div class="fields">
      ${text("wish-cone", "Cone to reach", "5")}
      <div class="field"><label for="wish-series">Kind of cone</label><select id="wish-series" name="wish-series">
        ${Object.keys(CONE_MODELS).map((series) => html`<option value=${series}>${series.replaceAll("-", " ").replace("self supporting", "self-supporting")}</option>`)}</select></div>
      <div class="field"><label for="wish-body">Body</label><select id="wish-body" name="wish-body">
        <option value="">not known</option>${BODIES.filter(({ name }) => !name.startsWith("unknown")).map(({ name }) => html`<option value=${name}>${name}</option>`)}</select></div>
      ${text("wish-wall", "Wall", "6 mm", "6 mm")}
      ${text("wish-base", "Base", "as the wall")}
      ${text("wish-width", "Widest piece", "not said")}
      <div class="field"><label for="wish-cooling">Cooling</label><select id="wish-cooling" name="wish-cooling">
        <option value="natural">by itself, slowed where the ware needs it</option>
        <option value="slow">slow through both inversions</option>
        <option value="hold">held on the way down, for crystals</option></select></div>
      <div class="only-held">${text("wish-hold-at", `Held at, °${unit}`, unit === "C" ? "900" : "1650")}</div>
      <div class="only-held">${text("wish-hold-for", "Held for", "1 h")}</div>
      ${text("wish-within", "Done within, at most", "no limit")}
      <label class="tick"><input type="checkbox" name="wish-damp">The ware goes in damp</label>
    </div>
    <div class="actions">
      <button type="submit" class="chief" ?disabled=${busy !== null}>Draft this schedule</button>
      ${busy === null ? nothing : html`<button type="button" @click=${() => stop(bench)}>Stop</button><span role="status">${busy}…</span>`}
    </div>
  </form>`;
}

function text(name: string, label: string, placeholder: string, value = ""): TemplateResult {
  return html`<div class="field"><label for=${name}>${label}</label><input type="text" id=${name} name=${name} placeholder=${placeholder} value=${value} autocomplete="off"></div>`;
}

async function submit(bench: Bench, event: SubmitEvent): Promise<void> {
  event.preventDefault();
  const form = new FormData(event.target as HTMLFormElement);
  const wanted = wantedFrom(form, bench.state().work.unit);
  if (!wanted.ok) return draftProblems(bench, wanted.problems);
  deskDraft(bench, { busy: "Working the schedule out", problems: [] });
  const { draft, work } = bench.state();
  const kiln = kilnAsked(draft.kiln, work.draft.offset);
  const made = await LANE.run("new", { wanted: wanted.value, kiln });
  if (made === null) return;
  if (made.ok) laySchedule(bench, `drafting for cone ${wanted.value.cone}`, made.value);
  else draftProblems(bench, made.problems);
}

function stop(bench: Bench): void {
  LANE.stop();
  deskDraft(bench, { busy: null });
}

function wantedFrom(form: FormData, unit: TemperatureUnit): Result<Asked<"new">["wanted"]> {
  const said = (name: string) => String(form.get(name) ?? "").trim();
  const series = said("wish-series") as ConeSeries;
  const cone = parseCone(said("wish-cone") || "5", { series, where: "the cone" });
  const wall = lengthOf(said("wish-wall"), "wall");
  const base = lengthOf(said("wish-base"), "base");
  const width = lengthOf(said("wish-width"), "widest");
  const cooling = coolingOf(said, unit);
  const within = withinOf(said("wish-within"));
  if (!(cone.ok && wall.ok && base.ok && width.ok && cooling.ok && within.ok))
    return failed(
      ...[cone, wall, base, width, cooling, within].flatMap((part) =>
        part.ok ? [] : part.problems,
      ),
    );
  return ok({
    cone: cone.value,
    series,
    unit,
    cooling: cooling.value,
    withinSeconds: within.value,
    ware: {
      body: BODIES.find(({ name }) => name === said("wish-body")) ?? null,
      ...sizedAsMug({ wallMm: wall.value, baseMm: base.value }),
      widestMm: width.value,
      damp: form.get("wish-damp") !== null,
    },
  });
}

function lengthOf(text: string, name: "wall" | "base" | "widest"): Result<number | null> {
  return text === "" ? ok(null) : wareLength(text, { name, where: name });
}

function withinOf(text: string): Result<number | null> {
  return text === "" ? ok(null) : parseDuration(text, { bareUnit: "h", where: "done within" });
}

function coolingOf(said: (name: string) => string, unit: TemperatureUnit): Result<WantedCooling> {
  const kind = said("wish-cooling");
  if (kind !== "hold") return ok({ kind: kind === "slow" ? "slow" : "natural" });
  const at = parseTemperature(said("wish-hold-at") || (unit === "C" ? "900" : "1650"), {
    unit,
    where: "held at",
  });
  const span = parseDuration(said("wish-hold-for") || "1 h", { where: "held for" });
  if (at.ok && span.ok) return ok({ kind: "hold", atC: at.value, seconds: span.value });
  return failed(...[at, span].flatMap((part) => (part.ok ? [] : part.problems)));
}

/** The schedule for whoever sees the page for the first time. */
const DEMO = "cone-5-crackle-tiles.yaml";

/** The empty table: the three ways to begin. */
export function startView(bench: Bench): TemplateResult {
  const { draft } = bench.state();
  return html`<div class="start">
    <h2>Draft a firing</h2>
    <p>A schedule lies here, and what it will do: the cone it reaches, how fast it goes through the inversions, the stress in the ware, when to be at the kiln. Change a number or drag the curve, and all of it follows. Begin in one of three ways.</p>
    <p><button type="button" @click=${() => layShipped(bench, DEMO)}>Try it with a demo schedule</button>
      <span class="hint">cone 5 for crackle tiles; every change can be undone</span></p>
    ${toldOffset(bench)}
    ${problemList(draft.problems)}
    <div class="ways">
      <section class="panel" aria-labelledby="way-new"><h3 id="way-new">From nothing</h3>${wishForm(bench)}</section>
      <section class="panel" aria-labelledby="way-shipped"><h3 id="way-shipped">From a schedule that comes with the page</h3>
        <ul class="shelf">${shipped().map(({ name, title, cone }) => html`<li><button type="button" @click=${() => layShipped(bench, name)}>${title}${cone === null ? "" : html`<span class="hint"> ${glued(`cone ${cone}`)}</span>`}</button></li>`)}</ul>
      </section>
      <section class="panel" aria-labelledby="way-file"><h3 id="way-file">From a file of your own</h3>
        ${fileDrop({ id: "schedule-file", button: "Pick a schedule", hint: "or drop a .yaml or .json file here", accept: ".yaml,.yml,.json", onFiles: (files) => layFile(bench, files) })}
        <p class="hint">The file is the one that the command reads and that this page saves.</p>
      </section>
    </div>
  </div>`;
}

/** The shipped schedules by their titles. */
const shipped = remembered(() =>
  SHIPPED_SCHEDULES.flatMap(({ name, text }) => {
    const read = parseSchedule(text, name);
    return read.ok ? [{ name, title: glued(read.value.title), cone: read.value.cone }] : [];
  }),
);

function layShipped(bench: Bench, name: string): void {
  const file = SHIPPED_SCHEDULES.find((each) => each.name === name);
  if (file !== undefined) layText(bench, file);
}

function layFile(bench: Bench, files: Result<readonly KeptFile[]>): void {
  const [file] = files.ok ? files.value : [];
  if (!files.ok) draftProblems(bench, files.problems);
  if (file === undefined) return;
  const text = textOf(file);
  if (text.ok) layText(bench, { name: file.name, text: text.value });
  else draftProblems(bench, text.problems);
}

function layText(bench: Bench, file: { readonly name: string; readonly text: string }): void {
  const read = parseSchedule(file.text, file.name);
  if (!read.ok) draftProblems(bench, read.problems);
  else {
    laySchedule(bench, `opening ${file.name}`, read.value);
    bench.show((state) => ({ ...state, work: followedUnit(state.work, read.value.unit) }));
  }
}
