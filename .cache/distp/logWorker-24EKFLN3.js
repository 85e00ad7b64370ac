import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  logWork
} from "./chunk-AXAUT6A2.js";
import "./chunk-AZI3ESL7.js";
import "./chunk-46CWPLZJ.js";
import "./chunk-6GRKVVXC.js";
import "./chunk-ETRUSM3K.js";
import "./chunk-GKWIKIYP.js";
import "./chunk-QVXNA4U3.js";
import "./chunk-I7PXXNWR.js";
import "./chunk-VTFWEP2W.js";
import "./chunk-I6LOXCIU.js";
import "./chunk-CQRY3XKN.js";
import "./chunk-N5S6N4PS.js";
import "./chunk-4ME6ZCIX.js";
import "./chunk-ZUGR3IIA.js";
import "./chunk-X6LO4HOH.js";
import "./chunk-XM3JYZUM.js";
import "./chunk-BX5CJHE4.js";
import "./chunk-S4DLFBTW.js";
import "./chunk-BNESJYXC.js";
import "./chunk-M4BL2XKO.js";
import "./chunk-VFKPH3SJ.js";
import "./chunk-OGOFPCXR.js";
import "./chunk-4LHYQSW7.js";
import "./chunk-V6QCPP2T.js";
import "./chunk-F6MWUWUD.js";
import "./chunk-GU4RVAU5.js";
import "./chunk-QOSRWPWR.js";
import "./chunk-NHPGJLL4.js";
import "./chunk-2XN66YSB.js";
import "./chunk-OQY4R7CT.js";
import "./chunk-WA5SZDQ5.js";
import "./chunk-2NHG2YQ4.js";
import "./chunk-IOGTIVWI.js";
import "./chunk-OBEK7CUI.js";
import "./chunk-PMYOLCKT.js";
import "./chunk-DDB2KZF2.js";
import "./chunk-GJAD4LJL.js";
import "./chunk-PYB7INDF.js";
import "./chunk-BKGWRYOW.js";
import "./chunk-O435DZD7.js";
import "./chunk-R2H4YYDI.js";
import "./chunk-2ZNPDJKQ.js";
import "./chunk-C7Q5CZLC.js";
import "./chunk-TBHH23HK.js";

// src/cli/logWorker.ts
import { isMainThread, parentPort, Worker, workerData } from "node:worker_threads";
function startLogWorker(task) {
  const start = { unduntedTask: task };
  return new Worker(new URL(import.meta.url), { workerData: start });
}
if (!isMainThread && isStart(workerData)) serve(workerData.unduntedTask);
function isStart(data) {
  return typeof data === "object" && data !== null && "unduntedTask" in data;
}
function serve(task) {
  const work = logWork(task);
  let last = Promise.resolve();
  parentPort?.on("message", ({ items }) => {
    last = last.then(async () => {
      const outcomes = [];
      for (const item of items) outcomes.push(await (await work)(item));
      parentPort?.postMessage({ outcomes });
    });
  });
}
export {
  startLogWorker
};
