import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  hasHidden,
  hiddenEscaped
} from "./chunk-NHPGJLL4.js";
import {
  ROOM_C
} from "./chunk-WNROHRXV.js";
import {
  require_dist
} from "./chunk-BUYZUOGW.js";
import {
  BODY_PROPERTIES
} from "./chunk-GJAD4LJL.js";
import {
  BODIES
} from "./chunk-O435DZD7.js";
import {
  fahrenheitDeltaFromCelsiusDelta,
  fahrenheitFromCelsius
} from "./chunk-R2H4YYDI.js";
import {
  __toESM
} from "./chunk-TBHH23HK.js";

// src/core/schedule/scheduleYaml.ts
var import_yaml = __toESM(require_dist(), 1);

// src/core/ware/bodyAsGiven.ts
function bodyAsGiven(body) {
  const nearest = BODIES.map((base2) => ({ base: base2, own: differences(body, base2) })).reduce(
    (best, each) => each.own.length < best.own.length ? each : best
  );
  const { base, own } = nearest;
  if (own.length === 0 && body.name === base.name) return base.name;
  return {
    base: base.name,
    name: body.name,
    ...Object.fromEntries(own.map((name) => [name, { ...body[name] }]))
  };
}
function differences(body, base) {
  return BODY_PROPERTIES.filter((name) => {
    const [a, b] = [body[name], base[name]];
    return a.value !== b.value || a.low !== b.low || a.high !== b.high || a.source !== b.source;
  });
}

// src/core/schedule/scheduleYaml.ts
function scheduleYaml(schedule) {
  const document = new import_yaml.Document(fileOf(schedule), { aliasDuplicateObjects: false });
  const segments = document.get("segments", true);
  for (const item of segments?.items ?? []) if ((0, import_yaml.isMap)(item)) item.flow = true;
  const ware = document.get("ware", true);
  if ((0, import_yaml.isMap)(ware)) setWare(ware);
  (0, import_yaml.visit)(document, {
    Scalar: (_, node) => {
      if (typeof node.value === "string" && hasHidden(node.value)) node.type = "QUOTE_DOUBLE";
    }
  });
  return hiddenEscaped(document.toString({ lineWidth: 0, defaultStringType: "PLAIN" }));
}
function setWare(ware) {
  const body = ware.get("body", true);
  ware.flow = !(0, import_yaml.isMap)(body);
  if ((0, import_yaml.isMap)(body)) {
    for (const { value } of body.items) if ((0, import_yaml.isMap)(value)) value.flow = true;
  }
}
function wareFileOf(ware) {
  return {
    ...ware.body && { body: bodyAsGiven(ware.body) },
    ...typeof ware.wallMm === "number" && { wall: rounded(ware.wallMm) },
    ...typeof ware.baseMm === "number" && { base: rounded(ware.baseMm) },
    ...ware.thickestMm !== null && { thickest: rounded(ware.thickestMm) },
    ...ware.widestMm !== null && { widest: rounded(ware.widestMm) },
    ...typeof ware.heightMm === "number" && { height: rounded(ware.heightMm) },
    ...ware.stands && { stands: ware.stands },
    ...typeof ware.shelfMm === "number" && { shelf: rounded(ware.shelfMm) },
    ...typeof ware.footGapMm === "number" && { footGap: rounded(ware.footGapMm) },
    ...ware.glazedSides && { glazedSides: ware.glazedSides },
    ...ware.state !== null && { state: ware.state },
    ...ware.crackle && { crackle: true }
  };
}
function fileOf(schedule) {
  const { unit } = schedule;
  const wareFile = wareFileOf(schedule.ware);
  return {
    formatVersion: 1,
    title: schedule.title,
    unit,
    ...schedule.cone !== null && { cone: schedule.cone },
    ...schedule.series !== "self-supporting" && { series: schedule.series },
    ...schedule.startC !== ROOM_C && { start: temperature(schedule.startC, unit) },
    ...Object.keys(wareFile).length > 0 && { ware: wareFile },
    ...schedule.kilnRatingC !== void 0 && {
      kilnRating: temperature(schedule.kilnRatingC, unit)
    },
    ...schedule.thermocouple && {
      thermocouple: {
        type: schedule.thermocouple.type,
        ...schedule.thermocouple.wireMm !== null && { wire: schedule.thermocouple.wireMm }
      }
    },
    segments: schedule.segments.map((segment) => segmentFile(segment, unit)),
    ...schedule.notes !== null && { notes: schedule.notes },
    ...typeof schedule.basis === "string" && { basis: schedule.basis }
  };
}
function segmentFile(segment, unit) {
  const { rateCPerHour: rate, holdSeconds } = segment;
  return {
    to: temperature(segment.toC, unit),
    rate: rate === "free" ? "free" : rateNumber(Math.abs(rate), unit),
    ...holdSeconds > 0 && { hold: hold(holdSeconds) },
    ...segment.why !== null && { why: segment.why }
  };
}
function temperature(tempC, unit) {
  return rounded(unit === "C" ? tempC : fahrenheitFromCelsius(tempC));
}
function rateNumber(rateCPerHour, unit) {
  return rounded(unit === "C" ? rateCPerHour : fahrenheitDeltaFromCelsiusDelta(rateCPerHour));
}
function hold(seconds) {
  if (seconds % 60 !== 0) return `${rounded(seconds)} s`;
  const minutes = seconds / 60;
  const hours = Math.floor(minutes / 60);
  if (hours === 0) return `${minutes} min`;
  return minutes % 60 === 0 ? `${hours} h` : `${hours} h ${minutes % 60} min`;
}
function rounded(value) {
  return Math.round(value * 1e6) / 1e6;
}

export {
  scheduleYaml
};
