import { html, type TemplateResult } from "lit-html";
import { ref } from "lit-html/directives/ref.js";

/** A sheet that lies over the bench until it is answered. */
interface DialogOptions {
  readonly id: string;
  readonly title: string;
  readonly body: unknown;
  /** Buttons; the one that keeps things as they are is made by the sheet itself. */
  readonly actions: readonly { readonly label: string; readonly act: () => void }[];
  /** `Cancel`, `Close`. */
  readonly leave: string;
  readonly onLeave: () => void;
}

/** A modal sheet with the browser's own focus keeping; Escape leaves it. */
export function dialog(options: DialogOptions): TemplateResult {
  const { id, title, body, actions, leave, onLeave } = options;
  return html`<dialog aria-labelledby=${id} ${ref(open)} @cancel=${(event: Event) => {
    event.preventDefault();
    onLeave();
  }}>
    <h2 id=${id}>${title}</h2>
    <div class="dialog-body">${body}</div>
    <div class="actions">
      <button type="button" autofocus @click=${onLeave}>${leave}</button>
      ${actions.map(({ label, act }) => html`<button type="button" class="chief" @click=${act}>${label}</button>`)}
    </div>
  </dialog>`;
}

function open(element: Element | undefined): void {
  const sheet = element as HTMLDialogElement | undefined;
  if (sheet !== undefined && !sheet.open)
    queueMicrotask(() => {
      if (sheet.isConnected && !sheet.open) sheet.showModal();
    });
}
