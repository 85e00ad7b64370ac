import type { Bench } from "../bench/store.ts";
import { showReview } from "./changeReview.ts";

/** Id of a finding in the list. */
export function findingId(finding: number): string {
  return `finding-${finding + 1}`;
}

/** Marks a finding in the charts, or takes the mark away again. */
export function markFinding(bench: Bench, finding: number | null): void {
  showReview(bench, { marked: finding });
}

/** Brings a finding before the reader, the keyboard with it. */
export function goToFinding(finding: number): void {
  const item = document.getElementById(findingId(finding));
  item?.scrollIntoView({ block: "center" });
  item?.querySelector<HTMLElement>("button")?.focus({ preventScroll: true });
}

/** Brings the mark of a finding before the reader, the keyboard with it: Escape leads back. */
export function goToMark(finding: number): void {
  requestAnimationFrame(() => {
    const mark = document.querySelector<SVGGElement>(
      `#review-report .mark[data-finding="${finding}"]`,
    );
    mark?.focus();
  });
}

/** Brings the chart that shows the marks before the reader, when it is out of sight. */
export function showMarkedChart(): void {
  requestAnimationFrame(() => {
    document.querySelector("#review-report figure.chart")?.scrollIntoView({ block: "nearest" });
  });
}
