import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { emptyFolder, fileWith, undunted } from "../support/undunted.ts";

describe("undunted page", () => {
  it("answers with the address of the page, and says so when no browser can be opened", () => {
    const ran = undunted(["page"], { env: { PATH: emptyFolder() } });
    expect(ran.exit).toBe(0);
    expect(existsSync(fileURLToPath(ran.out.trim()))).toBe(true);
    expect(ran.err).toContain("open this address");
  });

  it("writes the page whole where it is told to", () => {
    const file = join(emptyFolder(), "kiln.html");
    const ran = undunted(["page", "-o", file]);
    expect(ran.exit).toBe(0);
    expect(ran.out).toBe("");
    expect(readFileSync(file, "utf8")).toContain("Content-Security-Policy");
  });

  it("replaces no file unless it is forced to", () => {
    const file = fileWith("kiln.html", "mine");
    const ran = undunted(["page", "-o", file]);
    expect(ran.exit).toBe(2);
    expect(ran.err).toContain("file/exists");
    expect(readFileSync(file, "utf8")).toBe("mine");
    expect(undunted(["page", "-o", file, "--force"]).exit).toBe(0);
    expect(readFileSync(file, "utf8")).not.toBe("mine");
  });
});
