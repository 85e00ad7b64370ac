import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  readSchedule
} from "./chunk-KW2V662C.js";
import "./chunk-WNROHRXV.js";
import "./chunk-2XN66YSB.js";
import "./chunk-OQY4R7CT.js";
import "./chunk-WA5SZDQ5.js";
import "./chunk-2NHG2YQ4.js";
import "./chunk-IOGTIVWI.js";
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
  readSchedule
};
