import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  comparedFiringPiece,
  comparisonDocument,
  comparisonDocumentSchema
} from "./chunk-ZOWVLEMO.js";
import "./chunk-R7HOELZO.js";
import "./chunk-DQZAGW2O.js";
import "./chunk-RLEK6R44.js";
import "./chunk-6U5UKUNG.js";
import "./chunk-S4DLFBTW.js";
import "./chunk-BNESJYXC.js";
import "./chunk-M4BL2XKO.js";
import "./chunk-VFKPH3SJ.js";
import "./chunk-OGOFPCXR.js";
import "./chunk-GU4RVAU5.js";
import "./chunk-NHPGJLL4.js";
import "./chunk-WNROHRXV.js";
import "./chunk-2XN66YSB.js";
import "./chunk-OQY4R7CT.js";
import "./chunk-IOGTIVWI.js";
import "./chunk-DDB2KZF2.js";
import "./chunk-X2IVNITG.js";
import "./chunk-BUYZUOGW.js";
import "./chunk-P7LYRYX6.js";
import "./chunk-2Y6UMGL7.js";
import "./chunk-GJAD4LJL.js";
import "./chunk-PYB7INDF.js";
import "./chunk-BKGWRYOW.js";
import "./chunk-O435DZD7.js";
import "./chunk-R2H4YYDI.js";
import "./chunk-2ZNPDJKQ.js";
import "./chunk-TBHH23HK.js";
export {
  comparedFiringPiece,
  comparisonDocument,
  comparisonDocumentSchema
};
