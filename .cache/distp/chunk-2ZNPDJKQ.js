import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);

// src/core/problem.ts
function ok(value) {
  return { ok: true, value };
}
function failed(...problems) {
  if (problems.length === 0) throw new RangeError("failed: needs at least one problem");
  return { ok: false, problems };
}

export {
  ok,
  failed
};
