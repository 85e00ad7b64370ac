import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  EXIT,
  answer,
  answerJson,
  answerJsonLine,
  answerSlowly,
  coloured,
  complain,
  paintFor,
  paintWith,
  refuse,
  say,
  sayLines
} from "./chunk-QOSRWPWR.js";
import "./chunk-NHPGJLL4.js";
import "./chunk-C7Q5CZLC.js";
import "./chunk-TBHH23HK.js";
export {
  EXIT,
  answer,
  answerJson,
  answerJsonLine,
  answerSlowly,
  coloured,
  complain,
  paintFor,
  paintWith,
  refuse,
  say,
  sayLines
};
