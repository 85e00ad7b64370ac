import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  drawPng
} from "./chunk-DVWEANHP.js";
import "./chunk-TBHH23HK.js";
export {
  drawPng
};
