-- DuckDB: lines of `undunted review … --json-lines` as flat tables, which any SQL engine can hold.
-- Before it: SET VARIABLE lines = 'firings.jsonl' (a pattern such as 'lines/*.jsonl' is as good).
-- After it, for other engines: COPY firing TO 'firing.parquet'; and so on for each table.

CREATE TABLE line AS
SELECT
  row_number() OVER () AS firing_id,
  *
FROM read_json(
  getvariable('lines'),
  format = 'newline_delimited',
  columns = {
    ok: 'BOOLEAN',
    title: 'VARCHAR',
    log: 'STRUCT(name VARCHAR, "rows" BIGINT, accepted BIGINT, unit VARCHAR, "start" VARCHAR)',
    zones: 'STRUCT(
      name VARCHAR,
      peakC DOUBLE,
      heatwork STRUCT(cone VARCHAR, fraction DOUBLE, label VARCHAR, sigmaCones DOUBLE),
      crossings STRUCT(
        band VARCHAR,
        direction VARCHAR,
        "seconds" DOUBLE,
        meanCPerHour DOUBLE,
        fastestCPerHour DOUBLE,
        limitCPerHour DOUBLE,
        strainRatio DOUBLE
      )[]
    )[]',
    witnessOffset: 'STRUCT(offsetK DOUBLE, lowK DOUBLE, highK DOUBLE)',
    record: 'STRUCT(label VARCHAR, "text" VARCHAR)[]',
    problems: 'STRUCT(code VARCHAR, what VARCHAR)[]'
  }
);

CREATE TABLE firing AS
SELECT
  firing_id,
  log.name AS log_name,
  title,
  list_filter(record, entry -> entry.label = 'kiln')[1].text AS kiln,
  log."start" AS started_at,
  log."rows" AS row_count,
  log.accepted AS accepted_count,
  witnessOffset.offsetK AS offset_k,
  witnessOffset.lowK AS offset_low_k,
  witnessOffset.highK AS offset_high_k
FROM line
WHERE ok;

CREATE TABLE zone AS
SELECT
  firing_id,
  zone.name AS zone_name,
  zone.peakC AS peak_c,
  zone.heatwork.cone AS cone,
  zone.heatwork.fraction AS cone_fraction,
  zone.heatwork.sigmaCones AS sigma_cones
FROM (SELECT firing_id, unnest(zones) AS zone FROM line WHERE ok);

CREATE TABLE crossing AS
SELECT
  firing_id,
  zone_name,
  crossing.band AS band,
  crossing.direction AS direction,
  crossing."seconds" AS crossing_seconds,
  crossing.meanCPerHour AS mean_c_per_hour,
  crossing.fastestCPerHour AS fastest_c_per_hour,
  crossing.limitCPerHour AS limit_c_per_hour,
  crossing.strainRatio AS strain_ratio
FROM (
  SELECT firing_id, zone.name AS zone_name, unnest(zone.crossings) AS crossing
  FROM (SELECT firing_id, unnest(zones) AS zone FROM line WHERE ok)
);

CREATE TABLE unread AS
SELECT firing_id, log.name AS log_name, problem.code AS code, problem.what AS what
FROM (SELECT firing_id, log, unnest(problems) AS problem FROM line WHERE NOT ok);

DROP TABLE line;
