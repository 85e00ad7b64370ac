/**
 * Reading and the simple features of a log in SQL: `tsx duckdb.ts LOG.csv`. Prints them, and what it
 * took with the loading of the library, without the start of Node.
 */
const QUERY = `
  WITH log AS (SELECT epoch("Time") AS t, COLUMNS('°C') FROM read_csv(?)),
  long AS (SELECT t, zone, c FROM (UNPIVOT log ON COLUMNS('°C') INTO NAME zone VALUE c)),
  near AS (
    SELECT *, t - lag(t) OVER w AS step,
      c - 2 * lag(c) OVER w + lag(c, 2) OVER w AS bend
    FROM long WINDOW w AS (PARTITION BY zone ORDER BY t)
  ),
  zones AS (
    SELECT zone, count(*) AS readings, max(c) AS peak, arg_max(t, c) AS at,
      count(*) FILTER (step > 120) AS gaps, avg(abs(bend)) AS noise,
      count(*) FILTER (abs(bend) > 20) AS jumps
    FROM near GROUP BY zone
  ),
  bands(low, high) AS (VALUES (550, 600), (200, 280)),
  cooled AS (
    SELECT zone, low, max(n.t) FILTER (c >= low) - min(n.t) FILTER (c <= high) AS seconds
    FROM near n JOIN zones z USING (zone), bands WHERE n.t > z.at GROUP BY zone, low
  ),
  bins AS (SELECT zone, floor(t / 43) AS bin, median(c) AS c FROM long GROUP BY ALL)
  SELECT (SELECT list(z) FROM zones z), (SELECT list(b) FROM cooled b), (SELECT count(*) FROM bins)
`;

async function main(): Promise<void> {
  const began = performance.now();
  // Loaded here, since loading it is part of what it takes.
  const { DuckDBInstance } = await import("@duckdb/node-api");
  const connection = await (await DuckDBInstance.create(":memory:")).connect();
  const found = await connection.runAndReadAll(QUERY, [process.argv[2] ?? ""]);
  console.log(String(found.getRows()));
  console.log(JSON.stringify({ wallMs: performance.now() - began }));
}

void main();
