-- Standard SQL over the tables of tables.sql: nothing in it is of one engine only.

-- Cones reached by kiln and month, by the hottest thermocouple of each firing.
SELECT
  kiln,
  month,
  cone,
  COUNT(*) AS firings,
  AVG(peak_c) AS mean_peak_c,
  AVG(cone_fraction) AS mean_cone_fraction
FROM (
  SELECT
    f.kiln,
    SUBSTRING(f.started_at FROM 1 FOR 7) AS month,
    z.cone,
    z.cone_fraction,
    z.peak_c,
    ROW_NUMBER() OVER (PARTITION BY f.firing_id ORDER BY z.peak_c DESC, z.zone_name) AS place
  FROM firing f
  INNER JOIN zone z ON z.firing_id = f.firing_id
) hottest
WHERE place = 1
GROUP BY kiln, month, cone
ORDER BY kiln, month, cone;

-- Crossings over their limit by kiln, inversion and direction: how many of how many, and the worst.
SELECT
  f.kiln,
  c.band,
  c.direction,
  COUNT(*) AS crossings,
  SUM(CASE WHEN ABS(c.fastest_c_per_hour) > c.limit_c_per_hour THEN 1 ELSE 0 END) AS over_limit,
  MAX(ABS(c.fastest_c_per_hour) / c.limit_c_per_hour) AS worst_times_limit
FROM firing f
INNER JOIN crossing c ON c.firing_id = f.firing_id
WHERE c.limit_c_per_hour > 0 AND c.fastest_c_per_hour IS NOT NULL
GROUP BY f.kiln, c.band, c.direction
ORDER BY f.kiln, c.band, c.direction;

-- Drift of the offset by kiln: first and last, and the slope of the least-squares line by firing.
SELECT
  kiln,
  COUNT(*) AS firings,
  MIN(CASE WHEN nth = 1 THEN offset_k END) AS first_offset_k,
  MIN(CASE WHEN nth = of_all THEN offset_k END) AS last_offset_k,
  (AVG(nth * offset_k) - AVG(nth) * AVG(offset_k))
    / NULLIF(AVG(nth * nth) - AVG(nth) * AVG(nth), 0) AS drift_k_per_firing
FROM (
  SELECT
    kiln,
    offset_k,
    CAST(ROW_NUMBER() OVER (PARTITION BY kiln ORDER BY started_at) AS DOUBLE PRECISION) AS nth,
    COUNT(*) OVER (PARTITION BY kiln) AS of_all
  FROM firing
  WHERE offset_k IS NOT NULL
) numbered
GROUP BY kiln
ORDER BY kiln;
