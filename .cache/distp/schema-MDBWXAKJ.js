import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  kilnDocumentSchema
} from "./chunk-ASLTPPUN.js";
import {
  watchDocumentSchema
} from "./chunk-WGBSP5TA.js";
import {
  measureDocumentSchema
} from "./chunk-KLIGMJG4.js";
import "./chunk-N2GCBHTS.js";
import {
  pingsDocumentSchema
} from "./chunk-KBGTP5SK.js";
import {
  conesDocumentSchema
} from "./chunk-BXT2HBEY.js";
import {
  glazeDocumentSchema
} from "./chunk-XMB6IIFZ.js";
import {
  draftDocumentSchema
} from "./chunk-RX6HAOND.js";
import {
  BodyFile
} from "./chunk-3W76GZHT.js";
import {
  compareLineSchema,
  problemDocumentSchema,
  reviewLineSchema
} from "./chunk-6JRBBYXE.js";
import {
  reviewDocumentSchema
} from "./chunk-JZPQT2SJ.js";
import "./chunk-YDD56ZKU.js";
import {
  comparisonDocumentSchema
} from "./chunk-ZOWVLEMO.js";
import "./chunk-R7HOELZO.js";
import "./chunk-DQZAGW2O.js";
import "./chunk-RLEK6R44.js";
import "./chunk-6U5UKUNG.js";
import "./chunk-GKWIKIYP.js";
import "./chunk-I7PXXNWR.js";
import "./chunk-4ME6ZCIX.js";
import "./chunk-XM3JYZUM.js";
import "./chunk-BX5CJHE4.js";
import "./chunk-S4DLFBTW.js";
import "./chunk-BNESJYXC.js";
import "./chunk-M4BL2XKO.js";
import "./chunk-VFKPH3SJ.js";
import "./chunk-OGOFPCXR.js";
import {
  GlazeFile
} from "./chunk-GBSLUOFQ.js";
import "./chunk-4LHYQSW7.js";
import "./chunk-V6QCPP2T.js";
import "./chunk-F6MWUWUD.js";
import "./chunk-GU4RVAU5.js";
import {
  EXIT,
  answer,
  answerJson,
  refuse
} from "./chunk-QOSRWPWR.js";
import "./chunk-NHPGJLL4.js";
import {
  ScheduleFile
} from "./chunk-WNROHRXV.js";
import "./chunk-2XN66YSB.js";
import "./chunk-OQY4R7CT.js";
import "./chunk-IOGTIVWI.js";
import {
  FiringRecordFile
} from "./chunk-WZTELZ3E.js";
import "./chunk-VURM777N.js";
import "./chunk-2JS2W74R.js";
import "./chunk-ZFLGP4NE.js";
import "./chunk-OBEK7CUI.js";
import "./chunk-PMYOLCKT.js";
import "./chunk-DDB2KZF2.js";
import "./chunk-DAQTYWBQ.js";
import "./chunk-X2IVNITG.js";
import "./chunk-BUYZUOGW.js";
import "./chunk-P7LYRYX6.js";
import {
  external_exports
} from "./chunk-2Y6UMGL7.js";
import "./chunk-GJAD4LJL.js";
import "./chunk-PYB7INDF.js";
import "./chunk-BKGWRYOW.js";
import "./chunk-O435DZD7.js";
import "./chunk-R2H4YYDI.js";
import "./chunk-2ZNPDJKQ.js";
import "./chunk-C7Q5CZLC.js";
import "./chunk-TBHH23HK.js";

// src/core/reports/documents/documentJsonSchema.ts
var SCHEMAS = {
  review: reviewDocumentSchema,
  draft: draftDocumentSchema,
  compare: comparisonDocumentSchema,
  kiln: kilnDocumentSchema,
  measure: measureDocumentSchema,
  pings: pingsDocumentSchema,
  cones: conesDocumentSchema,
  glaze: glazeDocumentSchema,
  watch: watchDocumentSchema,
  "review-line": reviewLineSchema,
  "compare-line": compareLineSchema,
  problems: problemDocumentSchema
};
var DOCUMENT_NAMES = Object.keys(SCHEMAS);
function documentJsonSchema(name) {
  return { ...external_exports.toJSONSchema(SCHEMAS[name]), title: `undunted ${name}` };
}

// src/cli/commands/schema.ts
var FILES = {
  schedule: ScheduleFile,
  record: FiringRecordFile,
  body: BodyFile,
  "glaze-file": GlazeFile
};
async function run(name, options) {
  const names = [...Object.keys(FILES), ...DOCUMENT_NAMES];
  if (name === void 0) {
    if (options.json) answerJson(names);
    else answer(names.join("\n"));
    return EXIT.fine;
  }
  if (Object.hasOwn(FILES, name)) {
    answerJson(external_exports.toJSONSchema(FILES[name], { io: "input" }));
    return EXIT.fine;
  }
  const document = DOCUMENT_NAMES.find((each) => each === name);
  if (document === void 0)
    return refuse(
      [
        {
          code: "command/schema-name",
          where: "command line",
          what: `there is no schema called "${name}"`,
          expected: names.join(", "),
          fix: "one of these names"
        }
      ],
      options
    );
  answerJson(documentJsonSchema(document));
  return EXIT.fine;
}
export {
  run
};
