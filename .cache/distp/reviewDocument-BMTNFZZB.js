import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  reviewDocument,
  reviewDocumentSchema
} from "./chunk-JZPQT2SJ.js";
import "./chunk-YDD56ZKU.js";
import "./chunk-DQZAGW2O.js";
import "./chunk-RLEK6R44.js";
import "./chunk-BX5CJHE4.js";
import "./chunk-VFKPH3SJ.js";
import "./chunk-OGOFPCXR.js";
import "./chunk-V6QCPP2T.js";
import "./chunk-F6MWUWUD.js";
import "./chunk-GU4RVAU5.js";
import "./chunk-IOGTIVWI.js";
import "./chunk-DDB2KZF2.js";
import "./chunk-2Y6UMGL7.js";
import "./chunk-O435DZD7.js";
import "./chunk-R2H4YYDI.js";
import "./chunk-2ZNPDJKQ.js";
import "./chunk-TBHH23HK.js";
export {
  reviewDocument,
  reviewDocumentSchema
};
