import type { Place } from "../../core/photo/Picture.ts";

/** The place in the picture that a pointer is over [px], kept inside it. */
export function placeUnder(
  event: { readonly clientX: number; readonly clientY: number },
  stage: Element,
  size: { readonly width: number; readonly height: number },
): Place {
  const { left, top, width, height } = stage.getBoundingClientRect();
  return inside(
    {
      x: ((event.clientX - left) / width) * size.width,
      y: ((event.clientY - top) / height) * size.height,
    },
    size,
  );
}

/** The nearest place in the picture. */
export function inside(
  { x, y }: Place,
  { width, height }: { readonly width: number; readonly height: number },
): Place {
  return { x: Math.min(width, Math.max(0, x)), y: Math.min(height, Math.max(0, y)) };
}

/** Follows a pointer that is down until it is lifted. */
export function followPointer(
  event: PointerEvent,
  on: { readonly move: (moved: PointerEvent) => void; readonly drop: () => void },
): void {
  const element = event.currentTarget as HTMLElement | SVGElement;
  element.setPointerCapture(event.pointerId);
  const move = (moved: Event) => on.move(moved as PointerEvent);
  element.addEventListener("pointermove", move);
  element.addEventListener(
    "lostpointercapture",
    () => {
      element.removeEventListener("pointermove", move);
      on.drop();
    },
    { once: true },
  );
}
