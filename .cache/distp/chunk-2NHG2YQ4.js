import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);

// src/node/systemProblem.ts
function systemProblem(error, path, doing) {
  const code = error instanceof Error && "code" in error ? String(error.code) : "unknown";
  const known = (doing === "write" ? WRITING.get(code) : void 0) ?? KNOWN.get(code);
  if (known) return { code: `file/${known.code}`, where: path, ...known.say };
  return {
    code: `file/cannot-${doing}`,
    where: path,
    what: `the system says ${code}`,
    expected: `a file that can be ${doing === "read" ? "read" : "written"}`,
    fix: "try another place, or a copy of the file"
  };
}
var PART_IS_FILE = "a part of the path is a file, not a folder";
var FORBIDDEN = {
  code: "forbidden",
  say: {
    what: "you may not open it",
    expected: "a file that you may open",
    fix: "change its permissions, or use a copy"
  }
};
var KNOWN = /* @__PURE__ */ new Map([
  [
    "ENOENT",
    {
      code: "missing",
      say: {
        what: "there is no such file",
        expected: "the name of a file that exists",
        fix: "check the spelling and the folder"
      }
    }
  ],
  [
    "EISDIR",
    {
      code: "folder",
      say: { what: "it is a folder", expected: "one file", fix: "name a file inside it" }
    }
  ],
  [
    "ENOTDIR",
    {
      code: "missing",
      say: {
        what: PART_IS_FILE,
        expected: "the name of a file that exists",
        fix: "check the spelling and the folder"
      }
    }
  ],
  ["EACCES", FORBIDDEN],
  ["EPERM", FORBIDDEN],
  [
    "ENAMETOOLONG",
    {
      code: "name-too-long",
      say: {
        what: "the name is longer than the disk allows",
        expected: "a shorter name, as a rule of at most 255 letters",
        fix: "give the file a shorter name"
      }
    }
  ],
  [
    "ELOOP",
    {
      code: "missing",
      say: {
        what: "the links on its path lead round in a circle",
        expected: "the name of a file that exists",
        fix: "name the file itself and not a link to it"
      }
    }
  ]
]);
var NOT_WRITABLE = {
  code: "forbidden",
  say: {
    what: "you may not write there",
    expected: "a folder that you may write to",
    fix: "name a file in a folder of your own"
  }
};
var NO_FOLDER = {
  expected: "a name in a folder that exists",
  fix: "make the folder first, or check its spelling"
};
var NO_ROOM = {
  code: "no-room",
  say: {
    what: "there is no room for it; nothing was written",
    expected: "room on the disk for the whole file",
    fix: "make room, or name a file on another disk"
  }
};
var WRITING = /* @__PURE__ */ new Map([
  ["ENOENT", { code: "missing", say: { what: "its folder is not there", ...NO_FOLDER } }],
  ["ENOTDIR", { code: "missing", say: { what: PART_IS_FILE, ...NO_FOLDER } }],
  ["EACCES", NOT_WRITABLE],
  ["EPERM", NOT_WRITABLE],
  ["EROFS", NOT_WRITABLE],
  ["ENOSPC", NO_ROOM],
  ["EDQUOT", NO_ROOM],
  ["EFBIG", NO_ROOM]
]);

export {
  systemProblem
};
