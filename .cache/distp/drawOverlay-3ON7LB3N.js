import{createRequire as unduntedRequire}from"node:module";const require=unduntedRequire(import.meta.url);
import {
  pictureLibrary
} from "./chunk-MZYY5QQ5.js";
import "./chunk-N2GCBHTS.js";
import "./chunk-WA5SZDQ5.js";
import "./chunk-2NHG2YQ4.js";
import "./chunk-2ZNPDJKQ.js";
import {
  drawPng
} from "./chunk-DVWEANHP.js";
import "./chunk-TBHH23HK.js";

// src/core/photo/overlayPixels.ts
var LONGEST_PX = 2e3;
var LEFT = 0.6;
var CRACK = [214, 40, 40];
function overlayFactor({ width, height }) {
  return Math.max(1, Math.ceil(Math.max(width, height) / LONGEST_PX));
}
function overlayPixels(picture, { lines, factor }) {
  const step = overlayFactor(picture);
  const width = Math.floor(picture.width / step);
  const height = Math.floor(picture.height / step);
  const rgb = new Uint8Array(3 * width * height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const grey = picture.grey[y * step * picture.width + x * step];
      rgb.fill(Math.round(255 - LEFT * (255 - grey)), 3 * (y * width + x), 3 * (y * width + x) + 3);
    }
  for (let i = 0; i < lines.bits.length; i++) {
    if (lines.bits[i] === 0) continue;
    const [left, right] = [i % lines.width, i % lines.width + 1].map((x) => x * factor / step);
    const row = Math.floor(i / lines.width);
    const [top, bottom] = [row, row + 1].map((y) => y * factor / step);
    for (let y = Math.floor(top); y < Math.max(top + 1, bottom); y++)
      for (let x = Math.floor(left); x < Math.max(left + 1, right); x++)
        if (x < width && y < height) rgb.set(CRACK, 3 * (y * width + x));
  }
  return { width, height, rgb };
}

// src/core/photo/overlayMarks.ts
var BARS_MM = [1, 2, 5, 10, 20, 50, 100, 200];
var INK = "#0b3c5d";
var DOT = "#f2b705";
function overlayMarks(picture, measured) {
  const step = overlayFactor(picture);
  const width = Math.floor(picture.width / step);
  const height = Math.floor(picture.height / step);
  const unit = Math.max(width, height) / 1e3;
  const scale = measured.found.factor / step;
  const shownLines = measured.found.counted.filter(({ line }) => line.angleDeg % 90 === 45);
  const lines = shownLines.map(({ line }) => lineSvg(line, scale, 0.6 * unit)).join("");
  const dots = shownLines.flatMap(({ places }) => places).map(({ x, y }) => dotSvg(x * scale, y * scale, 2.2 * unit)).join("");
  const checks = (measured.cracks?.checkLines ?? []).map(({ name, crossings }) => {
    const { from } = crossings.line;
    const label = { x: from.x * scale + 12 * unit, y: from.y * scale + 12 * unit };
    return [
      lineSvg(crossings.line, scale, 2 * unit),
      ...crossings.places.map(({ x, y }) => dotSvg(x * scale, y * scale, 4 * unit)),
      textSvg(name, label, unit)
    ].join("");
  }).join("");
  const bar = barSvg({ width, height, unit, mmPerPx: measured.mmPerPx * step });
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">${lines}${dots}${checks}${bar}</svg>`;
}
function lineSvg({ from, to }, scale, stroke) {
  const [ax, ay, bx, by] = [from.x, from.y, to.x, to.y].map((value) => (value * scale).toFixed(1));
  return `<path d="M${ax} ${ay}L${bx} ${by}" stroke="${INK}" stroke-width="${stroke.toFixed(2)}"/>`;
}
function dotSvg(x, y, radius) {
  return `<circle cx="${x.toFixed(1)}" cy="${y.toFixed(1)}" r="${radius.toFixed(2)}" fill="${DOT}" stroke="${INK}" stroke-width="${(radius / 3).toFixed(2)}"/>`;
}
function textSvg(text, at, unit) {
  return `<text x="${at.x.toFixed(1)}" y="${(at.y + 14 * unit).toFixed(1)}" font-family="Source Sans 3" font-weight="600" font-size="${(24 * unit).toFixed(1)}" fill="${INK}" stroke="#fff" stroke-width="${(5 * unit).toFixed(1)}" stroke-linejoin="round" paint-order="stroke">${text}</text>`;
}
function barSvg(frame) {
  const { width, height, unit, mmPerPx } = frame;
  const lengthMm = BARS_MM.findLast((mm) => mm / mmPerPx <= 0.35 * width) ?? BARS_MM[0];
  const length = lengthMm / mmPerPx;
  const x = 20 * unit;
  const y = height - 26 * unit;
  const box = `<rect x="${(x - 10 * unit).toFixed(1)}" y="${(y - 34 * unit).toFixed(1)}" width="${(length + 20 * unit).toFixed(1)}" height="${(52 * unit).toFixed(1)}" fill="#fff" fill-opacity="0.85"/>`;
  const bar = `<rect x="${x.toFixed(1)}" y="${y.toFixed(1)}" width="${length.toFixed(1)}" height="${(7 * unit).toFixed(1)}" fill="${INK}"/>`;
  return `${box}${bar}${textSvg(`${lengthMm} mm`, { x, y: y - 22 * unit }, unit)}`;
}

// src/node/drawOverlay.ts
var PAGE_QUALITY = 85;
async function drawOverlay(picture, measured, format) {
  const { width, height, rgb } = overlayPixels(picture, measured.found);
  const marks = await drawPng(overlayMarks(picture, measured), { scale: 1 });
  const drawn = pictureLibrary()(rgb, { raw: { width, height, channels: 3 } }).composite([
    { input: Buffer.from(marks) }
  ]);
  return format === "png" ? drawn.png({ compressionLevel: 9 }).toBuffer() : drawn.jpeg({ quality: PAGE_QUALITY, chromaSubsampling: "4:4:4" }).toBuffer();
}
export {
  drawOverlay
};
