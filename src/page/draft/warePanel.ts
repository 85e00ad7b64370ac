import { html, type TemplateResult } from "lit-html";
import { ok, type Result } from "../../core/problem.ts";
import type { Schedule } from "../../core/schedule/Schedule.ts";
import { inert } from "../../core/text/escape.ts";
import { BODIES } from "../../core/ware/bodies.ts";
import { wareLength } from "../../core/ware/givenWare.ts";
import {
  BODY_PROPERTIES,
  type BodyProperty,
  bodyAsGiven,
  bodyGiven,
} from "../../core/ware/ownBody.ts";
import type { Body } from "../../core/ware/Ware.ts";
import { quantityField } from "../parts/controls.ts";
import type { Bench } from "../state/state.ts";
import { changeSchedule, draftProblems } from "./changeDraft.ts";
import { allowed, typedLength } from "./segmentTable.ts";

type Ware = Schedule["ware"];

const STATES = ["bone dry", "damp", "bisqued", "glazed on bisque", "glazed raw"] as const;

/** The ware that a schedule is for: body, sizes, how it goes in. */
export function warePanel(bench: Bench, { ware }: Schedule): TemplateResult {
  return html`<section class="panel" aria-labelledby="ware-title"><h3 id="ware-title">Ware</h3>
    <div class="fields">
      <div class="field"><label for="body">Body</label>
        <select id="body" @change=${(event: Event) => pickBody(bench, (event.target as HTMLSelectElement).value)}>
          <option value="" ?selected=${!ware.body}>not named: published limits hold</option>
          ${BODIES.map(({ name }) => html`<option value=${name} ?selected=${ware.body?.name === name}>${name}</option>`)}
          ${isOwn(ware.body) ? html`<option value=${ware.body.name} selected>${inert(ware.body.name)}</option>` : null}
        </select></div>
      ${size(bench, ware, { key: "wallMm", name: "wall", label: "Wall" })}
      ${size(bench, ware, { key: "baseMm", name: "base", label: "Base" })}
      ${size(bench, ware, { key: "thickestMm", name: "thickest", label: "Thickest part" })}
      ${size(bench, ware, { key: "widestMm", name: "widest", label: "Widest piece" })}
      <div class="field"><label for="state">Goes in</label>
        <select id="state" @change=${(event: Event) => pickState(bench, (event.target as HTMLSelectElement).value)}>
          <option value="" ?selected=${ware.state === null}>not said</option>
          ${STATES.map((state) => html`<option value=${state} ?selected=${ware.state === state}>${state}</option>`)}
        </select></div>
      <label class="tick"><input type="checkbox" .checked=${ware.crackle} @change=${(event: Event) => setWare(bench, "the crackle glaze", { crackle: (event.target as HTMLInputElement).checked })}>The glaze is meant to crackle</label>
    </div>
    ${ware.body ? ownProperties(bench, ware.body) : null}
  </section>`;
}

function isOwn(body: Ware["body"]): body is Body {
  return !!body && !BODIES.some(({ name }) => name === body.name);
}

type SizeKey = "wallMm" | "baseMm" | "thickestMm" | "widestMm";

function size(
  bench: Bench,
  ware: Ware,
  {
    key,
    name,
    label,
  }: {
    readonly key: SizeKey;
    readonly name: Parameters<typeof wareLength>[1]["name"];
    readonly label: string;
  },
): TemplateResult {
  return quantityField<number | null>({
    id: `ware-${name}`,
    label,
    value: typedLength(ware[key]),
    placeholder: "not said",
    parse: (text) => (text.trim() === "" ? ok(null) : wareLength(text, { name, where: label })),
    onValue: (mm) => setWare(bench, `the ${label.toLowerCase()}`, { [key]: mm }),
  });
}

function pickBody(bench: Bench, name: string): void {
  const body = BODIES.find((each) => each.name === name) ?? null;
  setWare(bench, "the body", { body });
}

function pickState(bench: Bench, value: string): void {
  setWare(bench, "how the ware goes in", {
    state: STATES.find((state) => state === value) ?? null,
  });
}

function setWare(bench: Bench, what: string, change: Partial<Ware>): void {
  const { schedule } = bench.state().work.draft;
  if (schedule === null) return;
  const wanted = allowed({ ...schedule, ware: { ...schedule.ware, ...change } });
  if (!wanted.ok) draftProblems(bench, wanted.problems);
  else {
    draftProblems(bench, []);
    changeSchedule(bench, wanted.value, { what: `changing ${what}` });
  }
}

/** What a property of a body is called, and its unit. */
const PROPERTY_WORDS: Readonly<Record<BodyProperty, string>> = {
  densityKgPerM3: "Density, kg/m³",
  heatCapacityJPerKgK: "Heat capacity, J/kgK",
  conductivityWPerMK: "Heat conducted, W/mK",
  youngGPa: "Stiffness, GPa",
  ruptureMPa: "Strength in bending, MPa",
  quartzFraction: "Free quartz, share of volume",
  cristobaliteFraction: "Cristobalite, share of volume",
  matrixExpansionPerK: "Expansion of the rest, per K",
};

/** The properties of the body, to be typed over where a person has better ones. */
function ownProperties(bench: Bench, body: Body): TemplateResult {
  return html`<details class="own-body"><summary>Properties of this body, and your own</summary>
    <p class="hint">Type over what you measured; the rest stays. Under each stands what 8 in 10 such bodies lie between, and where the number comes from.</p>
    <div class="fields">${BODY_PROPERTIES.map((name) => {
      const { value, low, high, source } = body[name];
      return quantityField({
        id: `body-${name}`,
        label: PROPERTY_WORDS[name],
        value: short(value),
        hint: `${short(low)} to ${short(high)}; ${inert(source)}`,
        parse: (text) => withProperty(body, name, text),
        onValue: (own) =>
          setWare(bench, `the body's ${PROPERTY_WORDS[name].replace(/,.*/, "").toLowerCase()}`, {
            body: own,
          }),
      });
    })}</div>
  </details>`;
}

function withProperty(body: Body, name: BodyProperty, text: string): Result<Body> {
  const given = bodyAsGiven(body);
  const own = typeof given === "string" ? { base: given, name: `own ${given}` } : given;
  const value = Number(text.trim().replace(",", "."));
  return bodyGiven({ ...own, [name]: text.trim() === "" ? Number.NaN : value }, () => "body");
}

function short(value: number): string {
  return Math.abs(value) < 0.001 && value !== 0
    ? value.toExponential(2)
    : String(Number(value.toPrecision(4)));
}
