import { defineConfig } from "vitest/config";

/** Every run of tests draws its properties from the same seed. */
const setupFiles = ["test/support/propertySeed.ts"];

/** What never comes is given up in the end [ms]; no test counts on being quicker than this. */
const GIVEN_UP_MS = 900_000;
const bounds = { testTimeout: GIVEN_UP_MS, hookTimeout: GIVEN_UP_MS };

/** Page tests have the machine for themselves, in windows of one browser a worker. */
const PAGE = "test/page/**/*.test.ts";
const COMMAND = ["test/cli/**/*.test.ts", "test/node/**/*.test.ts"];

export default defineConfig({
  test: {
    maxWorkers: "100%",
    projects: [
      {
        test: {
          ...bounds,
          name: "core",
          include: ["test/**/*.test.ts"],
          exclude: [PAGE, ...COMMAND],
          setupFiles,
          isolate: false,
        },
      },
      {
        test: { ...bounds, name: "command", include: COMMAND, setupFiles, isolate: false },
      },
      {
        test: {
          ...bounds,
          name: "page",
          include: [PAGE],
          globalSetup: ["test/page/unpackBrowser.ts"],
          setupFiles,
          isolate: false,
          maxWorkers: 2,
          sequence: { groupOrder: 1 },
          expect: { poll: { timeout: 240_000 } },
        },
      },
    ],
  },
});
