/** Call of a schema's `describe` with nothing but one written text. */
const DESCRIPTION = /\.describe\(\s*(?:"(?:[^"\\]|\\.)*"|`(?:[^`\\$]|\\.)*`),?\s*\)/g;

/** Where a schema is begun. */
const BEGINNING = /\bz\s*\.(?=[a-zA-Z]+\()/g;

/**
 * A source file as the page needs it: the descriptions of schemas, which only the command prints,
 * are left out, and schemas are marked as made without a side effect, so that one which nothing
 * uses is left out as well. What a schema accepts and how it complains stays as it is.
 */
export function leanSource(code: string): string {
  return code.replaceAll(DESCRIPTION, "").replaceAll(BEGINNING, "/* @__PURE__ */ z.");
}

/**
 * A module of the schema library that writes JSON Schemas, without its work: the page writes none.
 * Every function of it is there still and answers with another that does nothing.
 */
export function withoutJsonSchema(code: string): string {
  const names = [...code.matchAll(/^export (?:const|function) (\w+)/gm)].map(([, name]) => name);
  return `const none = () => none;\nexport { ${names.map((name) => `none as ${name}`).join(", ")} };`;
}
