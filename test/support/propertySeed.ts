import fc from "fast-check";

/** Properties draw the same inputs every time; `SEED=7 npm test` draws others. */
fc.configureGlobal({ seed: Number(process.env.SEED ?? 20_261_125) });
