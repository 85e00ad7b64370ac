/** Goes to a place of the page by its id, opened where it is closed, with the keyboard in its first field. */
export function goToPart(event: Event, id: string): void {
  event.preventDefault();
  const place = document.getElementById(id);
  for (let each = place; each !== null; each = each.parentElement)
    if (each instanceof HTMLDetailsElement) each.open = true;
  place?.scrollIntoView({ block: place.tagName === "H3" ? "start" : "center" });
  const field =
    place instanceof HTMLInputElement ? place : place?.querySelector<HTMLElement>("input, summary");
  (field ?? place)?.focus({ preventScroll: true });
}
