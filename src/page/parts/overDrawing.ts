/**
 * Gives an overlay the measure of the drawing beside it in its figure, so that both grow and shrink
 * alike: its first group then begins at the top left corner of the plot.
 *
 * @param tall Height of the overlay in the units of the drawing; that of the drawing when left out.
 */
export function overDrawing(overlay: Element | undefined, tall?: number): void {
  if (overlay === undefined) return;
  queueMicrotask(() => {
    const drawing = overlay.closest("figure")?.querySelector(".paper-drawing svg");
    const shift = drawing?.querySelector(":scope > g")?.getAttribute("transform") ?? "";
    const [, x = "0", y = "0"] = /translate\(([-\d.]+),([-\d.]+)\)/.exec(shift) ?? [];
    const width = drawing?.getAttribute("width") ?? "0";
    const height = String(tall ?? drawing?.getAttribute("height") ?? 0);
    overlay.setAttribute("viewBox", `0 0 ${width} ${height}`);
    overlay.setAttribute("width", width);
    overlay.setAttribute("height", height);
    const down = tall === undefined ? y : "0";
    overlay.firstElementChild?.setAttribute("transform", `translate(${x},${down})`);
  });
}
