import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  curveOver
} from "./chunk-M4BL2XKO.js";
import {
  lastAtOrBefore,
  selected
} from "./chunk-VFKPH3SJ.js";
import {
  readText
} from "./chunk-WA5SZDQ5.js";
import {
  systemProblem
} from "./chunk-2NHG2YQ4.js";
import {
  WIDE_BLANKS
} from "./chunk-PMYOLCKT.js";
import {
  celsiusFromFahrenheit,
  celsiusFromKelvin
} from "./chunk-R2H4YYDI.js";
import {
  failed,
  ok
} from "./chunk-2ZNPDJKQ.js";

// src/node/readFiring.ts
import { stat as stat2 } from "node:fs/promises";
import { basename, dirname, extname, join } from "node:path";

// src/core/log/saidTogether.ts
function saidTogether(recorded, told) {
  const { roles: recordedRoles, ...others } = recorded;
  const roles = { ...told.columns === void 0 && recordedRoles, ...told.roles };
  return {
    ...others,
    ...told,
    ...Object.keys(roles).length > 0 && { roles }
  };
}

// src/node/logChunks.ts
import { open, stat } from "node:fs/promises";
import { pipeline, Readable } from "node:stream";
import { createGunzip } from "node:zlib";
var CHUNK_BYTES = 1 << 18;
async function logChunks(path) {
  if (path === "-") return ok(expanded(process.stdin));
  try {
    const facts = await stat(path);
    if (facts.isDirectory())
      return failed(systemProblem(Object.assign(new Error(), { code: "EISDIR" }), path, "read"));
    return ok(expanded(fileChunks(path)));
  } catch (error) {
    return failed(systemProblem(error, path, "read"));
  }
}
async function* fileChunks(path) {
  const file = await open(path);
  try {
    const buffer = new Uint8Array(CHUNK_BYTES);
    for (; ; ) {
      const { bytesRead } = await file.read(buffer, 0, CHUNK_BYTES);
      if (bytesRead === 0) return;
      yield buffer.subarray(0, bytesRead);
    }
  } finally {
    await file.close();
  }
}
async function* expanded(chunks) {
  const rest = chunks[Symbol.asyncIterator]();
  let first = await rest.next();
  const begin = [];
  while (first.done !== true && begin.length === 0 && first.value.length < 2) {
    begin.push(Uint8Array.from(first.value));
    first = await rest.next();
  }
  if (first.done !== true) begin.push(first.value);
  const all = joined(begin, rest);
  if (isGzip(begin)) yield* gunzipped(all);
  else yield* all;
}
async function* joined(begin, rest) {
  try {
    yield* begin;
    for (let next = await rest.next(); next.done !== true; next = await rest.next())
      yield next.value;
  } finally {
    await rest.return?.();
  }
}
function isGzip(begin) {
  const [one, two3] = begin.flatMap((bytes) => [...bytes.subarray(0, 2)]);
  return one === 31 && two3 === 139;
}
async function* gunzipped(chunks) {
  const gunzip = createGunzip({ chunkSize: CHUNK_BYTES });
  const source = Readable.from(copied(chunks));
  pipeline(source, gunzip, () => {
  });
  yield* gunzip;
}
async function* copied(chunks) {
  for await (const chunk of chunks) yield Uint8Array.from(chunk);
}

// src/core/thermocouple/referenceFunctions.ts
var REFERENCE_FUNCTIONS = {
  K: {
    direct: [
      {
        fromC: -270,
        toC: 0,
        coefficients: [
          0,
          0.039450128025,
          23622373598e-15,
          -32858906784e-17,
          -49904828777e-19,
          -67509059173e-21,
          -57410327428e-23,
          -31088872894e-25,
          -10451609365e-27,
          -19889266878e-30,
          -16322697486e-33
        ]
      },
      {
        fromC: 0,
        toC: 1372,
        coefficients: [
          -0.017600413686,
          0.038921204975,
          18558770032e-15,
          -99457592874e-18,
          31840945719e-20,
          -56072844889e-23,
          56075059059e-26,
          -32020720003e-29,
          97151147152e-33,
          -12104721275e-36
        ],
        bump: [0.1185976, -1183432e-10, 126.9686]
      }
    ],
    inverse: [
      {
        fromMv: -5.891,
        toMv: 0,
        fromC: -200,
        toC: 0,
        coefficients: [
          0,
          25.173462,
          -1.1662878,
          -1.0833638,
          -0.8977354,
          -0.37342377,
          -0.086632643,
          -0.010450598,
          -51920577e-11,
          0
        ],
        errorK: [-0.02, 0.04]
      },
      {
        fromMv: 0,
        toMv: 20.644,
        fromC: 0,
        toC: 500,
        coefficients: [
          0,
          25.08355,
          0.07860106,
          -0.2503131,
          0.0831527,
          -0.01228034,
          9804036e-10,
          -441303e-10,
          1057734e-12,
          -1052755e-14
        ],
        errorK: [-0.05, 0.04]
      },
      {
        fromMv: 20.644,
        toMv: 54.886,
        fromC: 500,
        toC: 1372,
        coefficients: [
          -131.8058,
          48.30222,
          -1.646031,
          0.05464731,
          -9650715e-10,
          8802193e-12,
          -311081e-13,
          0,
          0,
          0
        ],
        errorK: [-0.05, 0.06]
      }
    ]
  },
  N: {
    direct: [
      {
        fromC: -270,
        toC: 0,
        coefficients: [
          0,
          0.026159105962,
          10957484228e-15,
          -93841111554e-18,
          -46412039759e-21,
          -26303357716e-22,
          -22653438003e-24,
          -76089300791e-27,
          -93419667835e-30
        ]
      },
      {
        fromC: 0,
        toC: 1300,
        coefficients: [
          0,
          0.025929394601,
          1571014188e-14,
          43825627237e-18,
          -25261169794e-20,
          64311819339e-23,
          -10063471519e-25,
          99745338992e-29,
          -60863245607e-32,
          20849229339e-35,
          -30682196151e-39
        ]
      }
    ],
    inverse: [
      {
        fromMv: -3.99,
        toMv: 0,
        fromC: -200,
        toC: 0,
        coefficients: [
          0,
          38.436847,
          1.1010485,
          5.2229312,
          7.2060525,
          5.8488586,
          2.7754916,
          0.77075166,
          0.11582665,
          0.0073138868
        ],
        errorK: [-0.02, 0.03]
      },
      {
        fromMv: 0,
        toMv: 20.613,
        fromC: 0,
        toC: 600,
        coefficients: [
          0,
          38.6896,
          -1.08267,
          0.0470205,
          -212169e-11,
          -117272e-9,
          53928e-10,
          -798156e-13,
          0,
          0
        ],
        errorK: [-0.02, 0.03]
      },
      {
        fromMv: 20.613,
        toMv: 47.513,
        fromC: 600,
        toC: 1300,
        coefficients: [
          19.72485,
          33.00943,
          -0.3915159,
          9855391e-9,
          -1274371e-10,
          7767022e-13,
          0,
          0,
          0,
          0
        ],
        errorK: [-0.04, 0.02]
      }
    ]
  },
  S: {
    direct: [
      {
        fromC: -50,
        toC: 1064.18,
        coefficients: [
          0,
          0.00540313308631,
          12593428974e-15,
          -232477968689e-19,
          322028823036e-22,
          -331465196389e-25,
          255744251786e-28,
          -125068871393e-31,
          271443176145e-35
        ]
      },
      {
        fromC: 1064.18,
        toC: 1664.5,
        coefficients: [
          1.32900444085,
          0.00334509311344,
          654805192818e-17,
          -164856259209e-20,
          129989605174e-25
        ]
      },
      {
        fromC: 1664.5,
        toC: 1768.1,
        coefficients: [
          146.628232636,
          -0.258430516752,
          163693574641e-15,
          -330439046987e-19,
          -943223690612e-26
        ]
      }
    ],
    inverse: [
      {
        fromMv: -0.235,
        toMv: 1.874,
        fromC: -50,
        toC: 250,
        coefficients: [
          0,
          184.94946,
          -80.0504062,
          102.23743,
          -152.248592,
          188.821343,
          -159.085941,
          82.302788,
          -23.4181944,
          2.7978626
        ],
        errorK: [-0.02, 0.02]
      },
      {
        fromMv: 1.874,
        toMv: 11.95,
        fromC: 250,
        toC: 1200,
        coefficients: [
          12.91507177,
          146.6298863,
          -15.34713402,
          3.145945973,
          -0.4163257839,
          0.03187963771,
          -0.0012916375,
          2183475087e-14,
          -1447379511e-16,
          8211272125e-18
        ],
        errorK: [-0.01, 0.01]
      },
      {
        fromMv: 10.332,
        toMv: 17.536,
        fromC: 1064,
        toC: 1664.5,
        coefficients: [
          -80.87801117,
          162.1573104,
          -8.536869453,
          0.4719686976,
          -0.01441693666,
          208161889e-12,
          0,
          0,
          0,
          0
        ],
        errorK: [-2e-4, 2e-4]
      },
      {
        fromMv: 17.536,
        toMv: 18.693,
        fromC: 1664.5,
        toC: 1768.1,
        coefficients: [
          53338.75126,
          -12358.92298,
          1092.657613,
          -42.65693686,
          0.624720542,
          0,
          0,
          0,
          0,
          0
        ],
        errorK: [-2e-3, 2e-3]
      }
    ]
  },
  R: {
    direct: [
      {
        fromC: -50,
        toC: 1064.18,
        coefficients: [
          0,
          0.00528961729765,
          139166589782e-16,
          -238855693017e-19,
          356916001063e-22,
          -462347666298e-25,
          500777441034e-28,
          -373105886191e-31,
          157716482367e-34,
          -281038625251e-38
        ]
      },
      {
        fromC: 1064.18,
        toC: 1664.5,
        coefficients: [
          2.95157925316,
          -0.00252061251332,
          159564501865e-16,
          -764085947576e-20,
          205305291024e-23,
          -293359668173e-27
        ]
      },
      {
        fromC: 1664.5,
        toC: 1768.1,
        coefficients: [
          152.232118209,
          -0.268819888545,
          171280280471e-15,
          -345895706453e-19,
          -934633971046e-26
        ]
      }
    ],
    inverse: [
      {
        fromMv: -0.226,
        toMv: 1.923,
        fromC: -50,
        toC: 250,
        coefficients: [
          0,
          188.9138,
          -93.83529,
          130.68619,
          -227.0358,
          351.45659,
          -389.539,
          282.39471,
          -126.07281,
          31.353611,
          -3.3187769
        ],
        errorK: [-0.02, 0.02]
      },
      {
        fromMv: 1.923,
        toMv: 13.228,
        fromC: 250,
        toC: 1200,
        coefficients: [
          13.34584505,
          147.2644573,
          -18.44024844,
          4.031129726,
          -0.624942836,
          0.06468412046,
          -0.004458750426,
          1994710149e-13,
          -531340179e-14,
          6481976217e-17,
          0
        ],
        errorK: [-5e-3, 5e-3]
      },
      {
        fromMv: 11.361,
        toMv: 19.739,
        fromC: 1064,
        toC: 1664.5,
        coefficients: [
          -81.99599416,
          155.3962042,
          -8.342197663,
          0.4279433549,
          -0.0119157791,
          1492290091e-13,
          0,
          0,
          0,
          0,
          0
        ],
        errorK: [-5e-4, 1e-3]
      },
      {
        fromMv: 19.739,
        toMv: 21.103,
        fromC: 1664.5,
        toC: 1768.1,
        coefficients: [
          34061.77836,
          -7023.729171,
          558.2903813,
          -19.52394635,
          0.2560740231,
          0,
          0,
          0,
          0,
          0,
          0
        ],
        errorK: [-1e-3, 2e-3]
      }
    ]
  },
  B: {
    direct: [
      {
        fromC: 0,
        toC: 630.615,
        coefficients: [
          0,
          -24650818346e-14,
          59040421171e-16,
          -13257931636e-19,
          15668291901e-22,
          -1694452924e-24,
          62990347094e-29
        ]
      },
      {
        fromC: 630.615,
        toC: 1820,
        coefficients: [
          -3.8938168621,
          0.02857174747,
          -84885104785e-15,
          15785280164e-17,
          -16835344864e-20,
          11109794013e-23,
          -44515431033e-27,
          98975640821e-31,
          -93791330289e-35
        ]
      }
    ],
    inverse: [
      {
        fromMv: 0.291,
        toMv: 2.431,
        fromC: 250,
        toC: 700,
        coefficients: [
          98.423321,
          699.715,
          -847.65304,
          1005.2644,
          -833.45952,
          455.08542,
          -155.23037,
          29.88675,
          -2.474286
        ],
        errorK: [-0.02, 0.03]
      },
      {
        fromMv: 2.431,
        toMv: 13.82,
        fromC: 700,
        toC: 1820,
        coefficients: [
          213.15071,
          285.10504,
          -52.742887,
          9.9160804,
          -1.2965303,
          0.1119587,
          -0.0060625199,
          18661696e-11,
          -24878585e-13
        ],
        errorK: [-0.01, 0.02]
      }
    ]
  },
  J: {
    direct: [
      {
        fromC: -210,
        toC: 760,
        coefficients: [
          0,
          0.050381187815,
          3047583693e-14,
          -8568106572e-17,
          13228195295e-20,
          -17052958337e-23,
          20948090697e-26,
          -12538395336e-29,
          15631725697e-33
        ]
      },
      {
        fromC: 760,
        toC: 1200,
        coefficients: [
          296.45625681,
          -1.4976127786,
          0.0031787103924,
          -31847686701e-16,
          15720819004e-19,
          -30691369056e-23
        ]
      }
    ],
    inverse: [
      {
        fromMv: -8.095,
        toMv: 0,
        fromC: -210,
        toC: 0,
        coefficients: [
          0,
          19.528268,
          -1.2286185,
          -1.0752178,
          -0.59086933,
          -0.17256713,
          -0.028131513,
          -2396337e-9,
          -83823321e-12
        ],
        errorK: [-0.05, 0.03]
      },
      {
        fromMv: 0,
        toMv: 42.919,
        fromC: 0,
        toC: 760,
        coefficients: [
          0,
          19.78425,
          -0.2001204,
          0.01036969,
          -2549687e-10,
          3585153e-12,
          -5344285e-14,
          509989e-15,
          0
        ],
        errorK: [-0.04, 0.04]
      },
      {
        fromMv: 42.919,
        toMv: 69.553,
        fromC: 760,
        toC: 1200,
        coefficients: [
          -3113.58187,
          300.543684,
          -9.9477323,
          0.17027663,
          -0.00143033468,
          473886084e-14,
          0,
          0,
          0
        ],
        errorK: [-0.04, 0.03]
      }
    ]
  },
  T: {
    direct: [
      {
        fromC: -270,
        toC: 0,
        coefficients: [
          0,
          0.038748106364,
          44194434347e-15,
          11844323105e-17,
          20032973554e-18,
          90138019559e-20,
          22651156593e-21,
          36071154205e-23,
          38493939883e-25,
          28213521925e-27,
          14251594779e-29,
          48768662286e-32,
          1079553927e-33,
          13945027062e-37,
          79795153927e-41
        ]
      },
      {
        fromC: 0,
        toC: 400,
        coefficients: [
          0,
          0.038748106364,
          3329222788e-14,
          20618243404e-17,
          -21882256846e-19,
          10996880928e-21,
          -30815758772e-24,
          4547913529e-26,
          -27512901673e-30
        ]
      }
    ],
    inverse: [
      {
        fromMv: -5.603,
        toMv: 0,
        fromC: -200,
        toC: 0,
        coefficients: [
          0,
          25.949192,
          -0.21316967,
          0.79018692,
          0.42527777,
          0.13304473,
          0.020241446,
          0.0012668171
        ],
        errorK: [-0.02, 0.04]
      },
      {
        fromMv: 0,
        toMv: 20.872,
        fromC: 0,
        toC: 400,
        coefficients: [
          0,
          25.928,
          -0.7602961,
          0.04637791,
          -2165394e-9,
          6048144e-11,
          -7293422e-13,
          0
        ],
        errorK: [-0.03, 0.03]
      }
    ]
  }
};

// src/core/thermocouple/emf.ts
function emfRangeC(type) {
  const { direct } = REFERENCE_FUNCTIONS[type];
  return {
    fromC: direct[0].fromC,
    toC: direct.at(-1).toC
  };
}
function emfMillivolts(type, tempC) {
  const segment = directSegment(type, tempC);
  return segment === null ? null : emfIn(segment, tempC);
}
function seebeckMicrovoltsPerK(type, tempC) {
  const segment = directSegment(type, tempC);
  return segment === null ? null : 1e3 * slopeIn(segment, tempC);
}
function directSegment(type, tempC) {
  return REFERENCE_FUNCTIONS[type].direct.find(({ fromC, toC }) => tempC >= fromC && tempC <= toC) ?? null;
}
function emfIn({ coefficients, bump }, tempC) {
  let sum = 0;
  for (let i = coefficients.length - 1; i >= 0; i--)
    sum = sum * tempC + coefficients[i];
  return bump === void 0 ? sum : sum + bumpAt(bump, tempC);
}
function slopeIn({ coefficients, bump }, tempC) {
  let sum = 0;
  for (let i = coefficients.length - 1; i >= 1; i--)
    sum = sum * tempC + i * coefficients[i];
  return bump === void 0 ? sum : sum + 2 * bump[1] * (tempC - bump[2]) * bumpAt(bump, tempC);
}
function bumpAt([a0, a1, a2], tempC) {
  return a0 * Math.exp(a1 * (tempC - a2) ** 2);
}

// src/core/thermocouple/temperatureFromEmf.ts
var ROUNDING_MV = 1e-3;
var STEPS = 4;
function temperatureFromEmf(type, emfMv) {
  const { inverse } = REFERENCE_FUNCTIONS[type];
  const lowest = inverse[0];
  const fromMv = emfMillivolts(type, lowest.fromC);
  const toMv = emfMillivolts(type, emfRangeC(type).toC);
  if (Number.isNaN(emfMv)) throw new RangeError("temperatureFromEmf: the emf is not a number");
  if (emfMv > toMv) return { kind: "above" };
  if (emfMv < fromMv) return { kind: isAmbiguous(type, emfMv) ? "ambiguous" : "below" };
  return { kind: "temperature", tempC: refined(type, emfMv, bestInverse(inverse, emfMv)) };
}
function bestInverse(segments, emfMv) {
  let best = null;
  for (const segment of segments) {
    const isIn = emfMv >= segment.fromMv - ROUNDING_MV && emfMv <= segment.toMv + ROUNDING_MV;
    if (isIn && (best === null || widest(segment) < widest(best))) best = segment;
  }
  return best;
}
function widest({ errorK }) {
  return Math.max(Math.abs(errorK[0]), Math.abs(errorK[1]));
}
function refined(type, emfMv, segment) {
  if (segment === null)
    throw new RangeError(`temperatureFromEmf: no inverse of ${type} at ${emfMv} mV`);
  const { fromC, toC } = emfRangeC(type);
  const within = (tempC2) => Math.min(toC, Math.max(fromC, tempC2));
  let tempC = within(polynomial(segment.coefficients, emfMv));
  for (let step = 0; step < STEPS; step++) {
    const offMv = emfMillivolts(type, tempC) - emfMv;
    const slope = seebeckMicrovoltsPerK(type, tempC) / 1e3;
    tempC = within(tempC - offMv / slope);
  }
  return tempC;
}
function isAmbiguous(type, emfMv) {
  return type === "B" && emfMv >= LEAST_OF_B_MV;
}
var LEAST_OF_B_MV = -3e-3;
function polynomial(coefficients, x) {
  let sum = 0;
  for (let i = coefficients.length - 1; i >= 0; i--) sum = sum * x + coefficients[i];
  return sum;
}

// src/core/log/decision.ts
function decision(about, choice, rest) {
  return {
    about,
    choice,
    confidence: rest.confidence,
    because: rest.because,
    runnerUp: rest.runnerUp ?? null,
    option: rest.option ?? null,
    ...rest.says && { says: rest.says }
  };
}

// src/core/log/text/columnNames.ts
function findColumn(columns, told) {
  const wanted2 = told.trim().toLowerCase();
  const named = columns.find((column) => column.name.toLowerCase() === wanted2);
  if (named !== void 0) return named;
  return /^\d+$/.test(wanted2) ? columns[Number(wanted2) - 1] ?? null : null;
}
function columnList(columns) {
  const shown2 = columns.slice(0, 12).map((column) => `${column.index + 1} "${column.name}"`);
  const more = columns.length - shown2.length;
  return shown2.join(", ") + (more > 0 ? ` and ${more} more` : "");
}

// src/core/log/statistics.ts
function median(values) {
  const known = new Float64Array(values.length);
  let count2 = 0;
  for (let i = 0; i < values.length; i++) {
    const value2 = values[i];
    if (!Number.isNaN(value2)) known[count2++] = value2;
  }
  return count2 === 0 ? Number.NaN : selected(known.subarray(0, count2), count2 >> 1);
}
function medianStep(values) {
  const steps = new Float64Array(Math.max(0, values.length - 1));
  let count2 = 0;
  let isOneStep = true;
  for (let i = 1; i < values.length; i++) {
    const step = values[i] - values[i - 1];
    if (!(step > 0)) continue;
    steps[count2++] = step;
    if (step !== steps[0]) isOneStep = false;
  }
  if (isOneStep) return count2 === 0 ? Number.NaN : steps[0];
  return selected(steps.subarray(0, count2), count2 >> 1);
}
function correlation(a, b) {
  const stride = Math.max(1, Math.floor(a.length / 2e3));
  const pairs = [];
  for (let i = 0; i < a.length; i += stride) {
    const x = a[i];
    const y = b[i];
    if (!Number.isNaN(x + y)) pairs.push([x, y]);
  }
  const meanX = pairs.reduce((sum, [x]) => sum + x, 0) / pairs.length;
  const meanY = pairs.reduce((sum, [, y]) => sum + y, 0) / pairs.length;
  let xy = 0;
  let xx = 0;
  let yy = 0;
  for (const [x, y] of pairs) {
    xy += (x - meanX) * (y - meanY);
    xx += (x - meanX) ** 2;
    yy += (y - meanY) ** 2;
  }
  return xy / Math.sqrt(xx * yy);
}
function shapeOf(values) {
  let count2 = 0;
  let first = Number.NaN;
  let least = Number.POSITIVE_INFINITY;
  let greatest = Number.NEGATIVE_INFINITY;
  let previous = Number.NaN;
  let rising = 0;
  let falling = 0;
  let isWhole = true;
  const steps = [];
  const stride = Math.max(1, Math.floor(values.length / 4e3));
  let sampled = 0;
  for (let i = 0; i < values.length; i++) {
    const value2 = values[i];
    const isSampled = i === sampled;
    if (isSampled) sampled += stride;
    if (Number.isNaN(value2)) continue;
    if (count2++ === 0) first = value2;
    if (value2 < least) least = value2;
    if (value2 > greatest) greatest = value2;
    if (value2 > previous) rising++;
    else if (value2 < previous) falling++;
    if (isSampled && value2 !== previous && !Number.isNaN(previous))
      steps.push(Math.abs(value2 - previous));
    isWhole &&= Number.isInteger(value2);
    previous = value2;
  }
  const pairs = Math.max(1, count2 - 1);
  return {
    count: count2,
    first,
    least,
    greatest,
    risingShare: rising / pairs,
    steadyShare: 1 - falling / pairs,
    medianStep: median(steps),
    isWhole
  };
}

// src/core/log/text/preamble.ts
var SECONDS_PER = { ms: 1e-3, s: 1, m: 60, h: 3600 };
function preambleFacts(lines) {
  const text = lines.join("\n");
  return { intervalSeconds: intervalIn(text), unit: temperatureUnitIn(text), text };
}
function intervalIn(text) {
  const clock2 = /(?:interval|period|sampl\w*|logg\w*|record\w*|step|cycle)\W{0,20}?(\d{1,2}):(\d{2}):(\d{2})(?!\d)/i.exec(
    text.replace(/\d{4}-\d{2}-\d{2}[ T]\d{2}:\d{2}(:\d{2})?/g, "")
  );
  if (clock2 !== null) {
    const seconds = Number(clock2[1]) * 3600 + Number(clock2[2]) * 60 + Number(clock2[3]);
    if (seconds > 0) return seconds;
  }
  const unitBefore = /(?:interval|period|rate|cycle|step|every)\w*\W{0,4}[([]?(ms|s|secs?|seconds?|m|mins?|minutes?|h|hours?)[)\]]?\W{1,6}(\d+(?:[.,]\d+)?)[\s,;|"]*$/im.exec(
    text
  );
  if (unitBefore !== null) return spanOf(unitBefore[2], unitBefore[1]);
  const unitAfter = /(?:interval|period|rate|cycle|step|every|sampl\w*)[^\d\n]{0,24}(\d+(?:[.,]\d+)?)[\s;,"\t|]*(ms|s|secs?|seconds?|m|mins?|minutes?|h|hrs?|hours?|hz)\b/i.exec(
    text
  );
  return unitAfter === null ? null : spanOf(unitAfter[1], unitAfter[2]);
}
function spanOf(amount, unit) {
  const value2 = Number(amount.replace(",", "."));
  const word2 = unit.toLowerCase();
  if (!(value2 > 0)) return null;
  if (word2 === "hz") return 1 / value2;
  const factor = SECONDS_PER[word2 === "ms" ? "ms" : word2[0]];
  return factor === void 0 ? null : value2 * factor;
}
function temperatureUnitIn(text) {
  const found = /* @__PURE__ */ new Set();
  if (/[°º˚�]\s?C\b|℃|\bdeg\.?\s?C\b|celsius|centigrade|[([]\s?C\s?[)\]]|\b_?degC\b/i.test(text))
    found.add("C");
  if (/[°º˚�]\s?F\b|℉|\bdeg\.?\s?F\b|fahrenheit|[([]\s?F\s?[)\]]|\b_?degF\b/i.test(text))
    found.add("F");
  if (/\bkelvin\b|[([]\s?K\s?[)\]]/i.test(text)) found.add("K");
  if (/\bunits?\W{1,4}C\b|\btemp\w*\W{1,6}C\b/i.test(text)) found.add("C");
  if (/\bunits?\W{1,4}F\b|\btemp\w*\W{1,6}F\b/i.test(text)) found.add("F");
  return found.size === 1 ? [...found][0] : null;
}

// src/core/log/channels/columnUnit.ts
function columnUnit(column) {
  return scaleOf(column.unitText) ?? column.suffix ?? temperatureUnitIn(column.name) ?? bareUnit(column.name);
}
function scaleOf(unitText) {
  const text = unitText.trim().replace(/^[([]\s*|\s*[)\]]$/g, "");
  if (/^(?:[°º˚�Â]{0,2}\s?C|℃|deg\.? ?C|celsius)$/i.test(text)) return "C";
  if (/^(?:[°º˚�Â]{0,2}\s?F|℉|deg\.? ?F|fahrenheit)$/i.test(text)) return "F";
  return /^(?:[°º˚]?\s?K|kelvin|deg\.? ?K)$/i.test(text) ? "K" : null;
}
function bareUnit(name) {
  const match = /(?:temp(?:erature)?\d*[ _.,-]*|\d[ _.,-]?)([CFK])$/i.exec(name);
  return match === null ? null : match[1]?.toUpperCase();
}

// src/core/log/channels/steadyValues.ts
var FAR = 90;
function steadyValues(numbers) {
  const values = numbers.filter((value2) => value2 < 3300 && value2 > -460 && !isScaleEnd(value2));
  return values.filter((value2, i) => {
    const before = Math.abs(value2 - (values[i - 1] ?? Number.POSITIVE_INFINITY));
    const after = Math.abs(value2 - (values[i + 1] ?? Number.POSITIVE_INFINITY));
    return before < FAR || after < FAR;
  });
}
var SCALE_ENDS = [1372, 1768, 1820].flatMap((end) => [end, end * 1.8 + 32, end + 273.15]);
var LEAST_END = Math.min(...SCALE_ENDS) - 1;
function isScaleEnd(value2) {
  if (value2 < LEAST_END) return false;
  return SCALE_ENDS.some((end) => Math.abs(value2 - end) < 0.6);
}

// src/core/log/channels/unitProblem.ts
var FIX = "export the log again in whole degrees of one unit";
function unitProblem(temperatures, name) {
  const mixed2 = temperatures.find(({ otherSuffix }) => otherSuffix !== null);
  if (mixed2 !== void 0)
    return {
      code: "log/unit-mixed",
      what: `the cells of "${mixed2.name}" are partly in ${sign(mixed2.suffix)} and partly in ${sign(mixed2.otherSuffix)}`,
      where: name,
      expected: "one unit in the whole column",
      fix: `${FIX}; --log-unit reads all numbers in one, whatever stands beside them`
    };
  const scaled2 = temperatures.find((column) => SCALED.test(`${column.name} ${column.unitText}`));
  if (scaled2 === void 0) return null;
  return {
    code: "log/unit-scaled",
    what: `"${scaled2.name}" counts parts of a degree, not degrees`,
    where: name,
    expected: "temperatures in \xB0C, \xB0F or K",
    fix: `${FIX}; --log-unit C, F or K reads the numbers as degrees all the same`
  };
}
function sign(unit) {
  return unit === "K" ? "K" : `\xB0${unit}`;
}
var SCALED = /(?:0[.,]0?1|1\/100?)\s*(?:[°º˚]|deg|[CFK]\b)|\btenths?\b|[°º˚]\s?[CFK]\s?[x×*]\s?100?\b/i;

// src/core/log/channels/wildRows.ts
var REACH = 3;
var LEAST_BEND = 40;
var TIMES_CALM = 8;
var LEAST_WILD = 5;
var POSSIBLE = { least: -460, most: 3300 };
function wildStretch(values, others) {
  if (others.length === 0 || !jumpsOften(values)) return null;
  const bends = bendsOf(values);
  const suspects2 = suspectRows(bends);
  if (suspects2.length < LEAST_WILD) return null;
  const calm = others.map(bendsOf);
  const wild = suspects2.filter(
    (at) => usualBend(bends, at) > TIMES_CALM * Math.min(...calm.map((other) => usualBend(other, at)))
  );
  const first = wild[0];
  const last = wild.at(-1);
  if (first === void 0 || last === void 0 || wild.length < LEAST_WILD) return null;
  const { from, to } = widened(bends, calm, [first, last]);
  const usual = median(bends.subarray(from + 1, to + 1));
  return usual > LEAST_BEND ? { from, to, usualJump: usual } : null;
}
function jumpsOften(values) {
  let jumps = 0;
  let last = Number.NaN;
  for (let i = 0; i < values.length; i++) {
    const value2 = values[i];
    if (!isReading(value2)) continue;
    if (Math.abs(value2 - last) > LEAST_BEND / 3) jumps++;
    last = value2;
  }
  return jumps >= LEAST_WILD / 2;
}
function isReading(value2) {
  return value2 > POSSIBLE.least && value2 < POSSIBLE.most && !isScaleEnd(value2);
}
function bendsOf(values) {
  const bends = new Float64Array(values.length).fill(Number.NaN);
  let last = Number.NaN;
  let before = Number.NaN;
  for (let i = 0; i < values.length; i++) {
    const value2 = values[i];
    if (!isReading(value2)) continue;
    bends[i] = Math.abs(value2 - 2 * last + before);
    before = last;
    last = value2;
  }
  return bends;
}
function suspectRows(bends) {
  const rows = [];
  for (let i = 0; i < bends.length; i++)
    if (bends[i] > LEAST_BEND && usualBend(bends, i) > LEAST_BEND) rows.push(i);
  return rows;
}
function usualBend(bends, at) {
  return median(bends.subarray(Math.max(0, at - REACH), at + REACH + 1));
}
function widened(bends, calm, [first, last]) {
  const bendOf = (other, at) => {
    const here = other[at];
    return Number.isNaN(here) ? usualBend(other, at) : Math.min(here, usualBend(other, at));
  };
  const isJump = (at) => bends[at] > LEAST_BEND + 2 * Math.min(...calm.map((other) => bendOf(other, at)));
  let from = first;
  let to = last;
  for (let at = first - 1; at >= Math.max(0, from - REACH); at--) if (isJump(at)) from = at;
  for (let at = last + 1; at <= Math.min(bends.length - 1, to + REACH); at++)
    if (isJump(at)) to = at;
  return { from, to: to + REACH >= bends.length ? bends.length - 1 : to };
}

// src/core/log/channels/unit.ts
var HOTTEST_KILN_C = 1420;
var ROOM_C = { from: 8, to: 40 };
var COLDEST_SHED_C = -5;
var NO_FIRING = 40;
var SIGN = { C: "\xB0C", F: "\xB0F", K: "K" };
function celsiusFrom(value2, unit) {
  if (unit === "C") return value2;
  return unit === "F" ? celsiusFromFahrenheit(value2) : celsiusFromKelvin(value2);
}
function decideUnit(temperatures, preambleUnit, options) {
  const option = "--log-unit C, F or K";
  if (options.unit !== void 0) {
    const told = options.unit;
    return ok({
      unit: told,
      of: () => told,
      decision: decision("unit", SIGN[told], {
        confidence: "told",
        because: "it was given as an option",
        option,
        says: { unit: told }
      })
    });
  }
  const problem = unitProblem(temperatures, options.name);
  if (problem !== null) return failed(problem);
  const labelled = temperatures.map(columnUnit).find((unit) => unit !== null) ?? null;
  const stated = labelled ?? preambleUnit;
  const isOne = temperatures.every((column) => (columnUnit(column) ?? stated) === stated);
  if (stated === null) return likelyUnit(temperatures, options);
  const because = labelled !== null ? "it is written beside the column's name or numbers" : "it is named above the table";
  return ok({
    unit: stated,
    of: (column) => columnUnit(column) ?? stated,
    decision: decision("unit", SIGN[stated], {
      confidence: "certain",
      because,
      option,
      // What is told holds for every column, so it cannot say that they differ.
      ...isOne && { says: { unit: stated } }
    })
  });
}
function likelyUnit(temperatures, options) {
  const calm = calmColumns(temperatures);
  const range = rangeOf(calm);
  const grid = gridUnit(calm);
  const possible2 = possibleUnits(range);
  const [unit] = grid !== null && possible2.includes(grid.unit) ? [grid.unit] : possible2;
  const isSettled = possible2.length === 1 || grid !== null && possible2.includes(grid.unit);
  const { start, least, peak } = range;
  const fall = least < start - 5 ? `, fall to ${shown(least)}` : "";
  const seen = `start at ${shown(start)}${fall} and peak at ${shown(peak)}`;
  if (!isSettled || unit === void 0)
    return failed({
      code: "log/unit-unknown",
      what: `the temperatures ${seen}, which could be ${asUnits(possible2.length > 0 ? possible2 : ["C", "F", "K"])}`,
      where: options.name,
      expected: "a unit in the header, in a row under it, in the cells, or above the table",
      fix: "say it with --log-unit C or --log-unit F (or K)"
    });
  const isByGrid = possible2.length > 1 && grid !== null;
  return ok({
    unit,
    of: () => unit,
    decision: decision("unit", SIGN[unit], {
      confidence: isByGrid ? "guessed" : "likely",
      because: isByGrid ? `no unit is written; ${grid.because}` : `no unit is written; temperatures that ${seen} are possible only in ${SIGN[unit]}`,
      runnerUp: isByGrid ? asUnits(possible2.filter((each) => each !== unit)) : null,
      option: "--log-unit C, F or K",
      says: { unit }
    })
  });
}
function asUnits(list) {
  return list.map((each) => SIGN[each]).join(" or ");
}
function shown(value2) {
  return Number.isFinite(value2) ? String(Math.round(value2 * 10) / 10) : "nothing";
}
function calmColumns(temperatures) {
  const every = temperatures.map(({ numbers }) => numbers);
  const moving = every.filter((numbers) => !isOneNumber(numbers));
  const all = moving.length > 0 ? moving : every;
  const calm = all.filter(
    (numbers) => wildStretch(
      numbers,
      all.filter((other) => other !== numbers)
    ) === null
  );
  return (calm.length > 0 ? calm : all).map(steadyValues).filter((values) => values.length > 0);
}
function isOneNumber(numbers) {
  const first = numbers.find((value2) => !Number.isNaN(value2));
  return numbers.every((value2) => value2 === first || Number.isNaN(value2));
}
function rangeOf(columns) {
  let least = Number.NaN;
  let peak = Number.NaN;
  for (const values of columns) {
    const copy = values.slice();
    const spare = Math.min(3, Math.floor(copy.length / 200));
    const [low, high] = [selected(copy, spare), selected(copy, copy.length - 1 - spare)];
    if (!(low >= least)) least = low;
    if (!(high <= peak)) peak = high;
  }
  return { start: columns[0]?.[0] ?? Number.NaN, least, peak };
}
function possibleUnits({ start, least, peak }) {
  if (peak < NO_FIRING) return ["C", "F"];
  const units = ["C", "F", "K"];
  const fits = units.filter((unit) => celsiusFrom(peak, unit) <= HOTTEST_KILN_C);
  const cold = Math.min(start, least);
  if (fits.includes("C") && cold >= ROOM_C.from && cold <= ROOM_C.to) return ["C"];
  return fits.filter((unit) => celsiusFrom(cold, unit) >= COLDEST_SHED_C);
}
var GRID_READINGS = 20;
function gridUnit(columns) {
  const values = columns.flatMap((column) => Array.from(column.subarray(0, 2e3)));
  const fractions = new Set(values.map((value2) => Math.round(value2 % 1 * 10)));
  if (values.length < GRID_READINGS || fractions.size < 3) return null;
  const isWhole = (value2, slack) => Math.abs(value2 - Math.round(value2)) < slack;
  if (values.every((value2) => isWhole((value2 - 32) / 1.8, 0.01)))
    return { unit: "F", because: "all numbers are whole degrees Celsius turned into \xB0F" };
  if (values.every((value2) => isTenthOfFahrenheit(value2)))
    return { unit: "C", because: "all numbers are whole degrees Fahrenheit turned into \xB0C" };
  return null;
}
function isTenthOfFahrenheit(value2) {
  const back = (Math.round(value2 * 1.8 + 32) - 32) / 1.8;
  return Math.abs(Math.round(back * 10) / 10 - value2) < 1e-3;
}

// src/core/log/channels/words.ts
var WORDS = {
  setPoint: /set[ _-]?(?:point|temp|value|val|t)\b|setpoint|\bset\b|\bsp\d?\b|_sp\b|\bsv\b|target|soll|sollwert|consigne|programm?ed|\bprogram\b|\bprog\b/i,
  output: /output|\bout\b|\bpower\b|\bduty\b|leistung|\bpwr\b|\brelays?\d?\b|\bssr\b|\bheat(?:er|ing)? ?(?:on|%)|\bmv ?%|\bpid\b/i,
  coldJunction: /cold.?j|\bcj[ct]?\b|ambient|internal|\bboard\b|junction|\bcase\b|\broom\b|raum|umgebung|enclosure|electronics/i,
  temperature: /temp|thermo|\btc[ _-]?\d*|tc\d|\bt[ _-]?\d+\b|zone|kiln|oven|furnace|chamber|\bprobe|sensor|pyro|\b(?:top|middle|mid|bottom|upper|lower|front|back|shelf|lid|floor)\b|\bpv\b|\bch(?:annel)?[ _.-]?\d+|ofen|\bist\b|actual|measured|process/i,
  nothing: /volt|batter|\bvbat|humid|\brh\b|pressure|press\b|flux|\bhrr|wind|rain|precip|mass|weight|\bgas\b|\bco2?\b|oxygen|\bo2\b|current|\bamps?\b|energy|kwh|cone|count|status|state|alarm|error|mode|segment|\bseg\b|\bstep\b|flag|signal|rssi|\bfan\b|rate|slope|heat ?flow/i
};
var OTHER_UNIT = /^[([]?\s*(?:%|mV|µV|V|A|mA|W|kW|kWh?|kW\/m[2²]|W\/m[2²]|mW|mW\/mg|W\/g|Pa|hPa|kPa|mbar|bar|ppm|rpm|mg|g|kg|mm|m\/s|l\/min|s|min|h|Hz|pH|lx)\s*[)\]]?$/i;
var OTHER_UNIT_IN_NAME = /[([]\s*(?:%|mV|µV|V|A|mA|W|kW|kWh?|kW\/m[2²]|W\/m[2²]|mW|mW\/mg|Pa|hPa|kPa|mbar|bar|ppm|rpm|mg|g|kg|mm|m\/s|Hz|%\s?RH)\s*[)\]]|_(?:mv|kw|pct|percent|hpa|rpm)\b/i;

// src/core/log/channels/millivoltsColdJunction.ts
var TERMINALS_C = { least: -20, most: 85 };
var SURE = { celsius: 48, fahrenheit: 61 };
var OPTION = "--cold-junction 25C";
function decideColdJunction(log, options) {
  const told = options.coldJunctionC;
  if (told !== void 0)
    return ok({
      tempC: () => told,
      column: null,
      scale: null,
      decision: decision("cold junction", `${told} \xB0C`, {
        confidence: "told",
        because: "it was given; its emf is added to every reading",
        option: OPTION,
        says: { coldJunctionC: told }
      })
    });
  const named = toldColumn(log.table.columns, options);
  const column = named ?? coldColumn(log.table.columns);
  if (column === null)
    return failed(unknown(options, "no column says how warm the terminals were"));
  const middle = median(column.numbers);
  const written3 = columnUnit(column) ?? options.unit ?? log.preamble.unit;
  const scale = written3 ?? likelyScale(middle);
  if (scale === null)
    return failed(
      unknown(options, `"${column.name}" is about ${Math.round(middle)}, which could be \xB0C or \xB0F`)
    );
  const how = named !== null ? "told" : written3 !== null ? "certain" : "likely";
  return fromColumn(column, { scale, how, options });
}
function toldColumn(columns, { roles = {} }) {
  const told = Object.keys(roles).find((name) => roles[name] === "cold-junction");
  return told === void 0 ? null : findColumn(columns, told);
}
function coldColumn(columns) {
  const found = columns.filter(
    ({ kind, name, numbers }) => kind === "number" && WORDS.coldJunction.test(name.replace(/_/g, " ")) && numbers.some((value2) => !Number.isNaN(value2))
  );
  return found.find(({ name }) => /cold|junction|\bcj/i.test(name)) ?? found[0] ?? null;
}
function likelyScale(middle) {
  if (middle <= SURE.celsius) return "C";
  return middle >= SURE.fahrenheit ? "F" : null;
}
function fromColumn(column, {
  scale,
  how,
  options
}) {
  const tempsC = column.numbers.map((value2) => celsiusFrom(value2, scale));
  const filled = carriedOver(tempsC);
  if (filled === null)
    return failed(
      unknown(options, `"${column.name}" holds no temperature that terminals may have`)
    );
  const carried = filled.count === 0 ? "" : `; ${filled.count} without a possible value take that of the row before`;
  return ok({
    tempC: (row) => filled.tempsC[row],
    column,
    scale,
    decision: decision("cold junction", column.name, {
      confidence: how,
      because: `${how === "told" ? "it was given" : "its name says so"}${how === "likely" ? `, and its numbers are likely in \xB0${scale}` : ""}; the emf of each row's value is added${carried}`,
      option: `${OPTION}; --role NAME=cold-junction`,
      says: { roles: { [column.name]: "cold-junction" }, unit: scale }
    })
  });
}
function carriedOver(tempsC) {
  const isPossible2 = (tempC) => tempC >= TERMINALS_C.least && tempC <= TERMINALS_C.most;
  let last = tempsC.find(isPossible2);
  if (last === void 0) return null;
  let count2 = 0;
  const filled = tempsC.map((tempC) => {
    if (isPossible2(tempC)) last = tempC;
    else count2++;
    return last;
  });
  return { tempsC: filled, count: count2 };
}
function unknown(options, what) {
  return {
    code: "log/cold-junction-unknown",
    what: `holds millivolts, and ${what}`,
    where: options.name,
    expected: "the temperature of the terminals at which the thermocouple ends, as a column or told",
    fix: `say it with ${OPTION}, or as log.coldJunction in the firing record; 0C when the logger has added it already`
  };
}

// src/core/log/channels/millivoltsColumns.ts
var POSSIBLE_MV = { least: -1, most: 80 };
var MOSTLY = 0.9;
var UNIT_ROW = /^\s*[([]?\s*mV\s*[)\]]?\s*$/;
var IN_NAME = /\s*[([]\s*mV\s*[)\]]|[_ ,.-]+(?:mV|mv)$/;
function isMillivolts(column) {
  if (column.kind !== "number" || !saysMillivolts(column)) return false;
  const subject = nameWithoutMillivolts(column.name).replace(/_/g, " ").replace(/volt\w*/i, "");
  const isOther = [WORDS.nothing, WORDS.coldJunction, WORDS.output, WORDS.setPoint].some(
    (words) => words.test(subject)
  );
  return !isOther && areThermocoupleMillivolts(column.numbers);
}
function isOtherTemperature(column) {
  if (column.kind !== "number" || saysMillivolts(column)) return false;
  const plain2 = column.name.replace(/_/g, " ");
  if (WORDS.coldJunction.test(plain2) || WORDS.setPoint.test(plain2)) return false;
  const unit = columnUnit(column);
  const greatestC = celsiusFrom(shapeOf(column.numbers).greatest, unit ?? "C");
  if (greatestC <= TERMINALS_C.most) return false;
  if (unit !== null) return true;
  const hasOtherUnit = OTHER_UNIT.test(column.unitText) || OTHER_UNIT_IN_NAME.test(column.name);
  return !hasOtherUnit && !WORDS.nothing.test(plain2) && WORDS.temperature.test(plain2);
}
function nameWithoutMillivolts(name) {
  const short = name.replace(IN_NAME, "").trim();
  return short === "" ? name : short;
}
function greatestMillivolts(columns) {
  const possible2 = columns.map(
    ({ numbers }) => shapeOf(numbers.filter((value2) => value2 <= POSSIBLE_MV.most))
  );
  return Math.max(...possible2.map(({ greatest }) => greatest));
}
function saysMillivolts({ unitText, name }) {
  return UNIT_ROW.test(unitText) || IN_NAME.test(name);
}
function areThermocoupleMillivolts(numbers) {
  let count2 = 0;
  let inside2 = 0;
  let fine = 0;
  for (const value2 of numbers) {
    if (Number.isNaN(value2)) continue;
    count2++;
    if (value2 >= POSSIBLE_MV.least && value2 <= POSSIBLE_MV.most) inside2++;
    if (Math.abs(10 * value2 - Math.round(10 * value2)) > 1e-6) fine++;
  }
  return count2 > 0 && inside2 >= MOSTLY * count2 && fine > 0;
}

// src/core/thermocouple/compensated.ts
function compensated(type, measured) {
  const ownMv = emfMillivolts(type, measured.coldJunctionC);
  if (ownMv === null)
    throw new RangeError(`compensated: ${measured.coldJunctionC} \xB0C at the terminals of ${type}`);
  return temperatureFromEmf(type, measured.emfMv + ownMv);
}

// src/core/thermocouple/ThermocoupleType.ts
var THERMOCOUPLE_TYPES = ["K", "N", "S", "R", "B", "J", "T"];

// src/core/log/channels/millivoltsProblem.ts
var FIRING_PEAK_C = { least: 500, most: 1420 };
var ROOM_C2 = 25;
function typeUnknown(columns, cold, options) {
  const emfMv = greatestMillivolts(columns);
  const row = columns[0]?.numbers.indexOf(emfMv) ?? 0;
  const coldJunctionC = cold.ok ? cold.value.tempC(Math.max(0, row)) : ROOM_C2;
  const peaks = THERMOCOUPLE_TYPES.map((type) => ({
    type,
    read: compensated(type, { emfMv, coldJunctionC })
  }));
  const read = peaks.flatMap(
    (each) => each.read.kind === "temperature" ? [{ type: each.type, peakC: each.read.tempC }] : []
  );
  const likely = read.filter(
    ({ peakC }) => peakC >= FIRING_PEAK_C.least && peakC <= FIRING_PEAK_C.most
  );
  const over = peaks.filter((each) => each.read.kind === "above").map(({ type }) => type);
  const names = columns.map(({ name }) => `"${name}"`).join(", ");
  return {
    code: "log/thermocouple-unknown",
    what: `${names} ${columns.length === 1 ? "holds" : "hold"} millivolts, up to ${emfMv.toFixed(2)} mV, and nothing says of which thermocouple: ${peaksText(likely.length > 0 ? likely : read, over)}${cold.ok ? "" : `, if the terminals are at ${ROOM_C2} \xB0C`}`,
    where: options.name,
    expected: "the letter of its type, from the plug, the lead or the order",
    fix: "say it with --thermocouple K (or N, S, R, B, J, T), or as thermocouple.type in the firing record"
  };
}
function typeTooSmall(columns, type, options) {
  const greatest = emfMillivolts(type, emfRangeC(type).toC);
  const names = columns.map(({ name }) => `"${name}"`).join(", ");
  return {
    code: "log/thermocouple-wrong",
    what: `${names} ${columns.length === 1 ? "holds" : "hold"} up to ${greatestMillivolts(columns).toFixed(2)} mV, and over a tenth of it is outside the range of type ${type}`,
    where: options.name,
    expected: `at most ${greatest.toFixed(2)} mV, which type ${type} gives at ${Math.round(emfRangeC(type).toC)} \xB0C`,
    fix: "check the letter on the plug or the lead, and say that with --thermocouple or in the firing record"
  };
}
function peaksText(read, over) {
  const parts = [
    ...read.map(({ type, peakC }) => `${type} would peak at ${Math.round(peakC)} \xB0C`),
    ...over.length === 0 ? [] : [`it is over the range of ${over.join(", ")}`]
  ];
  return parts.join("; ");
}

// src/core/log/channels/millivolts.ts
function withoutMillivolts(log, options) {
  const found = wanted(log, options);
  if (found.length === 0) return ok({ log, options });
  const cold = decideColdJunction(log, options);
  const type = options.thermocouple;
  if (type === void 0 || !cold.ok)
    return failed(
      ...type === void 0 ? [typeUnknown(found, cold, options)] : [],
      ...cold.ok ? [] : cold.problems
    );
  const turned = new Map(
    found.map((column) => [column, inDegrees(column, { type, cold: cold.value, options })])
  );
  const beyond = found.filter(
    (column) => (turned.get(column)?.outside ?? 0) > MOST_OUTSIDE * column.numbers.length
  );
  if (beyond.length > 0) return failed(typeTooSmall(beyond, type, options));
  const { column: coldColumn2, scale } = cold.value;
  const columns = log.table.columns.map((column) => {
    if (column === coldColumn2 && scale !== null) return { ...column, unitText: `\xB0${scale}` };
    return turned.get(column)?.column ?? column;
  });
  const { unit: _, ...others } = options;
  return ok({
    log: {
      ...log,
      table: { ...log.table, columns },
      decisions: [...log.decisions, typeDecision(type, [...turned.values()]), cold.value.decision]
    },
    options: others
  });
}
function wanted({ table }, options) {
  const found = table.columns.filter(isMillivolts);
  const told = options.columns ?? [];
  if (told.length > 0) {
    const named = told.map((name) => findColumn(table.columns, name));
    const short = told.map((name) => name.trim().toLowerCase());
    return found.filter(
      (column) => named.includes(column) || short.includes(nameWithoutMillivolts(column.name).toLowerCase())
    );
  }
  return table.columns.some(isOtherTemperature) ? [] : found;
}
var MOST_OUTSIDE = 0.1;
function inDegrees(column, given) {
  const { type, cold, options } = given;
  let ambiguous = 0;
  let outside = 0;
  let coldC = Number.NaN;
  let coldMv = 0;
  const numbers = column.numbers.map((measuredMv, row) => {
    if (Number.isNaN(measuredMv)) return Number.NaN;
    const here = cold.tempC(row);
    if (here !== coldC) coldMv = emfMillivolts(type, here);
    coldC = here;
    const read = temperatureFromEmf(type, measuredMv + coldMv);
    if (read.kind === "temperature") return read.tempC;
    if (read.kind === "ambiguous") ambiguous++;
    else outside++;
    return Number.NaN;
  });
  const missingWords = outside === 0 ? column.missingWords : new Map([
    ...column.missingWords,
    [`millivolts outside the range of type ${type}`, outside]
  ]);
  const isNamed = [...options.columns ?? [], ...Object.keys(options.roles ?? {})].some(
    (told) => told.trim().toLowerCase() === column.name.toLowerCase()
  );
  const name = isNamed ? column.name : nameWithoutMillivolts(column.name);
  return {
    column: { ...column, name, numbers, missingWords, unitText: "\xB0C", suffix: null },
    outside,
    ambiguous
  };
}
function typeDecision(type, turned) {
  const count2 = turned.reduce((sum, each) => sum + each.ambiguous, 0);
  const few = count2 === 0 ? "" : `; ${count2} ${count2 === 1 ? "cell" : "cells"} below 250 \xB0C left out, where type B gives no single temperature`;
  return decision("unit", `mV of type ${type}`, {
    confidence: "told",
    because: `the heading says mV and the type was given; turned into \xB0C by the reference function of the ITS-90${few}`,
    option: "--thermocouple K, N, S, R, B, J or T",
    says: { thermocouple: type }
  });
}

// src/core/log/time/roughClock.ts
var DAY_SECONDS = 86400;
function roughClock(place) {
  if (place.kind === "none") return null;
  if (place.kind === "number") return place.column.numbers;
  if (place.clock === null) return null;
  const ofDay = place.clock.stamps.seconds;
  const running = new Float64Array(ofDay.length);
  let days = 0;
  let last = Number.NaN;
  for (let i = 0; i < ofDay.length; i++) {
    const seconds = ofDay[i];
    if (seconds - last < -DAY_SECONDS / 2) days++;
    else if (seconds - last > DAY_SECONDS / 2) days--;
    running[i] = seconds + days * DAY_SECONDS;
    if (!Number.isNaN(seconds)) last = seconds;
  }
  return spreadOut(running);
}
var COARSE_SHARE = 0.2;
function spreadOut(times2) {
  const repeats = times2.filter((time, i) => time === times2[i - 1]).length;
  if (repeats < COARSE_SHARE * times2.length) return times2;
  const spread2 = times2.slice();
  let from = 0;
  for (let i = 1; i < times2.length; i++) {
    if (times2[i] === times2[from]) continue;
    const [here, next] = [times2[from], times2[i]];
    for (let k = from; k < i; k++) spread2[k] = here + (next - here) * (k - from) / (i - from);
    from = i;
  }
  return spread2.fill(Number.NaN, from);
}

// src/core/log/time/countsEvenly.ts
function isEven(numbers) {
  const known = numbers.filter((value2) => !Number.isNaN(value2));
  const steps = known.slice(1).map((value2, i) => Math.abs(value2 - known[i]));
  const usual = median(steps);
  return steps.filter((step) => Math.abs(step - usual) <= 0.02 * usual).length > steps.length / 2;
}
function isFromZero(numbers) {
  const known = numbers.filter((value2) => !Number.isNaN(value2)).sort();
  const steps = known.slice(1).map((value2, i) => value2 - known[i]);
  return Math.abs(known[0] ?? Number.NaN) <= NEAR_ZERO * median(steps);
}
var NEAR_ZERO = 0.1;
var FEW_FALLS = 0.03;
function fallsIn(numbers) {
  let falls2 = 0;
  let count2 = 0;
  let before = Number.NEGATIVE_INFINITY;
  for (const value2 of numbers) {
    if (Number.isNaN(value2)) continue;
    count2++;
    if (value2 <= before) falls2++;
    before = value2;
  }
  return { falls: falls2, count: count2 };
}
function inOrder(numbers) {
  const { falls: falls2, count: count2 } = fallsIn(numbers);
  if (falls2 === 0 || falls2 > Math.max(1, FEW_FALLS * count2)) return numbers;
  const known = numbers.filter((value2) => !Number.isNaN(value2));
  const sorted = Float64Array.from(new Set(known)).sort();
  return isEven(sorted) ? sorted : numbers;
}

// src/core/log/time/stamps.ts
var NO_STAMPS = {
  seconds: new Float64Array(0),
  formOf: new Int32Array(0),
  forms: []
};
function stampAt(stamps, row) {
  const form = stamps.forms[stamps.formOf[row] ?? -1];
  return form === void 0 ? null : { ...form, seconds: stamps.seconds[row] };
}
function firstStamp(stamps) {
  return stampAt(
    stamps,
    stamps.formOf.findIndex((form) => form >= 0)
  );
}
function formShare(stamps, test) {
  const met = stamps.forms.map(test);
  const { formOf: formOf3 } = stamps;
  let count2 = 0;
  for (let row = 0; row < formOf3.length; row++) if (met[formOf3[row]] === true) count2++;
  return count2 / Math.max(1, formOf3.length);
}
function stampForms() {
  const forms = [];
  const numbers = /* @__PURE__ */ new Map();
  return {
    forms,
    numberOf: (form) => {
      const key = keyOf(form);
      const known = numbers.get(key);
      if (known !== void 0) return known;
      numbers.set(key, forms.length);
      return forms.push(form) - 1;
    }
  };
}
function keyOf(form) {
  const date2 = [form.first, form.second, form.third].join("/");
  const clock2 = [form.clockFields, form.half, form.offsetMinutes, form.isSpan].join("/");
  return `${date2} ${form.order} ${form.separator} ${clock2}`;
}

// src/core/log/time/timeColumn.ts
var TIME_NAME = /time|date|zeit|datum|uhr|stamp|clock|elapsed|temps|heure|hora|tempo|\b(?:sec|seconds?|min|minutes?|hours?|hrs?|t|s|h)\b/i;
var TEMPERATURE_NAME = /temp(?!o\b|s\b)|thermo|°|℃|℉|deg/i;
var INDEX_NAME = /^(?:index|idx|no\.?|nr\.?|num(?:ber)?|#|n|row|rec(?:ord)?|sample|scan|point|count|line|id|reading|seq)\b/i;
var EPOCHS = [
  { perSecond: 1, name: "seconds since 1970" },
  { perSecond: 1e3, name: "milliseconds since 1970" },
  { perSecond: 1e6, name: "microseconds since 1970" },
  { perSecond: 1e9, name: "nanoseconds since 1970" }
];
var EPOCH_1990 = 631e6;
var EPOCH_2100 = 41e8;
function epochForm({ numbers }) {
  const { first } = shapeOf(numbers);
  const scale = EPOCHS.find(
    ({ perSecond }) => first >= EPOCH_1990 * perSecond && first <= EPOCH_2100 * perSecond
  );
  return { kind: "epoch", ...scale ?? EPOCHS[0] };
}
var SERIAL_1990 = 31412;
var SERIAL_2100 = 73051;
var STEP_SHARE = 0.05;
function mayStepBy(place, intervalSeconds) {
  if (place.kind !== "number" || place.form.kind !== "elapsed") return true;
  if (!/^column \d+$/.test(place.column.name)) return true;
  const step = Math.abs(shapeOf(place.column.numbers).medianStep);
  return [1e-3, 1, 60, 3600, 86400].some(
    (unit) => Math.abs(step * unit - intervalSeconds) <= STEP_SHARE * intervalSeconds
  );
}
function pickTime(table, { name, told, intervalSeconds }) {
  if (told !== void 0) return toldTime(table, { name, told });
  const candidates = [
    ...pairCandidates(table.columns),
    ...table.columns.flatMap((column) => columnCandidates(column, table.rowCount))
  ].filter(({ place }) => intervalSeconds === null || mayStepBy(place, intervalSeconds)).sort((a, b) => b.score - a.score);
  const best = candidates[0];
  if (best === void 0)
    return ok({
      place: { kind: "none" },
      because: "no column rises like time",
      runnerUp: null,
      told: false
    });
  const next = candidates.find((other) => placeName(other.place) !== placeName(best.place));
  return ok({
    place: best.place,
    because: best.because,
    runnerUp: next === void 0 ? null : placeName(next.place),
    told: false
  });
}
function placeName(place) {
  if (place.kind === "none") return "none";
  if (place.kind === "number") return place.column.name;
  const names = [place.date?.name, place.clock?.name].filter((each) => each !== void 0);
  return [...new Set(names)].join(" + ");
}
function toldTime(table, { name, told }) {
  const column = findColumn(table.columns, told);
  if (column === null)
    return failed({
      code: "log/unknown-column",
      what: `there is no column "${told}" for the time`,
      where: name,
      expected: `one of its columns: ${columnList(table.columns)}`,
      fix: "give --time-column one of these names, or its number from 1"
    });
  const best = columnCandidates(column, table.rowCount)[0];
  const isNumber2 = column.kind === "number";
  if (best === void 0 && !isNumber2)
    return failed({
      code: "log/no-time",
      what: `column "${column.name}" holds no times`,
      where: name,
      expected: "a column of dates, clock times, or numbers that rise",
      fix: `give --time-column another of: ${columnList(table.columns)}`
    });
  const place = best?.place ?? { kind: "number", column, form: { kind: "elapsed" } };
  const pair = place.kind === "written" && place.date === null ? pairOf(table.columns, column) : null;
  return ok({
    place: pair ?? place,
    because: "it was given as an option",
    runnerUp: null,
    told: true
  });
}
function pairOf(columns, clock2) {
  const date2 = columns.find((column) => hasDate(column) && !hasClock(column));
  return date2 === void 0 ? null : { kind: "written", date: date2, clock: clock2 };
}
function pairCandidates(columns) {
  const date2 = columns.find((column) => hasDate(column) && !hasClock(column));
  const clock2 = columns.find((column) => hasClock(column) && !hasDate(column));
  if (date2 === void 0 || clock2 === void 0) return [];
  const because = "one column holds dates and another clock times";
  return [{ place: { kind: "written", date: date2, clock: clock2 }, score: 95, because }];
}
function hasDate(column) {
  return formShare(column.stamps, (form) => form.order !== "none") > 0;
}
function hasClock(column) {
  return formShare(column.stamps, (form) => form.clockFields > 0) > 0.5;
}
function columnCandidates(column, rowCount) {
  if (column.kind === "text") return [];
  if (column.kind === "stamp")
    return hasDate(column) || hasClock(column) ? [writtenCandidate(column)] : [];
  return numberCandidates(column, rowCount);
}
function writtenCandidate(column) {
  const named = TIME_NAME.test(column.name) ? 3 : 0;
  const early = -column.index / 100;
  const dated2 = hasDate(column);
  const clocked = hasClock(column);
  const place = {
    kind: "written",
    date: dated2 ? column : null,
    clock: clocked ? column : null
  };
  const score = (dated2 && clocked ? 100 : clocked ? 85 : 60) + named + early;
  const what = dated2 && clocked ? "dates with clock times" : clocked ? "clock times" : "dates";
  return { place, score, because: `its cells are ${what}` };
}
function numberCandidates(column, rowCount) {
  const first = column.numbers.find((value2) => !Number.isNaN(value2)) ?? Number.NaN;
  const shape = { ...shapeOf(inOrder(column.numbers)), first };
  if (shape.count < 2 || shape.count < 0.5 * rowCount) return [];
  const falls2 = shape.steadyShare < 0.01;
  const isSteady = shape.steadyShare >= 0.97 || falls2 || TIME_NAME.test(column.name);
  const number = (form) => ({ kind: "number", column, form });
  const epoch = EPOCHS.find(
    ({ perSecond }) => shape.first >= EPOCH_1990 * perSecond && shape.first <= EPOCH_2100 * perSecond
  );
  if (epoch !== void 0 && (isSteady || shape.least >= EPOCH_1990))
    return [
      {
        place: number({ kind: "epoch", ...epoch }),
        score: 90,
        because: `its numbers have the size of ${epoch.name}`
      }
    ];
  if (isSerial(column.numbers, shape))
    return [
      {
        place: number({ kind: "serial", since: 1900 }),
        score: 80,
        because: "its numbers are spreadsheet days of 1990 to 2100 with a fraction"
      }
    ];
  return isSteady ? elapsedCandidates(column, shape, number) : [];
}
function isSerial(numbers, shape) {
  if (shape.isWhole || !(shape.medianStep < 0.2)) return false;
  const days = numbers.filter((day) => day >= SERIAL_1990 && day <= SERIAL_2100);
  return days.length >= Math.min(0.98 * shape.count, shape.count - 1);
}
function elapsedCandidates(column, shape, number) {
  const label = `${column.name} ${column.unitText}`;
  const isTemperature = TEMPERATURE_NAME.test(label);
  if (isTemperature) return [];
  const countsByOne2 = shape.isWhole && shape.medianStep === 1 && shape.risingShare > 0.97;
  if (INDEX_NAME.test(column.name))
    return countsByOne2 ? [{ place: number({ kind: "index" }), score: 20, because: "it counts the samples" }] : [];
  if (TIME_NAME.test(label))
    return [
      { place: number({ kind: "elapsed" }), score: 70, because: "its name says so and it rises" }
    ];
  const isRising = shape.risingShare > 0.97 || shape.steadyShare < 0.01;
  if (!isRising || /^column \d+$/.test(column.name) === false) return [];
  const mayBeTime = column.index === 0 && isEven(column.numbers);
  if (!mayBeTime && !isFromZero(column.numbers)) return [];
  return [
    {
      place: number(countsByOne2 ? { kind: "index" } : { kind: "elapsed" }),
      score: column.index === 0 ? 50 : 30,
      because: countsByOne2 ? "it counts up by one" : "it rises from row to row"
    }
  ];
}

// src/core/log/channels/indoors.ts
var KILN_RANGE = 60;
var MUCH_MORE = { range: 30, times: 10 };
function isIndoors({ shape, column, role }, all) {
  if (role !== "temperature" || !/^column \d+$/.test(column.name)) return false;
  const unit = columnUnit(column);
  const others = all.filter((other) => other.column !== column && other.role === "temperature");
  const units = unit === null ? unitsOf(others) : [unit];
  const isNear = units.some((each) => {
    const least = celsiusFrom(shape.least, each);
    const most = celsiusFrom(shape.greatest, each);
    return least > 5 && most < 60 && most - least < 25;
  });
  const own = MUCH_MORE.times * (shape.greatest - shape.least);
  const isKiln = (other) => other.role === "temperature" && (other.shape.greatest - other.shape.least > Math.min(KILN_RANGE, Math.max(MUCH_MORE.range, own)) || other.shape.least - shape.greatest > KILN_RANGE);
  return isNear && others.some(isKiln);
}
function unitsOf(columns) {
  return ["C", "F", "K"].filter(
    (unit) => columns.every(
      ({ shape: { first, least, greatest } }) => possibleUnits({ start: first, least, peak: greatest }).includes(unit)
    )
  );
}
function asIndoors(judged) {
  const because = "it stays near room temperature while another column does not";
  return { ...judged, role: "cold-junction", because, isSure: false };
}

// src/core/log/channels/exactLines.ts
var RUN = 6;
var SHORT_RUN = 4;
var LEAST_RUNS = 6;
var LONG_BREAK = 0.5;
function exactShare(values, digit, { clock: clock2, places, holds }) {
  const stride = Math.max(1, Math.floor(values.length / places));
  const length = values.length < 90 ? SHORT_RUN : RUN;
  const reach = (length - 1) * stride;
  let exact = 0;
  let runs = 0;
  let broken = 0;
  let longest = 0;
  for (let from = 0; from + reach < values.length; from += stride) {
    const change = Math.abs(values[from + reach] - values[from]);
    const moves = change > 1.5 * digit * (length - 1);
    const off = moves || holds ? offLine(values, clock2, { from, stride, reach }) : Number.NaN;
    if (Number.isNaN(off)) continue;
    runs++;
    const isExact = off <= (moves ? 1.01 * digit : 1e-9);
    if (isExact) exact++;
    broken = isExact ? 0 : broken + 1;
    if (broken > longest) longest = broken;
  }
  if (runs < LEAST_RUNS) return Number.NaN;
  return longest > length + 1 ? exact / runs * LONG_BREAK : exact / runs;
}
function offLine(values, clock2, run) {
  const { from, stride, reach } = run;
  const timeOf = (row) => clock2?.[row] ?? row;
  const first = values[from];
  const slope = (values[from + reach] - first) / (timeOf(from + reach) - timeOf(from));
  let most = 0;
  for (let row = from + stride; row < from + reach; row += stride)
    most = Math.max(
      most,
      Math.abs(values[row] - first - slope * (timeOf(row) - timeOf(from)))
    );
  return most;
}
var DIGIT_READINGS = 3e3;
function thinned(values) {
  const stride = Math.ceil(values.length / DIGIT_READINGS);
  if (stride <= 1) return values;
  const few = new Float64Array(Math.ceil(values.length / stride));
  for (let i = 0; i < few.length; i++) few[i] = values[i * stride];
  return few;
}
function lastDigit(values) {
  const known = steadyValues(thinned(values)).filter((value2) => !Number.isNaN(value2));
  const isAll = (test) => known.every(test);
  const isWhole = (value2) => Math.abs(value2 - Math.round(value2)) < 1e-4;
  if (isAll((value2) => isWhole((value2 - 32) / 1.8))) return 1.8;
  for (const digit of [1, 0.5]) if (isAll((value2) => isWhole(value2 / digit))) return digit;
  if (isAll((value2) => Math.abs((Math.round(value2 * 1.8 + 32) - 32) / 1.8 - value2) < 0.051))
    return 0.6;
  return [0.1, 0.05, 0.01].find((digit) => isAll((value2) => isWhole(value2 / digit))) ?? 1e-3;
}

// src/core/log/channels/setPoints.ts
var PLACES = [240, 80, 30];
var EXACT_SHARE = 0.6;
var WAVERING_SHARE = 0.35;
var SHORT_ROWS = 40;
var LESS_OFTEN = 0.4;
var MUCH_LESS_OFTEN = 0.25;
var HARDLY_EVER = 0.05;
var LEAST_RANGE = 50;
function setPointsAmong(columns, clock2) {
  const calm = columns.filter(
    ({ values }) => wildStretch(
      values,
      columns.filter((other) => other.values !== values).map((other) => other.values)
    ) === null
  );
  const open2 = calm.filter(({ name }) => isOpenName(name, calm));
  if (calm.length < 2 || open2.length === 0) return { setPoints: [], doubtful: [] };
  const parked = open2.filter((column) => isParked(column, calm) || isStill(column, calm));
  if (parked.length > 0 && parked.length < calm.length && areLikely(parked, calm, []))
    return { setPoints: parked.map(({ values }) => values), doubtful: [] };
  const digits2 = calm.map(({ values }) => lastDigit(values));
  const wavers = /* @__PURE__ */ new Set();
  const offOnce = /* @__PURE__ */ new Set();
  for (const holds of [false, true])
    for (const places of PLACES) {
      const shares = calm.map(
        ({ values }, c) => exactShare(values, digits2[c], { clock: clock2, places, holds })
      );
      const found = exactColumns(calm, shares).filter((column) => open2.includes(column));
      if (found.length > 0 && found.length < calm.length && areLikely(found, calm, shares))
        return { setPoints: found.map(({ values }) => values), doubtful: [] };
      calm.forEach((column, c) => {
        const isOff = !holds && shares[c] < WAVERING_SHARE;
        if (isOff && (offOnce.has(column) || turnsOften(column.values))) wavers.add(column);
        if (isOff) offOnce.add(column);
      });
    }
  const doubtful = open2.filter((column) => !wavers.has(column) || holdsExactly(column, calm));
  return { setPoints: [], doubtful: doubtful.map(({ name }) => name) };
}
function areLikely(found, all, shares) {
  const [only] = found;
  if (only === void 0 || found.length > 1 || !isFollowed(only, all)) return false;
  const isOther = (column) => column !== only;
  const isOfSeries = stem(only.name) === "t" && all.some((other) => isOther(other) && stem(other.name) === "t");
  const isOff = (column, c) => (shares[c] ?? 1) < HARDLY_EVER || turnsOften(column.values);
  return !isOfSeries || all.every((column, c) => !isOther(column) || isOff(column, c));
}
var FOLLOWED_SHARE = 0.25;
function isFollowed(column, all) {
  const rangeOf2 = ({ values }) => {
    const { greatest, least: least2 } = shapeOf(steadyValues(values));
    return greatest - least2;
  };
  const least = FOLLOWED_SHARE * rangeOf2(column);
  return all.some((other) => other !== column && rangeOf2(other) >= least);
}
var PLACE_NAME = /thermo|\btc ?\d*|tc\d|zone|kiln|oven|furnace|chamber|probe|sensor|pyro|\b(?:top|middle|mid|bottom|upper|lower|front|back|rear|shelf|lid|floor|door|left|right)\b|\bpv\b|ofen|\bist\b|actual|measured|process/i;
var BARE_NAME = /^(?:t|column|col|channel|ch|input|in|analog|ai|value|data)?$/i;
function isOpenName(name, all) {
  if (PLACE_NAME.test(name.replaceAll("_", " "))) return false;
  const own = stem(name);
  if (/^column \d+$/.test(name) || BARE_NAME.test(own)) return true;
  return !all.some((other) => other.name !== name && stem(other.name) === own);
}
function isStill({ values }, others) {
  if (!isConstant(values)) return false;
  const warm = others.filter((other) => shapeOf(steadyValues(other.values)).least > LEAST_RANGE);
  if (warm.length === others.length - 1 && values.find((value2) => !Number.isNaN(value2)) === 0)
    return true;
  return others.some((other) => {
    const { greatest, least } = shapeOf(steadyValues(other.values));
    return greatest - least > LEAST_RANGE;
  });
}
var EXACT_HOLD = { rows: 20, share: 0.05, change: 5 };
function holdsExactly({ values }, others) {
  let from = 0;
  for (let at = 1; at <= values.length; at++) {
    if (values[at] === values[from] || Number.isNaN(values[at])) continue;
    const isLong = at - from >= Math.max(EXACT_HOLD.rows, EXACT_HOLD.share * values.length);
    const moves = (other) => {
      const { greatest, least } = shapeOf(steadyValues(other.values.subarray(from, at)));
      return greatest - least > EXACT_HOLD.change;
    };
    if (isLong && others.every((other) => other.values === values || moves(other))) return true;
    from = at;
  }
  return false;
}
var PARKED_SHARE = 0.5;
var PARKED_ROWS = 5;
function isParked({ values }, others) {
  if (!jumpsOnce(values)) return false;
  const { at, size } = largestJump(values);
  return others.every(
    (other) => other.values === values || !(jumpAt(other.values, at) > PARKED_SHARE * size)
  );
}
function jumpsOnce(values) {
  const { at, size } = largestJump(values);
  const { greatest, least } = shapeOf(steadyValues(values));
  const range = greatest - least;
  if (!(range > LEAST_RANGE && size > PARKED_SHARE * range)) return false;
  return isConstant(values.subarray(0, at)) || isConstant(values.subarray(at));
}
var TURNS = { most: 8, share: 0.02 };
function turnsOften(values) {
  let turns = 0;
  let way = 0;
  let last = Number.NaN;
  for (const value2 of values) {
    if (Number.isNaN(value2)) continue;
    const sign2 = Math.sign(value2 - last);
    if (sign2 * way < 0) turns++;
    if (sign2 === 1 || sign2 === -1) way = sign2;
    last = value2;
  }
  return turns > TURNS.most + TURNS.share * values.length;
}
function isConstant(values) {
  const known = values.filter((value2) => !Number.isNaN(value2));
  return known.length >= PARKED_ROWS && known.every((value2) => value2 === known[0]);
}
function jumpAt(values, at) {
  return Math.abs(values[at] - values[at - 1]);
}
function largestJump(values) {
  let at = 0;
  for (let i = 1; i < values.length; i++)
    if (at === 0 || jumpAt(values, i) > jumpAt(values, at)) at = i;
  return { at, size: jumpAt(values, at) };
}
function exactColumns(columns, shares) {
  const loosest = Math.max(...shares.filter((share) => !(share >= EXACT_SHARE)));
  if (!Number.isFinite(loosest)) return [];
  return columns.filter(({ name, values }, c) => {
    const share = shares[c];
    if (!(share >= EXACT_SHARE)) return false;
    const { greatest, least } = shapeOf(values);
    const isOfSeries = columns.some(
      (other) => other.name !== name && stem(other.name) === stem(name)
    );
    const isShort = values.length < SHORT_ROWS && /^column \d+$/.test(name);
    const isApart = loosest < (isOfSeries || isShort ? MUCH_LESS_OFTEN : LESS_OFTEN) * share;
    const isOfSize = greatest - least > LEAST_RANGE;
    return share >= EXACT_SHARE && isOfSize && isApart && !turnsOften(values);
  });
}
function stem(name) {
  return /^column \d+$/.test(name) ? name : name.replace(/[([][^)\]]*[)\]]/g, "").replace(/[\d\s_().-]+/g, "").toLowerCase();
}

// src/core/log/channels/judgedColumn.ts
var JUMPS = "it jumps about";
var HARDLY = "it hardly changes";
var STRAIGHT = "it runs in exact lines and steps, as no kiln does";
function judge(column) {
  const shape = shapeOf(column.numbers);
  const say = (role, because, isSure = true) => ({
    column,
    role,
    because,
    isSure,
    shape
  });
  if (column.kind === "stamp") return say("other", "times");
  if (column.kind === "text") return say("other", "words");
  if (shape.count === 0)
    return say(hasTemperatureWord(column) ? "temperature" : "other", "no number in it", false);
  return judgeNumbers(column, say);
}
function hasTemperatureWord(column) {
  return columnUnit(column) !== null || WORDS.temperature.test(column.name);
}
function judgeNumbers(column, say) {
  const { name, unitText } = column;
  const plain2 = name.replace(/_/g, " ");
  const unit = columnUnit(column);
  const isOther = unit === null && (OTHER_UNIT.test(unitText) || OTHER_UNIT_IN_NAME.test(name));
  if (WORDS.coldJunction.test(plain2)) return say("cold-junction", "its name says so");
  if (WORDS.output.test(plain2) && unit === null) return say("output", "its name says so");
  if (/^[([]?%[)\]]?$/.test(unitText.trim()) || /%/.test(name))
    return say("output", "its unit is %");
  if (WORDS.setPoint.test(plain2) && !isOther) return say("set-point", "its name says so");
  if (isOther) return say("other", "its unit is none of temperature");
  if (unit !== null) return say("temperature", "its unit is one of temperature");
  if (WORDS.nothing.test(plain2)) return say("other", "its name says so");
  if (WORDS.temperature.test(plain2)) return say("temperature", "its name says so");
  return judgeByShape(column, say);
}
var MOSTLY_STEADY = 0.75;
function judgeByShape(column, say) {
  const steady = steadyValues(column.numbers);
  const known = column.numbers.filter((value2) => !Number.isNaN(value2));
  const values = steady.length < MOSTLY_STEADY * known.length ? known : steady;
  const shape = shapeOf(values);
  const range = shape.greatest - shape.least;
  const wavers = wavering(values) > 0.12 * range;
  if (countsByOne(shape)) return say("other", "it counts the rows by one");
  if (shape.greatest <= 60 && shape.least >= 5 && range < 30)
    return say("other", "it stays near room temperature", false);
  if (shape.greatest <= 100.5 && shape.least >= -0.5 && (range <= 1 || wavers))
    return say("output", "it jumps about between 0 and 100", false);
  if (range < 30) return say("other", HARDLY, false);
  if (jumpsOnce(column.numbers)) return say("set-point", STRAIGHT, false);
  if (shape.greatest > 3300 || shape.least < -480)
    return say("other", "too large for a kiln", false);
  if (wavers) return say("other", JUMPS, false);
  return say("temperature", "it changes smoothly, as a kiln does", false);
}
function countsByOne({ isWhole, medianStep: medianStep2, risingShare, steadyShare }) {
  return isWhole && Math.abs(medianStep2) === 1 && (risingShare > 0.97 || steadyShare < 0.03);
}
function wavering(values) {
  const bends = new Float64Array(Math.max(0, values.length - 2));
  for (let i = 0; i < bends.length; i++)
    bends[i] = Math.abs(
      values[i + 1] - (values[i] + values[i + 2]) / 2
    );
  return bends.sort()[Math.floor(0.75 * bends.length)] ?? 0;
}

// src/core/log/channels/rolesTold.ts
var GIVEN = "given as an option";
function rolesToldOf(table, others, options) {
  const told = Object.entries(options.roles ?? {}).map(([name, role]) => ({
    name,
    role,
    column: findColumn(table.columns, name)
  }));
  const problems = told.filter(
    ({ column, role }) => column === null || !others.includes(column) || role !== "other" && column.kind !== "number"
  ).map(({ name, role, column }) => ({
    code: "log/unknown-column",
    what: `there is no column "${name}" that could be ${role}${column === null ? "" : `: it holds ${others.includes(column) ? "no numbers" : "the time"}`}`,
    where: options.name,
    expected: `a column, out of: ${columnList(table.columns)}`,
    fix: `give --role one of these names, or its number from 1: --role "${others[0]?.name ?? "1"}=${role}"`
  }));
  if (problems.length > 0) return failed(...problems);
  return ok(new Map(told.map(({ column, role }) => [column, role])));
}
function asTold(found, roles) {
  return found.map((each) => {
    const role = roles.get(each.column);
    return role === void 0 ? each : { ...each, role, because: GIVEN, isSure: true };
  });
}

// src/core/log/channels/roles.ts
var ALIKE = 0.98;
function decideRoles(table, place, options) {
  const others = table.columns.filter((column) => !isOfPlace(column, place));
  const roles = rolesToldOf(table, others, options);
  if (!roles.ok) return roles;
  if (options.columns !== void 0 && options.columns.length > 0)
    return toldRoles(table, others, { options, roles: roles.value });
  const settled2 = settle(others.map(judge), roughClock(place));
  const judged = asTold(settled2.columns, roles.value);
  if (judged.some((each) => each.role === "temperature")) {
    const isTold = roles.value.size > 0;
    const decision2 = rolesDecision({ ...settled2, columns: judged }, isTold);
    return ok({ columns: judged, decision: decision2, doubtful: isTold ? [] : settled2.doubtful });
  }
  return failed({
    code: "log/no-temperature",
    what: noTemperatureText(table, place),
    where: options.name,
    expected: "a column of temperatures, named or labelled in \xB0C, \xB0F or K",
    fix: "name the column with --column NAME or --column NUMBER"
  });
}
function noTemperatureText(table, place) {
  const millivolts = table.columns.some(
    (column) => /\bmV\b/.test(`${column.name} ${column.unitText}`)
  );
  const found = `the columns are ${columnList(table.columns)}; the time is ${placeName(place)}`;
  return millivolts ? `has millivolts but no temperatures: ${found}` : `has no column of temperatures: ${found}`;
}
function isOfPlace(column, place) {
  if (place.kind === "none") return false;
  if (place.kind === "number") return place.column === column;
  return place.date === column || place.clock === column;
}
function toldRoles(table, others, {
  options,
  roles
}) {
  const wanted2 = (options.columns ?? []).map((told) => ({
    told,
    column: findColumn(table.columns, told)
  }));
  const problems = wanted2.filter(({ column }) => column === null || !others.includes(column) || column.kind !== "number").map(({ told, column }) => ({
    code: "log/unknown-column",
    what: column === null ? `there is no column "${told}"` : `column "${column.name}" holds ${others.includes(column) ? "no numbers" : "the time"}`,
    where: options.name,
    expected: `a temperature column, out of: ${columnList(table.columns)}`,
    fix: "give --column one of these names, or its number from 1"
  }));
  if (problems.length > 0) return failed(...problems);
  const chosen = new Set(wanted2.map(({ column }) => column));
  const chosenOnly = settle(others.map(judge), null).columns.map((each) => {
    if (chosen.has(each.column)) return { ...each, role: "temperature", because: GIVEN };
    return each.role === "temperature" ? { ...each, role: "other", because: "not among the columns given" } : each;
  });
  const columns = asTold(chosenOnly, roles);
  return ok({
    columns,
    decision: rolesDecision({ columns, runnerUp: null, doubtful: [] }, true),
    doubtful: []
  });
}
function rolesDecision({ columns: judged, runnerUp, doubtful }, told) {
  const named = judged.map(({ column, role, because }) => ({ name: column.name, role, because }));
  const temperatures = named.filter(({ role }) => role === "temperature");
  const rest = named.filter(({ role }) => role !== "temperature");
  const special = rest.filter(({ role }) => role !== "other");
  const restText = rest.slice(0, 8).map(({ name, role, because }) => `${name}: ${role} (${because})`).join("; ");
  const isSure = runnerUp === null && judged.every((each) => each.role !== "temperature" || each.isSure);
  return decision("columns", temperatures.map(({ name }) => name).join(", "), {
    confidence: told ? "told" : doubtful.length > 0 ? "guessed" : isSure ? "certain" : "likely",
    because: [
      [...new Set(temperatures.map(({ because }) => because))].join("; "),
      ...restText === "" ? [] : [`left out: ${restText}`]
    ].join("; "),
    runnerUp,
    option: "--column NAME; --role NAME=ROLE",
    says: {
      columns: temperatures.map(({ name }) => name),
      ...special.length > 0 && {
        roles: Object.fromEntries(special.map(({ name, role }) => [name, role]))
      }
    }
  });
}
var HOLDING = { least: 90, most: 2600, apart: 30, share: 0.08, range: 80 };
function withHolding(judged) {
  if (judged.some((each) => each.role === "temperature" && each.isSure)) return judged;
  const still = judged.filter(
    ({ role, because, shape, column }) => role === "other" && /^column \d+$/.test(column.name) && (because === HARDLY || because === JUMPS && shape.greatest - shape.least < HOLDING.range) && shape.first > HOLDING.least && shape.first < HOLDING.most
  );
  const isNear = (a, b) => Math.abs(a.shape.first - b.shape.first) < HOLDING.apart + HOLDING.share * a.shape.first;
  const isHolding = ({ role, column }) => {
    if (role !== "temperature") return false;
    const { greatest, least } = shapeOf(steadyValues(column.numbers));
    return greatest - least < HOLDING.range;
  };
  const taken = [...still, ...judged.filter(isHolding)];
  const zones = still.filter(
    (each) => taken.some((other) => other !== each && isNear(each, other))
  );
  return judged.map(
    (each) => zones.includes(each) ? {
      ...each,
      role: "temperature",
      because: "it lies beside another as the zones of a kiln that holds"
    } : each
  );
}
function settle(all, clock2) {
  const judged = withHolding(all);
  const sure = judged.filter((each) => each.role === "temperature" && each.isSure);
  const known = sure.length > 0 ? sure : judged.filter((each) => each.role === "temperature");
  const followed = judged.map((each) => {
    const isOpen = !each.isSure && each.column.kind === "number" && each.shape.count > 0;
    if (!isOpen || known.includes(each)) return each;
    const isAlike = known.some((other) => runAlike(other, each));
    if (isAlike)
      return { ...each, role: "temperature", because: "it runs like the temperatures beside it" };
    return each.role === "temperature" ? { ...each, role: "other", because: "it is not labelled, others are" } : each;
  });
  const indoors = followed.map((each) => isIndoors(each, followed) ? asIndoors(each) : each);
  const temperatures = indoors.filter((each) => each.role === "temperature");
  const { setPoints, doubtful } = setPointsAmong(
    temperatures.map(({ column }) => ({ name: column.name, values: column.numbers })),
    clock2
  );
  const columns = indoors.map(
    (each) => setPoints.includes(each.column.numbers) ? { ...each, role: "set-point", because: STRAIGHT } : each
  );
  const found = columns.filter((each) => each.because === STRAIGHT);
  return {
    columns,
    doubtful: found.length === 0 ? doubtful : [],
    runnerUp: runnerUpOf(
      found.map(({ column }) => column.name),
      doubtful,
      unnamedAmong(columns)
    )
  };
}
function runnerUpOf(setPoints, doubtful, unnamed) {
  const others = unnamed.filter((name) => !setPoints.includes(name) && !doubtful.includes(name));
  const ways = [
    setPoints.length > 0 ? `${setPoints.join(", ")} as a temperature` : null,
    setPoints.length === 0 && doubtful.length > 0 ? `${doubtful.length > 1 ? "one of " : ""}${doubtful.join(", ")} as a set point, which would look the same here` : null,
    others.length > 0 ? `${others.join(", ")} as something else, since only numbers tell without a name` : null
  ];
  return ways.filter((way) => way !== null).join("; ") || null;
}
var NO_NAME = /^(?:column|col|channel|ch|input|in|analog|ai|value|data)[\s_.-]*\d*$/i;
function unnamedAmong(columns) {
  const counted = columns.filter(
    ({ column, shape }) => column.kind === "number" && shape.count > 0
  );
  const plain2 = (name) => name.replace(/\s*[([].*$/, "");
  const unnamed = counted.filter(({ column }) => NO_NAME.test(plain2(column.name)));
  return counted.length > 1 ? unnamed.map(({ column }) => column.name) : [];
}
function runAlike(known, open2) {
  const range = ({ shape }) => shape.greatest - shape.least;
  const isOfSize = range(open2) > 0.5 * range(known) && range(open2) < 2 * range(known) && Math.abs(open2.shape.greatest - known.shape.greatest) < 0.5 * range(known) + 20;
  return isOfSize && correlation(known.column.numbers, open2.column.numbers) > ALIKE;
}

// src/core/log/time/timeKinds.ts
var TIME_KINDS = [
  "elapsed",
  "clock-24h",
  "clock-12h",
  "epoch",
  "spreadsheet",
  "spreadsheet-1904",
  "count"
];
var TIME_KIND_OPTION = "--time-kind KIND";
var OF_CLOCK = ["elapsed", "clock-24h", "clock-12h"];
var OF_DATE = ["clock-24h", "clock-12h"];
var OF_NUMBER = [
  "elapsed",
  "epoch",
  "spreadsheet",
  "spreadsheet-1904",
  "count"
];
function asTold2(place, { name, timeKind }) {
  if (timeKind === void 0) return ok(place);
  const possible2 = possibleKinds(place);
  if (!possible2.includes(timeKind))
    return failed({
      code: "log/wrong-option",
      what: `--time-kind is ${timeKind}, but the time is ${placeName(place)}, which is ${written(place)}`,
      where: name,
      expected: `what that can be: ${possible2.join(", ")}`,
      fix: "leave out --time-kind, or name the column that is meant with --time-column"
    });
  if (place.kind !== "number") return ok(place);
  return ok({ ...place, form: formOf(timeKind, place) });
}
function possibleKinds(place) {
  if (place.kind === "none") return ["count"];
  if (place.kind === "number") return OF_NUMBER;
  return place.date === null ? OF_CLOCK : OF_DATE;
}
function formOf(kind, { column }) {
  if (kind === "epoch") return epochForm(column);
  if (kind === "spreadsheet") return { kind: "serial", since: 1900 };
  if (kind === "spreadsheet-1904") return { kind: "serial", since: 1904 };
  return { kind: kind === "count" ? "index" : "elapsed" };
}
function written(place) {
  if (place.kind === "none") return "no column";
  if (place.kind === "number") return "a column of numbers";
  return place.date === null ? "a clock" : "dates and clock times";
}

// src/core/log/time/timeUnit.ts
var RATES_C_PER_HOUR = { least: 5, most: 1500 };
var LENGTH_HOURS = { least: 0.5, most: 200 };
var NAMED = {
  ms: { name: "ms", seconds: 1e-3 },
  s: { name: "s", seconds: 1 },
  min: { name: "min", seconds: 60 },
  h: { name: "h", seconds: 3600 },
  d: { name: "days", seconds: 86400 }
};
var SCALES = [NAMED.s, NAMED.min, NAMED.h];
var TIME_UNITS = Object.keys(NAMED);
function timeScale(unit) {
  return NAMED[unit];
}
function unitOfScale(scale) {
  return TIME_UNITS.find((unit) => NAMED[unit].seconds === scale.seconds);
}
function labelledScale(label) {
  const words = label.toLowerCase().split(/[^a-zµ]+/);
  const has = (...names) => names.some((name) => words.includes(name));
  if (has("ms", "msec", "millis", "milliseconds")) return timeScale("ms");
  if (has("s", "sec", "secs", "second", "seconds", "sek", "sekunden")) return timeScale("s");
  if (has("min", "mins", "minute", "minutes", "minuten")) return timeScale("min");
  if (has("h", "hr", "hrs", "hour", "hours", "stunden", "std")) return timeScale("h");
  return has("d", "day", "days", "tage") ? timeScale("d") : null;
}
function plausibleScales(times2, tempsC, scales = SCALES) {
  const span = spanOf2(times2);
  const rate = usualRate(times2, tempsC);
  return scales.filter((scale) => {
    const hours = span * scale.seconds / 3600;
    const perHour = rate * 3600 / scale.seconds;
    const isLength = hours >= LENGTH_HOURS.least && hours <= LENGTH_HOURS.most;
    const isRate = Number.isNaN(perHour) || perHour >= RATES_C_PER_HOUR.least && perHour <= RATES_C_PER_HOUR.most;
    return isLength && isRate;
  });
}
var PARTS = [20, 10, 5, 3];
var LEAST_SLOPES = 2;
var MOST_STEP_K = 90;
var LEAST_RANGE_K = 60;
var LEAST_CHANGE_K = 8;
var MOST_CHANGE_K = 900;
var POSSIBLE_C = { least: -60, most: 1450 };
function usualRate(times2, tempsC) {
  if (!(changeOf(tempsC) > LEAST_RANGE_K)) return Number.NaN;
  for (const parts of PARTS) {
    const slopes = slopesOver(times2, tempsC, Math.max(1, Math.floor(times2.length / parts)));
    if (slopes.length >= LEAST_SLOPES) return median(slopes);
  }
  return Number.NaN;
}
function changeOf(tempsC) {
  let least = Number.POSITIVE_INFINITY;
  let greatest = Number.NEGATIVE_INFINITY;
  for (let i = 1; i < tempsC.length; i++) {
    const [before, tempC] = [possible(tempsC[i - 1]), possible(tempsC[i])];
    if (!(Math.abs(tempC - before) < MOST_STEP_K)) continue;
    if (tempC < least) least = tempC;
    if (tempC > greatest) greatest = tempC;
  }
  return greatest - least;
}
function slopesOver(times2, tempsC, stride) {
  const slopes = [];
  for (let i = stride; i < times2.length; i += stride) {
    const change = Math.abs(possible(tempsC[i]) - possible(tempsC[i - stride]));
    const span = Math.abs(times2[i] - times2[i - stride]);
    if (change > LEAST_CHANGE_K && change < MOST_CHANGE_K && span > 0) slopes.push(change / span);
  }
  return slopes;
}
function possible(tempC) {
  const isReading2 = tempC > POSSIBLE_C.least && tempC < POSSIBLE_C.most && !isScaleEnd(tempC);
  return isReading2 ? tempC : Number.NaN;
}
function spanOf2(times2) {
  let least = Number.POSITIVE_INFINITY;
  let greatest = Number.NEGATIVE_INFINITY;
  for (const time of times2) {
    if (time < least) least = time;
    if (time > greatest) greatest = time;
  }
  return greatest - least;
}

// src/core/log/checkOptions.ts
var oneOf = (...words) => (value2) => typeof value2 === "string" && words.includes(value2);
var inside = (least, most) => (value2) => typeof value2 === "number" && value2 >= least && value2 <= most;
var RULES = [
  {
    option: "--time-kind",
    givenIn: ({ timeKind }) => timeKind,
    fits: oneOf(...TIME_KINDS),
    expected: TIME_KINDS.join(", "),
    fix: "write what the time column holds: --time-kind elapsed"
  },
  {
    option: "--header",
    givenIn: ({ header }) => header,
    fits: (value2) => typeof value2 !== "number" || Number.isInteger(value2) && value2 > 0,
    expected: "a line of the file, counted from 1, or none",
    fix: "write the line with the names of the columns: --header 3"
  },
  {
    option: "--log-unit",
    givenIn: ({ unit }) => unit,
    fits: oneOf("C", "F", "K"),
    expected: "C, F or K",
    fix: "write --log-unit C, --log-unit F or --log-unit K"
  },
  {
    option: "--time-unit",
    givenIn: ({ timeUnit }) => timeUnit,
    fits: oneOf(...TIME_UNITS),
    expected: TIME_UNITS.join(", "),
    fix: "write --time-unit s, --time-unit min or --time-unit h"
  },
  {
    option: "--delimiter",
    givenIn: ({ delimiter }) => delimiter,
    fits: (value2) => value2 === WIDE_BLANKS || /^[^\w"\r\n]$/.test(String(value2)),
    expected: "one character that is no letter, digit, quote or line end",
    fix: "write the character between the cells, in quotes: --delimiter ';'"
  },
  {
    option: "--decimal",
    givenIn: ({ decimal }) => decimal,
    fits: oneOf(".", ","),
    expected: "a point or a comma",
    fix: "write --decimal . or --decimal ,"
  },
  {
    option: "--interval",
    givenIn: ({ intervalSeconds }) => intervalSeconds,
    fits: inside(Number.MIN_VALUE, Number.MAX_VALUE),
    expected: "a step above 0 seconds",
    fix: "write the seconds between two rows: --interval 60"
  },
  {
    option: "--thermocouple",
    givenIn: ({ thermocouple }) => thermocouple,
    fits: oneOf(...THERMOCOUPLE_TYPES),
    expected: "the letter of a type: K, N, S, R, B, J or T",
    fix: "write the letter that is on the plug or the order: --thermocouple K"
  },
  {
    option: "--cold-junction",
    givenIn: ({ coldJunctionC }) => coldJunctionC,
    fits: inside(TERMINALS_C.least, TERMINALS_C.most),
    expected: `a temperature of terminals, ${TERMINALS_C.least} to ${TERMINALS_C.most} \xB0C`,
    fix: "write how warm it was where the thermocouple's wire ends: --cold-junction 25C"
  }
];
function checkOptions(options) {
  return RULES.flatMap(({ option, givenIn, fits, expected, fix }) => {
    const value2 = givenIn(options);
    if (value2 === void 0 || fits(value2)) return [];
    return [
      {
        code: "log/wrong-option",
        what: `${option} is ${JSON.stringify(value2)}`,
        where: options.name,
        expected,
        fix
      }
    ];
  });
}

// src/core/log/bodyDoubt.ts
var DOUBT_SHARE = 0.01;
var PROBLEM_SHARE = 0.5;
function bodyDoubt({
  name,
  head,
  all
}) {
  const rest = head === null ? 0 : all.rows + all.rejected - head.rows - head.rejected;
  if (head === null || rest === 0) return ok((decision2) => decision2);
  const usual = head.misfits / Math.max(1, head.rows + head.rejected);
  const more = all.misfits / rest - usual;
  if (more <= DOUBT_SHARE) return ok((decision2) => decision2);
  const what = `${all.misfits} of the ${rest} rows after the first 4 MB do not read as the rows before them`;
  if (more <= PROBLEM_SHARE)
    return ok((decision2) => ({
      ...decision2,
      confidence: "guessed",
      because: `${decision2.because}; but ${what}, most of them in a row from line ${all.misfitLine}`
    }));
  return failed({
    code: "log/changes-midway",
    what,
    where: `${name}: line ${all.misfitLine}`,
    expected: "rows written in one way from the first to the last",
    fix: `look at line ${all.misfitLine}, cut the file before it, and review each part by itself`
  });
}

// src/core/log/openProblems.ts
function noSuchLine({ name, header }, lines) {
  return {
    code: "log/wrong-option",
    what: `--header is ${header}, and no line with cells begins there`,
    where: name,
    expected: `the line with the names of the columns, 1 to ${lines.at(-1) ?? 1}, or none`,
    fix: "count the lines of the file from 1, those above the table among them"
  };
}
function notLong(name, table) {
  return {
    code: "log/wrong-option",
    what: "--layout is long, but no column of words names a channel in each row",
    where: name,
    expected: `a column with the names of the channels, out of: ${columnList(table.columns)}`,
    fix: "leave out --layout, or check --delimiter"
  };
}
function noTable(name, lines, delimiter) {
  return {
    code: "log/no-table",
    what: `holds no rows of numbers (${lines} lines, cut at the ${delimiter})`,
    where: name,
    expected: "rows with a time and at least one temperature",
    fix: "check that this is the log and not its description, or say --delimiter and --decimal"
  };
}
function otherUnits(name, line) {
  return {
    code: "log/unit-changes",
    what: "begins anew with another unit of temperature in its header",
    where: `${name}: line ${line}`,
    expected: "one unit in the whole log",
    fix: `cut the file before line ${line}, and review each part by itself`
  };
}
function oneRow(name, count2) {
  return {
    code: "log/one-row",
    what: `holds ${count2 === 1 ? "one row" : "no row"} of readings`,
    where: name,
    expected: "at least two rows, at two times",
    fix: "export the whole firing, not its last reading"
  };
}
function tooManyColumns(name, most) {
  return {
    code: "log/too-many-columns",
    what: `holds more than ${most} columns`,
    where: name,
    expected: `the log of one kiln, of at most ${most} columns`,
    fix: "check that each reading has a line of its own, and say --delimiter when another was taken"
  };
}
function tooManyRows(name, most) {
  return {
    code: "log/too-many-rows",
    what: `holds more than ${most / 1e6} million rows`,
    where: name,
    expected: "the log of one firing; a day at one reading a second has 86 400 rows",
    fix: "cut the log into single firings"
  };
}

// src/core/log/text/byteHead.ts
var HEAD_BYTES = 4 << 20;
var FIRST_BYTES = 1 << 16;
function byteHead() {
  let kept = new Uint8Array(FIRST_BYTES);
  let length = 0;
  return {
    add: (bytes) => {
      const taken = bytes.subarray(0, HEAD_BYTES - length);
      if (length + taken.length > kept.length) {
        const wider = new Uint8Array(Math.min(HEAD_BYTES, 2 * (length + taken.length)));
        wider.set(kept.subarray(0, length));
        kept = wider;
      }
      kept.set(taken, length);
      length += taken.length;
      return bytes.subarray(taken.length);
    },
    isFull: () => length === HEAD_BYTES,
    bytes: () => kept.subarray(0, length),
    wholeLines: () => {
      const end = Math.max(kept.lastIndexOf(10, length - 1), kept.lastIndexOf(13, length - 1)) + 1;
      const whole2 = kept[end] === 0 ? end + 1 : end;
      return kept.subarray(0, end === 0 ? length : Math.min(whole2, length));
    },
    letGo: () => {
      kept = new Uint8Array(0);
      length = 0;
    }
  };
}

// src/core/log/text/byteTape.ts
var MOST_BYTES = 64 << 20;
var MARK_LINES = 64;
var SHOWN_BYTES = 4096;
function byteTape() {
  const parts = [];
  const starts = [];
  const lines = [1];
  const offsets = [0];
  let length = 0;
  function slice(from, most) {
    const found = new Uint8Array(Math.max(0, Math.min(most, length - from)));
    let filled = 0;
    for (let part2 = lastAtMost(starts, from); filled < found.length; part2++) {
      const bytes = parts[part2];
      const at = from + filled - starts[part2];
      const piece = bytes.subarray(at, at + found.length - filled);
      found.set(piece, filled);
      filled += piece.length;
    }
    return found;
  }
  return {
    add: (bytes) => {
      const room = MOST_BYTES - length;
      if (room <= 0 || bytes.length === 0) return;
      starts.push(length);
      parts.push(bytes.slice(0, room));
      length += Math.min(room, bytes.length);
    },
    mark: (line, offset2) => {
      lines.push(line);
      offsets.push(offset2);
    },
    nextMark: () => lines[lines.length - 1] + MARK_LINES,
    fromLine: (line) => {
      const place = lastAtMost(lines, line);
      let at = offsets[place];
      for (let here = lines[place]; here < line; here++) {
        const next = endOfLine((from) => slice(from, SHOWN_BYTES), at);
        if (next < 0) return new Uint8Array(0);
        at = next;
      }
      return slice(at, SHOWN_BYTES);
    }
  };
}
function endOfLine(read, from) {
  for (let start = from; ; ) {
    const bytes = read(start);
    if (bytes.length === 0) return -1;
    const at = bytes.findIndex((byte) => byte === 10 || byte === 13);
    if (at < 0) start += bytes.length;
    else return start + at + (bytes[at] === 13 && read(start + at + 1)[0] === 10 ? 2 : 1);
  }
}
function lastAtMost(numbers, value2) {
  let low = 0;
  let high = numbers.length - 1;
  while (low < high) {
    const middle = low + high + 1 >> 1;
    if (numbers[middle] <= value2) low = middle;
    else high = middle - 1;
  }
  return low;
}

// src/core/log/text/codePage850.ts
var UPPER_HALF = "\xC7\xFC\xE9\xE2\xE4\xE0\xE5\xE7\xEA\xEB\xE8\xEF\xEE\xEC\xC4\xC5\xC9\xE6\xC6\xF4\xF6\xF2\xFB\xF9\xFF\xD6\xDC\xF8\xA3\xD8\xD7\u0192\xE1\xED\xF3\xFA\xF1\xD1\xAA\xBA\xBF\xAE\xAC\xBD\xBC\xA1\xAB\xBB\u2591\u2592\u2593\u2502\u2524\xC1\xC2\xC0\xA9\u2563\u2551\u2557\u255D\xA2\xA5\u2510\u2514\u2534\u252C\u251C\u2500\u253C\xE3\xC3\u255A\u2554\u2569\u2566\u2560\u2550\u256C\xA4\xF0\xD0\xCA\xCB\xC8\u0131\xCD\xCE\xCF\u2518\u250C\u2588\u2584\xA6\xCC\u2580\xD3\xDF\xD4\xD2\xF5\xD5\xB5\xFE\xDE\xDA\xDB\xD9\xFD\xDD\xAF\xB4\xAD\xB1\u2017\xBE\xB6\xA7\xF7\xB8\xB0\xA8\xB7\xB9\xB3\xB2\u25A0\xA0";
var CODE_PAGE_850 = "code page 850";
function decodeCodePage850(bytes) {
  const pieces = [];
  for (let start = 0; start < bytes.length; start += 8192) {
    let piece = "";
    for (const byte of bytes.subarray(start, start + 8192))
      piece += byte < 128 ? String.fromCharCode(byte) : UPPER_HALF[byte - 128];
    pieces.push(piece);
  }
  return pieces.join("");
}

// src/core/log/text/textDecoder.ts
function decodeBytes(bytes, encoding, strict) {
  try {
    return new TextDecoder(encoding, { fatal: strict }).decode(bytes);
  } catch {
    return null;
  }
}
function encodingName(label) {
  try {
    return new TextDecoder(label).encoding;
  } catch {
    return null;
  }
}
function pieceDecoder(encoding) {
  const decoder = new TextDecoder(encoding, { ignoreBOM: true });
  return (bytes) => decoder.decode(bytes);
}
function strictPieceDecoder(encoding) {
  const decoder = new TextDecoder(encoding, { ignoreBOM: true, fatal: true });
  return (bytes) => {
    try {
      return decoder.decode(bytes);
    } catch {
      return null;
    }
  };
}
function partDecoder(encoding) {
  const decoder = new TextDecoder(encoding);
  return (bytes, isLast) => decoder.decode(bytes, { stream: !isLast });
}
function utf8Of(text) {
  return new TextEncoder().encode(text);
}

// src/core/log/text/byteText.ts
var LIKE_ASCII = /^(?:utf-8|windows-\d+|iso-8859-\d+(?:-[ei])?|koi8-[ru]|macintosh|x-mac-cyrillic|ibm866|code page 850)$/;
var MARK = [239, 187, 191];
var WINDOWS_1252 = "windows-1252";
function byteText(encoding, isTold) {
  let beyondAscii = false;
  let malformed = 0;
  const inFull = fullDecoder(encoding, isTold, () => {
    malformed++;
  });
  const decode = (bytes) => {
    const ascii = asciiText(bytes);
    if (ascii !== null) return ascii;
    beyondAscii = true;
    return inFull(bytes);
  };
  const seen = () => ({ beyondAscii, malformed });
  if (LIKE_ASCII.test(encoding))
    return { plain: encoding === "utf-8" ? withoutMark() : (bytes) => bytes, decode, seen };
  const part2 = partDecoder(encoding);
  return { plain: (bytes, isLast) => utf8Of(part2(bytes, isLast)), decode, seen };
}
function fullDecoder(encoding, isTold, whenMalformed) {
  if (encoding === CODE_PAGE_850) return decodeCodePage850;
  if (!LIKE_ASCII.test(encoding)) return pieceDecoder("utf-8");
  if (encoding !== "utf-8" || isTold) return pieceDecoder(encoding);
  const strict = strictPieceDecoder("utf-8");
  const western = pieceDecoder(WINDOWS_1252);
  return (bytes) => {
    const text = strict(bytes);
    if (text !== null) return text;
    whenMalformed();
    return western(bytes);
  };
}
function withoutMark() {
  let isFirst = true;
  return (bytes) => {
    const hasMark = isFirst && MARK.every((byte, i) => bytes[i] === byte);
    isFirst = false;
    return hasMark ? bytes.subarray(MARK.length) : bytes;
  };
}
function asciiText(bytes) {
  if (bytes.length > 1024) return null;
  for (let i = 0; i < bytes.length; i++) if (bytes[i] > 127) return null;
  return String.fromCharCode(...bytes);
}

// src/core/log/time/halfDay.ts
var HALVES = [
  ["\u4E0A\u5348", "\u4E0B\u5348"],
  ["\u5348\u524D", "\u5348\u5F8C"],
  ["\uC624\uC804", "\uC624\uD6C4"],
  ["\u03C0\u03BC", "\u03BC\u03BC"],
  ["\u03C0.\u03BC.", "\u03BC.\u03BC."],
  ["fm", "em"],
  ["f.m.", "e.m."],
  ["de.", "du."],
  ["\u0635", "\u0645"],
  ["\u092A\u0942\u0930\u094D\u0935\u093E\u0939\u094D\u0928", "\u0905\u092A\u0930\u093E\u0939\u094D\u0928"],
  ["SA", "CH"],
  ["paradite", "pasdite"],
  ["\xD6\xD6", "\xD6S"]
];
var MEANING = new Map(
  HALVES.flatMap(([morning, afternoon]) => [
    [morning.toLowerCase(), "AM"],
    [afternoon.toLowerCase(), "PM"]
  ])
);
var WORDS2 = [...MEANING.keys()].sort((a, b) => b.length - a.length).map((word2) => word2.replaceAll(".", "\\.")).join("|");
var BEFORE = new RegExp(
  `(?:^|\\s)(${WORDS2})\\s?(\\d{1,2}:\\d{2}(?::\\d{2}(?:[.,]\\d+)?)?)$`,
  "i"
);
var AFTER = new RegExp(`(\\d:\\d{2}(?::\\d{2}(?:[.,]\\d+)?)?)\\s?(${WORDS2})$`, "i");
var SPACED = /([ap])\.\s([m])\.$/i;
function plainHalfDay(text) {
  const last = text.charCodeAt(text.length - 1);
  const endsInDigit = last >= 48 && last <= 57;
  const hasOther = /[^\x21-\x7e]/.test(text);
  if (endsInDigit && !hasOther) return text;
  const spaced = text.replace(/[\u00a0\u2009\u202f]/g, " ").replace(SPACED, "$1$2");
  if (endsInDigit)
    return spaced.replace(BEFORE, (_, word2, clock2) => ` ${clock2} ${halfOf(word2)}`);
  return spaced.replace(AFTER, (_, clock2, word2) => `${clock2} ${halfOf(word2)}`);
}
function halfOf(word2) {
  return MEANING.get(word2.toLowerCase()) ?? "";
}

// src/core/log/time/months.ts
var MONTHS = [
  ["jan", "ene", "gen", "janv", "sty", "tammi"],
  ["feb", "fev", "lut", "helmi"],
  ["mar", "mrz", "maa", "mrt"],
  ["apr", "avr", "abr", "kwi", "huhti"],
  ["may", "mai", "mei", "mag", "maj", "touko"],
  ["jun", "juin", "giu", "cze", "kesa"],
  ["jul", "juil", "lug", "lip", "heina"],
  ["aug", "aou", "ago", "sie", "elo"],
  ["sep", "set", "wrz", "syys"],
  ["oct", "okt", "ott", "out", "paz", "loka"],
  ["nov", "lis", "marras"],
  ["dec", "dez", "dic", "gru", "joulu"]
];
function monthOf(name) {
  const plain2 = name.normalize("NFD").replace(/[^a-zA-Z]/g, "").toLowerCase();
  let month = 0;
  let longest = 0;
  MONTHS.forEach((starts, at) => {
    for (const start of starts)
      if (start.length > longest && plain2.startsWith(start)) {
        month = at + 1;
        longest = start.length;
      }
  });
  return month;
}

// src/core/log/time/stamp.ts
var WEEKDAY = "(?:(?:mon|tue|wed|thu|fri|sat|sun|lun|mar|mer|jeu|ven|sam|dim|mo|di|mi|do|fr|sa|so)[a-z\xE9]*\\.?,?\\s+)?";
var NUMERIC_DATE = "(\\d{1,4})([-/.])(\\d{1,2})\\2(\\d{1,4})\\.?";
var NAMED_DATE = "(\\d{1,4})(?:st|nd|rd|th)?\\.?[-/. ]\\s?([a-z\xE0-\xFF\u0100-\u017F]{3,12})\\.?[-/. ,]\\s?(\\d{1,4})";
var MONTH_DAY_DATE = "([a-z\xE0-\xFF\u0100-\u017F]{3,12})\\.?\\s(\\d{1,2}),?\\s(\\d{4})";
var SPAN_DAYS = "(?:(\\d{1,3})(?:\\.|\\s?d(?:ays?)?,?\\s?|\\s)(?=\\d{1,2}:))?";
var CLOCK = "(\\d{1,4}):(\\d{1,2})(?::(\\d{1,2})(?:[.,:](\\d{1,9}))?)?";
var HALF = "\\s*(?:([ap])\\.?\\s?m\\.?)?";
var ZONE = "\\s*(z|utc|gmt|[+-]\\d{2}:?\\d{2}|[+-]\\d{2})?(?:\\[[^\\]]*\\])?";
var STAMP = new RegExp(
  `^${WEEKDAY}(?:${NUMERIC_DATE}|${NAMED_DATE}|${MONTH_DAY_DATE})?(?:[T_,;]?\\s*|\\s-\\s)${SPAN_DAYS}(?:${CLOCK})?${HALF}${ZONE}$`,
  "i"
);
var COMPACT = /^(\d{4})(\d{2})(\d{2})[T _-]?(\d{2})(\d{2})(\d{2})?$/;
var DURATION = /^P(?:(\d+)D)?T(?:(\d+)H)?(?:(\d+)M)?(?:(\d+(?:[.,]\d+)?)S)?$/i;
function parseStamp(cell2) {
  const trimmed = cell2.trim();
  if (trimmed.length < 3 || trimmed.length > 48) return null;
  const quick = isoStamp(trimmed);
  if (quick !== null) return quick;
  const text = plainHalfDay(trimmed);
  return compactStamp(text) ?? durationStamp(text) ?? writtenStamp(text);
}
function isoStamp(text) {
  if (text.length !== 19 || text[13] !== ":" || text[16] !== ":") return null;
  const separator = text[4];
  if (text[7] !== separator || !"-/.".includes(separator)) return null;
  const between = text[10];
  if (between !== "T" && between !== " ") return null;
  const hour = digits(text, 11, 13);
  const minute = digits(text, 14, 16);
  const second = digits(text, 17, 19);
  const seconds = clockSeconds(hour, minute, second);
  const first = digits(text, 0, 4);
  const middle = digits(text, 5, 7);
  const third = digits(text, 8, 10);
  if (!(seconds + first + middle + third >= 0)) return null;
  return {
    first,
    second: middle,
    third,
    order: "year-first",
    separator,
    seconds,
    clockFields: 3,
    half: null,
    offsetMinutes: Number.NaN,
    isSpan: false
  };
}
function digits(text, from, to) {
  let value2 = 0;
  for (let i = from; i < to; i++) {
    const digit = text.charCodeAt(i) - 48;
    if (!(digit >= 0 && digit <= 9)) return Number.NaN;
    value2 = value2 * 10 + digit;
  }
  return value2;
}
function compactStamp(text) {
  const match = COMPACT.exec(text);
  if (match === null) return null;
  const [year, month, day, hour, minute, second] = match.slice(1).map((part2) => Number(part2 ?? 0));
  if (!(year && year >= 1980 && year < 2100 && month && month <= 12 && day && day <= 31))
    return null;
  const seconds = clockSeconds(hour, minute, second || 0);
  if (Number.isNaN(seconds)) return null;
  return {
    ...NO_STAMP,
    first: year,
    second: month,
    third: day,
    order: "year-first",
    separator: "",
    seconds,
    clockFields: 3
  };
}
function durationStamp(text) {
  const match = text[0] === "P" ? DURATION.exec(text) : null;
  if (match === null || text.endsWith("T")) return null;
  const [days, hours, minutes] = match.slice(1, 4).map((part2) => Number(part2 ?? 0));
  const seconds = Number((match[4] ?? "0").replace(",", "."));
  return {
    ...NO_STAMP,
    seconds: days * 86400 + hours * 3600 + minutes * 60 + seconds,
    clockFields: 3,
    isSpan: true
  };
}
var NO_STAMP = {
  first: Number.NaN,
  second: Number.NaN,
  third: Number.NaN,
  order: "none",
  separator: "",
  seconds: Number.NaN,
  clockFields: 0,
  half: null,
  offsetMinutes: Number.NaN,
  isSpan: false
};
function writtenStamp(text) {
  const match = STAMP.exec(text);
  if (match === null) return null;
  const date2 = datePart(match);
  const clock2 = clockPart(match);
  if (date2 === null || clock2 === null) return null;
  if (date2.order === "none" && clock2.clockFields === 0) return null;
  return { ...NO_STAMP, ...date2, ...clock2 };
}
function datePart(match) {
  if (match[1] !== void 0) {
    const order = match[1].length === 4 ? "year-first" : match[1].length <= 2 ? "open" : null;
    const lastLength = match[4].length;
    if (order === null || lastLength === 3 || order === "year-first" && lastLength > 2)
      return null;
    return part(match[1], match[3], match[4], order, match[2]);
  }
  if (match[5] !== void 0) {
    const month = monthOf(match[6]);
    if (month === 0) return null;
    return match[5].length === 4 ? part(match[5], month, match[7], "year-first", " ") : part(match[5], month, match[7], "day-first", " ");
  }
  if (match[8] !== void 0) {
    const month = monthOf(match[8]);
    return month === 0 ? null : part(match[9], month, match[10], "day-first", " ");
  }
  return NO_STAMP;
}
function part(first, second, third, ...[order, separator]) {
  return { first: Number(first), second: Number(second), third: Number(third), order, separator };
}
var NO_CLOCK = {
  seconds: Number.NaN,
  clockFields: 0,
  half: null,
  offsetMinutes: Number.NaN,
  isSpan: false
};
function clockPart(match) {
  const offsetMinutes = offsetOf(match[17]);
  const half = match[16] === void 0 ? null : match[16].toLowerCase() === "a" ? "am" : "pm";
  if (match[12] === void 0) return half === null && match[17] === void 0 ? NO_CLOCK : null;
  const fraction = match[15] === void 0 ? 0 : Number(`0.${match[15]}`);
  const clock2 = clockSeconds(Number(match[12]), Number(match[13]), Number(match[14] ?? 0));
  const seconds = halfDay(clock2, half) + fraction;
  if (Number.isNaN(seconds)) return null;
  const days = match[11];
  return {
    seconds: seconds + (days === void 0 ? 0 : Number(days) * 86400),
    clockFields: match[14] === void 0 ? 2 : 3,
    half,
    offsetMinutes,
    isSpan: days !== void 0
  };
}
function clockSeconds(hour, minute, second) {
  return minute < 60 && second < 61 ? hour * 3600 + minute * 60 + second : Number.NaN;
}
function halfDay(seconds, half) {
  if (half === null) return seconds;
  if (seconds >= 13 * 3600) return Number.NaN;
  const onDial = seconds >= 12 * 3600 ? seconds - 12 * 3600 : seconds;
  return half === "pm" ? onDial + 12 * 3600 : onDial;
}
function offsetOf(zone) {
  if (zone === void 0) return Number.NaN;
  if (/^[a-z]/i.test(zone)) return 0;
  const parts = /^([+-])(\d{2}):?(\d{2})?$/.exec(zone);
  if (parts === null) return Number.NaN;
  const minutes = Number(parts[2]) * 60 + Number(parts[3] ?? 0);
  return parts[1] === "-" ? -minutes : minutes;
}

// src/core/log/text/cellKind.ts
var MISSING = /^(?:nan|-?1\.#(?:ind|qnan|inf).*|[+-]?inf(?:inity)?|n\/?a|n\.a\.|null|none|nil|[-–—._*?]+|o\.?l\.?|open|over(?:load|range|flow)?|under(?:range|flow)?|err(?:or)?[ .:]?\d*|fail(?:ed)?|fault|burn-?out|bad|invalid|no ?data|missing|disconnected|off ?line|#(?:div\/0!|n\/a|value!|ref!|num!|null!|name\?|wert!))$/i;
var GROUP_BLANKS = " '\u2019\\u00a0\\u2007\\u2009\\u202f";
var SUFFIX = "([\xB0\xBA\u02DA\uFFFD\xC2]{0,2}\\s?[CFK]|\u2103|\u2109|degC?F?|degrees? [CF])|%|[a-zA-Z*!]|min|sec|hrs?";
var NUMBER = {
  ".": numberShape("\\.", ","),
  ",": numberShape(",", ".")
};
function numberShape(decimal, group) {
  const groups = `\\d{1,3}(?:[${group}${GROUP_BLANKS}]\\d{3})+`;
  return new RegExp(
    `^([+-]?)(?:(${groups})|(\\d*))(?:${decimal}(\\d*))?(e[+-]?\\d+)?\\s*(?:${SUFFIX})?$`,
    "i"
  );
}
function parseNumber(cell2, decimal) {
  const plain2 = plainNumber(cell2, decimal);
  if (!Number.isNaN(plain2)) return plain2;
  return patientNumber(cell2, decimal)?.value ?? Number.NaN;
}
function plainNumber(cell2, decimal) {
  const last = cell2.charCodeAt(cell2.length - 1);
  if (!(last >= 48 && last <= 57)) return Number.NaN;
  const second = cell2.charCodeAt(1) | 32;
  if (second === 120 || second === 98 || second === 111) return Number.NaN;
  if (decimal === ".") return finite(Number(cell2));
  if (cell2.includes(".")) return Number.NaN;
  return finite(Number(cell2.replace(",", ".")));
}
function patientNumber(cell2, decimal) {
  const trimmed = cell2.trim().replace(/^[−–]/, "-");
  if (trimmed.length === 0 || trimmed.length > 40) return null;
  const match = NUMBER[decimal].exec(trimmed);
  if (match === null) return null;
  const [, sign2, groups, whole2, fraction, exponent, suffix] = match;
  const digits2 = groups === void 0 ? whole2 ?? "" : groups.replace(/\D/g, "");
  if (digits2 === "" && (fraction ?? "") === "") return null;
  if (groups?.startsWith("0")) return null;
  const value2 = Number(`${sign2}${digits2 || "0"}.${fraction || "0"}${exponent ?? ""}`);
  if (!Number.isFinite(value2)) return null;
  return {
    value: value2,
    isGrouped: groups !== void 0,
    suffix: suffix === void 0 ? null : temperatureLetter(suffix)
  };
}
function temperatureLetter(suffix) {
  if (/℃|c$/i.test(suffix)) return "C";
  if (/℉|f$/i.test(suffix)) return "F";
  return /k$/i.test(suffix) ? "K" : null;
}
function isMissingWord(cell2) {
  const trimmed = cell2.trim();
  return trimmed.length > 0 && trimmed.length < 16 && MISSING.test(trimmed);
}
function cellKind(cell2, decimal) {
  if (cell2 === "" || cell2.trim() === "") return "empty";
  if (!Number.isNaN(plainNumber(cell2, decimal))) return "number";
  const number = patientNumber(cell2, decimal);
  if (number !== null) return number.isGrouped ? "grouped" : "number";
  if (isMissingWord(cell2)) return "missing";
  return parseStamp(cell2) === null ? "text" : "stamp";
}
function finite(value2) {
  return Number.isFinite(value2) ? value2 : Number.NaN;
}

// src/core/log/text/fixedColumns.ts
var WINDOW = 400;
var FEW = 0.01;
var MOST = 0.95;
function fixedColumns(records) {
  const middle = Math.max(WINDOW, Math.floor(records.length / 2));
  const looked = [...records.slice(0, WINDOW), ...records.slice(middle, middle + WINDOW)];
  const rows = looked.filter(isRow);
  if (rows.length < 2) return null;
  for (const few of [0, FEW]) {
    const columns = columnsOf(rows, few);
    const fitting = rows.filter((row) => cellsUnder(row, columns).isFitting);
    if (columns.length > 1 && fitting.length >= MOST * rows.length) return columns;
  }
  return null;
}
function fixedCells(record, columns) {
  const { cells, isFitting } = cellsUnder(record, columns);
  return isFitting ? cells : wideTexts(record).map(({ text }) => text);
}
function wideTexts(record) {
  return Array.from(record.matchAll(/[^ ]+(?: [^ ]+)*/g), (match) => ({
    text: match[0],
    from: match.index,
    to: match.index + match[0].length
  }));
}
function isRow(record) {
  const texts = wideTexts(record).map(({ text }) => text);
  if (texts.length > 1) return 2 * texts.filter(isTyped).length >= texts.length;
  const words = record.trim().split(/ +/);
  return /^"?\d/.test(words[0] ?? "") && words.filter(isTyped).length > 1;
}
function isTyped(text) {
  return cellKind(text, ".") !== "text" || cellKind(text, ",") !== "text";
}
function columnsOf(rows, few) {
  const width = rows.reduce((most2, row) => Math.max(most2, row.length), 0);
  const filled = new Int32Array(width);
  for (const row of rows)
    for (let at = 0; at < row.length; at++) if (row[at] !== " ") filled[at] = (filled[at] ?? 0) + 1;
  const most = Math.floor(few * rows.length);
  const columns = [];
  for (let at = 0; at < width; at++) {
    if (filled[at] <= most) continue;
    const last = columns.at(-1);
    if (last !== void 0 && at - last.to <= 1)
      columns[columns.length - 1] = { ...last, to: at + 1 };
    else columns.push({ from: at, to: at + 1 });
  }
  return columns;
}
function cellsUnder(record, columns) {
  const cells = columns.map(() => "");
  let isFitting = true;
  for (const text of wideTexts(record)) {
    const under = columns.filter(({ from, to }) => text.from < to && text.to > from);
    const at = columns.indexOf(under[0] ?? nearest(columns, text));
    if (under.length > 1 || cells[at] !== "") isFitting = false;
    cells[at] = text.text;
  }
  return { cells, isFitting };
}
function nearest(columns, text) {
  const off = (column) => Math.min(Math.abs(column.from - text.from), Math.abs(column.to - text.to));
  return columns.reduce((a, b) => off(b) < off(a) ? b : a);
}

// src/core/log/text/withoutZeros.ts
var LOST_RUN = 4;
var LOST = "";
var LOST_BYTE = LOST.charCodeAt(0);
var LINE_ENDS = [10, 13];
function withoutZeros(bytes, zeros) {
  if (zeros.run === 0 && !bytes.includes(0)) {
    if (bytes.length > 0) zeros.last = bytes[bytes.length - 1];
    return bytes;
  }
  const clean = new Uint8Array(bytes.length + 1);
  let length = 0;
  for (const byte of bytes) {
    if (byte === 0) {
      zeros.count++;
      zeros.run++;
      continue;
    }
    if (zeros.run >= LOST_RUN && !LINE_ENDS.includes(zeros.last)) clean[length++] = LOST_BYTE;
    zeros.run = 0;
    zeros.last = byte;
    clean[length++] = byte;
  }
  return clean.subarray(0, length);
}
function textWithoutZeros(text) {
  if (!text.includes("\0")) return text;
  return text.replace(/(?<=[^\0\r\n])\0{4,}(?=[^\0])/g, LOST).replaceAll("\0", "");
}

// src/core/log/text/records.ts
var MOST_QUOTED_LINES = 24;
function recordsOf(text, openers) {
  const clean = textWithoutZeros(text);
  if (!clean.includes('"')) {
    const texts = clean.includes("\r") ? clean.split(/\r\n|\n|\r/) : clean.split("\n");
    const lines = new Int32Array(texts.length);
    for (let i = 0; i < lines.length; i++) lines[i] = i + 1;
    return { texts: withoutLastEmpty(texts), lines };
  }
  return quotedRecords(clean, openers);
}
function withoutLastEmpty(texts) {
  if (texts.length > 0 && texts[texts.length - 1] === "") texts.pop();
  return texts;
}
function quotedRecords(text, openers) {
  const ends = lineEnds(text);
  const texts = [];
  const lines = [];
  for (let line = 0; line < ends.starts.length; line++) {
    const start = ends.starts[line];
    const last = lastLineOf(text, ends, line, openers);
    texts.push(text.slice(start, ends.stops[last]));
    lines.push(line + 1);
    line = last;
  }
  return { texts: withoutLastEmpty(texts), lines: Int32Array.from(lines) };
}
function lineEnds(text) {
  const starts = [0];
  const stops = [];
  for (const match of text.matchAll(/\r\n|\n|\r/g)) {
    stops.push(match.index);
    starts.push(match.index + match[0].length);
  }
  stops.push(text.length);
  return { starts, stops };
}
function lastLineOf(text, ends, first, openers) {
  let isOpen = false;
  const limit = Math.min(first + MOST_QUOTED_LINES, ends.starts.length);
  for (let line = first; line < limit; line++) {
    const here = text.slice(ends.starts[line], ends.stops[line]);
    isOpen = opensQuote(here, isOpen, openers);
    if (!isOpen) return line;
  }
  return first;
}
function opensQuote(line, wasOpen, openers) {
  let isOpen = wasOpen;
  let at = line.indexOf('"');
  while (at >= 0) {
    if (isOpen && line[at + 1] === '"') at++;
    else if (isOpen) isOpen = false;
    else isOpen = at === 0 || openers.includes(line[at - 1]);
    at = line.indexOf('"', at + 1);
  }
  return isOpen;
}

// src/core/log/text/cells.ts
function cellSplitter(delimiter, splitQuoted2, columns = null) {
  if (delimiter === " ") return splitAtBlanks;
  if (delimiter === "  ")
    return columns === null ? wideSplitter() : (record) => fixedCells(record, columns);
  return (record) => {
    if (!record.includes('"')) return record.split(delimiter);
    const plain2 = plainlyQuoted(record, delimiter);
    if (plain2 !== null || !record.includes(delimiter)) return plain2 ?? [record];
    return splitQuoted2(record, delimiter) ?? record.split(delimiter);
  };
}
function plainlyQuoted(record, delimiter) {
  const cells = [];
  let from = 0;
  for (; ; ) {
    const isQuoted = record.charCodeAt(from) === QUOTE;
    const end = isQuoted ? record.indexOf('"', from + 1) + 1 : record.indexOf(delimiter, from);
    const to = end < 0 ? record.length : end;
    if (isQuoted && end === 0) return null;
    const cell2 = isQuoted ? record.slice(from + 1, to - 1) : record.slice(from, to);
    if (!isQuoted && cell2.includes('"')) return null;
    cells.push(cell2);
    if (to === record.length) return cells;
    if (!record.startsWith(delimiter, to)) return null;
    from = to + delimiter.length;
  }
}
var QUOTE = 34;
var CHANGED_ROWS = 8;
function wideSplitter() {
  let places = [];
  let shorter = 0;
  return (record) => {
    const found = Array.from(record.matchAll(/\S+(?:\s\S+)*/g));
    const starts = found.map((match) => match.index);
    const texts = found.map((match) => match[0]);
    const isShorter = texts.length > 1 && texts.length < places.length;
    const isUnder = starts.every((start) => places.some((place) => Math.abs(place - start) <= 1));
    shorter = isShorter && !isUnder ? shorter + 1 : 0;
    if (texts.length >= places.length || shorter >= CHANGED_ROWS) places = starts;
    else if (texts.length > 1) return underPlaces(texts, starts, places);
    return texts.length === 0 ? [""] : texts;
  };
}
function underPlaces(texts, starts, places) {
  const cells = places.map(() => "");
  texts.forEach((text, i) => {
    const off = places.map((place) => Math.abs(place - starts[i]));
    const column = off.indexOf(Math.min(...off));
    cells[column] = cells[column] === "" ? text : `${cells[column]} ${text}`;
  });
  return cells;
}
var BETWEEN_CELLS = /[ \t]+(?![ap]\.?m\.?(?:\s|$))/i;
function splitAtBlanks(record) {
  const trimmed = record.trim();
  if (trimmed === "") return [""];
  if (!trimmed.includes('"')) return trimmed.split(BETWEEN_CELLS);
  return (trimmed.match(/(?:"[^"]*"|[^ \t])+/g) ?? [""]).map((cell2) => cell2.replaceAll('"', ""));
}

// src/core/log/text/cutCell.ts
var ROWS_BEFORE = 5;
var LESS_SHARE = 0.6;
function withoutCutCell(table, form) {
  const last = table.rowCount - 1;
  if (form.openLine === 0 || last < ROWS_BEFORE || table.lineOf(last) !== form.openLine)
    return table;
  const cells = form.split(table.textOf(last));
  const at = cells.findLastIndex((cell2) => cell2.trim() !== "");
  const column = table.columns[at];
  if (column?.kind === "stamp" && isCutTime(cells[at], table, { at, split: form.split }))
    return withCutColumn(table, withoutStamp(column, last));
  if (column?.kind !== "number" || Number.isNaN(column.numbers[last])) return table;
  const before = Array.from({ length: ROWS_BEFORE }, (_, back) => {
    const row = form.split(table.textOf(last - 1 - back));
    return row[at] ?? "";
  }).filter((cell2) => !Number.isNaN(parseNumber(cell2, form.decimal)));
  if (!isCut(cells[at], before, form.decimal)) return table;
  return withCutColumn(table, without(column, last));
}
function isCutTime(cell2, table, { at, split }) {
  const last = table.rowCount - 1;
  const before = Array.from(
    { length: ROWS_BEFORE },
    (_, back) => split(table.textOf(last - 1 - back))[at] ?? ""
  ).filter((each) => each.trim() !== "");
  const formOf3 = (text) => {
    const clock2 = /(\d+)((?::\d+)*)\D*$/.exec(text.trim());
    return clock2 === null ? "" : `${clock2[2]?.replace(/\d/g, "0")}`;
  };
  const forms = new Set(before.map(formOf3));
  return forms.size === 1 && formOf3(cell2).length < (forms.values().next().value ?? "").length;
}
function withCutColumn(table, column) {
  return {
    ...table,
    cutRow: table.rowCount - 1,
    columns: table.columns.map((each) => each.index === column.index ? column : each)
  };
}
function withoutStamp(column, row) {
  const seconds = column.stamps.seconds.slice();
  const formOf3 = column.stamps.formOf.slice();
  seconds[row] = Number.NaN;
  formOf3[row] = -1;
  return { ...column, stamps: { ...column.stamps, seconds, formOf: formOf3 } };
}
function isCut(cell2, before, decimal) {
  if (before.length < 2) return false;
  const tails = new Set(before.map((each) => tailOf(each, decimal)));
  if (tails.size === 1 && !tails.has(tailOf(cell2, decimal))) return true;
  const least = Math.min(...before.map((each) => Math.abs(parseNumber(each, decimal))));
  const isShorter = before.every((each) => each.trim().length > cell2.trim().length);
  return isShorter && Math.abs(parseNumber(cell2, decimal)) < LESS_SHARE * least;
}
function tailOf(cell2, decimal) {
  const text = cell2.trim().replace(/\d/g, "0");
  const mark = text.lastIndexOf(decimal);
  return mark < 0 ? text.replace(/^.*0/, "") : text.slice(mark);
}
function without(column, row) {
  const numbers = column.numbers.slice();
  numbers[row] = Number.NaN;
  return { ...column, numbers };
}

// src/core/log/text/decodeText.ts
var LOOK_BYTES = 65536;
var MOST_CONTROL_SHARE = 0.02;
var PLAIN_ASCII = "it holds plain ASCII only";
var SIGNATURES = [
  { bytes: [80, 75, 3, 4], name: "a workbook or a zip archive" },
  { bytes: [208, 207, 17, 224], name: "an old workbook" },
  { bytes: [37, 80, 68, 70], name: "a PDF document" },
  { bytes: [137, 80, 78, 71], name: "a picture" },
  { bytes: [255, 216, 255], name: "a picture" },
  { bytes: [31, 139], name: "a compressed file" }
];
var DEGREE_SIGNS = [
  { bytes: [129, 139], encoding: "shift_jis" },
  { bytes: [129, 142], encoding: "shift_jis" },
  { bytes: [161, 227], encoding: "gb18030" },
  { bytes: [161, 230], encoding: "gb18030" },
  { bytes: [176], encoding: "windows-1252" },
  { bytes: [248], encoding: CODE_PAGE_850 },
  { bytes: [161], encoding: "macintosh" },
  { bytes: [156], encoding: "koi8-r" }
];
function decodeText(bytes, query) {
  const signature = SIGNATURES.find((known) => startsWith(bytes, known.bytes));
  if (signature !== void 0) return notText(query.name, `is ${signature.name}, not text`);
  const decided3 = query.encoding === void 0 ? decideEncoding(bytes) : toldEncoding(bytes, query.encoding);
  if (decided3 === null)
    return failed({
      code: "log/unknown-encoding",
      what: `the encoding "${query.encoding}" is not known`,
      where: query.name,
      expected: "the name of a text encoding: utf-8, utf-16le, utf-16be, windows-1252, cp850",
      fix: "leave out --encoding, or give one of these names"
    });
  if (!/[^\s\0\uFEFF]/.test(decided3.text))
    return failed({
      code: "log/empty",
      what: bytes.length === 0 ? "holds nothing (0 bytes)" : "holds only blanks",
      where: query.name,
      expected: "a log: rows with a time and a temperature",
      fix: "export the log again, and check that the file is the right one"
    });
  const share = controlShare(decided3.text);
  if (share > MOST_CONTROL_SHARE)
    return notText(
      query.name,
      `is not text: ${Math.round(share * 100)} % of it are control characters`
    );
  return ok(decided3);
}
function notText(name, what) {
  return failed({
    code: "log/not-text",
    what,
    where: name,
    expected: "a text file with rows of numbers: .csv, .txt, .tsv",
    fix: "export the log as CSV or text, and give that file"
  });
}
function toldEncoding(bytes, encoding) {
  const codePage = /^(cp|ibm|code page )?(437|850)$/i.test(encoding);
  const text = codePage ? decodeCodePage850(bytes) : decodeBytes(bytes, encoding, false);
  if (text === null) return null;
  const name = codePage ? CODE_PAGE_850 : encodingName(encoding) ?? encoding;
  return { ...decided(text, encoding, "told", "it was given as an option"), encoding: name };
}
function decideEncoding(bytes) {
  const marked2 = markedEncoding(bytes);
  if (marked2 !== null)
    return decided(
      lenient(bytes, marked2),
      marked2,
      "certain",
      "the file begins with its byte-order mark"
    );
  const wide = wideEncoding(bytes);
  if (wide !== null)
    return decided(lenient(bytes, wide), wide, "certain", "every second byte is zero");
  const utf8 = decodeBytes(bytes, "utf-8", true);
  if (utf8 !== null) {
    const plain2 = !/[^\0-\x7f]/.test(utf8);
    const because = plain2 ? PLAIN_ASCII : "every byte is well-formed UTF-8";
    return decided(utf8, "utf-8", "certain", because);
  }
  const sign2 = DEGREE_SIGNS.find((known) => hasDegreeSign(bytes, known.bytes)) ?? codePageBlank(bytes) ?? codePageLetter(bytes);
  if (sign2 === void 0)
    return decided(
      lenient(bytes, "windows-1252"),
      "windows-1252",
      "guessed",
      "it is not UTF-8 and nothing else gives it away; only words can be affected, not numbers"
    );
  const text = sign2.encoding === CODE_PAGE_850 ? decodeCodePage850(bytes) : lenient(bytes, sign2.encoding);
  return decided(
    text,
    sign2.encoding,
    "likely",
    sign2.because ?? "its byte before C or F is a degree sign there"
  );
}
function decided(text, encoding, confidence, because) {
  return {
    text,
    encoding,
    decision: decision("encoding", encoding, {
      confidence,
      because,
      option: "--encoding NAME",
      says: { encoding }
    })
  };
}
function lenient(bytes, encoding) {
  return decodeBytes(bytes, encoding, false) ?? decodeCodePage850(bytes);
}
function startsWith(bytes, start) {
  return start.every((byte, at) => bytes[at] === byte);
}
function markedEncoding(bytes) {
  if (startsWith(bytes, [239, 187, 191])) return "utf-8";
  if (startsWith(bytes, [255, 254])) return "utf-16le";
  if (startsWith(bytes, [254, 255])) return "utf-16be";
  return null;
}
function wideEncoding(bytes) {
  const length = Math.min(bytes.length, 4096) & ~1;
  if (length < 8) return null;
  let even = 0;
  let odd = 0;
  for (let i = 0; i < length; i += 2) {
    if (bytes[i] === 0) even++;
    if (bytes[i + 1] === 0) odd++;
  }
  const pairs = length / 2;
  if (odd > 0.7 * pairs && even < 0.1 * pairs) return "utf-16le";
  if (even > 0.7 * pairs && odd < 0.1 * pairs) return "utf-16be";
  return null;
}
function codePageBlank(bytes) {
  const isDigit = (byte) => byte !== void 0 && byte >= 48 && byte <= 57;
  for (let at = bytes.indexOf(255); at >= 0; at = bytes.indexOf(255, at + 1))
    if (isDigit(bytes[at - 1]) && isDigit(bytes[at + 1]))
      return {
        encoding: "code page 850",
        because: "its byte between thousands is a hard space there"
      };
  return void 0;
}
var CODE_PAGE_LETTERS = [129, 130, 132, 148, 150];
function codePageLetter(bytes) {
  const isLetter = (byte) => byte !== void 0 && /[a-z]/i.test(String.fromCharCode(byte));
  for (const letter of CODE_PAGE_LETTERS)
    for (let at = bytes.indexOf(letter); at >= 0; at = bytes.indexOf(letter, at + 1))
      if (isLetter(bytes[at - 1]) && isLetter(bytes[at + 1]))
        return {
          encoding: CODE_PAGE_850,
          because: "a byte between two letters is one with an accent there"
        };
  return void 0;
}
function hasDegreeSign(bytes, sign2) {
  const first = sign2[0];
  for (let at = bytes.indexOf(first); at >= 0; at = bytes.indexOf(first, at + 1)) {
    if (!sign2.every((byte, k) => bytes[at + k] === byte)) continue;
    const next = bytes[at + sign2.length];
    const isDoubleWidth = sign2.length === 2;
    if (next === 67 || next === 70 || isDoubleWidth && next !== void 0) return true;
  }
  return false;
}
function controlShare(text) {
  const length = Math.min(text.length, LOOK_BYTES);
  let control = 0;
  let counted = 0;
  for (let i = 0; i < length; i++) {
    const code = text.charCodeAt(i);
    if (code === 0) continue;
    counted++;
    const isBlank = code === 9 || code === 10 || code === 13 || code === 12 || code === 26;
    if (code < 32 && !isBlank || code === 127 || code === 65533) control++;
  }
  return counted === 0 ? 0 : control / counted;
}

// src/core/log/text/delimiterName.ts
function delimiterName(delimiter) {
  const names = {
    ",": "comma",
    ";": "semicolon",
    "	": "tab",
    "|": "bar",
    " ": "runs of blanks",
    "  ": "runs of two or more blanks"
  };
  return Object.hasOwn(names, delimiter) ? names[delimiter] : `"${delimiter}"`;
}

// src/core/log/text/beginsAsRow.ts
var BEGINNING = /^\s*(?:[a-zà-ÿ]{2,10}[.,]?\s+|pt?)?[\d+-]/i;
function beginsAsRow(text) {
  return BEGINNING.test(text);
}

// src/core/log/text/dialectScore.ts
function dialectScore(windows, { decimal, isGrouped: isGrouped2 }) {
  const kinds = windows.map((rows) => rows.map((cells) => cells.map((c) => cellKind(c, decimal))));
  const all = kinds.flat();
  const body = all.filter(isBodyLike);
  if (body.length === 0) return 0;
  const length = commonLength(body);
  const even = body.filter((row) => row.length === length);
  const typed = typedShare(even, isGrouped2 ? 1 : WEIGHT.grouped);
  const columns = windows.flatMap(
    (rows, w) => columnSigns(
      rows.filter((_, r) => kinds[w]?.[r]?.length === length && isBodyLike(kinds[w][r] ?? [])),
      decimal
    )
  );
  const count2 = (wanted2) => columns.filter((sign2) => sign2 === wanted2).length;
  const timeLike = count2("stamp") + count2("rising");
  const hasTime = timeLike > 0;
  const hasSmooth = count2("smooth") > 0 || count2("rising") > 0 && timeLike > windows.length;
  const lone = length === 1 ? 0.5 : 1;
  return lone * (typed * (even.length / body.length) * Math.sqrt(body.length / all.length)) + (hasTime ? 0.4 : 0) + (hasSmooth ? 0.4 : 0);
}
function isBodyLike(kinds) {
  const typed = kinds.filter((k) => k === "number" || k === "stamp" || k === "grouped").length;
  const words = kinds.filter((k) => k === "text").length;
  return typed > 0 && typed >= words;
}
function commonLength(rows) {
  const counts = /* @__PURE__ */ new Map();
  for (const row of rows) counts.set(row.length, (counts.get(row.length) ?? 0) + 1);
  return [...counts].reduce((a, b) => b[1] > a[1] ? b : a, [0, 0])[0];
}
var WEIGHT = {
  number: 1,
  stamp: 1,
  empty: 0.8,
  missing: 0.9,
  grouped: 0.6,
  text: 0
};
function typedShare(rows, grouped) {
  let sum = 0;
  let count2 = 0;
  for (const row of rows)
    for (const kind of row) {
      sum += kind === "grouped" ? grouped : WEIGHT[kind];
      count2++;
    }
  return count2 === 0 ? 0 : sum / count2;
}
function columnSigns(rows, decimal) {
  const length = rows[0]?.length ?? 0;
  return Array.from(
    { length },
    (_, c) => columnSign(
      rows.map((row) => row[c] ?? ""),
      decimal
    )
  );
}
function columnSign(cells, decimal) {
  if (cells.length < 3) return "none";
  const stamps = cells.filter((cell2) => cellKind(cell2, decimal) === "stamp").length;
  if (stamps > 0.8 * cells.length) return "stamp";
  const numbers = cells.map((cell2) => parseNumber(cell2, decimal)).filter((v) => !Number.isNaN(v));
  if (numbers.length < 0.7 * cells.length) return "none";
  const steps = numbers.slice(1).map((value2, i) => value2 - numbers[i]);
  const rising = steps.filter((step) => step > 0).length;
  if (rising === steps.length) return "rising";
  const sizes = steps.map(Math.abs).sort((a, b) => a - b);
  const range = Math.max(...numbers) - Math.min(...numbers);
  const median2 = sizes[Math.floor(sizes.length / 2)];
  return median2 <= 0.12 * range || range === 0 ? "smooth" : "none";
}

// src/core/log/text/looseCommas.ts
var LEAST_ROWS = { bare: 10, named: 4 };
var MOST_DIGITS = 8;
var LEAST_DIGITS = 5;
function looseCommas(all, header, name) {
  const rows = differentRows(all);
  if (rows.length < LEAST_ROWS.named) return null;
  const width = filledWidth(rows);
  const above = header === null ? 0 : header.findLastIndex((cell2) => cell2.trim() !== "") + 1;
  if (above >= width) return null;
  const isHeader = above > 1 && pairsOf(rows, width, false) >= width - above;
  const names = isHeader ? above : 0;
  const pairs = pairsOf(rows, width, !isHeader);
  if (pairs === 0 || !isHeader && pairs * rows.length < LEAST_ROWS.bare) return null;
  const shown2 = (rows[0] ?? []).slice(0, width).join(",");
  const count2 = names === 0 ? "" : ` under ${names} names`;
  return {
    code: "log/decimal-unknown",
    what: `commas stand between the cells and, it seems, inside the numbers too: ${width} cells${count2} in "${shown2}"`,
    where: name,
    expected: "another mark between cells, decimal points, or numbers in quotes",
    fix: "export the log again with semicolons between the cells; or say --delimiter , when no comma is a decimal one"
  };
}
function differentRows(rows) {
  const isTimed = (rows[0]?.[0] ?? "").includes(":");
  const seen = new Map(rows.map((row) => [row.slice(isTimed ? 1 : 0).join(","), row]));
  return [...seen.values()];
}
function filledWidth(rows) {
  return rows.reduce(
    (most, row) => Math.max(most, row.findLastIndex((cell2) => cell2.trim() !== "") + 1),
    0
  );
}
function pairsOf(rows, width, isStrict) {
  let pairs = 0;
  for (let c = 0; c + 1 < width; c++) {
    const whole2 = rows.map((row) => (row[c] ?? "").trim()).filter((cell2) => cell2 !== "");
    const isWhole = isMostly(
      whole2,
      (cell2) => /^[+-]?\d{1,3}(?:[.' \u00a0\u2009\u202f]?\d{3})?$/.test(cell2)
    );
    if (!isWhole || !areDecimals(cellsOf(rows, c + 1), isStrict)) continue;
    pairs++;
    c++;
  }
  return pairs;
}
var MOSTLY2 = 0.9;
function isMostly(cells, test) {
  return cells.length > 0 && cells.filter(test).length >= MOSTLY2 * cells.length;
}
function cellsOf(rows, column) {
  return rows.map((row) => (row[column] ?? "").trim().replace(/\s?[°º]?[CFK]$/, "")).filter((cell2) => cell2 !== "");
}
function areDecimals(digits2, isStrict) {
  const lengths = digits2.map((cell2) => cell2.length).sort((a, b) => a - b);
  const length = lengths[lengths.length >> 1] ?? 0;
  if (length < 1 || length > MOST_DIGITS) return false;
  const even = digits2.filter((cell2) => cell2.length === length && /^\d+$/.test(cell2));
  if (even.length < MOSTLY2 * digits2.length) return false;
  if (!isStrict || length > 1 && even.every((cell2) => /^0+$/.test(cell2))) return true;
  if (length > 2 && !even.some((cell2) => cell2.startsWith("0"))) return false;
  const different = new Set(even);
  const halves = even.filter((cell2) => cell2 === "0" || cell2 === "5");
  const isHalves = halves.length >= MOSTLY2 * even.length && different.has("0") && different.has("5");
  return different.size >= LEAST_DIGITS || isHalves;
}

// src/core/log/text/commaProblem.ts
function commaProblem(records, split, {
  name,
  spread: spread2,
  rows
}) {
  const looked = records.slice(0, rows).map(split);
  const kinds = looked.map(kindsOf);
  const length = commonLength(kinds.filter(isBodyLike));
  const isRow2 = (at) => looked[at]?.length === length && isBodyLike(kinds[at] ?? []);
  const first = looked.findIndex((_, at) => isRow2(at) && isRow2(at + 1));
  if (first < 0) return null;
  const above = looked.slice(Math.max(0, first - 4), first).filter(mayBeNames);
  const filled = (cells) => cells.filter((cell2) => cell2.trim() !== "").length;
  const header = above.reduce(
    (most, cells) => most === null || filled(cells) > filled(most) ? cells : most,
    null
  );
  const near = looked.filter((_, at) => at >= first && isRow2(at));
  const far = spread2.map(split).filter((cells) => cells.length === length && isBodyLike(kindsOf(cells)));
  return looseCommas([...near, ...far], header, name);
}
function kindsOf(cells) {
  return cells.map((cell2) => cellKind(cell2, "."));
}
function mayBeNames(cells) {
  const kinds = kindsOf(cells);
  return cells.length > 1 && !kinds.includes("number") && !isBodyLike(kinds);
}

// src/core/log/text/groupMark.ts
var KILN_NUMBERS = { least: 1e3, most: 3e3 };
var MOST_UNMARKED = 0.1;
var FEW2 = 5;
var DATE = /^\d{1,4}([.,])\d{1,2}\1\d{1,4}$/;
var NUMERIC = /^[+-]?\d[\d.,]*(?:\s?[°º˚]?\s?[CFK])?$/;
function isGroupMark(rows, mark) {
  const width = rows.reduce((most, row) => Math.max(most, row.length), 0);
  const uses = Array.from({ length: width }, (_, c) => useIn(rows, c, mark));
  if (uses.some(({ decimal, grouped }) => decimal > (grouped > FEW2 ? 1 : 0))) return false;
  return uses.some(isGrouped);
}
function isGrouped(use) {
  if (use.surelyGrouped > 0) return true;
  if (use.grouped === 0 || use.above > MOST_UNMARKED * use.grouped) return false;
  return use.below > 0 || use.least >= KILN_NUMBERS.least && use.greatest <= KILN_NUMBERS.most;
}
function useIn(rows, column, mark) {
  const use = {
    decimal: 0,
    surelyGrouped: 0,
    grouped: 0,
    below: 0,
    above: 0,
    least: Number.POSITIVE_INFINITY,
    greatest: Number.NEGATIVE_INFINITY
  };
  for (const row of rows) {
    const cell2 = row[column]?.trim() ?? "";
    if (NUMERIC.test(cell2) && !DATE.test(cell2))
      countCell(use, cell2.replace(/\s?[°º˚]?\s?[CFK]$/, ""), mark);
  }
  return use;
}
var SHAPES = {
  ".": { grouped: /^[+-]?[1-9]\d{0,2}(?:\.\d{3})+$/, sure: /^[+-]?[1-9]\d{0,2}(?:\.\d{3})+,\d*$/ },
  ",": { grouped: /^[+-]?[1-9]\d{0,2}(?:,\d{3})+$/, sure: /^[+-]?[1-9]\d{0,2}(?:,\d{3})+\.\d*$/ }
};
var LEADING_ZERO = /^[+-]?0[.,]/;
var SURELY = 2;
function countCell(use, cell2, mark) {
  if (!cell2.includes(mark)) {
    const whole2 = cell2.replace(/^[+-]/, "").split(/[.,]/)[0] ?? "";
    if (whole2.length > 3 && Number(whole2) <= KILN_NUMBERS.most) use.above++;
    else use.below++;
    return;
  }
  const { grouped, sure } = SHAPES[mark];
  if (sure.test(cell2)) use.surelyGrouped++;
  else if (grouped.test(cell2)) {
    use.grouped++;
    const value2 = Number(cell2.replaceAll(mark, ""));
    use.least = Math.min(use.least, value2);
    use.greatest = Math.max(use.greatest, value2);
  } else use.decimal += LEADING_ZERO.test(cell2) ? SURELY : 1;
}

// src/core/log/text/isBeforeNotes.ts
var NOTED = /^\s*"?[+-]?\d[\d.,' \u00a0\u2009\u202f]*(?:\s?[°º]?[CFK])?"?([,;\t|])\s*"?[a-z]{2}/i;
function isBeforeNotes(delimiter, records) {
  return records.some((record) => NOTED.exec(record)?.[1] === delimiter);
}

// src/core/log/text/loneDecimals.ts
var LONE = /^\s*"?[+-]?\d[\d.' \u00a0\u2009\u202f]*,\d+(?:\s?[°º]?[CFK])?"?\s*[;|]?\s*$/;
var LEAST_ROWS2 = 10;
var MOSTLY3 = 0.9;
var EVEN_SHARE = 0.8;
function isLoneDecimals(records) {
  const begun = records.filter((record) => /^\s*"?[+-]?\d/.test(record) && record.includes(","));
  const rows = begun.filter((record) => LONE.test(record));
  if (rows.length < LEAST_ROWS2 || rows.length < MOSTLY3 * begun.length) return false;
  const whole2 = rows.map((row) => Number((row.split(",")[0] ?? "").replace(/[^\d-]/g, "")));
  const steps = whole2.slice(1).map((value2, i) => value2 - whole2[i]);
  const usual = [...steps].sort((a, b) => a - b)[steps.length >> 1];
  const even = steps.filter((step) => step === usual && step !== 0);
  return even.length < EVEN_SHARE * steps.length;
}

// src/core/log/text/unevenBlanks.ts
var UNEVEN_SHARE = 0.05;
function areBlanksUneven(rows) {
  const begun = rows.filter(beginsAsRow).map((row) => row.trim());
  const shareOf = (blanks) => {
    const kinds = begun.map((row) => row.split(blanks).map((cell2) => cellKind(cell2, ".")));
    const length = commonLength(kinds);
    return kinds.filter((row) => row.length === length).length / Math.max(1, kinds.length);
  };
  return shareOf(/\s+/) > shareOf(/\s{2,}/) + UNEVEN_SHARE;
}

// src/core/log/text/dialect.ts
var DELIMITERS = [",", ";", "	", "|", "  ", " "];
var MARKS = [".", ","];
var MOST_WIDE_ROWS = 0.8;
var WINDOW_ROWS = 120;
var MARK_ROWS = 1500;
var FIXED_WIDTH_LEAD = 0.25;
function decideDialect(records, options, splitQuoted2) {
  const told = options.delimiter ?? declaredDelimiter(records);
  const marks = options.decimal === void 0 ? MARKS : [options.decimal];
  const windows = bodyWindows(records);
  const tabbed = hasTabs(windows.flat());
  const columns = tabbed || (told ?? "  ") !== "  " ? null : fixedColumns(records);
  const delimiters = told === null ? DELIMITERS.filter(
    (each) => each === "  " && columns !== null ? true : isPossible(each, windows.flat(), tabbed)
  ) : [told];
  const spread2 = spreadRows(records);
  const isUneven = columns === null && areBlanksUneven(windows.flat());
  const candidates = delimiters.flatMap((delimiter) => {
    const split2 = cellSplitter(delimiter, splitQuoted2, columns);
    const rows = windows.map((window) => window.map(split2));
    const cells = rowsOfOneLength(spread2.map(split2));
    const isLoose = LOOSE.includes(delimiter) && haveOtherMark(windows.flat(), delimiter);
    const grouped = { ".": isGroupMark(cells, "."), ",": isGroupMark(cells, ",") };
    return marks.map((decimal) => {
      const isGrouped2 = grouped[decimal === "." ? "," : "."];
      const isWrong = options.decimal === void 0 && grouped[decimal];
      const doubt = (isWrong ? 0.3 : 1) * (isLoose ? LOOSE_WEIGHT : 1);
      const score = doubt * dialectScore(rows, { decimal, isGrouped: isGrouped2 });
      return {
        delimiter,
        decimal,
        score: score + (isUneven ? 0 : leadOf(delimiter, columns !== null)),
        isGrouped: isGrouped2
      };
    });
  });
  candidates.sort((a, b) => b.score - a.score);
  const best = bestOf(candidates, records, options);
  const split = cellSplitter(best.delimiter, splitQuoted2, columns);
  return {
    delimiter: best.delimiter,
    decimal: best.decimal,
    columns,
    decisions: [
      delimiterDecision(best, candidates, { told, byOption: options.delimiter !== void 0 }),
      decimalDecision(best, candidates, options)
    ],
    problem: best.delimiter === "," && told === null ? commaProblem(records, split, { name: options.name, spread: spread2, rows: 2 * WINDOW_ROWS }) : null
  };
}
var BEGINS_NUMBER = /^\s*"?[+-]?\d/;
function bestOf(candidates, records, options) {
  const first = candidates[0];
  if (options.delimiter !== void 0 || options.decimal !== void 0) return first;
  const isLone = first.delimiter === "," && isLoneDecimals(records);
  const isCut2 = (record) => BEGINS_NUMBER.test(record) && record.includes(first.delimiter);
  const cutsNothing = isLone || !records.some(isCut2);
  if (!cutsNothing) return first;
  const decimal = isLone ? "," : first.decimal;
  const others = candidates.filter(
    (each) => each.decimal === decimal && each.delimiter !== decimal
  );
  const noted = others.find(({ delimiter }) => isBeforeNotes(delimiter, records));
  return noted ?? (isLone ? others[0] : void 0) ?? first;
}
function isPossible(delimiter, rows, tabbed) {
  if (!delimiter.startsWith(" ")) return true;
  if (delimiter === " " || tabbed) return !tabbed;
  const counted = rows.filter((row) => /\d/.test(row));
  const lengths = counted.map((row) => row.trim().split(/\s{2,}/).length);
  const usual = Math.max(
    ...lengths.map((length) => lengths.filter((each) => each === length).length)
  );
  return lengths.length > 0 && usual >= MOST_WIDE_ROWS * lengths.length && Math.max(...lengths) > 1;
}
function leadOf(delimiter, isFixed) {
  if (delimiter !== "  ") return 0;
  return isFixed ? 2 * FIXED_WIDTH_LEAD : FIXED_WIDTH_LEAD;
}
function spreadRows(records) {
  const stride = Math.max(1, Math.floor(records.length / MARK_ROWS));
  const rows = [];
  for (let at = 0; at < records.length; at += stride) rows.push(records[at]);
  return rows;
}
var LOOSE = [",", " ", "  "];
var LOOSE_WEIGHT = 0.6;
function haveOtherMark(rows, delimiter) {
  const begun = rows.filter((row) => /^\s*"?\d|\d:\d\d/.test(row) && row.includes(delimiter));
  return [";", "	", "|"].some(
    (mark) => begun.filter((row) => row.includes(mark)).length > 0.8 * begun.length
  );
}
function rowsOfOneLength(rows) {
  const begun = rows.filter((cells) => beginsAsRow(cells.find((cell2) => cell2.trim() !== "") ?? ""));
  const counts = /* @__PURE__ */ new Map();
  for (const { length } of begun) counts.set(length, (counts.get(length) ?? 0) + 1);
  const usual = [...counts].reduce((a, b) => b[1] > a[1] ? b : a, [0, 0])[0];
  return begun.filter(({ length }) => length === usual);
}
var TABBED_SHARE = 0.2;
function hasTabs(rows) {
  let longest = 0;
  let run = 0;
  for (const row of rows) {
    run = row.includes("	") ? run + 1 : 0;
    if (run > longest) longest = run;
  }
  return longest > 2 && longest > TABBED_SHARE * rows.length;
}
function declaredDelimiter(records) {
  const match = /^"?sep=(.)"?$/i.exec(records[0] ?? "");
  return match?.[1] ?? null;
}
function delimiterDecision(best, candidates, { told, byOption }) {
  const option = "--delimiter CHARACTER";
  const says = { delimiter: best.delimiter };
  if (told !== null)
    return decision("delimiter", delimiterName(best.delimiter), {
      confidence: byOption ? "told" : "certain",
      because: byOption ? "it was given as an option" : 'the first line says "sep="',
      option,
      says
    });
  const next = candidates.find((other) => other.delimiter !== best.delimiter);
  return decision("delimiter", delimiterName(best.delimiter), {
    ...confidenceOf(best, next),
    because: "cut there, the rows have one length and their cells read as times and numbers",
    runnerUp: next !== void 0 && next.score > 0.3 ? delimiterName(next.delimiter) : null,
    option,
    says
  });
}
function decimalDecision(best, candidates, options) {
  const choice = nameOf(best.decimal);
  const option = "--decimal . or ,";
  const says = { decimal: best.decimal };
  if (options.decimal !== void 0)
    return decision("decimal mark", choice, {
      confidence: "told",
      because: "it was given as an option; the other mark may stand between thousands",
      option,
      says
    });
  const next = candidates.find(
    (other) => other.delimiter === best.delimiter && other.decimal !== best.decimal
  );
  const isOpen = next !== void 0 && next.score > best.score - 1e-9;
  return decision("decimal mark", choice, {
    confidence: isOpen ? "certain" : confidenceOf(best, next).confidence,
    because: isOpen ? "no number of the body depends on it" : best.isGrouped ? `the ${best.decimal === "." ? "comma" : "point"} only stands before groups of three digits, between thousands` : `numbers of the body are written with a decimal ${choice}`,
    runnerUp: isOpen || next === void 0 || next.score < 0.3 ? null : nameOf(next.decimal),
    option,
    says
  });
}
function nameOf(mark) {
  return mark === "." ? "point" : "comma";
}
function confidenceOf(best, next) {
  const lead = best.score - (next?.score ?? 0);
  return { confidence: lead > 0.4 ? "certain" : lead > 0.15 ? "likely" : "guessed" };
}
function bodyWindows(records) {
  const filled = (from) => records.slice(from, from + 2 * WINDOW_ROWS).filter((record) => record.trim() !== "");
  const first = filled(0).slice(0, WINDOW_ROWS);
  const middle = filled(Math.floor(records.length / 2)).slice(0, WINDOW_ROWS);
  return records.length > 2 * WINDOW_ROWS ? [first, middle] : [filled(0)];
}

// src/core/log/text/atSingleBlanks.ts
function atSingleBlanks(text, cells, width) {
  if (cells.length >= width || width < 2) return cells;
  const words = text.trim().split(/\s+/);
  if (words.length < width) return cells;
  const first = words.length - width + 1;
  return [words.slice(0, first).join(" "), ...words.slice(first)];
}

// src/core/log/text/headerCells.ts
var COMMENT = /^\s*(?:#|\/\/|!|%|;(?=\s*[A-Za-z]))+ */;
var UNIT_CELL = /^\s*[([]?\s*(?:[°º˚�Â]{0,2}\s?[CFK]|℃|℉|deg\.? ?[CFK]?|celsius|fahrenheit|kelvin|s|secs?|seconds?|ms|min|mins|minutes?|h|hr|hrs|hours?|%|mV|V|A|W|kW|kW\/m2|kW\/m²|mW\/mg|mW|kWh|Pa|hPa|kPa|mbar|bar|ppm|rpm|g|mg|kg|mm|m\/s|-|–|hh?:mm(?::ss)?|mm:ss)\s*[)\]]?\s*$/i;
var TIME_SHAPE = /^\s*[([]?(?=.*(?:yy|mm|dd|hh|ss))[ymdhsT\s.:/_-]+[)\]]?\s*$/i;
function isUnitRow(cells) {
  const filled = cells.filter((cell2) => cell2.trim() !== "");
  return filled.length > 0 && filled.every((cell2) => UNIT_CELL.test(cell2) || TIME_SHAPE.test(cell2));
}
function headerCells(header, table) {
  const { width } = table;
  const least = Math.min(2, table.filled);
  const filled = header.cells.filter((cell2) => cell2.trim() !== "").length;
  const words = header.cells.filter((cell2) => /[^\d\s.,:+-]/.test(cell2)).length;
  if (words === 0 || words < filled / 2 || header.cells.some(isProse)) return null;
  if (filled < least) return null;
  if (least < width && least < 2 && !header.cells.some(isKnownName)) return null;
  if (header.cells.some(isTimeOrList)) return null;
  if (header.cells.some(isBareNumber) && saysInterval(header.text)) return null;
  if (header.cells.some(isNumber) && !header.cells.some(isKnownName)) return null;
  if (/^\s*(?:#|\/\/|!|%|;\s)/.test(header.text) && !header.cells.some(isKnownName)) return null;
  for (const cells of cutsOf(header, table.isAtBlanks)) {
    const joined2 = paired(cells, table);
    if (joined2 !== null) return joined2;
  }
  const isClose = header.cells.length >= width - 1 && header.cells.length <= width + 1;
  return isClose && filled >= least ? header.cells : null;
}
function cutsOf({ text, cells }, isAtBlanks) {
  const wide = text.replace(COMMENT, "").trim().split(/\t|\s{2,}/);
  return isAtBlanks && wide.length > 1 ? [wide, cells] : [cells];
}
var CLOCK_NAME = /^\W*(?:time|zeit|uhr|heure|hora|ora|tijd|clock)/i;
function paired(cells, { width, pair }) {
  if (cells.length === width) return cells;
  if (pair < 0 || cells.length !== width - 1 || CLOCK_NAME.test(cells[pair + 1] ?? "")) return null;
  return [...cells.slice(0, pair + 1), cells[pair] ?? "", ...cells.slice(pair + 1)];
}
function unitsUnder(unitRow, header, table) {
  const isShort = header !== void 0 && unitRow.cells.length < header.cells.length;
  const cells = isShort && /^\s/.test(unitRow.text) ? underNames(unitRow.text, header.text) : unitRow.cells;
  return paired(cells, table) ?? cells;
}
function underNames(text, names) {
  const places = Array.from(names.matchAll(/\S+(?: \S+)*/g), (match) => match.index);
  const cells = places.map(() => "");
  for (const match of text.matchAll(/\S+(?: \S+)*/g)) {
    const off = places.map((place) => Math.abs(place - match.index));
    cells[off.indexOf(Math.min(...off))] = match[0];
  }
  return cells;
}
function datePair(cells) {
  return cells.findIndex((cell2, c) => {
    const date2 = parseStamp(cell2);
    const clock2 = parseStamp(cells[c + 1] ?? "");
    return date2?.clockFields === 0 && clock2 !== null && clock2.order === "none";
  });
}
function isTimeOrList(cell2) {
  return /^\s*\d{1,2}:\d\d(?::\d\d)?\s*$/.test(cell2) || /[a-z],\d|\d,[a-z]|[a-z],\s?[a-z]+,\d/i.test(cell2);
}
function isNumber(cell2) {
  return /(?:^|\s)[\d.,]+(?:\s?(?:kW|V|W|A|kg|g|Hz|L|l))?$/.test(cell2.trim()) && !/^[A-Za-z]+[ _.-]?\d+$/.test(cell2.trim());
}
function isBareNumber(cell2) {
  return /^\s*"?\d+(?:[.,]\d+)?"?\s*$/.test(cell2);
}
function saysInterval(text) {
  return preambleFacts([text]).intervalSeconds !== null;
}
function isKnownName(cell2) {
  return /time|date|zeit|datum|stamp|elapsed|heure|hora|\bsec|\bmin\b|°|\bno\b/i.test(cell2) || WORDS.temperature.test(cell2);
}
function isProse(cell2) {
  return /[a-z]:\s+\S|[:,]\s*$|^(?:in|of|the|and|is|are|by|at|from|with)$/i.test(cell2) || cell2.trim().split(/\s+/).length > 6;
}

// src/core/log/text/shortName.ts
var LONGEST = 100;
function shortName(name) {
  return name.length > LONGEST ? `${name.slice(0, 60)}\u2026${name.slice(-39)}` : name;
}

// src/core/log/text/layout.ts
function findLayout(records, split, decimal) {
  const body = findBody(records, split, decimal);
  if (body === null) return null;
  const above = textRowsAbove(records, body, split);
  const nearest2 = above[0];
  const unitRow = nearest2 !== void 0 && isUnitRow(nearest2.cells) ? nearest2 : void 0;
  const header = unitRow === void 0 ? nearest2 : above[1] ?? unitRow;
  const width = body.kinds.length;
  const form = {
    width,
    filled: body.kinds.filter((kind) => isValue(kind) || kind === "missing").length,
    pair: datePair(split(records[body.start])),
    isAtBlanks: split("a b").length > 1
  };
  const cells = header === void 0 ? null : headerCells(header, form);
  const unitCells = unitRow === void 0 ? [] : unitsUnder(unitRow, header, form);
  const firstUsed = Math.min(header?.at ?? body.start, unitRow?.at ?? body.start);
  const isHeader = cells !== null && header !== unitRow;
  return {
    bodyStart: body.start,
    names: uniqueNames(isHeader ? cells : [], width),
    units: unitCells.map((cell2) => cell2.trim()),
    hasHeader: isHeader,
    kinds: body.kinds,
    preamble: records.slice(0, isHeader || unitRow !== void 0 ? firstUsed : body.start),
    headerText: header?.text ?? "",
    headerAt: isHeader ? header?.at ?? null : null,
    decision: headerDecision(isHeader, unitRow !== void 0, body.start)
  };
}
var HEADER_OPTION = "--header LINE or none";
function headerDecision(isHeader, hasUnits, bodyStart) {
  const choice = isHeader ? hasUnits ? "a row of names and a row of units" : "a row of names" : hasUnits ? "a row of units, no names" : "none; columns are numbered from 1";
  return decision("header", choice, {
    confidence: isHeader ? "certain" : "likely",
    because: `the readings begin at record ${bodyStart + 1}`,
    option: HEADER_OPTION
  });
}
function findBody(records, split, decimal) {
  const sample = sampleRows(records).map((at) => ({
    at,
    kinds: split(records[at]).map((cell2) => cellKind(cell2, decimal))
  }));
  const typed = sample.filter((row) => row.kinds.some(isValue) && !isMostlyWords(row.kinds));
  if (typed.length === 0) return null;
  const first = columnKinds(typed.map((row) => row.kinds));
  const like = typed.filter((row) => agreesWith(row.kinds, first));
  const kinds = like.length > 0 ? columnKinds(like.map((row) => row.kinds)) : first;
  if (!kinds.some(isValue)) return null;
  const isWide = isAtWideBlanks(split);
  const kindsAt = (at) => {
    const text = records[at] ?? "";
    const cells = split(text);
    return (isWide ? atSingleBlanks(text, cells, kinds.length) : cells).map(
      (cell2) => cellKind(cell2, decimal)
    );
  };
  const agrees = (at) => agreesWith(kindsAt(at), kinds);
  const goesOn = (at) => agrees(at) || isCutShort(kindsAt(at), kinds);
  for (let at = 0; at < records.length; at++)
    if (agrees(at) && nextFilledAgrees(records, at, goesOn)) return { start: at, kinds };
  return null;
}
function sampleRows(records) {
  const rows = [];
  const add = (from, count2) => {
    for (let at = from; at < Math.min(from + count2, records.length); at++) rows.push(at);
  };
  add(0, 150);
  if (records.length > 150) add(Math.max(150, Math.floor(records.length / 2)), 150);
  return rows;
}
function isValue(kind) {
  return kind === "number" || kind === "grouped" || kind === "stamp";
}
function isMostlyWords(kinds) {
  const words = kinds.filter((kind) => kind === "text").length;
  return words > kinds.filter(isValue).length;
}
function columnKinds(rows) {
  const lengths = /* @__PURE__ */ new Map();
  for (const row of rows) lengths.set(row.length, (lengths.get(row.length) ?? 0) + 1);
  const width = [...lengths].reduce((a, b) => b[1] > a[1] ? b : a, [0, 0])[0];
  const full = fullRows(rows.filter((row) => row.length === width));
  return Array.from({ length: width }, (_, c) => {
    const counts = {
      number: 0,
      grouped: 0,
      stamp: 0,
      text: 0,
      missing: 0,
      empty: 0
    };
    for (const row of full) counts[row[c] ?? "empty"]++;
    const numbers = counts.number + counts.grouped;
    if (numbers + counts.stamp + counts.text === 0) return counts.missing > 0 ? "missing" : "empty";
    if (counts.stamp >= numbers && counts.stamp >= counts.text) return "stamp";
    return numbers >= counts.text ? "number" : "text";
  });
}
function fullRows(rows) {
  const filled = rows.map(
    (row) => row.filter((kind) => isValue(kind) || kind === "missing").length
  );
  const usual = [...filled].sort((a, b) => a - b)[filled.length >> 1] ?? 0;
  return rows.filter((_, r) => filled[r] >= usual / 2);
}
function agreesWith(row, kinds) {
  if (row.length < Math.min(2, kinds.length)) return false;
  let same = 0;
  let other = 0;
  for (let c = 0; c < Math.min(row.length, kinds.length); c++) {
    const kind = row[c] === "grouped" ? "number" : row[c];
    const expected = kinds[c];
    if (kind === "empty" || kind === "missing" || expected === "text") continue;
    if (kind === "text" && (expected === "stamp" || c === 0)) return false;
    if (kind === expected) same++;
    else other++;
  }
  return same > 0 && same > other;
}
function isCutShort(row, kinds) {
  return row.length < kinds.length && row.every((kind, c) => isValue(kind) && isOfKind(kind, kinds[c]));
}
function isOfKind(kind, expected) {
  return kind === expected || kind === "grouped" && expected === "number";
}
function nextFilledAgrees(records, at, agrees) {
  let next = at + 1;
  while (next < records.length && records[next].trim() === "") next++;
  return next >= records.length || agrees(next);
}
function textRowsAbove(records, body, split) {
  const rows = [];
  const isWide = isAtWideBlanks(split);
  for (let at = body.start - 1; at >= 0 && rows.length < 2; at--) {
    const text = records[at];
    if (text.trim() === "") continue;
    const whole2 = split(text);
    const cells = whole2.length === body.kinds.length && /^\s*;/.test(text) ? whole2 : split(text.replace(COMMENT, ""));
    if (!/[^\d\s.,;:|"'-]/.test(text)) break;
    rows.push({
      at,
      text,
      cells: isWide ? atBlanks(text, cells, body.kinds.length) : cells
    });
  }
  return rows;
}
function isAtWideBlanks(split) {
  return split("a  b").length > split("a b").length;
}
function atBlanks(text, cells, width) {
  const words = text.trim().split(/\s+/);
  return cells.length === 1 && width > 2 && words.length === width ? words : cells;
}
function uniqueNames(cells, width) {
  const seen = /* @__PURE__ */ new Map();
  return Array.from({ length: width }, (_, c) => {
    const name = shortName(
      (cells[c] ?? "").trim().replace(/^"|"$/g, "").replace(/\s+/g, " ") || `column ${c + 1}`
    );
    const times2 = (seen.get(name) ?? 0) + 1;
    seen.set(name, times2);
    return times2 === 1 ? name : `${name} (${times2})`;
  });
}

// src/core/log/text/longLayout.ts
var MOST_CHANNELS = 24;
var REPEATED_SHARE = 0.3;
function widened2(table, told) {
  const channel = table.columns.find((column) => namesChannels(column));
  const values = table.columns.filter((column) => column.kind === "number");
  if (channel === void 0 || values.length === 0) return null;
  const stamps = table.columns.filter((column) => column.kind === "stamp");
  const times2 = stamps.length > 0 ? stamps : values.slice(0, 1);
  const measured = values.filter((column) => !times2.includes(column) && isFilled(column));
  const fewest = (1 - REPEATED_SHARE) * table.rowCount;
  if (measured.length === 0) return null;
  if (!told && differentTimes(times2, table.rowCount) >= fewest) return null;
  const groups = groupRows(times2, table.rowCount, (row) => channel.words.wordOf[row]);
  if (!told && groups.first.length >= fewest) return null;
  const names = namesBeside(channel, times2);
  const columns = [
    ...times2.map((column) => shortened(column, groups.first)),
    ...names.flatMap(
      (name) => measured.map((column) => channelColumn(column, { name, channel, groups, measured }))
    )
  ];
  return {
    table: {
      columns: columns.map((column, index) => ({ ...column, index })),
      rowCount: groups.first.length,
      lineOf: (row) => table.lineOf(groups.first[row]),
      textOf: (row) => table.textOf(groups.first[row]),
      rejected: table.rejected,
      rejectedCount: table.rejectedCount,
      cutRow: -1
    },
    decision: decision("layout", `one row per channel and time, by "${channel.name}"`, {
      confidence: told ? "told" : "likely",
      option: "--layout long or wide",
      says: { layout: "long" },
      because: `times repeat and "${channel.name}" names ${names.length} channels (${names.slice(0, 6).map(shortName).join(", ")}); rows of one time are counted as one`
    })
  };
}
function isFilled({ numbers }) {
  return numbers.filter((value2) => !Number.isNaN(value2)).length > 0.3 * numbers.length;
}
function namesChannels(column) {
  const names = column.words.known?.length ?? 0;
  return column.kind === "text" && names >= 2 && names <= MOST_CHANNELS;
}
function namesBeside({ words }, times2) {
  const seen = /* @__PURE__ */ new Set();
  words.wordOf.forEach((word2, row) => {
    if (!seen.has(word2) && times2.some((column) => isReadable(column, row))) seen.add(word2);
  });
  return (words.known ?? []).filter((name, word2) => name.trim() !== "" && seen.has(word2));
}
function isReadable({ kind, stamps, numbers }, row) {
  return kind === "stamp" ? stamps.formOf[row] >= 0 : !Number.isNaN(numbers[row]);
}
function differentTimes(times2, rowCount) {
  const seen = new Uint8Array(HASHES);
  let count2 = 0;
  for (let row = 0; row < rowCount; row++) {
    const hash = times2.reduce((sum, column) => mixed(sum, timeHash(column, row)), 0) & HASHES - 1;
    if (seen[hash] === 0) count2++;
    seen[hash] = 1;
  }
  return count2;
}
var HASHES = 1 << 22;
var SCRATCH = new Float64Array(1);
var SCRATCH_WORDS = new Int32Array(SCRATCH.buffer);
function timeHash({ kind, numbers, stamps }, row) {
  const form = stamps.forms[stamps.formOf[row] ?? -1];
  SCRATCH[0] = (kind === "number" ? numbers[row] : stamps.seconds[row]) + 0;
  const date2 = form === void 0 ? 0 : (form.first * 31 + form.second) * 31 + form.third;
  return mixed(mixed(SCRATCH_WORDS[0], SCRATCH_WORDS[1]), date2 | 0);
}
function mixed(a, b) {
  const sum = Math.imul(a ^ b, 2654435761);
  return sum ^ sum >>> 15;
}
function groupRows(times2, rowCount, channelOf) {
  const keys = Array.from(
    { length: rowCount },
    (_, row) => times2.map((column) => timeKey(column, row)).join(" ")
  );
  const repeats = keys.filter((key, row) => row > 0 && key === keys[row - 1]).length;
  return repeats > REPEATED_SHARE * rowCount ? neighbourGroups(keys, channelOf) : scatteredGroups(keys, channelOf);
}
function neighbourGroups(keys, channelOf) {
  const first = [];
  const seen = /* @__PURE__ */ new Set();
  const of = Int32Array.from(keys, (key, row) => {
    const channel = channelOf(row);
    if (row === 0 || key !== keys[row - 1] || seen.has(channel)) {
      first.push(row);
      seen.clear();
    }
    seen.add(channel);
    return first.length - 1;
  });
  return { first, of };
}
function scatteredGroups(keys, channelOf) {
  const first = [];
  const times2 = /* @__PURE__ */ new Map();
  const groups = /* @__PURE__ */ new Map();
  const of = Int32Array.from(keys, (key, row) => {
    const place = `${key}
${String(channelOf(row))}`;
    const time = times2.get(place) ?? 0;
    times2.set(place, time + 1);
    const group = groups.get(`${key}
${time}`) ?? first.length;
    if (group === first.length) first.push(row);
    groups.set(`${key}
${time}`, group);
    return group;
  });
  return { first, of };
}
function timeKey(column, row) {
  if (column.kind === "number") return String(column.numbers[row]);
  const stamp = stampAt(column.stamps, row);
  if (stamp === null) return "";
  return [stamp.first, stamp.second, stamp.third, stamp.seconds].join("/");
}
function shortened(column, rows) {
  return {
    ...column,
    numbers: Float64Array.from(
      column.kind === "number" ? rows : [],
      (row) => column.numbers[row]
    ),
    stamps: {
      seconds: Float64Array.from(
        column.kind === "stamp" ? rows : [],
        (row) => column.stamps.seconds[row]
      ),
      formOf: Int32Array.from(
        column.kind === "stamp" ? rows : [],
        (row) => column.stamps.formOf[row]
      ),
      forms: column.stamps.forms
    }
  };
}
function channelColumn(column, query) {
  const { name, channel, groups, measured } = query;
  const numbers = new Float64Array(groups.first.length).fill(Number.NaN);
  const { wordOf, known } = channel.words;
  const word2 = (known ?? []).indexOf(name);
  for (let row = 0; row < groups.of.length; row++)
    if (wordOf[row] === word2) numbers[groups.of[row]] = column.numbers[row];
  return {
    ...column,
    name: shortName(measured.length === 1 ? name : `${name} ${column.name}`),
    unitText: column.unitText !== "" ? column.unitText : temperatureUnitIn(column.name) ?? "",
    numbers,
    missingWords: /* @__PURE__ */ new Map()
  };
}

// src/core/log/text/recordScanner.ts
var LINE_FEED = 10;
var RETURN = 13;
var STRIDE_BYTES = 1 << 18;
var LONGEST_ROW_BYTES = 1 << 18;
var SHOWN_BYTES2 = 240;
function recordScanner(sink, form) {
  const window = {
    bytes: new Uint8Array(2 * STRIDE_BYTES),
    length: 0,
    offset: 0,
    line: 1,
    skips: false,
    zeros: { count: 0, run: 0, last: LINE_FEED }
  };
  let nextMark = form.tape.nextMark();
  function scan(isLast) {
    const limit = wholeLines(window, isLast);
    let at = window.skips ? skipped(window, limit) : 0;
    while (at < limit) {
      if (window.line >= nextMark) nextMark = marked(window, at, form.tape);
      const quick = sink.quick(window.bytes, at, window.line);
      const end = quick >= 0 ? quick : asText(window, { at, limit, isLast }, { sink, form });
      if (end < 0) break;
      at = pastLineEnd(window.bytes, end);
      window.line++;
    }
    letGo(window, at);
    if (limit > 0 || window.length <= LONGEST_ROW_BYTES) return;
    if (!window.skips) sink.tooLong(beginning(window.bytes, 0, form), window.line);
    window.skips = true;
    letGo(window, window.length);
  }
  return {
    push: (bytes) => {
      for (let at = 0; at < bytes.length; at += STRIDE_BYTES) {
        form.tape.add(take(window, bytes.subarray(at, at + STRIDE_BYTES)));
        scan(false);
      }
    },
    end: () => {
      const isOpen = window.length > 0 && !isLineEnd(window.bytes[window.length - 1]);
      const line = isOpen ? window.line : 0;
      scan(true);
      return line;
    },
    zeros: () => window.zeros.count
  };
}
function marked({ line, offset: offset2 }, at, tape) {
  tape.mark(line, offset2 + at);
  return tape.nextMark();
}
function letGo(window, at) {
  window.bytes.copyWithin(0, at, window.length);
  window.length = Math.max(0, window.length - at);
  window.offset += at;
}
function take(window, bytes) {
  const most = window.length + bytes.length;
  if (most + 2 > window.bytes.length) {
    const wider = new Uint8Array(2 * (most + 2));
    wider.set(window.bytes.subarray(0, window.length));
    window.bytes = wider;
  }
  const clean = withoutZeros(bytes, window.zeros);
  window.bytes.set(clean, window.length);
  window.length += clean.length;
  return clean;
}
function wholeLines(window, isLast) {
  const { bytes } = window;
  if (isLast && window.length > 0 && !isLineEnd(bytes[window.length - 1]))
    bytes[window.length++] = LINE_FEED;
  bytes[window.length] = 0;
  let limit = window.length;
  if (!isLast && bytes[limit - 1] === RETURN) limit--;
  while (limit > 0 && !isLineEnd(bytes[limit - 1])) limit--;
  return limit;
}
function skipped(window, limit) {
  if (limit === 0) return 0;
  window.skips = false;
  window.line++;
  return pastLineEnd(window.bytes, lineEndAt(window.bytes, 0));
}
function asText(window, place, { sink, form }) {
  const { bytes, line } = window;
  const { at } = place;
  const end = lineEndAt(bytes, at);
  if (end - at > LONGEST_ROW_BYTES) {
    sink.tooLong(beginning(bytes, at, form), line);
    return end;
  }
  const text = form.decode(bytes.subarray(at, end));
  if (!text.includes('"')) {
    sink.text(text, line);
    return end;
  }
  const last = quotedEnd(window, { ...place, end }, { form, text });
  if (last < 0) return -1;
  sink.text(last === end ? text : form.decode(bytes.subarray(at, last)), line);
  return last;
}
function quotedEnd(window, { at, limit, isLast, end }, { form, text }) {
  const { bytes } = window;
  let isOpen = opensQuote(text, false, form.openers);
  let last = end;
  for (let lines = 1; isOpen && lines < MOST_QUOTED_LINES; lines++) {
    const start = pastLineEnd(bytes, last);
    if (start >= limit) return isLast || window.length - at > LONGEST_ROW_BYTES ? end : -1;
    last = lineEndAt(bytes, start);
    if (last - at > LONGEST_ROW_BYTES) return end;
    isOpen = opensQuote(form.decode(bytes.subarray(start, last)), true, form.openers);
    if (!isOpen) window.line += lines;
  }
  return isOpen ? end : last;
}
function beginning(bytes, from, form) {
  return form.decode(bytes.subarray(from, from + SHOWN_BYTES2));
}
function isLineEnd(byte) {
  return byte === LINE_FEED || byte === RETURN;
}
function lineEndAt(bytes, from) {
  let at = from;
  while (!isLineEnd(bytes[at])) at++;
  return at;
}
function pastLineEnd(bytes, end) {
  return bytes[end] === RETURN && bytes[end + 1] === LINE_FEED ? end + 2 : end + 1;
}

// src/core/log/text/growing.ts
var BLOCK_ROWS = 65536;
var SLOT_MASK = BLOCK_ROWS - 1;
function growingFloats() {
  const make = (length) => new Float64Array(length);
  return { block: make(BLOCK_ROWS), full: [], make };
}
function growingInts() {
  const make = (length) => new Int32Array(length);
  return { block: make(BLOCK_ROWS), full: [], make };
}
function nextBlock(values) {
  values.full.push(values.block);
  values.block = values.make(BLOCK_ROWS);
}
function gathered(values, count2) {
  if (values.full.length === 0) return values.block.subarray(0, count2);
  const all = values.make(count2);
  let at = 0;
  for (const block of values.full.splice(0)) {
    all.set(block, at);
    at += block.length;
  }
  all.set(values.block.subarray(0, count2 - at), at);
  values.block = values.make(0);
  return all;
}

// src/core/log/text/words.ts
var MOST_WORDS = 64;
var NO_WORDS = { wordOf: new Int32Array(0), known: [] };
function wordStore() {
  const codes = growingInts();
  const numbers = /* @__PURE__ */ new Map();
  let tooMany = false;
  return {
    codes,
    codeOf: (word2) => {
      const known = numbers.get(word2);
      if (known !== void 0) return known;
      if (numbers.size === MOST_WORDS) {
        tooMany = true;
        return -1;
      }
      numbers.set(word2.split("").join(""), numbers.size);
      return numbers.size - 1;
    },
    finish: (count2) => tooMany ? { wordOf: new Int32Array(0), known: null } : { wordOf: gathered(codes, count2), known: [...numbers.keys()] }
  };
}

// src/core/log/text/columnStores.ts
function columnStore(kind) {
  if (kind === "stamp")
    return { kind, seconds: growingFloats(), formOf: growingInts(), known: stampForms() };
  if (kind === "text") return { kind, words: wordStore() };
  return {
    kind: "number",
    values: growingFloats(),
    suffixes: { C: 0, F: 0, K: 0 },
    missing: /* @__PURE__ */ new Map(),
    missingRows: { first: -1, last: -1 },
    word: ""
  };
}
function turnBlock(store) {
  if (store.kind === "number") nextBlock(store.values);
  else if (store.kind === "stamp") {
    nextBlock(store.seconds);
    nextBlock(store.formOf);
  } else nextBlock(store.words.codes);
}
function finishedColumn(store, index, { layout, count: count2 }) {
  return {
    index,
    name: layout.names[index],
    unitText: layout.units[index] ?? "",
    kind: store.kind,
    numbers: store.kind === "number" ? gathered(store.values, count2) : new Float64Array(0),
    stamps: store.kind === "stamp" ? {
      seconds: gathered(store.seconds, count2),
      formOf: gathered(store.formOf, count2),
      forms: store.known.forms
    } : NO_STAMPS,
    words: store.kind === "text" ? store.words.finish(count2) : NO_WORDS,
    suffix: store.kind === "number" ? suffixOf(store.suffixes) : null,
    missingWords: store.kind === "number" ? store.missing : /* @__PURE__ */ new Map(),
    missingRows: store.kind === "number" ? store.missingRows : { first: -1, last: -1 },
    otherSuffix: store.kind === "number" ? otherSuffixOf(store.suffixes) : null
  };
}
function suffixOf({ C, F, K }) {
  const most = Math.max(C, F, K);
  return most === 0 ? null : most === C ? "C" : most === F ? "F" : "K";
}
var MIXED = { cells: 2, share: 0.02 };
function otherSuffixOf({ C, F, K }) {
  const most = suffixOf({ C, F, K });
  const least = Math.max(MIXED.cells, MIXED.share * (C + F + K));
  const counts = { C, F, K };
  return ["C", "F", "K"].find((unit) => unit !== most && counts[unit] >= least) ?? null;
}
function keepWord(store, row) {
  if (store.kind !== "number" || store.word === "") return;
  store.missing.set(store.word, (store.missing.get(store.word) ?? 0) + 1);
  if (store.missingRows.first < 0) store.missingRows.first = row;
  store.missingRows.last = row;
}

// src/core/log/text/headerAgain.ts
function isHeaderInOtherUnits(cells, { names, units, hasHeader }) {
  if (!hasHeader || cells.length < 2) return false;
  let changed = 0;
  for (let c = 0; c < names.length; c++) {
    const name = names[c];
    const cell2 = (cells[c] ?? "").trim().replace(/^"|"$/g, "");
    if (plain(cell2) !== plain(name)) return false;
    const unit = temperatureUnitIn(`${name} ${units[c] ?? ""}`);
    const now = temperatureUnitIn(cell2);
    if (unit !== null && now !== null && now !== unit) changed++;
  }
  return changed > 0;
}
function plain(name) {
  return name.replace(/[([][^)\]]*[)\]]/g, "").replace(/[°º˚�]\s?[CFK]\b|\b(?:deg\.?\s?[CFK]|celsius|fahrenheit|kelvin)\b/gi, "").replace(/[\s_]+/g, "").toLowerCase();
}

// src/core/log/text/fastNumber.ts
var EXACT_DIGITS = 15;
var POWERS = Float64Array.from({ length: EXACT_DIGITS + 1 }, (_, i) => Number(`1e${i}`));
function fastNumber(bytes, cursor, mark) {
  let at = cursor.at;
  const sign2 = bytes[at];
  if (sign2 === 45 || sign2 === 43) at++;
  const start = at;
  let value2 = 0;
  let digit = bytes[at] - 48;
  while (digit >= 0 && digit <= 9) {
    value2 = value2 * 10 + digit;
    digit = bytes[++at] - 48;
  }
  let count2 = at - start;
  if (count2 > 0 && digit === mark - 48) {
    const first = ++at;
    digit = bytes[at] - 48;
    while (digit >= 0 && digit <= 9) {
      value2 = value2 * 10 + digit;
      digit = bytes[++at] - 48;
    }
    const places = at - first;
    count2 = places === 0 ? 0 : count2 + places;
    if (count2 <= EXACT_DIGITS) value2 /= POWERS[places];
  }
  cursor.at = count2 > 0 && count2 <= EXACT_DIGITS ? at : -1;
  return sign2 === 45 ? -value2 : value2;
}

// src/core/log/text/fastStamp.ts
function noFastStamp() {
  return {
    first: Number.NaN,
    second: Number.NaN,
    third: Number.NaN,
    order: 0,
    separator: 0,
    seconds: Number.NaN,
    clockFields: 0,
    half: 0,
    offsetMinutes: Number.NaN
  };
}
var BLANK = 32;
var PLUS = 43;
var COMMA = 44;
var DASH = 45;
var POINT = 46;
var SLASH = 47;
var COLON = 58;
var BIG_T = 84;
var BIG_Z = 90;
var NO_DIGIT = 10;
var POWERS2 = Float64Array.from({ length: 10 }, (_, i) => 10 ** i);
function fastStamp(bytes, from, query) {
  const { into, delimiter } = query;
  const usual = usualStamp(bytes, from, query);
  if (usual >= 0) return usual;
  const length = digitRun(bytes, from, 4);
  const next = bytes[from + length];
  if (length === 0) return -1;
  if (next === COLON) {
    into.order = 0;
    into.separator = 0;
    into.first = into.second = into.third = Number.NaN;
    return clock(bytes, from, query);
  }
  const after = date(bytes, from, into);
  if (after < 0) return -1;
  const between = bytes[after];
  const goesOn = (between === BLANK || between === BIG_T) && between !== delimiter;
  if (goesOn && digitOf(bytes, after + 1) < NO_DIGIT) return clock(bytes, after + 1, query);
  into.seconds = Number.NaN;
  into.clockFields = 0;
  into.half = 0;
  into.offsetMinutes = Number.NaN;
  return after;
}
function usualStamp(bytes, from, query) {
  const separator = bytes[from + 4];
  const between = bytes[from + 10];
  const isShape = bytes[from + 7] === separator && bytes[from + 13] === COLON && bytes[from + 16] === COLON;
  if (!isShape || between !== BLANK && between !== BIG_T || between === query.delimiter)
    return -1;
  if (separator !== DASH && separator !== SLASH && separator !== POINT) return -1;
  const year = two(bytes, from) * 100 + two(bytes, from + 2);
  const month = two(bytes, from + 5);
  const day = two(bytes, from + 8);
  const hour = two(bytes, from + 11);
  const minute = two(bytes, from + 14);
  const second = two(bytes, from + 17);
  if (year + month + day + hour + minute + second >= NO_DIGITS || minute >= 60 || second >= 61)
    return -1;
  const { into } = query;
  into.first = year;
  into.second = month;
  into.third = day;
  into.order = 2;
  into.separator = separator;
  into.clockFields = 3;
  into.seconds = hour * 3600 + minute * 60 + second;
  return afterClock(bytes, from + 19, query);
}
var NO_DIGITS = 1e5;
function two(bytes, at) {
  const tens = bytes[at] - 48;
  const ones = bytes[at + 1] - 48;
  const areDigits = tens >= 0 && tens <= 9 && ones >= 0 && ones <= 9;
  return areDigits ? tens * 10 + ones : NO_DIGITS;
}
function date(bytes, from, into) {
  const length = digitRun(bytes, from, 4);
  const separator = bytes[from + length];
  if (length === 3 || separator !== DASH && separator !== SLASH && separator !== POINT) return -1;
  const secondAt = from + length + 1;
  const secondLength = digitRun(bytes, secondAt, 2);
  if (secondLength === 0 || bytes[secondAt + secondLength] !== separator) return -1;
  const thirdAt = secondAt + secondLength + 1;
  const thirdLength = digitRun(bytes, thirdAt, 4);
  const isYearFirst = length === 4;
  if (thirdLength === 0 || thirdLength === 3 || isYearFirst && thirdLength > 2) return -1;
  into.first = whole(bytes, from, length);
  into.second = whole(bytes, secondAt, secondLength);
  into.third = whole(bytes, thirdAt, thirdLength);
  into.order = isYearFirst ? 2 : 1;
  into.separator = separator;
  return thirdAt + thirdLength;
}
function clock(bytes, from, query) {
  const { into } = query;
  const hourLength = digitRun(bytes, from, 4);
  const minuteAt = from + hourLength + 1;
  const minuteLength = digitRun(bytes, minuteAt, 2);
  if (hourLength === 0 || bytes[minuteAt - 1] !== COLON || minuteLength === 0) return -1;
  const minute = whole(bytes, minuteAt, minuteLength);
  let at = minuteAt + minuteLength;
  let second = 0;
  into.clockFields = 2;
  if (bytes[at] === COLON) {
    const secondLength = digitRun(bytes, ++at, 2);
    if (secondLength === 0) return -1;
    second = whole(bytes, at, secondLength);
    at += secondLength;
    into.clockFields = 3;
  }
  if (minute >= 60 || second >= 61) return -1;
  into.seconds = whole(bytes, from, hourLength) * 3600 + minute * 60 + second;
  return afterClock(bytes, at, query);
}
function afterClock(bytes, from, query) {
  const { into, delimiter } = query;
  into.half = 0;
  into.offsetMinutes = Number.NaN;
  const next = bytes[from];
  if (next === delimiter || next < BLANK) return from;
  let at = from;
  let fraction = 0;
  if (next === POINT || next === COMMA) {
    const length = digitRun(bytes, ++at, 9);
    if (length === 0 || into.clockFields === 2) return -1;
    fraction = whole(bytes, at, length) / POWERS2[length];
    at += length;
  }
  at = halfOfDay(bytes, at, query);
  if (at < 0) return -1;
  into.seconds += fraction;
  return offset(bytes, at, into);
}
function halfOfDay(bytes, from, query) {
  const { into, delimiter } = query;
  const at = bytes[from] === BLANK && delimiter !== BLANK ? from + 1 : from;
  const letter = bytes[at] | 32;
  if (letter !== 97 && letter !== 112 || (bytes[at + 1] | 32) !== 109) return from;
  if (into.seconds >= 13 * 3600) return -1;
  into.half = letter === 97 ? 1 : 2;
  const onDial = into.seconds >= 12 * 3600 ? into.seconds - 12 * 3600 : into.seconds;
  into.seconds = into.half === 2 ? onDial + 12 * 3600 : onDial;
  return at + 2;
}
function offset(bytes, from, into) {
  const sign2 = bytes[from];
  if (sign2 === BIG_Z) {
    into.offsetMinutes = 0;
    return from + 1;
  }
  if (sign2 !== PLUS && sign2 !== DASH) return from;
  if (digitRun(bytes, from + 1, 2) !== 2) return -1;
  let at = from + 3;
  let minutes = whole(bytes, from + 1, 2) * 60;
  const minuteAt = bytes[at] === COLON ? at + 1 : at;
  const length = digitRun(bytes, minuteAt, 2);
  if (length === 1 || length === 0 && minuteAt !== at) return -1;
  if (length === 2) {
    minutes += whole(bytes, minuteAt, 2);
    at = minuteAt + 2;
  }
  into.offsetMinutes = sign2 === DASH ? -minutes : minutes;
  return at;
}
function digitOf(bytes, at) {
  const digit = bytes[at] - 48;
  return digit >= 0 && digit <= 9 ? digit : NO_DIGIT;
}
function digitRun(bytes, from, most) {
  let length = 0;
  while (length < most && digitOf(bytes, from + length) < NO_DIGIT) length++;
  return length;
}
function whole(bytes, from, length) {
  let value2 = 0;
  for (let i = 0; i < length; i++) value2 = value2 * 10 + bytes[from + i] - 48;
  return value2;
}

// src/core/log/text/quickRow.ts
var IN_CELLS = /[-+.:/\w"#%]/;
var TAB = 9;
var LINE_FEED2 = 10;
var RETURN2 = 13;
var BLANK2 = 32;
var QUOTE2 = 34;
var LONGEST_WORD = 1024;
function quickRow(stores, dialect) {
  const { delimiter, decimal, headerText, openers } = dialect;
  if (!isSafe(delimiter)) return null;
  const code = delimiter.charCodeAt(0);
  const row = {
    delimiter: code,
    mark: decimal === delimiter ? 0 : decimal.charCodeAt(0),
    cursor: { at: 0 },
    stamp: { into: noFastStamp(), delimiter: code },
    mayQuote: code !== BLANK2 && openers.includes(delimiter),
    slot: 0,
    values: 0
  };
  const columns = stores.map((store) => quickColumn(store, row));
  const wordColumns = columns.filter(({ store }) => store.kind === "text");
  const query = { columns, code };
  return (bytes, from, slot) => {
    row.slot = slot;
    row.values = 0;
    const end = rowEnd(bytes, from, query);
    const isLong = end - from > LONGEST_ROW_BYTES;
    if (end < 0 || isLong || row.values === 0 || isText(bytes, [from, end], headerText)) return -1;
    for (const column of wordColumns) keepWord2(bytes, column);
    return end;
  };
}
function rowEnd(bytes, from, query) {
  const { columns, code } = query;
  let at = code === BLANK2 ? pastBlanks(bytes, from) : from;
  const first = bytes[at];
  if (!mayBegin(first) && !(first === code && first > BLANK2)) return -1;
  for (let c = 0; c < columns.length; c++) {
    at = cell(bytes, at, columns[c]);
    if (at >= 0) at = code === BLANK2 ? pastGap(bytes, at) : pastDelimiter(bytes, at, code);
    if (at < 0) return -1;
  }
  return lineEnd(bytes, at);
}
function isSafe(delimiter) {
  const isPrintable = delimiter.length === 1 && delimiter >= " " && delimiter <= "~";
  return (isPrintable || delimiter === "	") && !IN_CELLS.test(delimiter);
}
function quickColumn(store, row) {
  const nothing = { form: -1, word: new Uint8Array(0), code: -1, from: 0, to: 0 };
  return { store, row, last: { ...noFastStamp(), order: -1 }, ...nothing };
}
function mayBegin(byte) {
  if (byte >= 48 && byte <= 57) return true;
  const letter = byte | 32;
  const isLetter = letter >= 97 && letter <= 122 && byte < 128;
  return isLetter || byte === 45 || byte === 43 || byte === 46 || byte === QUOTE2;
}
function pastBlanks(bytes, from) {
  let at = from;
  while (bytes[at] === BLANK2 || bytes[at] === TAB) at++;
  return at;
}
function cell(bytes, from, column) {
  const { row } = column;
  if (bytes[from] === QUOTE2) return row.mayQuote ? quoted(bytes, from, column) : -1;
  if (column.store.kind === "text") return word(bytes, from, { column, end: row.delimiter });
  let at = from;
  if (row.delimiter !== BLANK2) while (bytes[at] === BLANK2) at++;
  const byte = bytes[at];
  if (byte !== row.delimiter && byte !== LINE_FEED2 && byte !== RETURN2)
    return value(bytes, at, column);
  empty(column);
  return at;
}
function quoted(bytes, from, column) {
  const start = from + 1;
  let end = start;
  if (column.store.kind === "text") end = word(bytes, start, { column, end: QUOTE2 });
  else if (bytes[start] === QUOTE2) empty(column);
  else end = value(bytes, start, column);
  if (end < 0 || bytes[end] !== QUOTE2) return -1;
  const next = bytes[end + 1];
  const isClosed = next === column.row.delimiter || next === LINE_FEED2 || next === RETURN2;
  return isClosed ? end + 1 : -1;
}
function empty({ store, row }) {
  if (store.kind === "number") store.values.block[row.slot] = Number.NaN;
  else if (store.kind === "stamp") {
    store.seconds.block[row.slot] = Number.NaN;
    store.formOf.block[row.slot] = -1;
  }
}
function value(bytes, from, column) {
  const { store, row } = column;
  row.values++;
  if (store.kind === "number") {
    row.cursor.at = from;
    store.values.block[row.slot] = fastNumber(bytes, row.cursor, row.mark);
    return row.cursor.at;
  }
  const end = fastStamp(bytes, from, row.stamp);
  if (end < 0) return -1;
  const stamps = store;
  stamps.seconds.block[row.slot] = row.stamp.into.seconds;
  stamps.formOf.block[row.slot] = formOf2(column, stamps);
  return end;
}
function formOf2(column, store) {
  const { last } = column;
  const stamp = column.row.stamp.into;
  const isSameDate = stamp.order === 0 || last.third === stamp.third && last.second === stamp.second && last.first === stamp.first;
  const isSame = isSameDate && last.order === stamp.order && last.separator === stamp.separator && last.clockFields === stamp.clockFields && last.half === stamp.half && Object.is(last.offsetMinutes, stamp.offsetMinutes);
  if (isSame) return column.form;
  Object.assign(last, stamp);
  column.form = store.known.numberOf(formed(stamp));
  return column.form;
}
var ORDERS = ["none", "open", "year-first"];
var HALVES2 = [null, "am", "pm"];
function formed({ seconds: _, separator, order, half, ...rest }) {
  return {
    ...rest,
    order: ORDERS[order],
    separator: separator === 0 ? "" : String.fromCharCode(separator),
    half: HALVES2[half],
    isSpan: false
  };
}
function word(bytes, from, { column, end }) {
  let at = from;
  let byte = bytes[at];
  while (byte !== end && byte !== LINE_FEED2 && byte !== RETURN2) {
    const isBlank = byte === TAB && column.row.delimiter === BLANK2;
    if (isBlank) break;
    if (byte === QUOTE2 || byte > 126 || byte < BLANK2 && byte !== TAB) return -1;
    byte = bytes[++at];
  }
  column.from = from;
  column.to = at;
  return at - from <= LONGEST_WORD ? at : -1;
}
function keepWord2(bytes, column) {
  const { from, to, row } = column;
  const { words } = column.store;
  if (column.code < 0 || !isSameWord(bytes, column)) {
    column.word = bytes.slice(from, to);
    column.code = words.codeOf(String.fromCharCode(...column.word));
  }
  words.codes.block[row.slot] = column.code;
}
function isSameWord(bytes, { word: word2, from, to }) {
  if (to - from !== word2.length) return false;
  for (let i = 0; i < word2.length; i++) if (bytes[from + i] !== word2[i]) return false;
  return true;
}
function pastDelimiter(bytes, from, delimiter) {
  let at = from;
  while (bytes[at] === BLANK2) at++;
  const byte = bytes[at];
  if (byte === delimiter) return at + 1;
  return byte === LINE_FEED2 || byte === RETURN2 ? at : -1;
}
function pastGap(bytes, from) {
  const at = pastBlanks(bytes, from);
  const byte = bytes[at];
  if (byte === LINE_FEED2 || byte === RETURN2) return at;
  const letter = byte | 32;
  const mayBeHalf = letter === 97 || letter === 112;
  return at > from && !mayBeHalf ? at : -1;
}
function lineEnd(bytes, from) {
  let at = from;
  let byte = bytes[at];
  while (byte !== LINE_FEED2 && byte !== RETURN2) {
    if (byte === QUOTE2 || byte > 126) return -1;
    byte = bytes[++at];
  }
  return at;
}
function isText(bytes, [from, to], text) {
  if (to - from !== text.length) return false;
  for (let i = 0; i < text.length; i++) if (bytes[from + i] !== text.charCodeAt(i)) return false;
  return true;
}

// src/core/log/text/rejections.ts
var MOST_LISTED = 1e4;
var SHOWN_CHARACTERS = 60;
function rejectionList() {
  const listed = [];
  const unlisted = /* @__PURE__ */ new Map();
  return {
    listed,
    unlisted,
    add: (reason, where) => {
      if (listed.length >= MOST_LISTED) return count(unlisted, reason, 1);
      const { line, text } = where();
      listed.push({ line, reason, text: text.slice(0, SHOWN_CHARACTERS) });
    }
  };
}
function mergedRejections(lists) {
  const all = lists.flatMap(({ listed }) => listed).sort((a, b) => a.line - b.line);
  const unlisted = /* @__PURE__ */ new Map();
  for (const list of lists)
    for (const [reason, rows] of list.unlisted) count(unlisted, reason, rows);
  for (const { reason } of all.slice(MOST_LISTED)) count(unlisted, reason, 1);
  return { listed: all.slice(0, MOST_LISTED), unlisted };
}
function count(counts, reason, rows) {
  counts.set(reason, (counts.get(reason) ?? 0) + rows);
}

// src/core/log/text/tableBuilder.ts
function tableBuilder(form) {
  const { layout, split, decimal } = form;
  const stores = layout.kinds.map(columnStore);
  const lines = growingInts();
  const rejections = rejectionList();
  const quick = quickRow(stores, { ...form, headerText: layout.headerText }) ?? (() => -1);
  let rows = 0;
  let rejected = 0;
  const isAtWideBlanks2 = form.delimiter === "  " && split("a  b").length > 1;
  let otherUnitLine = 0;
  const misfits = misfitWatch();
  const counts = stores.every(({ kind }) => kind !== "stamp");
  function accept(line) {
    lines.block[rows & SLOT_MASK] = line;
    rows++;
    if ((rows & SLOT_MASK) !== 0) return;
    for (const store of stores) turnBlock(store);
    nextBlock(lines);
  }
  function leaveOut(text, line, reason) {
    rejected++;
    rejections.add(reason, () => ({ line, text }));
  }
  return {
    addBytes: (bytes, from, line) => {
      const end = quick(bytes, from, rows & SLOT_MASK);
      if (end < 0) return -1;
      accept(line);
      misfits.fits();
      return end;
    },
    addText: (text, line) => {
      if (text.trim() === "") return;
      const remark = remarkReason(text, layout);
      if (remark !== null) return leaveOut(text, line, remark);
      const whole2 = split(text);
      const cells = isAtWideBlanks2 ? atSingleBlanks(text, whole2, stores.length) : whole2;
      const filled = fillRow(stores, cells, { slot: rows & SLOT_MASK, decimal });
      if (filled.fits) misfits.fits();
      else misfits.found(line);
      const isCounted = counts && (filled.isBlankRow || isLostReading(filled, text));
      if (filled.values === 0 && !isCounted) {
        if (otherUnitLine === 0 && isHeaderInOtherUnits(cells, layout)) otherUnitLine = line;
        return leaveOut(text, line, reasonOf(text, "no number and no time in it"));
      }
      if (!filled.isReading && !isCounted)
        return leaveOut(text, line, reasonOf(text, "words where numbers belong"));
      for (const store of stores) keepWord(store, rows);
      accept(line);
    },
    leaveOut,
    watchMisfits: misfits.restart,
    counts: () => ({ rows, rejected, otherUnitLine, ...misfits.now() }),
    finish: () => {
      const lineOfRow = gathered(lines, rows);
      return {
        columns: stores.map(
          (store, index) => finishedColumn(store, index, { layout, count: rows })
        ),
        rowCount: rows,
        lineOf: (row) => lineOfRow[row],
        textOf: (row) => form.textAt(lineOfRow[row]),
        rejected: rejections,
        rejectedCount: rejected,
        cutRow: -1
      };
    }
  };
}
function reasonOf(text, reason) {
  return /^\s*[;!]/.test(text) ? "a comment" : reason;
}
function isLostReading({ values }, text) {
  return values === 0 && /^\s*"?[+-]?\d/.test(text);
}
function remarkReason(text, layout) {
  if (/^\s*(?:#(?!(?:DIV|N\/A|REF|VALUE|NUM|NULL|NAME|WERT))|\/\/|%)/i.test(text))
    return "a comment";
  return layout.headerText !== "" && text === layout.headerText ? "the header again" : null;
}
function misfitWatch() {
  let misfits = 0;
  let line = 0;
  let longest = 0;
  let runLine = 0;
  let run = 0;
  return {
    fits: () => {
      run = 0;
    },
    found: (at) => {
      misfits++;
      if (run++ === 0) runLine = at;
      if (run > longest) {
        longest = run;
        line = runLine;
      }
    },
    restart: () => {
      misfits = line = longest = run = 0;
    },
    now: () => ({ misfits, misfitLine: line })
  };
}
function fillRow(stores, cells, { slot, decimal }) {
  const found = { number: 0, time: 0, strange: 0, nothing: 0 };
  for (let c = 0; c < stores.length; c++) {
    const store = stores[c];
    const cell2 = cells[c] ?? "";
    if (store.kind === "number") found[fillNumber(store, cell2, { slot, decimal })]++;
    else if (store.kind === "stamp") found[fillStamp(store, cell2, slot)]++;
  }
  const values = found.number + found.time;
  if (values > 0) fillWords(stores, cells, slot);
  const fits = values > found.strange;
  const isOther = cells.length !== stores.length || /:\s*$/.test(cells[0] ?? "");
  const isTotal = found.strange > values || !fits && isOther;
  const isWhole = cells.length === stores.length || cells.some(isMissingWord);
  const isBlankRow = values === 0 && found.strange === 0 && isWhole;
  return { values, fits, isBlankRow, isReading: found.time > 0 || !isTotal };
}
function fillStamp(store, cell2, slot) {
  const stamp = parseStamp(cell2);
  store.seconds.block[slot] = stamp?.seconds ?? Number.NaN;
  store.formOf.block[slot] = stamp === null ? -1 : store.known.numberOf(stamp);
  return stamp === null ? "nothing" : "time";
}
function fillNumber(store, cell2, { slot, decimal }) {
  const plain2 = plainNumber(cell2, decimal);
  const number = Number.isNaN(plain2) ? patientNumber(cell2, decimal) : null;
  const value2 = number?.value ?? plain2;
  store.values.block[slot] = value2;
  store.word = "";
  if (number !== null && number.suffix !== null) store.suffixes[number.suffix]++;
  if (!Number.isNaN(value2)) return "number";
  const word2 = cell2.trim().slice(0, 16);
  if (word2 === "") return "nothing";
  const isMissing = isMissingWord(word2);
  store.word = isMissing ? word2 : "other words";
  return isMissing ? "nothing" : "strange";
}
function fillWords(stores, cells, slot) {
  stores.forEach((store, c) => {
    if (store.kind === "text") store.words.codes.block[slot] = store.words.codeOf(cells[c] ?? "");
  });
}

// src/core/log/text/toldLayout.ts
function toldLayout(records, split, told) {
  const { decimal, headerAt } = told;
  const above = headerAt === "none" ? 0 : headerAt + 1;
  const found = findLayout(records.slice(above), split, decimal);
  if (found === null) return null;
  const width = found.kinds.length;
  const bodyStart = above + found.bodyStart;
  const text = headerAt === "none" ? "" : records[headerAt];
  const pair = datePair(split(records[bodyStart]));
  const isNamed = headerAt !== "none";
  return {
    ...found,
    bodyStart,
    names: uniqueNames(isNamed ? namesIn(text, split, { width, pair }) : [], width),
    hasHeader: isNamed,
    headerText: text,
    headerAt: isNamed ? headerAt : null,
    preamble: records.slice(0, isNamed ? headerAt : bodyStart),
    decision: decision("header", isNamed ? "a row of names" : "none; columns are numbered from 1", {
      confidence: "told",
      because: `it was given as an option; the readings begin at record ${bodyStart + 1}`,
      option: HEADER_OPTION
    })
  };
}
function namesIn(text, split, table) {
  const bare = split(text.replace(COMMENT, ""));
  const isAtBlanks = split("a b").length > 1;
  for (const cells of [...cutsOf({ text, cells: bare }, isAtBlanks), split(text)]) {
    const fitting = paired(cells, table);
    if (fitting !== null) return fitting;
  }
  return bare;
}

// src/core/log/openLog.ts
var OPENERS = ",;	|";
var MOST_ROWS = 2e7;
var MOST_COLUMNS = 256;
var LONGEST_LOOKED_AT = 128 * MOST_COLUMNS;
function logOpener(options, splitQuoted2, note) {
  const head = byteHead();
  let opened = null;
  function begin(isWhole) {
    return decided2(head, { options, splitQuoted: splitQuoted2, isWhole, note });
  }
  function feed(bytes) {
    if (opened === null || !opened.ok) return opened === null;
    const { scanner, builder } = opened.value;
    scanner.push(opened.value.bytes.plain(bytes, false));
    if (builder.counts().rows > MOST_ROWS) opened = failed(tooManyRows(options.name, MOST_ROWS));
    return opened.ok;
  }
  return {
    push: (bytes) => {
      if (opened !== null) return feed(bytes);
      const rest = head.add(bytes);
      if (!head.isFull()) return true;
      opened = begin(false);
      return feed(rest);
    },
    end: () => {
      opened ??= begin(true);
      return opened.ok ? closed(opened.value, options) : opened;
    }
  };
}
function decided2(head, {
  options,
  splitQuoted: splitQuoted2,
  isWhole,
  note
}) {
  const text = decodeText(isWhole ? head.bytes() : head.wholeLines(), options);
  if (!text.ok) return text;
  const openers = options.delimiter ?? OPENERS;
  note([text.value.decision]);
  const { texts: whole2, lines } = recordsOf(text.value.text, openers);
  const texts = whole2.map((each) => each.slice(0, LONGEST_LOOKED_AT));
  const dialect = decideDialect(texts, options, splitQuoted2);
  note(dialect.decisions);
  if (dialect.problem !== null) return failed(dialect.problem);
  const split = cellSplitter(dialect.delimiter, splitQuoted2, dialect.columns);
  const headerAt = typeof options.header === "number" ? lines.indexOf(options.header) : "none";
  if (headerAt === -1) return failed(noSuchLine(options, lines));
  const layout = options.header === void 0 ? findLayout(texts, split, dialect.decimal) : toldLayout(texts, split, { decimal: dialect.decimal, headerAt });
  if (layout === null)
    return failed(noTable(options.name, texts.length, delimiterName(dialect.delimiter)));
  if (layout.names.length > MOST_COLUMNS) return failed(tooManyColumns(options.name, MOST_COLUMNS));
  const header = layout.headerAt === null ? "none" : lines[layout.headerAt];
  const layoutDecision = { ...layout.decision, says: { header } };
  note([layoutDecision]);
  const bytes = byteText(text.value.encoding, options.encoding !== void 0);
  const rowSplit = cellSplitter(dialect.delimiter, splitQuoted2, dialect.columns);
  const tape = byteTape();
  const textAt = (line) => recordsOf(bytes.decode(tape.fromLine(line)), openers).texts[0] ?? "";
  const builder = tableBuilder({ ...dialect, layout, split: rowSplit, openers, textAt });
  const scanner = recordScanner(bodySink(builder, layout.bodyStart), {
    decode: bytes.decode,
    openers,
    tape
  });
  scanner.push(bytes.plain(head.bytes(), isWhole));
  head.letGo();
  const counts = isWhole ? null : builder.counts();
  builder.watchMisfits();
  return ok({
    text: { ...text.value, text: "" },
    layout,
    decisions: [...dialect.decisions, layoutDecision],
    bytes,
    builder,
    scanner,
    split,
    decimal: dialect.decimal,
    head: counts
  });
}
function bodySink(builder, bodyStart) {
  let record = 0;
  return {
    quick: (bytes, from, line) => {
      if (record < bodyStart) return -1;
      return builder.addBytes(bytes, from, line);
    },
    text: (text, line) => {
      if (record++ >= bodyStart) builder.addText(text, line);
    },
    tooLong: (beginning2, line) => {
      if (record++ >= bodyStart) builder.leaveOut(beginning2, line, "a line far too long for a row");
    }
  };
}
function closed(opened, options) {
  const { bytes, scanner, builder, layout, head } = opened;
  scanner.push(bytes.plain(new Uint8Array(0), true));
  const openLine = scanner.end();
  const doubt = bodyDoubt({ name: options.name, head, all: builder.counts() });
  if (!doubt.ok) return doubt;
  const { otherUnitLine } = builder.counts();
  if (otherUnitLine > 0) return failed(otherUnits(options.name, otherUnitLine));
  const table = withoutCutCell(builder.finish(), { ...opened, openLine });
  if (table.rowCount < 2) return failed(oneRow(options.name, table.rowCount));
  const wide = options.layout === "wide" ? null : widened2(table, options.layout === "long");
  if (options.layout === "long" && wide === null) return failed(notLong(options.name, table));
  return ok({
    table: wide?.table ?? table,
    preamble: preambleFacts(layout.preamble),
    decisions: [
      encodingDecision(opened),
      ...opened.decisions.map((each) => each.about === "delimiter" ? doubt.value(each) : each),
      ...wide === null ? [] : [wide.decision]
    ]
  });
}
function encodingDecision(opened) {
  const decision2 = ofAllRows(opened);
  const zeros = opened.scanner.zeros();
  if (zeros === 0) return decision2;
  const taken = zeros === 1 ? "1 zero byte was" : `${zeros} zero bytes were`;
  return {
    ...decision2,
    because: `${decision2.because}; ${taken} taken out, as a power cut leaves them`
  };
}
function ofAllRows({ text, bytes, head }) {
  const { decision: decision2 } = text;
  const { beyondAscii, malformed } = bytes.seen();
  if (head === null || text.encoding !== "utf-8" || decision2.confidence !== "certain")
    return decision2;
  if (malformed > 0)
    return {
      ...decision2,
      confidence: "likely",
      because: `the first rows are well-formed UTF-8; ${malformed} later ${malformed === 1 ? "record is" : "records are"} not, and read as windows-1252; only words can be affected`
    };
  return beyondAscii ? { ...decision2, because: "every byte is well-formed UTF-8" } : decision2;
}

// src/core/log/channels/celsiusColumn.ts
function celsiusColumn(numbers, unit) {
  return unit === "C" ? numbers : numbers.map((value2) => celsiusFrom(value2, unit));
}
function celsiusInRows(numbers, rows, unit) {
  const areAll = rows.length === numbers.length && rows.every((row, i) => row === i);
  if (areAll) return celsiusColumn(numbers, unit);
  const picked = new Float64Array(rows.length);
  for (let i = 0; i < picked.length; i++)
    picked[i] = celsiusFrom(numbers[rows[i]], unit);
  return picked;
}

// src/core/log/channels/spikes.ts
var REACH2 = 5;
var LIMIT = 5 * 1.4826;
var END_TIMES = 2;
var LAST_TIMES = 5;
var LEAST_K = 5;
var NOISE_TIMES = 8;
var DIGITS = 4;
function findSpikes(times2, temps) {
  if (temps.length < 2 * REACH2 + 1) return [];
  const floor = departureFloor(temps);
  const spikes = [];
  for (const at of suspects(temps, floor))
    if (isSpike(times2, temps, { at, floor })) spikes.push(at);
  return spikes;
}
function departureFloor(temps) {
  const bends = [];
  let resolution = Number.POSITIVE_INFINITY;
  const stride = Math.max(1, Math.floor(temps.length / 5e3));
  for (let i = 1; i + 1 < temps.length; i += stride) {
    const before = temps[i - 1];
    const here = temps[i];
    const after = temps[i + 1];
    bends.push(Math.abs(here - (before + after) / 2));
    const step = Math.abs(here - before);
    if (step > 1e-9 && step < resolution) resolution = step;
  }
  const coarse = Number.isFinite(resolution) ? resolution : 0;
  return Math.max(NOISE_TIMES * median(bends), DIGITS * Math.min(coarse, 2), LEAST_K);
}
function suspects(temps, floor) {
  const found = [];
  let next = 0;
  for (let i = 1; i < temps.length; i++) {
    if (Math.abs(temps[i] - temps[i - 1]) <= floor / 2) continue;
    const to = Math.min(temps.length - 1, i + 2);
    for (let k = Math.max(next, i - 3); k <= to; k++) found.push(k);
    next = Math.max(next, to + 1);
  }
  return found;
}
function isSpike(times2, temps, { at, floor }) {
  const from = Math.max(0, Math.min(at - REACH2, temps.length - 2 * REACH2 - 1));
  const to = from + 2 * REACH2 + 1;
  if (isBesideGap(times2.subarray(from, to), at - from)) return false;
  const slopes = [];
  for (let i = from; i < to; i++)
    for (let k = i + 1; k < to; k++)
      slopes.push(
        (temps[k] - temps[i]) / (times2[k] - times2[i])
      );
  const slope = median(slopes);
  const origin = times2[at];
  const offs = [];
  for (let i = from; i < to; i++)
    offs.push(temps[i] - slope * (times2[i] - origin));
  const middle = median(offs);
  const spread2 = median(offs.map((off) => Math.abs(off - middle)));
  const departures = offs.map((off) => off - middle);
  const here = at - from;
  const departure = Math.abs(departures[here]);
  const isAtEnd = at < 3 || at >= temps.length - 3;
  const limit = Math.max(LIMIT * spread2, floor) * (isAtEnd ? END_TIMES : 1);
  if (departure <= limit || !comesHome(departures, here)) return false;
  const isLast = at === 0 || at === temps.length - 1;
  return isLast ? departure > LAST_TIMES * largestStep(temps, { at, from, to }) : isSudden(times2.subarray(from, to), departures, here);
}
var GAP_TIMES = 8;
var LEAST_STRETCH = 6;
function isBesideGap(times2, at) {
  const steps = times2.subarray(1).map((time, i) => time - times2[i]);
  const most = GAP_TIMES * median(steps);
  let stretch = 1;
  for (let i = at; i < steps.length && steps[i] <= most; i++) stretch++;
  for (let i = at - 1; i >= 0 && steps[i] <= most; i--) stretch++;
  return stretch < Math.min(LEAST_STRETCH, times2.length);
}
function comesHome(departures, at) {
  const here = departures[at];
  const comesBack = (step) => {
    for (let k = 1; k <= 3; k++) {
      const other = departures[at + step * k];
      if (other === void 0) return true;
      if ((here - other) * Math.sign(here) > Math.abs(here) / 2) return true;
    }
    return false;
  };
  return comesBack(1) && comesBack(-1);
}
function largestStep(temps, { at, from, to }) {
  let most = 0;
  for (let i = from + 1; i < to; i++) {
    const step = Math.abs(temps[i] - temps[i - 1]);
    if (i !== at && i - 1 !== at && step > most) most = step;
  }
  return most;
}
var SUDDEN_SHARE = 0.7;
function isSudden(times2, departures, at) {
  const from = Math.max(1, at - 2);
  const to = Math.min(departures.length - 1, at + 3);
  const least = SUDDEN_SHARE * Math.abs(departures[at]);
  const spans2 = [];
  for (let i = from; i <= to; i++) spans2.push(times2[i] - times2[i - 1]);
  const usual = Math.min(...spans2);
  return spans2.some((span, k) => {
    const step = departures[from + k] - departures[from + k - 1];
    return span < 2 * usual && Math.abs(step) > least;
  });
}

// src/core/log/channels/cleanChannel.ts
var POSSIBLE_C2 = { least: -273.15, most: 1850 };
var SCALE_ENDS_C = [1372, 1768, 1820];
var GAP_STEPS = 5;
var GAP_SECONDS = 120;
var OPEN_JUMP_K = 50;
function cleanChannel(name, seconds, tempsC) {
  const open2 = openReadings(tempsC);
  const faults = [];
  const valid = withoutIndices(seconds, tempsC, open2);
  if (open2.length > 0) faults.push(openFault(name, seconds, open2));
  const spikes = findSpikes(valid.times, valid.temps);
  if (spikes.length > 0) faults.push(spikeFault(name, valid.times, { temps: valid.temps, spikes }));
  const good = spikes.length === 0 ? valid : withoutIndices(valid.times, valid.temps, spikes);
  return {
    curve: good.times.length < 2 ? null : curveOver(good.times, good.temps, findGaps(good.times)),
    readings: good.times.length,
    dropped: tempsC.length - good.times.length,
    faults
  };
}
function findGaps(seconds, usualStep = medianStep(seconds)) {
  const least = Math.max(GAP_STEPS * usualStep, GAP_SECONDS);
  const gaps = [];
  for (let i = 1; i < seconds.length; i++) {
    const fromSeconds = seconds[i - 1];
    const toSeconds = seconds[i];
    if (toSeconds - fromSeconds > least) gaps.push({ fromSeconds, toSeconds });
  }
  return gaps;
}
function withoutIndices(times2, temps, left) {
  if (left.length === 0 && !temps.some(Number.isNaN)) return { times: times2, temps };
  const keptTimes = new Float64Array(times2.length);
  const keptTemps = new Float64Array(times2.length);
  let kept = 0;
  let next = 0;
  for (let i = 0; i < times2.length; i++) {
    const temp = temps[i];
    if (i === left[next]) next++;
    else if (!Number.isNaN(temp)) {
      keptTimes[kept] = times2[i];
      keptTemps[kept++] = temp;
    }
  }
  return { times: keptTimes.subarray(0, kept), temps: keptTemps.subarray(0, kept) };
}
var LEADING_JUMP_K = 200;
function leadingParked(tempsC) {
  const first = tempsC.find((temp) => temp !== 0 && !Number.isNaN(temp)) ?? Number.NaN;
  return Math.abs(first) > LEADING_JUMP_K ? first : Number.NaN;
}
function openReadings(tempsC) {
  const open2 = [];
  let last = leadingParked(tempsC);
  for (let i = 0; i < tempsC.length; i++) {
    const temp = tempsC[i];
    if (Number.isNaN(temp)) continue;
    const isImpossible = temp < POSSIBLE_C2.least || temp > POSSIBLE_C2.most;
    const isParked2 = Math.abs(temp - last) > OPEN_JUMP_K && (temp === 0 || SCALE_ENDS_C.includes(Math.round(temp)));
    if (isImpossible || isParked2) open2.push(i);
    else last = temp;
  }
  return open2;
}
function openFault(name, seconds, open2) {
  const count2 = open2.length;
  return {
    kind: "open",
    channel: name,
    fromSeconds: seconds[open2[0]],
    toSeconds: seconds[open2[count2 - 1]],
    count: count2,
    what: `${name} gave ${count2} ${count2 === 1 ? "value" : "values"} that no thermocouple gives, as an open circuit does; left out.`
  };
}
function spikeFault(name, times2, { temps, spikes }) {
  const count2 = spikes.length;
  const values = spikes.slice(0, 3).map((i) => `${Math.round(temps[i])} \xB0C`);
  const more = count2 > 3 ? " and others" : "";
  return {
    kind: "spike",
    channel: name,
    fromSeconds: times2[spikes[0]],
    toSeconds: times2[spikes[count2 - 1]],
    count: count2,
    what: `${name} has ${count2} ${count2 === 1 ? "reading" : "readings"} far off the line of its neighbours (${values.join(", ")}${more}); left out.`
  };
}

// src/core/log/channels/outputFraction.ts
var WHOLE = 1.001;
var WHOLE_PERCENT = 100.5;
function outputFraction(column, rows, seconds) {
  const times2 = new Float64Array(rows.length);
  const values = new Float64Array(rows.length);
  let count2 = 0;
  let lowest = 0;
  let highest = 0;
  for (let i = 0; i < rows.length; i++) {
    const value2 = column.numbers[rows[i]];
    if (!Number.isFinite(value2)) continue;
    lowest = Math.min(lowest, value2);
    highest = Math.max(highest, value2);
    times2[count2] = seconds[i];
    values[count2++] = value2;
  }
  if (count2 < 2 || lowest < 0 || highest > WHOLE_PERCENT) return null;
  const whole2 = highest > WHOLE || /%|percent|prozent/i.test(`${column.name} ${column.unitText}`) ? 100 : 1;
  return {
    timesSeconds: times2.subarray(0, count2),
    fraction: values.subarray(0, count2).map((value2) => Math.min(1, value2 / whole2))
  };
}

// src/core/log/channels/stuck.ts
var LEAST_SECONDS = 1200;
var LEAST_READINGS = 10;
var MOVED_K = 40;
function stuckFaults(temperatures, witnesses) {
  return temperatures.flatMap(({ name, curve }) => {
    const others = [...temperatures, ...witnesses].filter((other) => other.curve !== curve);
    if (others.length === 0) return runsOf(curve).flatMap((run) => frozen(name, curve, run));
    return runsOf(curve).flatMap((run) => {
      const mover = others.find((other) => changeOver(other.curve, run) > MOVED_K);
      if (mover === void 0) return [];
      const value2 = Math.round(curve.tempsC[run.from]);
      const fault2 = {
        kind: "stuck",
        channel: name,
        fromSeconds: run.fromSeconds,
        toSeconds: run.toSeconds,
        count: run.to - run.from + 1,
        what: `${name} stays at exactly ${value2} \xB0C while ${mover.name} moves by ${Math.round(changeOver(mover.curve, run))} K.`
      };
      return [fault2];
    });
  });
}
function frozen(name, curve, run) {
  const value2 = curve.tempsC[run.from];
  const next = curve.tempsC[run.to + 1];
  const isGap = curve.gaps.some((gap) => gap.fromSeconds === run.toSeconds);
  if (next === void 0 || isGap || Math.abs(next - value2) <= MOVED_K) return [];
  return [
    {
      kind: "stuck",
      channel: name,
      fromSeconds: run.fromSeconds,
      toSeconds: run.toSeconds,
      count: run.to - run.from + 1,
      what: `${name} stays at exactly ${Math.round(value2)} \xB0C, then jumps by ${Math.round(Math.abs(next - value2))} K from one reading to the next.`
    }
  ];
}
function runsOf(curve) {
  const { timesSeconds, tempsC } = curve;
  const runs = [];
  let from = 0;
  for (let i = 1; i <= tempsC.length; i++) {
    if (i < tempsC.length && tempsC[i] === tempsC[from]) continue;
    const fromSeconds = timesSeconds[from];
    const toSeconds = timesSeconds[i - 1];
    if (toSeconds - fromSeconds >= LEAST_SECONDS && i - from >= LEAST_READINGS)
      runs.push({ from, to: i - 1, fromSeconds, toSeconds });
    from = i;
  }
  return runs;
}
function changeOver({ timesSeconds, tempsC }, run) {
  let least = Number.POSITIVE_INFINITY;
  let greatest = Number.NEGATIVE_INFINITY;
  let i = Math.max(0, lastAtOrBefore(timesSeconds, run.fromSeconds));
  if (timesSeconds[i] < run.fromSeconds) i++;
  for (; i < timesSeconds.length && timesSeconds[i] <= run.toSeconds; i++) {
    least = Math.min(least, tempsC[i]);
    greatest = Math.max(greatest, tempsC[i]);
  }
  return greatest - least;
}

// src/core/log/channels/wildFault.ts
function withoutWild(columns, seconds) {
  return columns.map((column) => {
    const others = columns.filter((other) => other !== column);
    const stretch = wildStretch(
      column.tempsC,
      others.map(({ tempsC }) => tempsC)
    );
    if (stretch === null) return { tempsC: column.tempsC, fault: null };
    return {
      tempsC: column.tempsC.map(
        (tempC, i) => i >= stretch.from && i <= stretch.to ? Number.NaN : tempC
      ),
      fault: faultOf(column, stretch, seconds)
    };
  });
}
function faultOf(column, stretch, seconds) {
  const { from, to, usualJump } = stretch;
  const count2 = column.tempsC.subarray(from, to + 1).filter((tempC) => !Number.isNaN(tempC)).length;
  return {
    kind: "spike",
    channel: column.name,
    fromSeconds: seconds[from],
    toSeconds: seconds[to],
    count: count2,
    what: `${column.name} jumps up and down by ${Math.round(usualJump / 2)} K from reading to reading while another thermocouple runs smoothly, as a failing one does; its ${count2} readings there are left out.`
  };
}

// src/core/log/time/calendar.ts
var DAY_SECONDS2 = 86400;
function dayNumber(year, month, day) {
  if (!(month >= 1 && month <= 12 && day >= 1 && day <= monthLength(year, month)))
    return Number.NaN;
  const shifted2 = month <= 2 ? year - 1 : year;
  const era = Math.floor(shifted2 / 400);
  const yearOfEra = shifted2 - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * 146097 + dayOfEra - 719468;
}
function wallTime(seconds) {
  const whole2 = Math.floor(seconds + 1e-6);
  const { year, month, day } = dateOf(Math.floor(whole2 / DAY_SECONDS2));
  const rest = whole2 - Math.floor(whole2 / DAY_SECONDS2) * DAY_SECONDS2;
  const clock2 = [Math.floor(rest / 3600), Math.floor(rest % 3600 / 60), rest % 60];
  return `${String(year).padStart(4, "0")}-${two2(month)}-${two2(day)}T${clock2.map(two2).join(":")}`;
}
function dateOf(days) {
  const shifted2 = days + 719468;
  const era = Math.floor(shifted2 / 146097);
  const dayOfEra = shifted2 - era * 146097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36524) - Math.floor(dayOfEra / 146096)) / 365
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const fromMarch = Math.floor((5 * dayOfYear + 2) / 153);
  const month = fromMarch < 10 ? fromMarch + 3 : fromMarch - 9;
  const day = dayOfYear - Math.floor((153 * fromMarch + 2) / 5) + 1;
  return { year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0), month, day };
}
function weekday(days) {
  return ((days + 4) % 7 + 7) % 7;
}
function monthLength(year, month) {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}
function two2(value2) {
  return String(value2).padStart(2, "0");
}

// src/core/log/time/clockSeconds.ts
var HALF_DAY = DAY_SECONDS2 / 2;
function isNewestFirst(seconds) {
  let back = 0;
  let moved = 0;
  for (let i = 1; i < seconds.length; i++) {
    const step = wrapped(seconds[i] - seconds[i - 1]);
    if (step < 0) back++;
    if (step !== 0 && !Number.isNaN(step)) moved++;
  }
  return moved > 0 && back > 0.9 * moved;
}
function wrapped(step) {
  if (Math.abs(step) > DAY_SECONDS2) return step;
  return step > HALF_DAY ? step - DAY_SECONDS2 : step < -HALF_DAY ? step + DAY_SECONDS2 : step;
}
function runningClock(ofDay, dial) {
  const isHalfDial = dial === null ? isOnHalfDial(ofDay) : dial === 12;
  const turn = isHalfDial ? HALF_DAY : DAY_SECONDS2;
  const seconds = new Float64Array(ofDay.length);
  let previous = Number.NaN;
  let turns = 0;
  for (let i = 0; i < ofDay.length; i++) {
    const time = isHalfDial ? ofDay[i] % HALF_DAY : ofDay[i];
    if (time - previous < -turn / 2) turns++;
    seconds[i] = time + turns * turn;
    if (!Number.isNaN(time)) previous = time;
  }
  return { seconds, midnights: isHalfDial ? Math.floor(turns / 2) : turns, isHalfDial };
}
function isOnHalfDial(ofDay) {
  let falls2 = 0;
  const steps = [];
  for (let i = 0; i < ofDay.length; i++) {
    const time = ofDay[i];
    if (time < 3600 || time >= 13 * 3600) return false;
    if (i === 0) continue;
    const step = time - ofDay[i - 1];
    if (step > 0) steps.push(step);
    if (step < 0 && step <= -HALF_DAY + 3600) falls2++;
    if (step < 0 && (step < -HALF_DAY || step > -HALF_DAY / 2)) return false;
  }
  return falls2 > 0 && median(steps) < 3600;
}

// src/core/log/time/moments.ts
function momentsBetween({ rows, times: times2 }, from, to) {
  return { rows: rows.subarray(from, to), times: times2.subarray(from, to) };
}
function momentsAt({ rows, times: times2 }, places) {
  return {
    rows: places.map((place) => rows[place]),
    times: Float64Array.from(places, (place) => times2[place])
  };
}

// src/core/log/time/duplicates.ts
var COARSE_SHARE2 = 0.2;
function spreadDuplicates(moments, isSameRow) {
  const { times: times2 } = moments;
  const starts = groupStarts(times2);
  const repeats = times2.length - starts.length;
  if (repeats === 0) return { moments, rejected: [], mended: [] };
  if (repeats > COARSE_SHARE2 * times2.length && starts.length > 1) return spread(moments, starts);
  return withoutRepeats(moments, starts, isSameRow);
}
function isCoarse(times2) {
  const repeats = times2.length - groupStarts(times2).length;
  return repeats > COARSE_SHARE2 * times2.length;
}
function groupStarts(times2) {
  const starts = new Int32Array(times2.length);
  let count2 = 0;
  for (let i = 0; i < times2.length; i++)
    if (i === 0 || times2[i] !== times2[i - 1]) starts[count2++] = i;
  return starts.subarray(0, count2);
}
function withoutRepeats(moments, starts, isSameRow) {
  const { rows } = moments;
  const rejected = [];
  starts.forEach((start, g) => {
    const kept = rows[start];
    const next = starts[g + 1] ?? rows.length;
    for (let place = start + 1; place < next; place++) {
      const row = rows[place];
      const reason = isSameRow(kept, row) ? "the same row again" : "the same time as the row before";
      rejected.push({ row, reason });
    }
  });
  return { moments: momentsAt(moments, starts), rejected, mended: [] };
}
function spread({ rows, times: times2 }, starts) {
  const last = starts.length - 1;
  const timeOf = (group) => times2[starts[group]];
  const sizeOf = (group) => (starts[group + 1] ?? times2.length) - starts[group];
  const quantum = median(Float64Array.from({ length: last }, (_, g) => timeOf(g + 1) - timeOf(g)));
  const usual = median(Float64Array.from(starts, (_, g) => sizeOf(g)));
  const spreadOut2 = new Float64Array(times2.length);
  for (let g = 0; g <= last; g++) {
    const here = timeOf(g);
    const size = sizeOf(g);
    const span = g === last ? quantum : Math.min(quantum, timeOf(g + 1) - here);
    const places = Math.max(size, g === 0 || g === last ? usual : 1);
    const skipped2 = g === 0 ? places - size : 0;
    for (let k = 0; k < size; k++)
      spreadOut2[starts[g] + k] = here + span * (skipped2 + k) / places;
  }
  return {
    moments: { rows, times: spreadOut2 },
    rejected: [],
    mended: [
      `stamps repeat, so the ${usual} or so rows of each were spread evenly over ${quantum} s`
    ]
  };
}

// src/core/log/time/changeHour.ts
var LATEST_CHANGE_HOUR = 4;
function isChangeHour(time, clock2) {
  const ofDay = (time % DAY_SECONDS2 + DAY_SECONDS2) % DAY_SECONDS2;
  const isSmallHour = ofDay <= LATEST_CHANGE_HOUR * 3600;
  return isSmallHour && (clock2 !== "date" || weekday(Math.floor(time / DAY_SECONDS2)) === 0);
}
function isChangeDay(day) {
  if (Number.isNaN(day) || weekday(day) !== 0) return false;
  const { month, day: ofMonth } = dateOf(day);
  const isLast = ofMonth > 24;
  if (month === 3) return isLast || ofMonth > 7 && ofMonth < 15;
  return month === 10 && isLast || month === 11 && ofMonth < 8;
}
function hourJumpRow(ofDay) {
  const jumps = ofDay.map((time, i) => Math.abs(time - (ofDay[i - 1] ?? time)));
  const step = median([...jumps.filter((jump) => jump > 0)]);
  if (!(step < 1800)) return -1;
  return jumps.findIndex(
    (jump, i) => Math.abs(jump - 3600) <= 1.5 * step + 1 && jump > 2 * step && ofDay[i] <= LATEST_CHANGE_HOUR * 3600
  );
}

// src/core/log/time/numberTimes.ts
var SERIAL_1970 = { 1900: 25569, 1904: 24107 };
function numberTimes(column, form, query) {
  if (form.kind === "epoch") {
    const isTold = query.options.timeKind !== void 0;
    const format = decision("time format", form.name, {
      confidence: isTold ? "told" : "certain",
      because: isTold ? "it was given as an option; read as universal time" : "only so do the numbers lie between 1990 and 2100; read as universal time",
      option: TIME_KIND_OPTION,
      says: { timeKind: "epoch" }
    });
    return ok(
      dated(
        column.numbers.map((value2) => value2 / form.perSecond),
        format
      )
    );
  }
  if (form.kind === "serial") {
    const isTold = query.options.timeKind !== void 0;
    const days1970 = SERIAL_1970[form.since];
    const format = decision("time format", `spreadsheet days since ${form.since}`, {
      confidence: isTold ? "told" : "likely",
      because: isTold ? "it was given as an option" : "the numbers lie between 1990 and 2100 as days, and have fractions; only the calendar date depends on the year they count from",
      runnerUp: isTold ? null : "days since 1904, four years and a day later",
      option: `${TIME_KIND_OPTION}, as spreadsheet-1904`,
      says: { timeKind: form.since === 1900 ? "spreadsheet" : "spreadsheet-1904" }
    });
    return ok(
      dated(
        column.numbers.map((value2) => serialSeconds(value2 - days1970)),
        format
      )
    );
  }
  return elapsedTimes(column, query);
}
function dated(seconds, format) {
  return { seconds, clock: "date", doubt: null, decisions: [format] };
}
function serialSeconds(daysSince1970) {
  return Math.round(daysSince1970 * 864e5) / 1e3;
}
function elapsedTimes(column, query) {
  const { options } = query;
  const label = labelledScale(column.unitText) ?? labelledScale(column.name.replace(/_/g, " "));
  const plausible = plausibleScales(column.numbers, query.tempsC);
  if (options.timeUnit !== void 0)
    return ok(
      scaled(
        column,
        timeScale(options.timeUnit),
        formatDecision(timeScale(options.timeUnit), "told")
      )
    );
  if (label !== null)
    return ok({
      ...scaled(column, label, formatDecision(label, "certain")),
      doubt: labelDoubt(column, label, plausible)
    });
  const [scale] = plausible;
  if (plausible.length === 1 && scale !== void 0)
    return ok(scaled(column, scale, formatDecision(scale, "likely")));
  const found = plausible.length === 0 ? "no unit gives a firing of a likely length and heating rate" : `${plausible.map((each) => each.name).join(" and ")} both give a likely firing`;
  return failed({
    code: "log/time-unit-unknown",
    what: `the times in "${column.name}" have no unit, and ${found}`,
    where: options.name,
    expected: "seconds, minutes or hours, named in the header or in a row under it",
    fix: "say it with --time-unit s, min or h"
  });
}
function scaled(column, scale, format) {
  return {
    seconds: column.numbers.map((value2) => value2 * scale.seconds),
    clock: "none",
    doubt: null,
    decisions: [format]
  };
}
function formatDecision(scale, confidence) {
  const because = {
    told: "it was given as an option",
    certain: "the unit is written in the header",
    likely: "only this unit gives a likely length and heating rate",
    guessed: ""
  };
  return decision("time format", `elapsed, in ${scale.name}`, {
    confidence,
    because: because[confidence],
    option: `--time-unit s, min or h; ${TIME_KIND_OPTION}`,
    says: { timeKind: "elapsed", timeUnit: unitOfScale(scale) }
  });
}
function labelDoubt(column, label, plausible) {
  const [other] = plausible;
  if (plausible.length !== 1 || other === void 0 || other.name === label.name) return null;
  return `"${column.name}" says ${label.name}, but only ${other.name} would give a likely firing; --time-unit ${other.name} reads it so.`;
}

// src/core/log/time/dateOrder.ts
var ORDERS2 = ["day-first", "month-first", "year-first"];
var OPTION2 = "--day-first, --month-first or --year-first";
var SAYS = {
  "day-first": { dayFirst: true },
  "month-first": { dayFirst: false },
  "year-first": { yearFirst: true }
};
var NAMES = {
  "day-first": "day first",
  "month-first": "month first",
  "year-first": "year first"
};
function decideDateOrder({ stamps, ofDay }, preambleText, options) {
  const dates = distinctDates(stamps);
  const open2 = dates.filter((stamp) => stamp.order === "open");
  if (open2.length === 0) return ok(settled(dates));
  const trials = ORDERS2.map((order) => tryOrder(open2, order));
  if (options.dayFirst !== void 0 || options.yearFirst === true)
    return toldOrder(open2, trials, options);
  const best = bestTrials(trials);
  const [only] = best;
  if (best.length === 1 && only !== void 0)
    return ok(ordered(only.order, settledBecause(trials, only), "certain"));
  const change = summerTimeOrder({ stamps, ofDay }, best);
  return ok(weighed(open2, best, change ?? hintOf(open2[0], preambleText, stamps)));
}
function distinctDates({ formOf: formOf3, forms }) {
  const dates = [];
  let last;
  for (let row = 0; row < formOf3.length; row++) {
    if (formOf3[row] === formOf3[row - 1]) continue;
    const form = forms[formOf3[row]];
    if (form === void 0 || form.order === "none") continue;
    const isSame = last !== void 0 && last.first === form.first && last.second === form.second && last.third === form.third;
    if (!isSame) dates.push(form);
    last = form;
  }
  return dates;
}
function settled(dates) {
  const isNamed = dates.some((stamp) => stamp.order === "day-first");
  return {
    dayOf: (stamp) => dayUnder(stamp, "day-first"),
    decision: decision("day order", isNamed ? "by the month's name" : "year first", {
      confidence: "certain",
      because: isNamed ? "months are written as words" : "dates begin with a four-digit year"
    })
  };
}
function toldOrder(open2, trials, options) {
  const order = options.yearFirst ? "year-first" : options.dayFirst ? "day-first" : "month-first";
  const trial = trials.find((each) => each.order === order);
  if (trial !== void 0 && trial.fit >= 0.99)
    return ok(ordered(order, "it was given as an option", "told"));
  const odd = open2.find((stamp) => Number.isNaN(dayUnder(stamp, order)));
  return failed({
    code: "log/day-order",
    what: `the date ${odd === void 0 ? "" : written2(odd)} cannot be read ${NAMES[order]}`,
    where: options.name,
    expected: "an order of day and month under which the dates exist",
    fix: "leave out the option about the day, or turn it round"
  });
}
function tryOrder(open2, order) {
  let fit = 0;
  let jumps = 0;
  let previous = Number.NaN;
  for (const stamp of open2) {
    const day = dayUnder(stamp, order);
    if (Number.isNaN(day)) continue;
    fit++;
    if (Math.abs(day - previous) > 1) jumps++;
    previous = day;
  }
  return { order, fit: fit / open2.length, jumps };
}
function bestTrials(trials) {
  const fitting = trials.filter((trial) => trial.fit >= 0.99);
  const pool = fitting.length > 0 ? fitting : trials;
  const bestFit = Math.max(...pool.map((trial) => trial.fit));
  const fewest = Math.min(...pool.map((trial) => trial.jumps));
  return fitting.length > 0 ? pool.filter((trial) => trial.jumps === fewest) : pool.filter((trial) => trial.fit === bestFit).slice(0, 1);
}
function settledBecause(trials, best) {
  const others = trials.filter((trial) => trial !== best && trial.order !== "year-first");
  return others.some((trial) => trial.fit >= 0.99) ? "only so does the date move on by one day at midnight" : "a field above 12 can only be the day";
}
function weighed(open2, best, hint) {
  const first = open2[0];
  const orders = best.map((trial) => trial.order).filter((order2) => isModern(first, order2));
  const usable = orders.length > 0 ? orders : best.map((trial) => trial.order);
  const days = new Set(usable.map((order2) => dayUnder(first, order2)));
  const [lone] = usable;
  if (days.size === 1 && lone !== void 0)
    return ordered(
      lone,
      "day and month are the same number, or only one order gives a likely year",
      "certain"
    );
  const order = usable.includes(hint.order) ? hint.order : lone;
  const runner = usable.find((other) => other !== order);
  const label = (each) => `${NAMES[each]}: ${dayText(dayUnder(first, each))}`;
  return {
    dayOf: (stamp) => dayUnder(stamp, order),
    decision: decision("day order", label(order), {
      confidence: "guessed",
      because: `${hint.because}; ${written2(first)} fits both, and only the calendar date depends on it`,
      runnerUp: label(runner),
      option: OPTION2,
      says: SAYS[order]
    })
  };
}
function summerTimeOrder({ stamps, ofDay }, trials) {
  const row = hourJumpRow(ofDay);
  const form = stamps.forms[stamps.formOf[row] ?? -1];
  if (form === void 0 || form.order !== "open") return null;
  const fitting = trials.filter(({ order }) => isChangeDay(dayUnder(form, order)));
  const [only] = fitting;
  if (fitting.length !== 1 || only === void 0) return null;
  return {
    order: only.order,
    because: "the clock jumps by an hour, and only so in a night when summer time changes"
  };
}
function hintOf(first, preambleText, stamps) {
  for (const match of preambleText.matchAll(/(?<!\d)(\d{1,2})([-/.])(\d{1,2})\2\d{2,4}(?!\d)/g)) {
    if (Number(match[1]) > 12)
      return { order: "day-first", because: "a date above the table is written day first" };
    if (Number(match[3]) > 12)
      return { order: "month-first", because: "a date above the table is written month first" };
  }
  if (first.separator === ".")
    return { order: "day-first", because: "dates with dots are mostly written day first" };
  if (stamps.forms.some((form) => form.half !== null))
    return { order: "month-first", because: "clocks with AM and PM mostly go with month first" };
  return { order: "day-first", because: "nothing in the log settles it" };
}
function isModern(stamp, order) {
  const { year } = dateOf(dayUnder(stamp, order));
  return year >= 1995 && year <= 2060;
}
function ordered(order, because, confidence) {
  return {
    dayOf: (stamp) => dayUnder(stamp, order),
    decision: decision("day order", NAMES[order], {
      confidence,
      because,
      option: OPTION2,
      says: SAYS[order]
    })
  };
}
function dayUnder(stamp, order) {
  const { first, second, third } = stamp;
  if (stamp.order === "year-first") return dayNumber(first, second, third);
  if (stamp.order === "day-first") return dayNumber(fullYear(third), second, first);
  if (order === "day-first") return dayNumber(fullYear(third), second, first);
  if (order === "month-first") return dayNumber(fullYear(third), first, second);
  return third > 31 ? Number.NaN : dayNumber(fullYear(first), second, third);
}
function fullYear(year) {
  if (year >= 100) return year;
  return year < 70 ? 2e3 + year : 1900 + year;
}
function written2(stamp) {
  return [stamp.first, stamp.second, stamp.third].join(stamp.separator);
}
function dayText(day) {
  const { year, month, day: dayOfMonth } = dateOf(day);
  return `${year}-${String(month).padStart(2, "0")}-${String(dayOfMonth).padStart(2, "0")}`;
}

// src/core/log/time/writtenTimes.ts
var TOLD = "it was given as an option";
function writtenTimes(place, query) {
  if (place.date !== null) return datedTimes(place.date, place.clock, query);
  const clock2 = place.clock;
  const { timeKind } = query.options;
  const told = timeKind === void 0 ? null : TOLD;
  const elapsed = told === null ? elapsedBecause(clock2) : timeKind === "elapsed" ? told : null;
  return elapsed === null ? ok(dayTimes(clock2, timeKind)) : spanTimes(clock2, elapsed, query);
}
function datedTimes(date2, clock2, query) {
  const ofDay = clock2 === null ? new Float64Array(query.rowCount) : clock2.stamps.seconds;
  const { preamble, options } = query;
  const order = decideDateOrder({ stamps: date2.stamps, ofDay }, preamble.text, options);
  if (!order.ok) return order;
  const days = dayNumbers(date2, order.value.dayOf, clock2 !== date2);
  const seconds = days;
  for (let i = 0; i < seconds.length; i++)
    seconds[i] = days[i] * DAY_SECONDS2 + ofDay[i];
  const { timeKind } = query.options;
  const zoned = clock2 === null ? null : applyOffsets(clock2.stamps, seconds);
  const half = clock2 === null ? null : halfDialTimes(clock2, { ofDay, seconds, told: timeKind });
  return ok({
    seconds: half ?? seconds,
    clock: "date",
    doubt: null,
    decisions: [
      decision("time format", clock2 === null ? "dates, one a row" : formatOf(clock2, true), {
        ...dialSure(timeKind, half !== null, clock2 !== null && mayBeDial(clock2.stamps, seconds)),
        because: half === null ? zoned ?? "every row is written so" : HALF_DIAL,
        ...clock2 !== null && kindSays(half === null ? "clock-24h" : "clock-12h")
      }),
      order.value.decision
    ]
  });
}
function dayNumbers(date2, dayOf, fillsDown) {
  const { formOf: formOf3, forms } = date2.stamps;
  const dayOfForm = forms.map((form) => form.order === "none" ? null : dayOf(form));
  const days = new Float64Array(formOf3.length);
  let day = Number.NaN;
  for (let i = 0; i < days.length; i++) {
    const here = dayOfForm[formOf3[i]] ?? null;
    if (here !== null) day = here;
    days[i] = here !== null || fillsDown ? day : Number.NaN;
  }
  return days;
}
var HALF_DIAL = "hours run from 1 to 12 and begin anew after twelve, so twelve hours were added each time";
function applyOffsets(stamps, seconds) {
  const first = firstStamp(stamps)?.offsetMinutes ?? Number.NaN;
  if (Number.isNaN(first)) return null;
  const shifts = stamps.forms.map(
    ({ offsetMinutes }) => Number.isNaN(offsetMinutes) ? 0 : (first - offsetMinutes) * 60
  );
  for (let i = 0; i < seconds.length; i++) {
    const shift = shifts[stamps.formOf[i]] ?? 0;
    if (shift !== 0) seconds[i] = seconds[i] + shift;
  }
  return "every row is written so; all are kept at the offset of the first";
}
function halfDialTimes(clock2, {
  ofDay,
  seconds,
  told
}) {
  if (hasHalves(clock2.stamps)) return null;
  if (Number.isNaN(seconds[0]) || isNewestFirst(seconds)) return null;
  const running = runningClock(
    ofDay,
    dialOf(told) ?? (isTwelveAtMidnight(ofDay, seconds) ? 12 : null)
  );
  if (!running.isHalfDial) return null;
  const start = seconds[0] - ofDay[0] % (DAY_SECONDS2 / 2);
  const unrolled = running.seconds.map((each) => start + each);
  const isApart = unrolled.some((each, i) => Math.abs(each - seconds[i]) > DAY_SECONDS2);
  return isApart ? null : unrolled;
}
function dialSure(told, isHalf, isOpen) {
  if (told !== void 0) return { confidence: "told", runnerUp: null };
  if (isHalf) return { confidence: "likely", runnerUp: "hours from 0 to 24, with gaps" };
  return isOpen ? { confidence: "likely", runnerUp: "a dial of 12 hours without AM and PM" } : { confidence: "certain", runnerUp: null };
}
function mayBeDial({ seconds: ofDay, forms }, seconds) {
  if (forms.some((form) => form.half !== null)) return false;
  const hours = /* @__PURE__ */ new Set();
  for (const each of ofDay) if (!Number.isNaN(each)) hours.add(Math.floor(each / 3600));
  if (hours.has(0) || [...hours].some((hour) => hour > 12)) return false;
  const { least, greatest } = shapeOf(seconds);
  return hours.size > DIAL_HOURS || greatest - least > DAY_SECONDS2 / 2;
}
var DIAL_HOURS = 8;
function isTwelveAtMidnight(ofDay, seconds) {
  const noon = DAY_SECONDS2 / 2;
  let turns = 0;
  for (let i = 0; i < ofDay.length; i++) {
    const here = ofDay[i];
    if (here < 3600 || here >= noon + 3600) return false;
    const before = ofDay[i - 1] ?? here;
    const days = (seconds[i] - here - (seconds[i - 1] ?? 0) + before) / DAY_SECONDS2;
    if (i > 0 && days === 1 && before < noon && before >= noon - 3600 && here >= noon) turns++;
  }
  return turns > 0;
}
function formatOf(clock2, isDated) {
  const first = firstStamp(clock2.stamps);
  const halves = first?.half !== null && first?.half !== void 0 ? " with AM and PM" : "";
  const fields = first?.clockFields === 2 ? "hours and minutes" : "hours, minutes and seconds";
  return `${isDated ? "date, " : ""}${fields}${halves}`;
}
function hasHalves({ forms }) {
  return forms.some((form) => form.half !== null);
}
function elapsedBecause(clock2) {
  const { forms, seconds } = clock2.stamps;
  const first = firstStamp(clock2.stamps);
  if (first === null || hasHalves(clock2.stamps)) return null;
  if (forms.some((form) => form.isSpan)) return "it is written as a span, not as a time of day";
  if (seconds.some((each) => each >= DAY_SECONDS2)) return "it counts beyond 24 hours";
  if (/elaps|durat|run ?time|since|lapse|mm:ss|hh+:mm elapsed/i.test(
    `${clock2.name} ${clock2.unitText}`
  ))
    return "its name says so";
  const known = seconds.filter((_, row) => clock2.stamps.formOf[row] >= 0);
  if (isNewestFirst(known)) known.reverse();
  const isFromZero2 = known[0] <= (first.clockFields === 2 ? 60 : 5);
  return isFromZero2 && !falls(known) ? "it starts at zero and never falls" : null;
}
function falls(seconds) {
  return seconds.some((each, i) => each < (seconds[i - 1] ?? each) - DAY_SECONDS2 / 2);
}
function kindSays(timeKind) {
  return { option: TIME_KIND_OPTION, says: { timeKind } };
}
function dialOf(told) {
  return told === "clock-24h" ? 24 : told === "clock-12h" ? 12 : null;
}
function dayTimes(clock2, told) {
  const ofDay = clock2.stamps.seconds.slice();
  const hasMarker = hasHalves(clock2.stamps);
  const isBackwards = isNewestFirst(ofDay);
  if (isBackwards) ofDay.reverse();
  const running = runningClock(ofDay, hasMarker ? 24 : dialOf(told));
  if (isBackwards) running.seconds.reverse();
  const midnights = running.midnights === 0 ? "" : `; midnight was passed ${times(running.midnights)}`;
  const because = running.isHalfDial ? HALF_DIAL : `the hours stay below 24${midnights}`;
  return {
    seconds: running.seconds,
    clock: "time of day",
    doubt: null,
    decisions: [
      decision("time format", `time of day: ${formatOf(clock2, false)}`, {
        confidence: told !== void 0 ? "told" : running.isHalfDial ? "guessed" : "likely",
        because,
        ...running.isHalfDial && told === void 0 && { runnerUp: otherHalf(ofDay) },
        ...kindSays(running.isHalfDial ? "clock-12h" : "clock-24h")
      })
    ]
  };
}
function otherHalf(ofDay) {
  const first = ofDay.find((each) => !Number.isNaN(each)) ?? 0;
  return `the other half of the day, from ${wallTime((first + DAY_SECONDS2 / 2) % DAY_SECONDS2).slice(11, 16)} on`;
}
function times(count2) {
  return count2 === 1 ? "once" : `${count2} times`;
}
var TWO_FIELDS = [
  { name: "hours and minutes", seconds: 1 },
  { name: "minutes and seconds", seconds: 1 / 60 }
];
function spanTimes(clock2, because, query) {
  const { seconds } = clock2.stamps;
  const isTwo = firstStamp(clock2.stamps)?.clockFields === 2;
  const how = because === TOLD ? "told" : "likely";
  if (!isTwo)
    return ok(spans(seconds, { name: "hours, minutes and seconds", seconds: 1 }, because, how));
  const label = `${clock2.name} ${clock2.unitText}`;
  const [asHours, asMinutes] = TWO_FIELDS;
  const told = query.options.timeUnit;
  if (told !== void 0)
    return ok(spans(seconds, told === "s" ? asMinutes : asHours, TOLD, "told"));
  if (clock2.stamps.forms.some((form) => form.isSpan))
    return ok(spans(seconds, asHours, "a count of days stands before the hours"));
  if (/mm?:ss/i.test(label) && !/hh?:mm/i.test(label))
    return ok(spans(seconds, asMinutes, "its name says so"));
  if (/hh?:mm/i.test(label)) return ok(spans(seconds, asHours, "its name says so"));
  const plausible = plausibleScales(seconds, query.tempsC, TWO_FIELDS);
  const [only] = plausible;
  if (plausible.length === 1 && only !== void 0)
    return ok(spans(seconds, only, "only so are its length and heating rate likely"));
  return failed({
    code: "log/time-unit-unknown",
    what: `the elapsed times in "${clock2.name}" have two fields, and could be hours and minutes or minutes and seconds`,
    where: query.options.name,
    expected: "hh:mm or mm:ss, said in the header or plain from the heating rate",
    fix: "say what the last field is: --time-unit min or --time-unit s"
  });
}
function spans(seconds, scale, because, confidence = "likely") {
  return {
    seconds: seconds.map((each) => each * scale.seconds),
    clock: "none",
    doubt: null,
    decisions: [
      decision("time format", `elapsed: ${scale.name}`, {
        confidence,
        because,
        option: `--time-unit s or min; ${TIME_KIND_OPTION}`,
        says: {
          timeKind: "elapsed",
          ...TWO_FIELDS.includes(scale) && { timeUnit: scale.seconds === 1 ? "min" : "s" }
        }
      })
    ]
  };
}

// src/core/log/time/rowTimes.ts
function rowTimes(choice, query) {
  const place = asTold2(choice.place, query.options);
  if (!place.ok) return place;
  const result = placeTimes(place.value, query);
  if (!result.ok) return result;
  const { decisions } = result.value;
  return ok({ ...result.value, decisions: [timeColumnDecision(choice), ...decisions] });
}
function timeColumnDecision(choice) {
  const runnerUp = choice.runnerUp ?? (isByRiseAlone(choice.place) ? "no time at all" : null);
  return decision("time column", placeName(choice.place), {
    confidence: choice.told ? "told" : runnerUp === null ? "certain" : "likely",
    because: choice.because,
    runnerUp: choice.told ? null : runnerUp,
    option: "--time-column NAME",
    ...saysOf(choice.place)
  });
}
function isByRiseAlone(place) {
  if (place.kind !== "number" || !/^column \d+$/.test(place.column.name)) return false;
  return place.form.kind === "elapsed" || place.form.kind === "index";
}
function saysOf(place) {
  if (place.kind === "none") return {};
  if (place.kind === "number") return { says: { timeColumn: place.column.name } };
  const column = place.clock ?? place.date;
  return column === null ? {} : { says: { timeColumn: column.name } };
}
function placeTimes(place, query) {
  if (place.kind === "written") return writtenTimes(place, query);
  if (place.kind === "none") return countedTimes(null, query);
  if (place.form.kind === "index") return countedTimes(place.column, query);
  return numberTimes(place.column, place.form, query);
}
function countedTimes(column, query) {
  const interval = query.options.intervalSeconds ?? query.preamble.intervalSeconds;
  if (interval === null || interval === void 0) return uncounted(column, query);
  const first = column === null ? 0 : column.numbers.find((value2) => !Number.isNaN(value2)) ?? 0;
  const blanks = column === null ? query.blanksBefore() : null;
  const seconds = Float64Array.from(
    { length: query.rowCount },
    (_, i) => column === null ? (i + (blanks?.[i] ?? 0)) * interval : (column.numbers[i] - first) * interval
  );
  const isTold = query.options.intervalSeconds !== void 0;
  return ok({
    seconds,
    clock: "none",
    doubt: blanks === null ? null : blankText(blanks),
    decisions: [
      decision("time format", `sample number \xD7 ${interval} s`, {
        confidence: isTold ? "told" : "certain",
        because: isTold ? "the interval was given as an option" : "the interval stands above the table",
        option: `--interval SECONDS; ${TIME_KIND_OPTION}`,
        says: { timeKind: "count", intervalSeconds: interval }
      })
    ]
  });
}
function blankText(blanks) {
  const count2 = blanks[blanks.length - 1];
  const lines = count2 === 1 ? "1 blank line stands" : `${count2} blank lines stand`;
  return `${lines} among the readings and ${count2 === 1 ? "was" : "were"} counted as readings that are lacking; if they are mere spacing, take them out of the file.`;
}
function uncounted(column, query) {
  const { timeUnit } = query.options;
  const isNamed = column !== null && !/^column \d+$/.test(column.name);
  if (column !== null && timeUnit !== void 0 && query.options.timeKind !== "count")
    return numberTimes(column, { kind: "elapsed" }, query);
  const problem = column === null ? {
    code: "log/no-time",
    what: `has no column of times; its columns are ${query.columnText}`,
    where: query.options.name,
    expected: "a column of dates, clock times or elapsed time, or a known sampling interval",
    fix: "name it with --time-column NAME, or say the step between rows with --interval SECONDS"
  } : {
    code: "log/no-interval",
    what: `counts its samples in "${column.name}" but does not say how long a step is`,
    where: query.options.name,
    expected: "a sampling interval above the table, or a column of times",
    fix: isNamed ? "say the step between samples with --interval SECONDS" : "say the step between samples with --interval SECONDS, or --time-unit s, min or h when the count is the time itself"
  };
  return failed(problem);
}
function timeOfDay(seconds) {
  return (seconds % DAY_SECONDS2 + DAY_SECONDS2) % DAY_SECONDS2;
}

// src/core/log/time/summerTime.ts
var HOUR = 3600;
function mendSummerTime(moments, query) {
  const { rows, times: times2 } = moments;
  const step = medianStep(times2);
  if (!(step < HOUR / 2)) return { moments, faults: [] };
  const faults = [];
  const shifts = [];
  let shift = 0;
  for (let i = 1; i < times2.length; i++) {
    const here = times2[i];
    const before = times2[i - 1];
    const isNext = Math.abs(rows[i] - rows[i - 1]) === 1;
    if (isNext && here >= before && here - before < HOUR - 1) continue;
    if (isBackStep(moments, i, { step, isNight: isChangeHour(before, query.clock) })) {
      shift += HOUR;
      shifts.push({ from: i, seconds: shift });
      faults.push(fault(here + shift, backText(before, query)));
    } else if (isAhead(moments, i, step) && isNight(before)) {
      const passed = hourPassed(moments, i, { step, tempsC: query.tempsC });
      if (passed !== "no" && !isChangeHour(before, query.clock)) continue;
      if (passed === "no") shift -= HOUR;
      shifts.push({ from: i, seconds: shift });
      if (passed !== "yes") faults.push(fault(here + shift, AHEAD[passed]));
    }
  }
  return { moments: { rows, times: shifted(times2, shifts) }, faults };
}
function isBackStep({ rows, times: times2 }, at, form) {
  const passed = times2[at] - times2[at - 1];
  if (passed < 0 && isBackByAnHour(times2, at, form)) return true;
  const apart = Math.abs(rows[at] - rows[at - 1]);
  const off = apart * form.step - HOUR - passed;
  return form.isNight && apart > 1 && Math.abs(off) <= 0.5 * form.step + 1;
}
function isNight(time) {
  return timeOfDay(time) < 4 * HOUR;
}
function shifted(times2, shifts) {
  if (shifts.length === 0) return times2;
  const moved = times2.slice();
  shifts.forEach(({ from, seconds }, s) => {
    const to = shifts[s + 1]?.from ?? times2.length;
    for (let i = from; i < to; i++) moved[i] = times2[i] + seconds;
  });
  return moved;
}
var ROWS_LOST = 4;
function lost(step) {
  return Math.max(0, Math.min(ROWS_LOST * step, HOUR - 3 * step));
}
function isAhead({ rows, times: times2 }, at, step) {
  const passed = times2[at] - times2[at - 1];
  if (isAheadByAnHour(passed, step)) return true;
  const apart = Math.abs(rows[at] - rows[at - 1]);
  return apart > 1 && Math.abs(passed - HOUR - apart * step) <= 0.5 * step + 1;
}
function isAheadByAnHour(jump, step) {
  const off = jump - HOUR - step;
  return off >= -0.5 * step - 1 && off <= lost(step) + 0.5 * step + 1;
}
var AHEAD = {
  no: "The clock went ahead by one hour for summer time; the temperature shows that no hour passed, so it was taken out.",
  unknown: "The clock goes ahead by one hour in a night when summer time may begin; the temperature does not tell whether an hour passed, so a gap is left."
};
function fault(at, what) {
  return { kind: "clock", channel: null, fromSeconds: at, toSeconds: at, count: 1, what };
}
function backText(before, query) {
  return isChangeHour(before, query.clock) ? "The clock went back by one hour at the end of summer time; an hour was added after it." : "The clock was put back by one hour; an hour was added after it.";
}
function isBackByAnHour(times2, at, { step, isNight: isNight2 }) {
  const here = times2[at];
  const off = here - times2[at - 1] + HOUR - step;
  const most = (isNight2 ? lost(step) : 0) + 0.5 * step + 1;
  if (off < -0.5 * step - 1 || off > most) return false;
  const next = times2[at + 1];
  return next === void 0 || next - here < HOUR / 2 + (isNight2 ? lost(step) : 0);
}
var RATE_PLACES = 1800;
var RATE_SECONDS = 1800;
var LEAST_PER_HOUR_K = 40;
var HOUR_SHARE = 0.3;
function hourPassed(moments, at, { step, tempsC }) {
  const before = lineThrough(moments, tempsC, { from: at - 1, by: -1 });
  const after = lineThrough(moments, tempsC, { from: at, by: 1 });
  if (before === null || after === null) return "unknown";
  const perHour = (before.rate + after.rate) / 2 * HOUR;
  const isSteady = Math.abs(after.rate - before.rate) * HOUR < 0.5 * Math.abs(perHour);
  const change = after.tempC - before.tempC;
  const noise = 4 * (before.noiseK + after.noiseK);
  const tolerance = HOUR_SHARE * Math.abs(perHour);
  const rateNoise = 2 * (before.rateNoise + after.rateNoise) * HOUR;
  if (rateNoise > tolerance) return "unknown";
  if (!(Math.abs(perHour) > LEAST_PER_HOUR_K) || !isSteady || noise > tolerance) return "unknown";
  if (Math.abs(change - perHour * step / HOUR) < tolerance) return "no";
  return Math.abs(change - perHour * (1 + step / HOUR)) < tolerance ? "yes" : "unknown";
}
function lineThrough({ rows, times: times2 }, tempsC, { from, by }) {
  const origin = times2[from];
  const xs = [];
  const ys = [];
  for (let at = from; at >= 0 && at < times2.length && xs.length < RATE_PLACES; at += by) {
    const x = times2[at] - origin;
    const tempC = tempsC[rows[at]];
    if (Math.abs(x) > RATE_SECONDS && xs.length > 4) break;
    if (tempC > -60 && tempC < 1450) {
      xs.push(x);
      ys.push(tempC);
    }
  }
  return xs.length < 4 ? null : fitted(xs, ys);
}
function fitted(xs, ys) {
  const count2 = xs.length;
  const meanX = xs.reduce((sum, x) => sum + x, 0) / count2;
  const meanY = ys.reduce((sum, y) => sum + y, 0) / count2;
  const xx = xs.reduce((sum, x) => sum + (x - meanX) ** 2, 0);
  const xy = xs.reduce((sum, x, i) => sum + (x - meanX) * (ys[i] - meanY), 0);
  if (xx === 0) return null;
  const rate = xy / xx;
  const tempC = meanY - rate * meanX;
  const offs = xs.reduce((sum, x, i) => sum + (ys[i] - tempC - rate * x) ** 2, 0);
  const variance = offs / (count2 - 2);
  return {
    tempC,
    rate,
    noiseK: Math.sqrt(variance * (1 / count2 + meanX ** 2 / xx)),
    rateNoise: Math.sqrt(variance / xx)
  };
}

// src/core/log/time/clockDefects.ts
var FEW3 = 0.01;
var STRAY = 0.05;
var LONG_JUMP_DAYS = 14;
function orderRows(moments, query) {
  const mended = [];
  const faults = [];
  let ordered2 = moments;
  if (isNewestFirst(moments.times)) {
    ordered2 = { rows: moments.rows.toReversed(), times: moments.times.toReversed() };
    mended.push("rows ran from the newest to the oldest and were turned round");
  }
  const wild = wildPlaces(ordered2);
  const rejected = wild.map((place) => ({
    row: ordered2.rows[place],
    reason: "its time jumps far ahead and back"
  }));
  ordered2 = withoutPlaces(ordered2, wild);
  if (query.clock !== "none") {
    const summer = mendSummerTime(ordered2, query);
    ordered2 = summer.moments;
    faults.push(...summer.faults);
  }
  const blocks = blocksOf(ordered2);
  const largest = blocks.reduce((a, b) => b.rows.length > a.rows.length ? b : a);
  if (blocks.length > 1) {
    if (largest.rows.length < (1 - STRAY) * ordered2.rows.length) return reset(blocks, query);
    const stray = blocks.filter((block) => block !== largest).flatMap(({ rows }) => [...rows]);
    faults.push(strayFault(largest, stray.length));
    const reason = "the clock was set between it and the rest";
    for (const row of stray) rejected.push({ row, reason });
  }
  const sorted = inOrder2(largest);
  if (sorted.moved > 0) {
    mended.push(`${sorted.moved} ${sorted.moved === 1 ? "row" : "rows"} out of order put in place`);
    faults.push({
      ...clockFault(largest),
      count: sorted.moved,
      what: sorted.moved === 1 ? "1 row stood out of order and was put in place." : `${sorted.moved} rows stood out of order and were put in place.`
    });
  }
  const spread2 = spreadDuplicates(sorted.moments, query.isSameRow);
  return ok({
    rows: spread2.moments.rows,
    seconds: spread2.moments.times,
    rejected: [...rejected, ...spread2.rejected],
    mended: [...mended, ...spread2.mended],
    faults
  });
}
function clockFault({ times: times2 }) {
  const first = times2[0] ?? 0;
  return {
    kind: "clock",
    channel: null,
    fromSeconds: first,
    toSeconds: times2[times2.length - 1] ?? first,
    count: 1
  };
}
function strayFault(largest, count2) {
  return {
    ...clockFault(largest),
    count: count2,
    what: `The clock was set during the log; ${count2} ${count2 === 1 ? "row" : "rows"} before or after the main part are left out.`
  };
}
function wildPlaces({ times: times2 }) {
  const far = 10 * medianStep(times2);
  const wild = [];
  for (let i = 1; i + 1 < times2.length; i++) {
    const before = times2[i - 1];
    const here = times2[i];
    const after = times2[i + 1];
    if (after >= before && here - before > far && here > after && after - before < far)
      wild.push(i);
  }
  return wild;
}
function withoutPlaces(moments, places) {
  if (places.length === 0) return moments;
  const left = new Set(places);
  return momentsAt(
    moments,
    moments.rows.map((_, place) => place).filter((place) => !left.has(place))
  );
}
function blocksOf(moments) {
  const { times: times2 } = moments;
  const few = Math.max(3, Math.floor(FEW3 * times2.length));
  const step = medianStep(times2);
  const longJump = step < 3600 ? LONG_JUMP_DAYS * DAY_SECONDS2 : Number.POSITIVE_INFINITY;
  const catchUp = nextAtLeast(times2);
  const blocks = [];
  let from = 0;
  let latest = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < times2.length; i++) {
    const time = times2[i];
    const isBack = time < latest && !catchUp(i, latest, few);
    const isAhead2 = time - latest > longJump && i > from;
    if (isBack || isAhead2) {
      blocks.push(momentsBetween(moments, from, i));
      from = i;
      latest = Number.NEGATIVE_INFINITY;
    }
    if (time > latest) latest = time;
  }
  blocks.push(momentsBetween(moments, from, times2.length));
  return blocks;
}
function nextAtLeast(times2) {
  let known = { latest: Number.NaN, from: 0, at: 0 };
  return (from, latest, few) => {
    const isKnown = known.latest === latest && from >= known.from && from < known.at;
    let at = isKnown ? known.at : from + 1;
    while (at < times2.length && at <= from + few && times2[at] < latest) at++;
    known = { latest, from: isKnown ? known.from : from, at };
    return at < times2.length && at <= from + few;
  };
}
function inOrder2(block) {
  const { times: times2 } = block;
  let moved = 0;
  let latest = Number.NEGATIVE_INFINITY;
  for (const time of times2) {
    if (time < latest) moved++;
    else latest = time;
  }
  if (moved === 0) return { moments: block, moved };
  const places = Int32Array.from(times2, (_, place) => place);
  places.sort((a, b) => times2[a] - times2[b] || a - b);
  return { moments: momentsAt(block, places), moved };
}
function reset(blocks, query) {
  const before = blocks[0]?.times.at(-1);
  const after = blocks[1]?.times[0];
  const line = query.lineOf(blocks[1]?.rows[0]);
  return failed({
    code: "log/clock-reset",
    what: `the clock jumps from ${momentText(before, query)} to ${momentText(after, query)}; the log falls into ${blocks.length} parts`,
    where: `${query.name}: line ${line}`,
    expected: "one firing whose clock runs on",
    fix: `cut the file before line ${line}, and review each part by itself`
  });
}
function momentText(time, query) {
  if (query.clock === "date") return wallTime(time).replace("T", " ");
  return query.clock === "none" ? `${time} s` : wallTime(time).slice(11);
}

// src/core/log/usableRows.ts
function measuredRows(table, temperatures) {
  const measured = new Uint8Array(table.rowCount);
  for (const column of temperatures) {
    const { numbers } = column;
    for (let row = 0; row < measured.length; row++)
      if (!Number.isNaN(numbers[row])) measured[row] = 1;
  }
  return measured;
}
function onlyMeasured(ordered2, measured) {
  const { rows, seconds, rejected } = ordered2;
  if (rows.every((row) => measured[row] === 1)) return ordered2;
  const isMeasured = (place) => measured[rows[place]] === 1;
  const reason = "no temperature in it";
  return {
    ...ordered2,
    rows: rows.filter((_, place) => isMeasured(place)),
    seconds: seconds.filter((_, place) => isMeasured(place)),
    rejected: [
      ...rejected,
      ...Array.from(rows).filter((row) => measured[row] === 0).map((row) => ({ row, reason }))
    ]
  };
}
var MOST_SECONDS = 1e11;
function usableRows(times2, measured, reject) {
  const rowCount = measured.length;
  const usable = { rows: new Int32Array(rowCount), times: new Float64Array(rowCount) };
  const keepsPlaces = isCoarse(times2);
  let count2 = 0;
  for (let row = 0; row < rowCount; row++) {
    const time = times2[row];
    const isTime = Math.abs(time) <= MOST_SECONDS;
    if (isTime && (measured[row] === 1 || keepsPlaces)) {
      usable.rows[count2] = row;
      usable.times[count2++] = time;
    } else reject(row, isTime ? "no temperature in it" : "no readable time");
  }
  if (count2 === rowCount) return { rows: usable.rows, times: times2 };
  return { rows: usable.rows.subarray(0, count2), times: usable.times.subarray(0, count2) };
}

// src/core/log/assemble.ts
function assemble(decided3) {
  const { log, times: times2, options } = decided3;
  const scale = decided3.unit.of(decided3.primary);
  const temperatures = decided3.roles.columns.filter(({ role }) => role === "temperature");
  const { lineOf, textOf } = log.table;
  const place = (row) => () => ({ line: lineOf(row), text: textOf(row) });
  const late = rejectionList();
  const measured = measuredRows(
    log.table,
    temperatures.map(({ column }) => column)
  );
  const moments = usableRows(
    times2.seconds,
    measured,
    (row, reason) => late.add(row === log.table.cutRow ? "the file is cut off in it" : reason, place(row))
  );
  const inOrder3 = orderRows(moments, {
    name: options.name,
    clock: times2.clock,
    tempsC: celsiusColumn(decided3.primary.numbers, scale),
    lineOf,
    isSameRow: (a, b) => textOf(a) === textOf(b) && hasSameCells(log.table.columns, a, b)
  });
  if (!inOrder3.ok) return inOrder3;
  const ordered2 = onlyMeasured(inOrder3.value, measured);
  if (ordered2.rows.length < 2)
    return failed({
      code: "log/no-readings",
      what: `only ${ordered2.rows.length} of ${log.table.rowCount} rows has both a time and a temperature`,
      where: options.name,
      expected: "at least two rows with a time and a temperature",
      fix: "look at the time column, and name it with --time-column when another was taken"
    });
  for (const { row, reason } of ordered2.rejected) late.add(reason, place(row));
  return ok(reading(decided3, ordered2, mergedRejections([log.table.rejected, late])));
}
function hasSameCells(columns, a, b) {
  return columns.every(
    ({ numbers, stamps, words }) => Object.is(numbers[a], numbers[b]) && Object.is(stamps.seconds[a], stamps.seconds[b]) && stamps.formOf[a] === stamps.formOf[b] && words.wordOf[a] === words.wordOf[b]
  );
}
function rowsOf({ table }, accepted, rejected) {
  const unlisted = [...rejected.unlisted].map(([reason, count2]) => ({ reason, count: count2 }));
  return {
    total: table.rowCount + table.rejectedCount,
    accepted,
    rejected: rejected.listed,
    ...unlisted.length > 0 && { unlisted }
  };
}
function reading(decided3, ordered2, rejected) {
  const { log, times: times2, unit, options } = decided3;
  const first = ordered2.seconds[0];
  const seconds = ordered2.seconds.map((time) => time - first);
  const channels = channelsOf(decided3, ordered2.rows, seconds);
  const step = medianStep(seconds);
  const gaps = findGaps(seconds, step);
  const clockFaults = ordered2.faults.map((fault2) => ({
    ...fault2,
    fromSeconds: fault2.fromSeconds - first,
    toSeconds: fault2.toSeconds - first
  }));
  return {
    name: options.name,
    decisions: withMending(decided3.decisions, ordered2.mended),
    rows: rowsOf(log, ordered2.rows.length, rejected),
    unit: unit.unit,
    ...options.thermocouple && { thermocouple: options.thermocouple },
    channels: channels.map(({ channel }) => channel),
    start: times2.clock === "date" ? wallTime(first) : null,
    startOfDaySeconds: times2.clock === "none" ? null : timeOfDay(first),
    intervalSeconds: step,
    gaps,
    faults: [
      ...clockFaults,
      ...doubtFaults(times2, seconds),
      ...gaps.map(gapFault),
      ...coarseFaults(seconds, step),
      ...channels.flatMap(({ faults }) => faults),
      ...stuckFaults(curvesOf(channels, "temperature"), curvesOf(channels, "set-point"))
    ]
  };
}
function numbersIn(column, rows) {
  let readings = 0;
  for (const row of rows) if (Number.isFinite(column.numbers[row])) readings++;
  return { readings, dropped: rows.length - readings };
}
var COARSE_STEP_SECONDS = 300;
function coarseFaults(seconds, step) {
  if (step <= COARSE_STEP_SECONDS) return [];
  return [
    {
      kind: "coarse",
      channel: null,
      fromSeconds: 0,
      toSeconds: seconds[seconds.length - 1],
      count: seconds.length,
      what: `There is one reading in ${Number((step / 60).toFixed(1))} min, so the fastest rates are rough and short turns are not seen.`
    }
  ];
}
function channelsOf({ roles, unit }, rows, seconds) {
  const calmed = calmedColumns({ roles, unit }, rows, seconds);
  return roles.columns.map(({ column, role }) => {
    const isTemperature = role === "temperature" || role === "set-point" || role === "cold-junction";
    if (!isTemperature || column.kind !== "number") {
      const fraction = role === "output" ? { outputFraction: outputFraction(column, rows, seconds) } : {};
      const channel = { name: column.name, role, curve: null, ...numbersIn(column, rows) };
      return { channel: { ...channel, ...fraction }, faults: [] };
    }
    const calm = calmed.get(column) ?? {
      tempsC: celsiusInRows(column.numbers, rows, unit.of(column)),
      fault: null
    };
    const clean = cleanChannel(column.name, seconds, calm.tempsC);
    const { curve, readings, dropped } = clean;
    const wild = calm.fault === null ? [] : [calm.fault];
    const faults = role === "temperature" ? [...wild, ...clean.faults, ...wordFaults(column, rows, seconds)] : [];
    return { channel: { name: column.name, role, curve, readings, dropped }, faults };
  });
}
function calmedColumns({ roles, unit }, rows, seconds) {
  const measured = roles.columns.filter(({ column, role }) => role === "temperature" && column.kind === "number").map(({ column }) => column);
  const calmed = withoutWild(
    measured.map((column) => ({
      name: column.name,
      tempsC: celsiusInRows(column.numbers, rows, unit.of(column))
    })),
    seconds
  );
  return new Map(measured.map((column, c) => [column, calmed[c]]));
}
function wordFaults(column, rows, seconds) {
  if (column.missingWords.size === 0) return [];
  const { first, last } = column.missingRows;
  const among = seconds.filter(
    (_, i) => rows[i] >= first && rows[i] <= last
  );
  const spanned = among.length > 0 ? among : seconds;
  const count2 = [...column.missingWords.values()].reduce((sum, each) => sum + each, 0);
  const words = [...column.missingWords.keys()].slice(0, 4).join(", ");
  return [
    {
      kind: "open",
      channel: column.name,
      fromSeconds: spanned[0],
      toSeconds: spanned[spanned.length - 1],
      count: count2,
      what: `${column.name} has ${count2} ${count2 === 1 ? "cell" : "cells"} without a number (${words}).`
    }
  ];
}
function curvesOf(channels, role) {
  return channels.flatMap(
    ({ channel }) => channel.role === role && channel.curve !== null ? [{ name: channel.name, curve: channel.curve }] : []
  );
}
function gapFault({
  fromSeconds,
  toSeconds
}) {
  const minutes = Math.round((toSeconds - fromSeconds) / 60);
  return {
    kind: "gap",
    channel: null,
    fromSeconds,
    toSeconds,
    count: 1,
    what: `Nothing was measured for ${minutes} min; nothing is assumed about it.`
  };
}
function doubtFaults(times2, seconds) {
  if (times2.doubt === null) return [];
  return [
    {
      kind: "clock",
      channel: null,
      fromSeconds: 0,
      toSeconds: seconds[seconds.length - 1],
      count: 1,
      what: times2.doubt
    }
  ];
}
function withMending(decisions, mended) {
  if (mended.length === 0) return decisions;
  return decisions.map(
    (each) => each.about === "time format" ? { ...each, because: [each.because, ...mended].join("; ") } : each
  );
}

// src/core/log/time/blankLines.ts
var MOST_BLANK = 0.2;
function blankLinesBefore({
  columns,
  rowCount,
  lineOf,
  rejected
}) {
  const measured = columns.filter(({ kind, numbers }) => kind === "number" && !isEmpty(numbers));
  if (measured.length !== 1 || rowCount < 2 || rejected.unlisted.size > 0) return null;
  const others = rejected.listed.filter(({ text }) => !/^\s*[,;\t|]/.test(text));
  const used = new Set(others.map(({ line }) => line));
  const before = new Int32Array(rowCount);
  for (let row = 1; row < rowCount; row++) {
    let blank = 0;
    for (let line = lineOf(row - 1) + 1; line < lineOf(row); line++) if (!used.has(line)) blank++;
    before[row] = before[row - 1] + blank;
  }
  const all = before[rowCount - 1];
  return all > 0 && all <= MOST_BLANK * rowCount ? before : null;
}
function isEmpty(numbers) {
  return numbers.every(Number.isNaN);
}

// src/core/log/readColumns.ts
function readColumns(log, { choice, roles }, options) {
  const temperatures = roles.columns.filter(({ role }) => role === "temperature").map(({ column }) => column);
  if (!temperatures.some((column) => column.numbers.some((value2) => !Number.isNaN(value2))))
    return noReadings(temperatures, options);
  const unit = decideUnit(temperatures, log.preamble.unit, options);
  const assumed = unit.ok ? unit.value.of : () => "C";
  const widest2 = widestColumn(temperatures, roles.doubtful);
  const scale = assumed(widest2);
  const times2 = rowTimes(choice, {
    options,
    preamble: log.preamble,
    tempsC: celsiusColumn(widest2.numbers, scale),
    rowCount: log.table.rowCount,
    blanksBefore: () => blankLinesBefore(log.table),
    columnText: columnList(log.table.columns)
  });
  if (!unit.ok || !times2.ok)
    return failed(...unit.ok ? [] : unit.problems, ...times2.ok ? [] : times2.problems);
  return assemble({
    log,
    roles,
    unit: unit.value,
    times: times2.value,
    primary: widest2,
    decisions: allDecisions(log, roles, { unit: unit.value, times: times2.value }),
    options
  });
}
function allDecisions(log, roles, { unit, times: times2 }) {
  const isSaid = log.decisions.some(({ about }) => about === "unit");
  return [...log.decisions, ...times2.decisions, roles.decision, ...isSaid ? [] : [unit.decision]];
}
function noReadings(temperatures, options) {
  const names = temperatures.map((column) => `"${column.name}"`).join(", ");
  const words = [...new Set(temperatures.flatMap((column) => [...column.missingWords.keys()]))];
  const found = words.length === 0 ? "only blanks" : `only ${words.slice(0, 4).join(", ")}`;
  return failed({
    code: "log/no-readings",
    what: `the temperature columns (${names}) hold ${found}`,
    where: options.name,
    expected: "numbers in at least one temperature column",
    fix: "check the thermocouple and its plug, or name another column with --column"
  });
}
function widestColumn(temperatures, doubtful) {
  const all = temperatures.map(({ numbers }) => numbers);
  const isCalm = ({ numbers }) => wildStretch(
    numbers,
    all.filter((other) => other !== numbers)
  ) === null;
  const calm = temperatures.filter(isCalm);
  const sure = calm.filter(({ name }) => !doubtful.includes(name));
  const [asked] = [sure, calm, temperatures].filter((list) => list.length > 0);
  return (asked ?? temperatures).reduce((a, b) => movement(b) > movement(a) ? b : a);
}
function movement({ numbers }) {
  const { greatest, least, count: count2 } = shapeOf(numbers);
  return greatest > 3300 || count2 < 2 ? -1 : greatest - least;
}

// src/core/log/time/timedTable.ts
function timedTable(table, place) {
  const isTimed = timedTest(place);
  const untimed = [];
  for (let row = 0; row < table.rowCount; row++) if (!isTimed(row)) untimed.push(row);
  if (untimed.length === 0) return table;
  return { ...table, columns: table.columns.map((column) => withoutRows(column, untimed, place)) };
}
function timedTest(place) {
  if (place.kind === "none") return () => true;
  if (place.kind === "number") return (row) => !Number.isNaN(place.column.numbers[row]);
  const column = place.clock ?? place.date;
  return (row) => column.stamps.formOf[row] >= 0;
}
function withoutRows(column, rows, place) {
  if (column.kind !== "number" || place.kind === "number" && place.column === column)
    return column;
  const numbers = column.numbers.slice();
  for (const row of rows) numbers[row] = Number.NaN;
  return { ...column, numbers };
}

// src/core/log/logReader.ts
function logReader(options, splitQuoted2) {
  const problems = checkOptions(options);
  let steps = { decisions: [], columns: [] };
  const note = (known) => {
    steps = { ...steps, ...known };
  };
  if (problems.length > 0)
    return { push: () => false, end: () => failed(...problems), steps: () => steps };
  const opener = logOpener(
    options,
    splitQuoted2,
    (decisions) => note({ decisions: [...steps.decisions, ...decisions] })
  );
  return {
    push: opener.push,
    end: () => interpreted(opener.end(), options, note),
    steps: () => steps
  };
}
function interpreted(opened, given, note) {
  if (!opened.ok) return opened;
  note({ decisions: opened.value.decisions });
  const inDegrees2 = withoutMillivolts(opened.value, given);
  if (!inDegrees2.ok) return inDegrees2;
  const { log, options } = inDegrees2.value;
  const choice = pickTime(log.table, {
    name: options.name,
    told: options.timeColumn,
    intervalSeconds: log.preamble.intervalSeconds
  });
  if (!choice.ok) return choice;
  const table = timedTable(log.table, choice.value.place);
  const onTime = timeColumnDecision(choice.value);
  note({ decisions: [...log.decisions, onTime] });
  const roles = decideRoles(table, choice.value.place, options);
  if (!roles.ok) return roles;
  const columns = roles.value.columns.map(({ column: { name }, role, because }) => ({
    name,
    role,
    because
  }));
  note({ decisions: [...log.decisions, onTime, roles.value.decision], columns });
  const known = { choice: choice.value, roles: roles.value };
  const reading2 = readColumns({ ...log, table }, known, options);
  if (reading2.ok) note({ decisions: reading2.value.decisions });
  return reading2;
}

// node_modules/csv-parse/lib/api/CsvError.js
var CsvError = class _CsvError extends Error {
  constructor(code, message, options, ...contexts) {
    if (Array.isArray(message)) message = message.join(" ").trim();
    super(message);
    if (Error.captureStackTrace !== void 0) {
      Error.captureStackTrace(this, _CsvError);
    }
    this.code = code;
    for (const context of contexts) {
      for (const key in context) {
        const value2 = context[key];
        this[key] = Buffer.isBuffer(value2) ? value2.toString(options.encoding) : value2 == null ? value2 : JSON.parse(JSON.stringify(value2));
      }
    }
  }
};

// node_modules/csv-parse/lib/utils/is_object.js
var is_object = function(obj) {
  return typeof obj === "object" && obj !== null && !Array.isArray(obj);
};

// node_modules/csv-parse/lib/api/normalize_columns_array.js
var normalize_columns_array = function(columns) {
  const normalizedColumns = [];
  for (let i = 0, l = columns.length; i < l; i++) {
    const column = columns[i];
    if (column === void 0 || column === null || column === false) {
      normalizedColumns[i] = { disabled: true };
    } else if (typeof column === "string" || typeof column === "number") {
      normalizedColumns[i] = { name: `${column}` };
    } else if (is_object(column)) {
      if (typeof column.name !== "string") {
        throw new CsvError("CSV_OPTION_COLUMNS_MISSING_NAME", [
          "Option columns missing name:",
          `property "name" is required at position ${i}`,
          "when column is an object literal"
        ]);
      }
      normalizedColumns[i] = column;
    } else {
      throw new CsvError("CSV_INVALID_COLUMN_DEFINITION", [
        "Invalid column definition:",
        "expect a string or a literal object,",
        `got ${JSON.stringify(column)} at position ${i}`
      ]);
    }
  }
  return normalizedColumns;
};

// node_modules/csv-parse/lib/utils/ResizeableBuffer.js
var ResizeableBuffer = class {
  constructor(size = 100) {
    this.size = size;
    this.length = 0;
    this.buf = Buffer.allocUnsafe(size);
  }
  prepend(val) {
    if (Buffer.isBuffer(val)) {
      const length = this.length + val.length;
      if (length >= this.size) {
        this.resize();
        if (length >= this.size) {
          throw Error("INVALID_BUFFER_STATE");
        }
      }
      const buf = this.buf;
      this.buf = Buffer.allocUnsafe(this.size);
      val.copy(this.buf, 0);
      buf.copy(this.buf, val.length);
      this.length += val.length;
    } else {
      const length = this.length++;
      if (length === this.size) {
        this.resize();
      }
      const buf = this.clone();
      this.buf[0] = val;
      buf.copy(this.buf, 1, 0, length);
    }
  }
  append(val) {
    const length = this.length++;
    if (length === this.size) {
      this.resize();
    }
    this.buf[length] = val;
  }
  clone() {
    return Buffer.from(this.buf.slice(0, this.length));
  }
  resize() {
    const length = this.length;
    this.size = this.size * 2;
    const buf = Buffer.allocUnsafe(this.size);
    this.buf.copy(buf, 0, 0, length);
    this.buf = buf;
  }
  toString(encoding) {
    if (encoding) {
      return this.buf.toString(encoding, 0, this.length);
    } else {
      return Uint8Array.prototype.slice.call(this.buf.slice(0, this.length));
    }
  }
  toJSON() {
    return this.toString("utf8");
  }
  reset() {
    this.length = 0;
  }
};
var ResizeableBuffer_default = ResizeableBuffer;

// node_modules/csv-parse/lib/api/init_state.js
var init_state = function(options) {
  const timchars = [
    // Basic Latin
    32,
    // [Space](https://www.fileformat.info/info/unicode/char/0020/index.htm)
    9,
    // [CHARACTER TABULATION (HT)](https://www.fileformat.info/info/unicode/char/0009/index.htm)
    10,
    // [LINE FEED (LF)](https://www.fileformat.info/info/unicode/char/000a/index.htm)
    13,
    // [CARRIAGE RETURN (CR)](https://www.fileformat.info/info/unicode/char/000d/index.htm)
    12,
    // [FORM FEED (FF)](https://www.fileformat.info/info/unicode/char/000c/index.htm)
    11,
    // [LINE TABULATION (VT)](https://www.fileformat.info/info/unicode/char/000b/index.htm)
    // Latin-1 Supplement
    160,
    // [NO-BREAK SPACE (NBSP)](https://www.fileformat.info/info/unicode/char/00a0/index.htm)
    // Ogham
    5760,
    // [OGHAM SPACE MARK](https://www.fileformat.info/info/unicode/char/1680/index.htm)
    // General Punctuation
    8192,
    // [EN QUAD](https://www.fileformat.info/info/unicode/char/2000/index.htm)
    8193,
    // [EM QUAD](https://www.fileformat.info/info/unicode/char/2001/index.htm)
    8194,
    // [EN SPACE](https://www.fileformat.info/info/unicode/char/2002/index.htm)
    8195,
    // [EM SPACE](https://www.fileformat.info/info/unicode/char/2003/index.htm)
    8196,
    // [THREE-PER-EM SPACE](https://www.fileformat.info/info/unicode/char/2004/index.htm)
    8197,
    // [FOUR-PER-EM SPACE](https://www.fileformat.info/info/unicode/char/2005/index.htm)
    8198,
    // [SIX-PER-EM SPACE](https://www.fileformat.info/info/unicode/char/2006/index.htm)
    8199,
    // [FIGURE SPACE](https://www.fileformat.info/info/unicode/char/2007/index.htm)
    8200,
    // [PUNCTUATION SPACE](https://www.fileformat.info/info/unicode/char/2008/index.htm)
    8201,
    // [THIN SPACE](https://www.fileformat.info/info/unicode/char/2009/index.htm)
    8202,
    // [HAIR SPACE](https://www.fileformat.info/info/unicode/char/200a/index.htm)
    8232,
    // [LINE SEPARATOR](https://www.fileformat.info/info/unicode/char/2028/index.htm)
    8233,
    // [PARAGRAPH SEPARATOR](https://www.fileformat.info/info/unicode/char/2029/index.htm)
    8239,
    // [NARROW NO-BREAK SPACE (NNBSP)](https://www.fileformat.info/info/unicode/char/202f/index.htm)
    8287,
    // [MEDIUM MATHEMATICAL SPACE (MMSP)](https://www.fileformat.info/info/unicode/char/205f/index.htm)
    12288,
    // [IDEOGRAPHIC SPACE](https://www.fileformat.info/info/unicode/char/3000/index.htm)
    65279
    // [ZERO WIDTH NO-BREAK SPACE (BOM)](https://www.fileformat.info/info/unicode/char/feff/index.htm)
  ].reduce((acc, codepoint) => {
    const encoded = Buffer.from(
      String.fromCharCode(codepoint),
      options.encoding
    );
    if (codepoint !== 63 && encoded.length === 1 && encoded[0] === 63) {
      return acc;
    }
    acc.push(encoded);
    return acc;
  }, []);
  const timcharFirstBytes = new Uint8Array(256);
  for (const t of timchars) timcharFirstBytes[t[0]] = 1;
  return {
    bomSkipped: false,
    bufBytesStart: 0,
    castField: options.cast_function,
    commenting: false,
    delimiterBufPrevious: void 0,
    delimiterDiscovered: false,
    // Current error encountered by a record
    error: void 0,
    enabled: options.from_line === 1,
    escaping: false,
    escapeIsQuote: Buffer.isBuffer(options.escape) && Buffer.isBuffer(options.quote) && Buffer.compare(options.escape, options.quote) === 0,
    // columns can be `false`, `true`, `Array`
    expectedRecordLength: Array.isArray(options.columns) ? options.columns.length : void 0,
    field: new ResizeableBuffer_default(20),
    firstLineToHeaders: options.cast_first_line_to_header,
    needMoreDataSize: Math.max(
      // Skip if the remaining buffer smaller than comment
      options.comment !== null ? options.comment.length : 0,
      ...options.delimiter ? options.delimiter.map((delimiter) => delimiter.length) : [],
      // Auto discovery of delimiter is limited to 1 character
      options.delimiter_auto ? 1 : 0,
      // Skip if the remaining buffer can be escape sequence
      options.quote !== null ? options.quote.length : 0,
      ...timchars.map((t) => t.length)
    ),
    previousBuf: void 0,
    quoting: false,
    stop: false,
    rawBuffer: new ResizeableBuffer_default(100),
    record: [],
    recordHasError: false,
    record_length: 0,
    recordDelimiterMaxLength: options.record_delimiter.length === 0 ? 0 : Math.max(...options.record_delimiter.map((v) => v.length)),
    trimChars: [
      Buffer.from(" ", options.encoding)[0],
      Buffer.from("	", options.encoding)[0]
    ],
    wasQuoting: false,
    wasRowDelimiter: false,
    timchars,
    timcharFirstBytes
  };
};

// node_modules/csv-parse/lib/utils/underscore.js
var underscore = function(str) {
  return str.replace(/([A-Z])/g, function(_, match) {
    return "_" + match.toLowerCase();
  });
};

// node_modules/csv-parse/lib/api/normalize_options.js
var normalize_options = function(opts) {
  const options = {};
  for (const opt in opts) {
    options[underscore(opt)] = opts[opt];
  }
  if (options.encoding === void 0 || options.encoding === true) {
    options.encoding = "utf8";
  } else if (options.encoding === null || options.encoding === false) {
    options.encoding = null;
  } else if (typeof options.encoding !== "string" && options.encoding !== null) {
    throw new CsvError(
      "CSV_INVALID_OPTION_ENCODING",
      [
        "Invalid option encoding:",
        "encoding must be a string or null to return a buffer,",
        `got ${JSON.stringify(options.encoding)}`
      ],
      options
    );
  }
  if (options.bom === void 0 || options.bom === null || options.bom === false) {
    options.bom = false;
  } else if (options.bom !== true) {
    throw new CsvError(
      "CSV_INVALID_OPTION_BOM",
      [
        "Invalid option bom:",
        "bom must be true,",
        `got ${JSON.stringify(options.bom)}`
      ],
      options
    );
  }
  options.cast_function = null;
  if (options.cast === void 0 || options.cast === null || options.cast === false || options.cast === "") {
    options.cast = void 0;
  } else if (typeof options.cast === "function") {
    options.cast_function = options.cast;
    options.cast = true;
  } else if (options.cast !== true) {
    throw new CsvError(
      "CSV_INVALID_OPTION_CAST",
      [
        "Invalid option cast:",
        "cast must be true or a function,",
        `got ${JSON.stringify(options.cast)}`
      ],
      options
    );
  }
  if (options.cast_date === void 0 || options.cast_date === null || options.cast_date === false || options.cast_date === "") {
    options.cast_date = false;
  } else if (options.cast_date === true) {
    options.cast_date = function(value2) {
      const date2 = Date.parse(value2);
      return !isNaN(date2) ? new Date(date2) : value2;
    };
  } else if (typeof options.cast_date !== "function") {
    throw new CsvError(
      "CSV_INVALID_OPTION_CAST_DATE",
      [
        "Invalid option cast_date:",
        "cast_date must be true or a function,",
        `got ${JSON.stringify(options.cast_date)}`
      ],
      options
    );
  }
  options.cast_first_line_to_header = void 0;
  if (options.columns === true) {
    options.cast_first_line_to_header = void 0;
  } else if (typeof options.columns === "function") {
    options.cast_first_line_to_header = options.columns;
    options.columns = true;
  } else if (Array.isArray(options.columns)) {
    options.columns = normalize_columns_array(options.columns);
  } else if (options.columns === void 0 || options.columns === null || options.columns === false) {
    options.columns = false;
  } else {
    throw new CsvError(
      "CSV_INVALID_OPTION_COLUMNS",
      [
        "Invalid option columns:",
        "expect an array, a function or true,",
        `got ${JSON.stringify(options.columns)}`
      ],
      options
    );
  }
  if (options.group_columns_by_name === void 0 || options.group_columns_by_name === null || options.group_columns_by_name === false) {
    options.group_columns_by_name = false;
  } else if (options.group_columns_by_name !== true) {
    throw new CsvError(
      "CSV_INVALID_OPTION_GROUP_COLUMNS_BY_NAME",
      [
        "Invalid option group_columns_by_name:",
        "expect an boolean,",
        `got ${JSON.stringify(options.group_columns_by_name)}`
      ],
      options
    );
  } else if (options.columns === false) {
    throw new CsvError(
      "CSV_INVALID_OPTION_GROUP_COLUMNS_BY_NAME",
      [
        "Invalid option group_columns_by_name:",
        "the `columns` mode must be activated."
      ],
      options
    );
  }
  if (options.comment === void 0 || options.comment === null || options.comment === false || options.comment === "") {
    options.comment = null;
  } else {
    if (typeof options.comment === "string") {
      options.comment = Buffer.from(options.comment, options.encoding);
    }
    if (!Buffer.isBuffer(options.comment)) {
      throw new CsvError(
        "CSV_INVALID_OPTION_COMMENT",
        [
          "Invalid option comment:",
          "comment must be a buffer or a string,",
          `got ${JSON.stringify(options.comment)}`
        ],
        options
      );
    }
  }
  if (options.comment_no_infix === void 0 || options.comment_no_infix === null || options.comment_no_infix === false) {
    options.comment_no_infix = false;
  } else if (options.comment_no_infix !== true) {
    throw new CsvError(
      "CSV_INVALID_OPTION_COMMENT",
      [
        "Invalid option comment_no_infix:",
        "value must be a boolean,",
        `got ${JSON.stringify(options.comment_no_infix)}`
      ],
      options
    );
  }
  if (options.delimiter_auto === void 0 || options.delimiter_auto === null || options.delimiter_auto === false) {
    options.delimiter_auto = false;
  } else if (options.delimiter_auto === true) {
    options.delimiter_auto = {};
  } else if (!is_object(options.delimiter_auto)) {
    throw new CsvError(
      "CSV_INVALID_OPTION_DELIMITER_AUTO",
      [
        "Invalid option delimiter_auto:",
        "delimiter_auto must be a boolean or a configuration object,",
        `got ${JSON.stringify(options.delimiter_auto)}`
      ],
      options
    );
  }
  if (options.delimiter_auto) {
    if (options.delimiter_auto.preferred === void 0)
      options.delimiter_auto.preferred = {
        [",".charCodeAt(0)]: 1.8,
        ["	".charCodeAt(0)]: 1.8,
        [";".charCodeAt(0)]: 1.6,
        [" ".charCodeAt(0)]: 1.6,
        [":".charCodeAt(0)]: 1.5,
        [".".charCodeAt(0)]: 1.4,
        ["/".charCodeAt(0)]: 1.4
      };
    else if (!is_object(options.delimiter_auto.preferred)) {
      throw new CsvError(
        "CSV_INVALID_OPTION_DELIMITER_AUTO",
        [
          "Invalid option delimiter_auto:",
          "preferred must be an object,",
          `got ${JSON.stringify(options.delimiter_auto.preferred)}`
        ],
        options
      );
    }
    if (options.delimiter_auto.score === void 0)
      options.delimiter_auto.score = (info, options2) => {
        return (info.total - info.std) * (options2.preferred[info.char_code] || 1);
      };
    else if (typeof options.delimiter_auto.score !== "function") {
      throw new CsvError(
        "CSV_INVALID_OPTION_DELIMITER_AUTO",
        [
          "Invalid option delimiter_auto:",
          "score must be a function,",
          `got ${JSON.stringify(options.delimiter_auto.score)}`
        ],
        options
      );
    }
    if (options.delimiter_auto.size === void 0)
      options.delimiter_auto.size = 2048;
    else if (typeof options.delimiter_auto.size !== "number") {
      throw new CsvError(
        "CSV_INVALID_OPTION_DELIMITER_AUTO",
        [
          "Invalid option delimiter_auto:",
          "size must be a number,",
          `got ${JSON.stringify(options.delimiter_auto.size)}`
        ],
        options
      );
    }
  }
  const delimiter_json = JSON.stringify(options.delimiter);
  if (options.delimiter_auto !== false) {
    options.delimiter = [];
  }
  if (!Array.isArray(options.delimiter)) {
    if (options.delimiter === void 0 || options.delimiter === null || options.delimiter === false) {
      options.delimiter = Buffer.from(",", options.encoding);
    }
    options.delimiter = [options.delimiter];
  }
  options.delimiter = options.delimiter.map(function(delimiter) {
    if (typeof delimiter === "string") {
      delimiter = Buffer.from(delimiter, options.encoding);
    }
    if (!Buffer.isBuffer(delimiter) || delimiter.length === 0) {
      throw new CsvError(
        "CSV_INVALID_OPTION_DELIMITER",
        [
          "Invalid option delimiter:",
          "delimiter must be a non empty string or buffer or array of string|buffer,",
          `got ${delimiter_json}`
        ],
        options
      );
    }
    return delimiter;
  });
  if (options.escape === void 0 || options.escape === true) {
    options.escape = Buffer.from('"', options.encoding);
  } else if (typeof options.escape === "string") {
    options.escape = Buffer.from(options.escape, options.encoding);
  } else if (options.escape === null || options.escape === false) {
    options.escape = null;
  }
  if (options.escape !== null) {
    if (!Buffer.isBuffer(options.escape)) {
      throw new Error(
        `Invalid Option: escape must be a buffer, a string or a boolean, got ${JSON.stringify(options.escape)}`
      );
    }
  }
  if (options.from === void 0 || options.from === null) {
    options.from = 1;
  } else {
    if (typeof options.from === "string" && /\d+/.test(options.from)) {
      options.from = parseInt(options.from);
    }
    if (Number.isInteger(options.from)) {
      if (options.from < 0) {
        throw new Error(
          `Invalid Option: from must be a positive integer, got ${JSON.stringify(opts.from)}`
        );
      }
    } else {
      throw new Error(
        `Invalid Option: from must be an integer, got ${JSON.stringify(options.from)}`
      );
    }
  }
  if (options.from_line === void 0 || options.from_line === null) {
    options.from_line = 1;
  } else {
    if (typeof options.from_line === "string" && /\d+/.test(options.from_line)) {
      options.from_line = parseInt(options.from_line);
    }
    if (Number.isInteger(options.from_line)) {
      if (options.from_line <= 0) {
        throw new Error(
          `Invalid Option: from_line must be a positive integer greater than 0, got ${JSON.stringify(opts.from_line)}`
        );
      }
    } else {
      throw new Error(
        `Invalid Option: from_line must be an integer, got ${JSON.stringify(opts.from_line)}`
      );
    }
  }
  if (options.ignore_last_delimiters === void 0 || options.ignore_last_delimiters === null) {
    options.ignore_last_delimiters = false;
  } else if (typeof options.ignore_last_delimiters === "number") {
    options.ignore_last_delimiters = Math.floor(options.ignore_last_delimiters);
    if (options.ignore_last_delimiters === 0) {
      options.ignore_last_delimiters = false;
    }
  } else if (typeof options.ignore_last_delimiters !== "boolean") {
    throw new CsvError(
      "CSV_INVALID_OPTION_IGNORE_LAST_DELIMITERS",
      [
        "Invalid option `ignore_last_delimiters`:",
        "the value must be a boolean value or an integer,",
        `got ${JSON.stringify(options.ignore_last_delimiters)}`
      ],
      options
    );
  }
  if (options.ignore_last_delimiters === true && options.columns === false) {
    throw new CsvError(
      "CSV_IGNORE_LAST_DELIMITERS_REQUIRES_COLUMNS",
      [
        "The option `ignore_last_delimiters`",
        "requires the activation of the `columns` option"
      ],
      options
    );
  }
  if (options.info === void 0 || options.info === null || options.info === false) {
    options.info = false;
  } else if (options.info !== true) {
    throw new Error(
      `Invalid Option: info must be true, got ${JSON.stringify(options.info)}`
    );
  }
  if (options.max_record_size === void 0 || options.max_record_size === null || options.max_record_size === false) {
    options.max_record_size = 0;
  } else if (Number.isInteger(options.max_record_size) && options.max_record_size >= 0) {
  } else if (typeof options.max_record_size === "string" && /\d+/.test(options.max_record_size)) {
    options.max_record_size = parseInt(options.max_record_size);
  } else {
    throw new Error(
      `Invalid Option: max_record_size must be a positive integer, got ${JSON.stringify(options.max_record_size)}`
    );
  }
  if (options.objname === void 0 || options.objname === null || options.objname === false) {
    options.objname = void 0;
  } else if (Buffer.isBuffer(options.objname)) {
    if (options.objname.length === 0) {
      throw new Error(`Invalid Option: objname must be a non empty buffer`);
    }
    if (options.encoding === null) {
    } else {
      options.objname = options.objname.toString(options.encoding);
    }
  } else if (typeof options.objname === "string") {
    if (options.objname.length === 0) {
      throw new Error(`Invalid Option: objname must be a non empty string`);
    }
  } else if (typeof options.objname === "number") {
  } else {
    throw new Error(
      `Invalid Option: objname must be a string or a buffer, got ${options.objname}`
    );
  }
  if (options.objname !== void 0) {
    if (typeof options.objname === "number") {
      if (options.columns !== false) {
        throw Error(
          "Invalid Option: objname index cannot be combined with columns or be defined as a field"
        );
      }
    } else {
      if (options.columns === false) {
        throw Error(
          "Invalid Option: objname field must be combined with columns or be defined as an index"
        );
      }
    }
  }
  if (options.on_record === void 0 || options.on_record === null) {
    options.on_record = void 0;
  } else if (typeof options.on_record !== "function") {
    throw new CsvError(
      "CSV_INVALID_OPTION_ON_RECORD",
      [
        "Invalid option `on_record`:",
        "expect a function,",
        `got ${JSON.stringify(options.on_record)}`
      ],
      options
    );
  }
  if (options.on_skip !== void 0 && options.on_skip !== null && typeof options.on_skip !== "function") {
    throw new Error(
      `Invalid Option: on_skip must be a function, got ${JSON.stringify(options.on_skip)}`
    );
  }
  if (options.quote === null || options.quote === false || options.quote === "") {
    options.quote = null;
  } else {
    if (options.quote === void 0 || options.quote === true) {
      options.quote = Buffer.from('"', options.encoding);
    } else if (typeof options.quote === "string") {
      options.quote = Buffer.from(options.quote, options.encoding);
    }
    if (!Buffer.isBuffer(options.quote)) {
      throw new Error(
        `Invalid Option: quote must be a buffer or a string, got ${JSON.stringify(options.quote)}`
      );
    }
  }
  if (options.raw === void 0 || options.raw === null || options.raw === false) {
    options.raw = false;
  } else if (options.raw !== true) {
    throw new Error(
      `Invalid Option: raw must be true, got ${JSON.stringify(options.raw)}`
    );
  }
  if (options.record_delimiter === void 0) {
    options.record_delimiter = [];
  } else if (typeof options.record_delimiter === "string" || Buffer.isBuffer(options.record_delimiter)) {
    if (options.record_delimiter.length === 0) {
      throw new CsvError(
        "CSV_INVALID_OPTION_RECORD_DELIMITER",
        [
          "Invalid option `record_delimiter`:",
          "value must be a non empty string or buffer,",
          `got ${JSON.stringify(options.record_delimiter)}`
        ],
        options
      );
    }
    options.record_delimiter = [options.record_delimiter];
  } else if (!Array.isArray(options.record_delimiter)) {
    throw new CsvError(
      "CSV_INVALID_OPTION_RECORD_DELIMITER",
      [
        "Invalid option `record_delimiter`:",
        "value must be a string, a buffer or array of string|buffer,",
        `got ${JSON.stringify(options.record_delimiter)}`
      ],
      options
    );
  }
  options.record_delimiter = options.record_delimiter.map(function(rd, i) {
    if (typeof rd !== "string" && !Buffer.isBuffer(rd)) {
      throw new CsvError(
        "CSV_INVALID_OPTION_RECORD_DELIMITER",
        [
          "Invalid option `record_delimiter`:",
          "value must be a string, a buffer or array of string|buffer",
          `at index ${i},`,
          `got ${JSON.stringify(rd)}`
        ],
        options
      );
    } else if (rd.length === 0) {
      throw new CsvError(
        "CSV_INVALID_OPTION_RECORD_DELIMITER",
        [
          "Invalid option `record_delimiter`:",
          "value must be a non empty string or buffer",
          `at index ${i},`,
          `got ${JSON.stringify(rd)}`
        ],
        options
      );
    }
    if (typeof rd === "string") {
      rd = Buffer.from(rd, options.encoding);
    }
    return rd;
  });
  if (typeof options.relax_column_count === "boolean") {
  } else if (options.relax_column_count === void 0 || options.relax_column_count === null) {
    options.relax_column_count = false;
  } else {
    throw new Error(
      `Invalid Option: relax_column_count must be a boolean, got ${JSON.stringify(options.relax_column_count)}`
    );
  }
  if (typeof options.relax_column_count_less === "boolean") {
  } else if (options.relax_column_count_less === void 0 || options.relax_column_count_less === null) {
    options.relax_column_count_less = false;
  } else {
    throw new Error(
      `Invalid Option: relax_column_count_less must be a boolean, got ${JSON.stringify(options.relax_column_count_less)}`
    );
  }
  if (typeof options.relax_column_count_more === "boolean") {
  } else if (options.relax_column_count_more === void 0 || options.relax_column_count_more === null) {
    options.relax_column_count_more = false;
  } else {
    throw new Error(
      `Invalid Option: relax_column_count_more must be a boolean, got ${JSON.stringify(options.relax_column_count_more)}`
    );
  }
  if (typeof options.relax_quotes === "boolean") {
  } else if (options.relax_quotes === void 0 || options.relax_quotes === null) {
    options.relax_quotes = false;
  } else {
    throw new Error(
      `Invalid Option: relax_quotes must be a boolean, got ${JSON.stringify(options.relax_quotes)}`
    );
  }
  if (typeof options.skip_empty_lines === "boolean") {
  } else if (options.skip_empty_lines === void 0 || options.skip_empty_lines === null) {
    options.skip_empty_lines = false;
  } else {
    throw new Error(
      `Invalid Option: skip_empty_lines must be a boolean, got ${JSON.stringify(options.skip_empty_lines)}`
    );
  }
  if (typeof options.skip_records_with_empty_values === "boolean") {
  } else if (options.skip_records_with_empty_values === void 0 || options.skip_records_with_empty_values === null) {
    options.skip_records_with_empty_values = false;
  } else {
    throw new Error(
      `Invalid Option: skip_records_with_empty_values must be a boolean, got ${JSON.stringify(options.skip_records_with_empty_values)}`
    );
  }
  if (typeof options.skip_records_with_error === "boolean") {
  } else if (options.skip_records_with_error === void 0 || options.skip_records_with_error === null) {
    options.skip_records_with_error = false;
  } else {
    throw new Error(
      `Invalid Option: skip_records_with_error must be a boolean, got ${JSON.stringify(options.skip_records_with_error)}`
    );
  }
  if (options.rtrim === void 0 || options.rtrim === null || options.rtrim === false) {
    options.rtrim = false;
  } else if (options.rtrim !== true) {
    throw new Error(
      `Invalid Option: rtrim must be a boolean, got ${JSON.stringify(options.rtrim)}`
    );
  }
  if (options.ltrim === void 0 || options.ltrim === null || options.ltrim === false) {
    options.ltrim = false;
  } else if (options.ltrim !== true) {
    throw new Error(
      `Invalid Option: ltrim must be a boolean, got ${JSON.stringify(options.ltrim)}`
    );
  }
  if (options.trim === void 0 || options.trim === null || options.trim === false) {
    options.trim = false;
  } else if (options.trim !== true) {
    throw new Error(
      `Invalid Option: trim must be a boolean, got ${JSON.stringify(options.trim)}`
    );
  }
  if (options.trim === true && opts.ltrim !== false) {
    options.ltrim = true;
  } else if (options.ltrim !== true) {
    options.ltrim = false;
  }
  if (options.trim === true && opts.rtrim !== false) {
    options.rtrim = true;
  } else if (options.rtrim !== true) {
    options.rtrim = false;
  }
  if (options.to === void 0 || options.to === null) {
    options.to = -1;
  } else if (options.to !== -1) {
    if (typeof options.to === "string" && /\d+/.test(options.to)) {
      options.to = parseInt(options.to);
    }
    if (Number.isInteger(options.to)) {
      if (options.to <= 0) {
        throw new Error(
          `Invalid Option: to must be a positive integer greater than 0, got ${JSON.stringify(opts.to)}`
        );
      }
    } else {
      throw new Error(
        `Invalid Option: to must be an integer, got ${JSON.stringify(opts.to)}`
      );
    }
  }
  if (options.to_line === void 0 || options.to_line === null) {
    options.to_line = -1;
  } else if (options.to_line !== -1) {
    if (typeof options.to_line === "string" && /\d+/.test(options.to_line)) {
      options.to_line = parseInt(options.to_line);
    }
    if (Number.isInteger(options.to_line)) {
      if (options.to_line <= 0) {
        throw new Error(
          `Invalid Option: to_line must be a positive integer greater than 0, got ${JSON.stringify(opts.to_line)}`
        );
      }
    } else {
      throw new Error(
        `Invalid Option: to_line must be an integer, got ${JSON.stringify(opts.to_line)}`
      );
    }
  }
  return options;
};

// node_modules/csv-parse/lib/utils/delimiter_discover.js
var delimiter_discover = function(records, options) {
  if (!options) {
    ({ delimiter_auto: options } = normalize_options({ delimiter_auto: true }));
  }
  if (typeof records === "string") {
    records = Buffer.from(records);
  }
  if (Buffer.isBuffer(records)) {
    records = ((data) => {
      const records2 = [];
      const parser = transform({ delimiter: [] });
      const push = (record) => records2.push(record);
      const close = () => {
      };
      const error = parser.parse(data, true, push, close);
      if (error !== void 0) throw error;
      return records2;
    })(records);
  }
  const info = Array(127).fill().map(() => ({ lines: [] }));
  records.map(([record], line) => {
    for (let i = 0, l = record.length; i < l; i++) {
      const code = record.charCodeAt(i);
      if (info[code].lines[line] === void 0) info[code].lines[line] = 0;
      info[code].lines[line]++;
    }
  });
  info.map((info2, i) => {
    info2.char_code = i;
    info2.std = std(info2.lines);
    info2.total = info2.lines.reduce((acc, val) => acc + val, 0);
    info2.preferred = !!options.preferred[i];
    info2.score = options.score(info2, options);
  });
  const result = info.reduce(
    (acc, info2) => acc.score > info2.score ? acc : info2,
    {}
  );
  return String.fromCharCode(result.char_code);
};
var std = function(array) {
  const n = array.length;
  if (n === 0) return 0;
  const mean = array.reduce((a, b) => a + b) / n;
  return Math.sqrt(
    array.map((x) => Math.pow(x - mean, 2)).reduce((a, b) => a + b) / n
  );
};

// node_modules/csv-parse/lib/api/index.js
var isRecordEmpty = function(record) {
  return record.every(
    (field) => field == null || field.toString && field.toString().trim() === ""
  );
};
var cr = 13;
var nl = 10;
var boms = {
  // Note, the following are equals:
  // Buffer.from("\ufeff")
  // Buffer.from([239, 187, 191])
  // Buffer.from('EFBBBF', 'hex')
  utf8: Buffer.from([239, 187, 191]),
  // Note, the following are equals:
  // Buffer.from "\ufeff", 'utf16le
  // Buffer.from([255, 254])
  utf16le: Buffer.from([255, 254])
};
var transform = function(original_options = {}) {
  const info = {
    bytes: 0,
    bytes_records: 0,
    comment_lines: 0,
    empty_lines: 0,
    invalid_field_length: 0,
    lines: 1,
    records: 0
  };
  const options = normalize_options(original_options);
  return {
    info,
    original_options,
    options,
    state: init_state(options),
    __needMoreData: function(i, bufLen, end) {
      if (end) return false;
      const { encoding, escape, quote } = this.options;
      const { quoting, needMoreDataSize, recordDelimiterMaxLength } = this.state;
      const numOfCharLeft = bufLen - i - 1;
      const requiredLength = Math.max(
        needMoreDataSize,
        // Skip if the remaining buffer smaller than record delimiter
        // If "record_delimiter" is yet to be discovered:
        // 1. It is equals to `[]` and "recordDelimiterMaxLength" equals `0`
        // 2. We set the length to windows line ending in the current encoding
        // Note, that encoding is known from user or bom discovery at that point
        // recordDelimiterMaxLength,
        recordDelimiterMaxLength === 0 ? Buffer.from("\r\n", encoding).length : recordDelimiterMaxLength,
        // Skip if remaining buffer can be an escaped quote
        quoting ? (escape === null ? 0 : escape.length) + quote.length : 0,
        // Skip if remaining buffer can be record delimiter following the closing quote
        quoting ? quote.length + recordDelimiterMaxLength : 0
      );
      return numOfCharLeft < requiredLength;
    },
    // Central parser implementation
    parse: function(nextBuf, end, push, close) {
      const {
        bom,
        comment_no_infix,
        delimiter_auto,
        encoding,
        from_line,
        ltrim,
        max_record_size,
        raw,
        relax_quotes,
        rtrim,
        skip_empty_lines,
        to,
        to_line
      } = this.options;
      let { comment, escape, quote, record_delimiter } = this.options;
      const {
        bomSkipped,
        delimiterDiscovered,
        delimiterBufPrevious,
        rawBuffer,
        escapeIsQuote
      } = this.state;
      if (!delimiterDiscovered && delimiter_auto) {
        let delimiterBuf;
        if (delimiterBufPrevious === void 0) {
          delimiterBuf = nextBuf;
        } else if (delimiterBufPrevious !== void 0 && nextBuf === void 0) {
          delimiterBuf = delimiterBufPrevious;
        } else {
          delimiterBuf = Buffer.concat([delimiterBufPrevious, nextBuf]);
        }
        nextBuf = void 0;
        if (end || delimiterBuf.length > delimiter_auto.size) {
          this.options.delimiter = [
            Buffer.from(
              delimiter_discover(delimiterBuf, this.options.delimiter_auto)
            )
          ];
          this.state.previousBuf = delimiterBuf;
          this.state.delimiterBufPrevious = void 0;
          this.state.delimiterDiscovered = true;
        } else {
          this.state.delimiterBufPrevious = delimiterBuf;
          return;
        }
      }
      const { previousBuf } = this.state;
      let buf;
      if (previousBuf === void 0) {
        if (nextBuf === void 0) {
          close();
          return;
        } else {
          buf = nextBuf;
        }
      } else if (previousBuf !== void 0 && nextBuf === void 0) {
        buf = previousBuf;
      } else {
        buf = Buffer.concat([previousBuf, nextBuf]);
      }
      if (bomSkipped === false) {
        if (bom === false) {
          this.state.bomSkipped = true;
        } else if (buf.length < 3) {
          if (end === false) {
            this.state.previousBuf = buf;
            return;
          }
        } else {
          for (const encoding2 in boms) {
            if (boms[encoding2].compare(buf, 0, boms[encoding2].length) === 0) {
              const bomLength = boms[encoding2].length;
              this.state.bufBytesStart += bomLength;
              buf = buf.slice(bomLength);
              const options2 = normalize_options({
                ...this.original_options,
                encoding: encoding2
              });
              for (const key in options2) {
                this.options[key] = options2[key];
              }
              ({ comment, escape, quote } = this.options);
              break;
            }
          }
          this.state.bomSkipped = true;
        }
      }
      const bufLen = buf.length;
      let pos;
      for (pos = 0; pos < bufLen; pos++) {
        if (this.__needMoreData(pos, bufLen, end)) {
          break;
        }
        if (this.state.wasRowDelimiter === true) {
          this.info.lines++;
          this.state.wasRowDelimiter = false;
        }
        if (to_line !== -1 && this.info.lines > to_line) {
          this.state.stop = true;
          close();
          return;
        }
        if (this.state.quoting === false && record_delimiter.length === 0) {
          const record_delimiterCount = this.__autoDiscoverRecordDelimiter(
            buf,
            pos
          );
          if (record_delimiterCount) {
            record_delimiter = this.options.record_delimiter;
          }
        }
        const chr = buf[pos];
        if (raw === true) {
          rawBuffer.append(chr);
        }
        if ((chr === cr || chr === nl) && this.state.wasRowDelimiter === false) {
          this.state.wasRowDelimiter = true;
        }
        if (this.state.escaping === true) {
          this.state.escaping = false;
        } else {
          if (escape !== null && this.state.quoting === true && this.__isEscape(buf, pos, chr) && pos + escape.length < bufLen) {
            if (escapeIsQuote) {
              if (this.__isQuote(buf, pos + escape.length)) {
                this.state.escaping = true;
                pos += escape.length - 1;
                continue;
              }
            } else {
              this.state.escaping = true;
              pos += escape.length - 1;
              continue;
            }
          }
          if (this.state.commenting === false && this.__isQuote(buf, pos)) {
            if (this.state.quoting === true) {
              const nextChr = buf[pos + quote.length];
              const isNextChrTrimable = rtrim && this.__isCharTrimable(buf, pos + quote.length);
              const isNextChrComment = comment !== null && this.__compareBytes(comment, buf, pos + quote.length, nextChr);
              const isNextChrDelimiter = this.__isDelimiter(
                buf,
                pos + quote.length,
                nextChr
              );
              const isNextChrRecordDelimiter = record_delimiter.length === 0 ? this.__autoDiscoverRecordDelimiter(buf, pos + quote.length) : this.__isRecordDelimiter(nextChr, buf, pos + quote.length);
              if (escape !== null && this.__isEscape(buf, pos, chr) && this.__isQuote(buf, pos + escape.length)) {
                pos += escape.length - 1;
              } else if (!nextChr || isNextChrDelimiter || isNextChrRecordDelimiter || isNextChrComment || isNextChrTrimable) {
                this.state.quoting = false;
                this.state.wasQuoting = true;
                pos += quote.length - 1;
                continue;
              } else if (relax_quotes === false) {
                const err = this.__error(
                  new CsvError(
                    "CSV_INVALID_CLOSING_QUOTE",
                    [
                      "Invalid Closing Quote:",
                      `got "${String.fromCharCode(nextChr)}"`,
                      `at line ${this.info.lines}`,
                      "instead of delimiter, record delimiter, trimable character",
                      "(if activated) or comment"
                    ],
                    this.options,
                    this.__infoField()
                  )
                );
                if (err !== void 0) return err;
              } else {
                this.state.quoting = false;
                this.state.wasQuoting = true;
                this.state.field.prepend(quote);
                pos += quote.length - 1;
              }
            } else {
              if (this.state.field.length !== 0) {
                if (relax_quotes === false) {
                  const info2 = this.__infoField();
                  const bom2 = Object.keys(boms).map(
                    (b) => boms[b].equals(this.state.field.toString()) ? b : false
                  ).filter(Boolean)[0];
                  const err = this.__error(
                    new CsvError(
                      "INVALID_OPENING_QUOTE",
                      [
                        "Invalid Opening Quote:",
                        `a quote is found on field ${JSON.stringify(info2.column)} at line ${info2.lines}, value is ${JSON.stringify(this.state.field.toString(encoding))}`,
                        bom2 ? `(${bom2} bom)` : void 0
                      ],
                      this.options,
                      info2,
                      {
                        field: this.state.field
                      }
                    )
                  );
                  if (err !== void 0) return err;
                }
              } else {
                this.state.quoting = true;
                pos += quote.length - 1;
                continue;
              }
            }
          }
          if (this.state.quoting === false) {
            const recordDelimiterLength = this.__isRecordDelimiter(
              chr,
              buf,
              pos
            );
            if (recordDelimiterLength !== 0) {
              const skipCommentLine = this.state.commenting && this.state.wasQuoting === false && this.state.record.length === 0 && this.state.field.length === 0;
              if (skipCommentLine) {
                this.info.comment_lines++;
              } else {
                if (this.state.enabled === false && this.info.lines + (this.state.wasRowDelimiter === true ? 1 : 0) >= from_line) {
                  this.state.enabled = true;
                  this.__resetField();
                  this.__resetRecord();
                  pos += recordDelimiterLength - 1;
                  continue;
                }
                if (skip_empty_lines === true && this.state.wasQuoting === false && this.state.record.length === 0 && this.state.field.length === 0) {
                  this.info.empty_lines++;
                  pos += recordDelimiterLength - 1;
                  continue;
                }
                this.info.bytes = this.state.bufBytesStart + pos;
                const errField = this.__onField();
                if (errField !== void 0) return errField;
                this.info.bytes = this.state.bufBytesStart + pos + recordDelimiterLength;
                const errRecord = this.__onRecord(push);
                if (errRecord !== void 0) return errRecord;
                if (to !== -1 && this.info.records >= to) {
                  this.state.stop = true;
                  close();
                  return;
                }
              }
              this.state.commenting = false;
              pos += recordDelimiterLength - 1;
              continue;
            }
            if (this.state.commenting) {
              continue;
            }
            if (comment !== null && (comment_no_infix === false || this.state.record.length === 0 && this.state.field.length === 0)) {
              const commentCount = this.__compareBytes(comment, buf, pos, chr);
              if (commentCount !== 0) {
                this.state.commenting = true;
                continue;
              }
            }
            const delimiterLength = this.__isDelimiter(buf, pos, chr);
            if (delimiterLength !== 0) {
              this.info.bytes = this.state.bufBytesStart + pos;
              const errField = this.__onField();
              if (errField !== void 0) return errField;
              pos += delimiterLength - 1;
              continue;
            }
          }
        }
        if (this.state.commenting === false) {
          if (max_record_size !== 0 && this.state.record_length + this.state.field.length > max_record_size) {
            return this.__error(
              new CsvError(
                "CSV_MAX_RECORD_SIZE",
                [
                  "Max Record Size:",
                  "record exceed the maximum number of tolerated bytes",
                  `of ${max_record_size}`,
                  `at line ${this.info.lines}`
                ],
                this.options,
                this.__infoField()
              )
            );
          }
        }
        const lappend = ltrim === false || this.state.quoting === true || this.state.field.length !== 0 || !this.__isCharTrimable(buf, pos);
        const rappend = rtrim === false || this.state.wasQuoting === false;
        if (lappend === true && rappend === true) {
          this.state.field.append(chr);
        } else if (rtrim === true && !this.__isCharTrimable(buf, pos)) {
          return this.__error(
            new CsvError(
              "CSV_NON_TRIMABLE_CHAR_AFTER_CLOSING_QUOTE",
              [
                "Invalid Closing Quote:",
                "found non trimable byte after quote",
                `at line ${this.info.lines}`
              ],
              this.options,
              this.__infoField()
            )
          );
        } else {
          if (lappend === false) {
            pos += this.__isCharTrimable(buf, pos) - 1;
          }
          continue;
        }
      }
      if (end === true) {
        if (this.state.quoting === true) {
          const err = this.__error(
            new CsvError(
              "CSV_QUOTE_NOT_CLOSED",
              [
                "Quote Not Closed:",
                `the parsing is finished with an opening quote at line ${this.info.lines}`
              ],
              this.options,
              this.__infoField()
            )
          );
          if (err !== void 0) return err;
        } else {
          if (this.state.wasQuoting === true || this.state.record.length !== 0 || this.state.field.length !== 0) {
            this.info.bytes = this.state.bufBytesStart + pos;
            const errField = this.__onField();
            if (errField !== void 0) return errField;
            const errRecord = this.__onRecord(push);
            if (errRecord !== void 0) return errRecord;
          } else if (this.state.wasRowDelimiter === true) {
            this.info.empty_lines++;
          } else if (this.state.commenting === true) {
            this.info.comment_lines++;
          }
        }
      } else {
        this.state.bufBytesStart += pos;
        this.state.previousBuf = buf.slice(pos);
      }
      if (this.state.wasRowDelimiter === true) {
        this.info.lines++;
        this.state.wasRowDelimiter = false;
      }
    },
    __onRecord: function(push) {
      const {
        columns,
        group_columns_by_name,
        encoding,
        info: info2,
        from,
        relax_column_count,
        relax_column_count_less,
        relax_column_count_more,
        raw,
        skip_records_with_empty_values
      } = this.options;
      const { enabled, record } = this.state;
      if (enabled === false) {
        return this.__resetRecord();
      }
      const recordLength = record.length;
      if (columns === true) {
        if (skip_records_with_empty_values === true && isRecordEmpty(record)) {
          this.__resetRecord();
          return;
        }
        return this.__firstLineToColumns(record);
      }
      if (columns === false && this.info.records === 0) {
        this.state.expectedRecordLength = recordLength;
      }
      if (recordLength !== this.state.expectedRecordLength) {
        const err = columns === false ? new CsvError(
          "CSV_RECORD_INCONSISTENT_FIELDS_LENGTH",
          [
            "Invalid Record Length:",
            `expect ${this.state.expectedRecordLength},`,
            `got ${recordLength} on line ${this.info.lines}`
          ],
          this.options,
          this.__infoField(),
          {
            record
          }
        ) : new CsvError(
          "CSV_RECORD_INCONSISTENT_COLUMNS",
          [
            "Invalid Record Length:",
            `columns length is ${columns.length},`,
            // rename columns
            `got ${recordLength} on line ${this.info.lines}`
          ],
          this.options,
          this.__infoField(),
          {
            record
          }
        );
        if (relax_column_count === true || relax_column_count_less === true && recordLength < this.state.expectedRecordLength || relax_column_count_more === true && recordLength > this.state.expectedRecordLength) {
          this.info.invalid_field_length++;
          this.state.error = err;
        } else {
          const finalErr = this.__error(err);
          if (finalErr) return finalErr;
        }
      }
      if (skip_records_with_empty_values === true && isRecordEmpty(record)) {
        this.__resetRecord();
        return;
      }
      if (this.state.recordHasError === true) {
        this.__resetRecord();
        this.state.recordHasError = false;
        return;
      }
      this.info.records++;
      if (from === 1 || this.info.records >= from) {
        const { objname } = this.options;
        if (columns !== false) {
          const obj = {};
          for (let i = 0, l = record.length; i < l; i++) {
            if (columns[i] === void 0 || columns[i].disabled) continue;
            if (group_columns_by_name === true && Object.hasOwn(obj, columns[i].name)) {
              if (Array.isArray(obj[columns[i].name])) {
                obj[columns[i].name] = obj[columns[i].name].concat(record[i]);
              } else {
                obj[columns[i].name] = [obj[columns[i].name], record[i]];
              }
            } else {
              Object.defineProperty(obj, columns[i].name, {
                value: record[i],
                enumerable: true,
                writable: true,
                configurable: true
              });
            }
          }
          if (raw === true || info2 === true) {
            const extRecord = Object.assign(
              { record: obj },
              raw === true ? { raw: this.state.rawBuffer.toString(encoding) } : {},
              info2 === true ? { info: this.__infoRecord() } : {}
            );
            const err = this.__push(
              objname === void 0 ? extRecord : [obj[objname], extRecord],
              push
            );
            if (err) {
              return err;
            }
          } else {
            const err = this.__push(
              objname === void 0 ? obj : [obj[objname], obj],
              push
            );
            if (err) {
              return err;
            }
          }
        } else {
          if (raw === true || info2 === true) {
            const extRecord = Object.assign(
              { record },
              raw === true ? { raw: this.state.rawBuffer.toString(encoding) } : {},
              info2 === true ? { info: this.__infoRecord() } : {}
            );
            const err = this.__push(
              objname === void 0 ? extRecord : [record[objname], extRecord],
              push
            );
            if (err) {
              return err;
            }
          } else {
            const err = this.__push(
              objname === void 0 ? record : [record[objname], record],
              push
            );
            if (err) {
              return err;
            }
          }
        }
      }
      this.__resetRecord();
    },
    __firstLineToColumns: function(record) {
      const { firstLineToHeaders } = this.state;
      try {
        const headers = firstLineToHeaders === void 0 ? record : firstLineToHeaders.call(null, record);
        if (!Array.isArray(headers)) {
          return this.__error(
            new CsvError(
              "CSV_INVALID_COLUMN_MAPPING",
              [
                "Invalid Column Mapping:",
                "expect an array from column function,",
                `got ${JSON.stringify(headers)}`
              ],
              this.options,
              this.__infoField(),
              {
                headers
              }
            )
          );
        }
        const normalizedHeaders = normalize_columns_array(headers);
        this.state.expectedRecordLength = normalizedHeaders.length;
        this.options.columns = normalizedHeaders;
        this.__resetRecord();
        return;
      } catch (err) {
        return err;
      }
    },
    __resetRecord: function() {
      if (this.options.raw === true) {
        this.state.rawBuffer.reset();
      }
      this.state.error = void 0;
      this.state.record = [];
      this.state.record_length = 0;
    },
    __onField: function() {
      const { cast, encoding, rtrim, max_record_size } = this.options;
      const { enabled, wasQuoting } = this.state;
      if (enabled === false) {
        return this.__resetField();
      }
      let field = this.state.field.toString(encoding);
      if (rtrim === true && wasQuoting === false) {
        field = field.trimRight();
      }
      if (cast === true) {
        const [err, f] = this.__cast(field);
        if (err !== void 0) return err;
        field = f;
      }
      this.state.record.push(field);
      if (max_record_size !== 0 && typeof field === "string") {
        this.state.record_length += field.length;
      }
      this.__resetField();
    },
    __resetField: function() {
      this.state.field.reset();
      this.state.wasQuoting = false;
    },
    __push: function(record, push) {
      const { on_record } = this.options;
      if (on_record !== void 0) {
        const info2 = this.__infoRecord();
        try {
          record = on_record.call(null, record, info2);
        } catch (err) {
          return err;
        }
        if (record === void 0 || record === null) {
          return;
        }
      }
      this.info.bytes_records += this.info.bytes;
      push(record);
    },
    // Return a tuple with the error and the casted value
    __cast: function(field) {
      const { columns, relax_column_count } = this.options;
      const isColumns = Array.isArray(columns);
      if (isColumns === true && relax_column_count && this.options.columns.length <= this.state.record.length) {
        return [void 0, void 0];
      }
      if (this.state.castField !== null) {
        try {
          const info2 = this.__infoField();
          return [void 0, this.state.castField.call(null, field, info2)];
        } catch (err) {
          return [err];
        }
      }
      if (this.__isFloat(field)) {
        return [void 0, parseFloat(field)];
      } else if (this.options.cast_date !== false) {
        const info2 = this.__infoField();
        return [void 0, this.options.cast_date.call(null, field, info2)];
      }
      return [void 0, field];
    },
    __compareBytes: function(sourceBuf, targetBuf, targetPos, firstByte) {
      if (sourceBuf[0] !== firstByte) return 0;
      const sourceLength = sourceBuf.length;
      for (let i = 1; i < sourceLength; i++) {
        if (sourceBuf[i] !== targetBuf[targetPos + i]) return 0;
      }
      return sourceLength;
    },
    // Helper to test if a character is trimable
    __isCharTrimable: function(buf, pos) {
      const { timchars, timcharFirstBytes } = this.state;
      const first = buf[pos];
      if (first === void 0 || timcharFirstBytes[first] === 0) return 0;
      loop1: for (let i = 0; i < timchars.length; i++) {
        const timchar = timchars[i];
        for (let j = 0; j < timchar.length; j++) {
          if (timchar[j] !== buf[pos + j]) continue loop1;
        }
        return timchar.length;
      }
      return 0;
    },
    __isDelimiter: function(buf, pos, chr) {
      const { delimiter, ignore_last_delimiters } = this.options;
      if (ignore_last_delimiters === true && this.state.record.length === this.options.columns.length - 1) {
        return 0;
      } else if (ignore_last_delimiters !== false && typeof ignore_last_delimiters === "number" && this.state.record.length === ignore_last_delimiters - 1) {
        return 0;
      }
      loop1: for (let i = 0; i < delimiter.length; i++) {
        const del = delimiter[i];
        if (del[0] === chr) {
          for (let j = 1; j < del.length; j++) {
            if (del[j] !== buf[pos + j]) continue loop1;
          }
          return del.length;
        }
      }
      return 0;
    },
    __isEscape: function(buf, pos, chr) {
      const { escape } = this.options;
      if (escape === null) return false;
      const l = escape.length;
      if (escape[0] === chr) {
        for (let i = 0; i < l; i++) {
          if (escape[i] !== buf[pos + i]) {
            return false;
          }
        }
        return true;
      }
      return false;
    },
    __isFloat: function(value2) {
      return value2 - parseFloat(value2) + 1 >= 0;
    },
    // Keep it in case we implement the `cast_int` option
    // __isInt(value){
    //   // return Number.isInteger(parseInt(value))
    //   // return !isNaN( parseInt( obj ) );
    //   return /^(\-|\+)?[1-9][0-9]*$/.test(value)
    // }
    __isQuote: function(buf, pos) {
      const { quote } = this.options;
      if (quote === null) return false;
      const l = quote.length;
      for (let i = 0; i < l; i++) {
        if (quote[i] !== buf[pos + i]) {
          return false;
        }
      }
      return true;
    },
    __isRecordDelimiter: function(chr, buf, pos) {
      const { record_delimiter } = this.options;
      const recordDelimiterLength = record_delimiter.length;
      loop1: for (let i = 0; i < recordDelimiterLength; i++) {
        const rd = record_delimiter[i];
        const rdLength = rd.length;
        if (rd[0] !== chr) {
          continue;
        }
        for (let j = 1; j < rdLength; j++) {
          if (rd[j] !== buf[pos + j]) {
            continue loop1;
          }
        }
        return rd.length;
      }
      return 0;
    },
    __autoDiscoverRecordDelimiter: function(buf, pos) {
      const { encoding } = this.options;
      const rds = [
        // Important, the windows line ending must be before mac os 9
        Buffer.from("\r\n", encoding),
        Buffer.from("\n", encoding),
        Buffer.from("\r", encoding)
      ];
      loop: for (let i = 0; i < rds.length; i++) {
        const l = rds[i].length;
        for (let j = 0; j < l; j++) {
          if (rds[i][j] !== buf[pos + j]) {
            continue loop;
          }
        }
        this.options.record_delimiter.push(rds[i]);
        this.state.recordDelimiterMaxLength = rds[i].length;
        return rds[i].length;
      }
      return 0;
    },
    __error: function(msg) {
      const { encoding, raw, skip_records_with_error } = this.options;
      const err = typeof msg === "string" ? new Error(msg) : msg;
      if (skip_records_with_error) {
        this.state.recordHasError = true;
        if (this.options.on_skip !== void 0) {
          try {
            this.options.on_skip(
              err,
              raw ? this.state.rawBuffer.toString(encoding) : void 0
            );
          } catch (err2) {
            return err2;
          }
        }
        return void 0;
      } else {
        return err;
      }
    },
    __infoDataSet: function() {
      return {
        ...this.info,
        columns: this.options.columns
      };
    },
    __infoRecord: function() {
      const { columns, raw, encoding } = this.options;
      return {
        ...this.__infoDataSet(),
        bytes_records: this.info.bytes,
        error: this.state.error,
        header: columns === true,
        index: this.state.record.length,
        raw: raw ? this.state.rawBuffer.toString(encoding) : void 0
      };
    },
    __infoField: function() {
      const { columns } = this.options;
      const isColumns = Array.isArray(columns);
      const bytes_records = this.info.bytes_records;
      return {
        ...this.__infoRecord(),
        bytes_records,
        column: isColumns === true ? columns.length > this.state.record.length ? columns[this.state.record.length].name : null : this.state.record.length,
        quoting: this.state.wasQuoting
      };
    }
  };
};

// node_modules/csv-parse/lib/sync.js
var parse = function(data, opts = {}) {
  if (typeof data === "string") {
    data = Buffer.from(data);
  }
  const records = opts && opts.objname ? /* @__PURE__ */ Object.create(null) : [];
  const parser = transform(opts);
  const push = (record) => {
    if (parser.options.objname === void 0) records.push(record);
    else {
      records[record[0]] = record[1];
    }
  };
  const close = () => {
  };
  const error = parser.parse(data, true, push, close);
  if (error !== void 0) throw error;
  return records;
};

// src/node/splitQuoted.ts
function splitQuoted(record, delimiter) {
  try {
    const rows = parse(record, {
      delimiter,
      relax_quotes: true,
      relax_column_count: true,
      // A record may hold line ends inside its quotes; the reader has taken zero bytes out before.
      record_delimiter: "\0"
    });
    const [cells] = rows;
    return rows.length === 1 && cells !== void 0 ? cells : null;
  } catch {
    return null;
  }
}

// src/node/readLogChunks.ts
var MOST_BYTES2 = 4 * 2 ** 30;
async function readLogSteps(chunks, path, options) {
  const reader = logReader(options, splitQuoted);
  const reading2 = await readInto(reader, chunks, path);
  return { reading: reading2, steps: reader.steps() };
}
async function readInto(reader, chunks, path) {
  let total = 0;
  try {
    for await (const chunk of chunks) {
      total += chunk.length;
      if (total > MOST_BYTES2) return failed(tooLarge(path));
      if (!reader.push(chunk)) break;
    }
  } catch (error) {
    return failed(gzipProblem(error, path) ?? systemProblem(error, path, "read"));
  }
  return reader.end();
}
function tooLarge(path) {
  return {
    code: "file/too-large",
    where: path,
    what: `it has more than ${MOST_BYTES2 / 2 ** 30} GB of text`,
    expected: "the log of one firing; a day at one reading a second has about 4 MB",
    fix: "cut the log into single firings"
  };
}
function gzipProblem(error, path) {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  if (!code.startsWith("Z_")) return null;
  return {
    code: "file/broken-gzip",
    where: path,
    what: code === "Z_BUF_ERROR" ? "its compressed data break off before their end" : "its compressed data are damaged",
    expected: "a whole file as gzip writes it, or the log itself",
    fix: "copy the file again, or expand it with gzip -d as far as that goes and give the result"
  };
}

// src/node/readFiring.ts
async function readFiring(path, given) {
  const log = await readRecordedLog(path, given);
  if (!log.ok) return log;
  const { reading: reading2, record } = log.value;
  if (!reading2.ok) return reading2;
  const plan = await readPlan(path, given.schedulePath, record);
  if (!plan.ok) return plan;
  return ok({ reading: reading2.value, record, ...plan.value });
}
async function readRecordedLog(path, given) {
  const chunks = await logChunks(path);
  if (!chunks.ok) return chunks;
  const record = await readRecord(path, given.recordPath);
  if (!record.ok) return record;
  const name = path === "-" ? "standard input" : basename(path);
  const said = saidTogether(record.value?.log ?? {}, given.options);
  const read = await readLogSteps(chunks.value, path, { ...said, name });
  return ok({ ...read, record: record.value });
}
async function readBeside(path, given) {
  const record = await readRecord(path, given.recordPath);
  if (!record.ok) return record;
  const plan = await readPlan(path, given.schedulePath, record.value);
  return plan.ok ? ok({ record: record.value, ...plan.value }) : plan;
}
async function readRecord(logPath, recordPath) {
  const path = recordPath ?? await recordBeside(logPath);
  if (path === null) return ok(null);
  const text = await readText(path);
  if (!text.ok) return text;
  const { parseRecord } = await import("./record-I2I552FM.js");
  return parseRecord(text.value, basename(path));
}
async function recordBeside(logPath) {
  if (logPath === "-") return null;
  const stem2 = join(dirname(logPath), basename(logPath).replace(/(\.[^.]+)?(\.gz)?$/, ""));
  for (const ending of [".yaml", ".yml", ".json"])
    if (stem2 + ending !== logPath && await isThere(stem2 + ending)) return stem2 + ending;
  return null;
}
async function readPlan(logPath, schedulePath, record) {
  if (schedulePath !== null) return planAt(schedulePath);
  const named = record?.schedule;
  if (!named) return ok({ plan: null, planPath: null, remarks: [] });
  const folder = logPath === "-" ? "." : dirname(logPath);
  for (const path of placesFor(named, folder)) if (await isThere(path)) return planAt(path);
  const remark = `the record names the schedule ${named}, which is neither beside it nor in ../schedules: firing not compared with it`;
  return ok({ plan: null, planPath: null, remarks: [remark] });
}
async function planAt(path) {
  const { readSchedule } = await import("./readSchedule-X2WASXYE.js");
  const schedule = await readSchedule(path);
  return schedule.ok ? ok({ plan: schedule.value, planPath: path, remarks: [] }) : failed(...schedule.problems);
}
function placesFor(named, folder) {
  const names = extname(named) === "" ? [`${named}.yaml`, `${named}.json`, named] : [named];
  return names.flatMap((name) => [join(folder, name), join(folder, "..", "schedules", name)]);
}
async function isThere(path) {
  return stat2(path).then(
    (facts) => facts.isFile(),
    () => false
  );
}

export {
  dayNumber,
  weekday,
  emfMillivolts,
  compensated,
  saidTogether,
  logReader,
  splitQuoted,
  readFiring,
  readRecordedLog,
  readBeside
};
