import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { type DuckDBConnection, DuckDBInstance } from "@duckdb/node-api";
import { beforeAll, describe, expect, it } from "vitest";
import type { ReviewDocument } from "../../src/core/reports/documents/reviewDocument.ts";
import { emptyFolder, undunted } from "../support/undunted.ts";

const SQL = "test/bench/thousandKilns";
const TABLES = ["firing", "zone", "crossing", "unread"];
const QUESTIONS = readFileSync(`${SQL}/questions.sql`, "utf8")
  .split(";")
  .filter((query) => /\bSELECT\b/.test(query));

type Row = Readonly<Record<string, string | number | null>>;

/** What the three questions give. */
interface Answers {
  readonly cones: readonly Row[];
  readonly crossings: readonly Row[];
  readonly offsets: readonly Row[];
}

async function answersOf(connection: DuckDBConnection): Promise<Answers> {
  const rows: Row[][] = [];
  for (const query of QUESTIONS) {
    const read = await connection.runAndReadAll(query);
    rows.push(
      read
        .getRowObjects()
        .map((row) =>
          Object.fromEntries(
            Object.entries(row).map(([key, value]) => [
              key,
              value === null || typeof value === "string" ? value : Number(value),
            ]),
          ),
        ),
    );
  }
  const [cones, crossings, offsets] = rows as [Row[], Row[], Row[]];
  return { cones, crossings, offsets };
}

describe("lines of many reviews in a database", () => {
  const folder = emptyFolder();
  let documents: readonly ReviewDocument[];
  let answers: Answers;
  let fromParquet: Answers;
  let unread: readonly Row[];

  beforeAll(async () => {
    const broken = join(folder, "broken.csv");
    writeFileSync(broken, "");
    const { out } = undunted(["review", "logs", broken, "--json-lines", "-q"]);
    documents = out
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line))
      .filter((line) => line.ok);
    const lines = join(folder, "firings.jsonl");
    writeFileSync(lines, out);
    const connection = await (await DuckDBInstance.create()).connect();
    await connection.run(`SET VARIABLE lines = '${lines}'`);
    await connection.run(readFileSync(`${SQL}/tables.sql`, "utf8"));
    answers = await answersOf(connection);
    unread = (
      await connection.runAndReadAll("SELECT log_name, code FROM unread")
    ).getRowObjects() as Row[];
    const other = await (await DuckDBInstance.create()).connect();
    for (const table of TABLES) {
      const file = join(folder, `${table}.parquet`);
      await connection.run(`COPY ${table} TO '${file}' (FORMAT parquet)`);
      await other.run(`CREATE VIEW ${table} AS SELECT * FROM read_parquet('${file}')`);
    }
    fromParquet = await answersOf(other);
  });

  const kilnOf = ({ record }: ReviewDocument) =>
    record.find(({ label }) => label === "kiln")?.text ?? null;
  const hottestOf = ({ zones }: ReviewDocument) =>
    zones.reduce((a, b) => (b.peakC > a.peakC ? b : a));

  it("asks three questions", () => {
    expect(QUESTIONS).toHaveLength(3);
  });

  it("counts every firing once, under the cone of its hottest thermocouple", () => {
    expect(answers.cones.reduce((sum, { firings }) => sum + Number(firings), 0)).toBe(
      documents.length,
    );
    for (const row of answers.cones) {
      const alike = documents.filter(
        (document) =>
          kilnOf(document) === row.kiln &&
          (document.log.start?.slice(0, 7) ?? null) === row.month &&
          hottestOf(document).heatwork.cone === row.cone,
      );
      expect(alike).toHaveLength(Number(row.firings));
      const peaks = alike.map((document) => hottestOf(document).peakC);
      expect(row.mean_peak_c).toBeCloseTo(mean(peaks), 9);
    }
  });

  it("finds the crossings over their limit that the documents hold", () => {
    const judged = documents.flatMap((document) =>
      document.zones
        .flatMap(({ crossings }) => crossings)
        .flatMap(({ band, direction, fastestCPerHour, limitCPerHour }) =>
          fastestCPerHour === null || limitCPerHour === null
            ? []
            : [
                {
                  kiln: kilnOf(document),
                  band,
                  direction,
                  times: Math.abs(fastestCPerHour) / limitCPerHour,
                },
              ],
        ),
    );
    expect(answers.crossings.reduce((sum, row) => sum + Number(row.crossings), 0)).toBe(
      judged.length,
    );
    for (const row of answers.crossings) {
      const alike = judged.filter(
        ({ kiln, band, direction }) =>
          kiln === row.kiln && band === row.band && direction === row.direction,
      );
      expect(row.over_limit).toBe(alike.filter(({ times }) => times > 1).length);
      expect(row.worst_times_limit).toBeCloseTo(Math.max(...alike.map(({ times }) => times)), 9);
    }
  });

  it("gives the first and last offset of each kiln, and a slope by firing", () => {
    for (const row of answers.offsets) {
      const offsets = documents
        .filter((document) => kilnOf(document) === row.kiln && document.witnessOffset !== null)
        .toSorted((a, b) => ((a.log.start ?? "") < (b.log.start ?? "") ? -1 : 1))
        .map(({ witnessOffset }) => witnessOffset?.offsetK as number);
      expect(row.firings).toBe(offsets.length);
      expect(row.first_offset_k).toBeCloseTo(offsets[0] as number, 9);
      expect(row.last_offset_k).toBeCloseTo(offsets.at(-1) as number, 9);
      if (offsets.length < 2) expect(row.drift_k_per_firing).toBeNull();
      else expect(row.drift_k_per_firing).toBeCloseTo(slope(offsets), 6);
    }
    expect(answers.offsets.some(({ firings }) => Number(firings) > 1)).toBe(true);
  });

  it("answers the same from Parquet", () => {
    expect(fromParquet).toEqual(answers);
  });

  it("holds why a log could not be read", () => {
    expect(unread).toEqual([{ log_name: "broken.csv", code: "log/empty" }]);
  });
});

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Slope of the least-squares line over 1, 2, 3, …, by the sum of products over that of squares. */
function slope(values: readonly number[]): number {
  const middle = (values.length + 1) / 2;
  const level = mean(values);
  const products = values.map((value, i) => (i + 1 - middle) * (value - level));
  const squares = values.map((_, i) => (i + 1 - middle) ** 2);
  return mean(products) / mean(squares);
}
