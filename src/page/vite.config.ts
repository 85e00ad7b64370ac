import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { defineConfig, type Plugin } from "vite";
import { leanSource, withoutJsonSchema } from "./leanSource.ts";
import { packedLog } from "./packedLog.ts";

const HERE = import.meta.dirname;

export default defineConfig({
  root: HERE,
  publicDir: false,
  resolve: {
    alias: {
      // Its build for bundlers, of which only what is used is taken.
      "ml-matrix": join(HERE, "../../node_modules/ml-matrix/src/index.js"),
    },
  },
  plugins: [lean(), packedLogs(), onePage()],
  build: {
    outDir: join(HERE, "../../dist"),
    emptyOutDir: false,
    target: "es2022",
    modulePreload: false,
    cssCodeSplit: false,
    reportCompressedSize: false,
    chunkSizeWarningLimit: 4000,
    rolldownOptions: {
      input: join(HERE, "main.ts"),
      transform: { define: { "import.meta": "{}" } },
      output: { format: "iife", codeSplitting: false, comments: { legal: true } },
    },
  },
});

/** Leaves out what only the command needs: descriptions of schemas, and what writes JSON Schemas. */
function lean(): Plugin {
  return {
    name: "lean",
    enforce: "pre",
    load(id) {
      const isWriter = /zod\/v4\/core\/(?:to-json-schema|json-schema-processors)\.js$/.test(id);
      return isWriter ? withoutJsonSchema(readFileSync(id, "utf8")) : null;
    },
    transform(code, id) {
      return /\/src\/(?:core|page)\/.*\.ts$/.test(id) ? leanSource(code) : null;
    },
  };
}

/** Demo logs stand in the page packed, and are the same text again when it reads them. */
function packedLogs(): Plugin {
  const unpacker = JSON.stringify(join(HERE, "packedLog.ts"));
  return {
    name: "packed-logs",
    enforce: "pre",
    load(id) {
      if (!id.endsWith(".csv?raw")) return null;
      const text = readFileSync(id.slice(0, -"?raw".length), "utf8");
      const packed = JSON.stringify(JSON.stringify(packedLog(text)));
      return `import { unpackedLog } from ${unpacker};\nexport default unpackedLog(JSON.parse(${packed}));`;
    },
  };
}

/** Makes one file of the page: script and style stand in it, and a policy that allows just these. */
function onePage(): Plugin {
  return {
    name: "one-page",
    apply: "build",
    enforce: "post",
    generateBundle(_, bundle) {
      let script = "";
      let style = "";
      for (const [name, file] of Object.entries(bundle)) {
        if (file.type === "chunk") script += file.code;
        else if (name.endsWith(".css")) style += String(file.source);
        else this.error(`${name} would be a second file`);
        delete bundle[name];
      }
      const source = pageOf(script, style);
      this.emitFile({ type: "asset", fileName: "undunted.html", source });
    },
  };
}

function pageOf(code: string, styles: string): string {
  const script = code.trim().replaceAll("</script", "<\\/script").replaceAll("<!--", "<\\!--");
  const style = styles.trim();
  const policy = [
    "default-src 'none'",
    `script-src ${hashOf(script)}`,
    `style-src ${hashOf(style)}`,
    "img-src data: blob:",
    "font-src data:",
    "worker-src blob:",
    "connect-src 'none'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
  const html = readFileSync(join(HERE, "index.html"), "utf8");
  return html
    .replace(
      '<meta charset="utf-8">',
      () =>
        `<meta charset="utf-8">\n<meta http-equiv="Content-Security-Policy" content="${policy}">`,
    )
    .replace("</head>", () => `<style>${style}</style>\n</head>`)
    .replace(/<script type="module"[^>]*><\/script>/, () => `<script id="work">${script}</script>`);
}

function hashOf(text: string): string {
  return `'sha256-${createHash("sha256").update(text).digest("base64")}'`;
}
