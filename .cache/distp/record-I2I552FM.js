import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  FiringRecordFile,
  parseRecord,
  parseRecordFile
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
import "./chunk-2Y6UMGL7.js";
import "./chunk-GJAD4LJL.js";
import "./chunk-PYB7INDF.js";
import "./chunk-BKGWRYOW.js";
import "./chunk-O435DZD7.js";
import "./chunk-R2H4YYDI.js";
import "./chunk-2ZNPDJKQ.js";
import "./chunk-TBHH23HK.js";
export {
  FiringRecordFile,
  parseRecord,
  parseRecordFile
};
