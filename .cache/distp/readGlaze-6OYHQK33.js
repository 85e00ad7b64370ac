import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  readGlaze
} from "./chunk-67XUDRHA.js";
import "./chunk-GBSLUOFQ.js";
import "./chunk-P6VZUHGE.js";
import "./chunk-4LHYQSW7.js";
import "./chunk-V6QCPP2T.js";
import "./chunk-F6MWUWUD.js";
import "./chunk-GU4RVAU5.js";
import "./chunk-WA5SZDQ5.js";
import "./chunk-2NHG2YQ4.js";
import "./chunk-IOGTIVWI.js";
import "./chunk-DAQTYWBQ.js";
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
  readGlaze
};
