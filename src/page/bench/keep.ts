import { failed, ok, type Problem, type Result } from "../../core/problem.ts";
import { packed, unpacked } from "./packed.ts";
import type { Work } from "./state.ts";

const DATABASE = "undunted";
const SHELF = "bench";
const KEY = "work";

/** The work that this browser kept; null when it kept none. */
export async function keptWork(): Promise<Result<Work | null>> {
  try {
    const value = await onShelf("readonly", (shelf) => shelf.get(KEY));
    return value === undefined
      ? ok(null)
      : unpacked(await withoutBlobs(value), "what this browser kept");
  } catch (error) {
    return failed(notKept(error));
  }
}

/** Keeps the work in this browser, over a reload. */
export async function keepWork(work: Work): Promise<Result<null>> {
  try {
    await onShelf("readwrite", (shelf) => shelf.put(withBlobs(packed(work)), KEY));
    return ok(null);
  } catch (error) {
    return failed(notKept(error));
  }
}

/** Takes everything that was kept out of this browser. */
export async function forgetWork(): Promise<Result<null>> {
  try {
    await onShelf("readwrite", (shelf) => shelf.clear());
    return ok(null);
  } catch (error) {
    return failed(notKept(error));
  }
}

/** Bytes from which on a file is handed to the browser as a blob, which is quick to keep again. */
const LARGE_BYTES = 1_000_000;

/** The blob of each large file, made once. */
const BLOBS = new WeakMap<Uint8Array, Blob>();

/** The same values with large files as blobs. */
function withBlobs(value: unknown): unknown {
  if (value instanceof Uint8Array) return value.length < LARGE_BYTES ? value : blobOf(value);
  if (Array.isArray(value)) return value.map(withBlobs);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, withBlobs(each)]));
}

function blobOf(bytes: Uint8Array): Blob {
  const blob = BLOBS.get(bytes) ?? new Blob([bytes as Uint8Array<ArrayBuffer>]);
  BLOBS.set(bytes, blob);
  return blob;
}

/** The same values with blobs as the bytes that they were. */
async function withoutBlobs(value: unknown): Promise<unknown> {
  if (value instanceof Blob) return new Uint8Array(await value.arrayBuffer());
  if (value instanceof Uint8Array || typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return Promise.all(value.map(withoutBlobs));
  const entries = Object.entries(value).map(async ([key, each]) => [key, await withoutBlobs(each)]);
  return Object.fromEntries(await Promise.all(entries));
}

function notKept(error: unknown): Problem {
  const why = error instanceof Error ? error.message : String(error);
  return {
    code: "page/not-kept",
    where: "this browser",
    what: `it does not let the page keep work (${why})`,
    expected: "room in its own storage, as most browsers give",
    fix: "save what you make as files before you close the page",
  };
}

function onShelf<T>(
  mode: IDBTransactionMode,
  act: (shelf: IDBObjectStore) => IDBRequest<T>,
): Promise<T> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open(DATABASE, 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore(SHELF);
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const database = opening.result;
      const transaction = database.transaction(SHELF, mode);
      const request = act(transaction.objectStore(SHELF));
      transaction.oncomplete = () => {
        database.close();
        resolve(request.result);
      };
      transaction.onabort = () => {
        database.close();
        reject(transaction.error);
      };
    };
  });
}
