import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["test/**/*.test.ts"],
    setupFiles: ["test/support/propertySeed.ts"],
    testTimeout: 30_000,
    hookTimeout: 60_000,
  },
});
