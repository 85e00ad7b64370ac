/** How far a long run has come, on one line of a terminal that is drawn over itself. */
export interface Progress {
  /** One more is done. */
  readonly step: () => void;
  /** Takes the line away, so that something else can be written. */
  readonly clear: () => void;
}

/** Nothing is shown of a run shorter than this [ms], and then no more often. */
const EVERY_MS = 200;

/**
 * The progress of so many logs: how many are done, and how long the rest will take at that pace.
 * @param to Where it is drawn; null where nobody looks, and then nothing is drawn.
 * @param now A clock that only runs forward [ms].
 */
export function progress(
  total: number,
  to: { readonly write: (text: string) => unknown } | null,
  now: () => number,
): Progress {
  const began = now();
  let done = 0;
  let shown = began;
  let isShown = false;
  const clear = () => {
    if (isShown) to?.write("\r\u001b[K");
    isShown = false;
  };
  return {
    clear,
    step: () => {
      done++;
      const at = now();
      if (to === null || at - shown < EVERY_MS || done >= total) return;
      clear();
      const left = ((at - began) / done) * (total - done);
      to.write(`${done} of ${total} logs, about ${timeLeft(left / 1000)} left`);
      shown = at;
      isShown = true;
    },
  };
}

function timeLeft(seconds: number): string {
  return seconds < 90 ? `${Math.ceil(seconds)} s` : `${Math.round(seconds / 60)} min`;
}
