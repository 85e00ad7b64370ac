// Runs the built command in a thread of the test's own process, again and again, so that it is loaded and
// compiled once and not anew for every call. What a call needs of a process is put in its place here.
import { Readable, Writable } from "node:stream";
import { pathToFileURL } from "node:url";
import { workerData } from "node:worker_threads";

const { command, port, done } = workerData;
let calls = 0;
let finish = () => undefined;
/** A call that left by itself, or went on after its end, would speak into the next one. */
let isSpent = false;

class Left extends Error {}

/** A stream that keeps what is written to it. */
function keeping(chunks) {
  return new Writable({
    write(chunk, _, next) {
      chunks.push(chunk);
      next();
    },
  });
}

function putInPlace(name, stream) {
  Object.defineProperty(process, name, { configurable: true, enumerable: true, value: stream });
}

process.exit = (code) => {
  if (code !== undefined) process.exitCode = code;
  isSpent = true;
  finish();
  throw new Left();
};
process.on("uncaughtException", (error) => {
  if (error instanceof Left) return;
  process.exitCode = 1;
  process.stderr.write(`${error?.stack ?? error}\n`);
  finish();
});

/** Whether something of a call is still at work after the files that it closed have had time to be closed. */
async function goesOn() {
  const isAtWork = () => process.getActiveResourcesInfo().some((name) => name !== "MessagePort");
  for (let turn = 0; turn < TURNS && isAtWork(); turn++) await new Promise(setImmediate);
  return isAtWork();
}

/** Turns of the event loop that a call is given to come to rest. */
const TURNS = 1000;

port.on("message", async ({ args, env, input }) => {
  const [out, err] = [[], []];
  putInPlace("stdout", keeping(out));
  putInPlace("stderr", keeping(err));
  putInPlace(
    "stdin",
    Readable.from(input === "" ? [] : [Buffer.from(input)], { objectMode: false }),
  );
  process.argv = [process.execPath, command, ...args];
  for (const name of Object.keys(process.env)) delete process.env[name];
  Object.assign(process.env, env);
  process.exitCode = undefined;
  await new Promise((left) => {
    finish = left;
    import(`${pathToFileURL(command)}?${++calls}`).then(left, (error) =>
      process.emit("uncaughtException", error),
    );
  });
  const text = (chunks) => Buffer.concat(chunks).toString("utf8");
  isSpent ||= await goesOn();
  port.postMessage({ exit: process.exitCode ?? 0, out: text(out), err: text(err), isSpent });
  Atomics.store(done, 0, 1);
  Atomics.notify(done, 0);
});
