import { config } from "zod";

/** Schemas must not try to make code of text, which the page's own policy forbids. */
config({ jitless: true });

if (typeof document === "undefined")
  void import("./worker/serveJobs.ts").then(({ serveJobs }) => serveJobs());
else
  void import("./bench/openBench.ts").then(({ openBench }) =>
    openBench(document.getElementById("bench") as HTMLElement),
  );
