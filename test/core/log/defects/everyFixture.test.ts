import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

const LOGS = new URL("../../../fixtures/logs/", import.meta.url);
const TESTS = new URL("../", import.meta.url);

/** What all tests of the log reader say, but the one that only reads whatever is there. */
const TESTED = readdirSync(TESTS, { recursive: true, encoding: "utf8" })
  .filter((path) => path.endsWith(".test.ts") && !path.endsWith("toldAgain.test.ts"))
  .map((path) => readFileSync(new URL(path, TESTS), "utf8"))
  .join("\n");

describe("every log with a defect", () => {
  it.each(readdirSync(LOGS))("%s is held against something", (name) => {
    expect(TESTED).toContain(`"${name}"`);
  });
});
