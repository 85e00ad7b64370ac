import { failed, ok, type Problem, type Result } from "../../core/problem.ts";
import { packed, unpacked } from "./packed.ts";
import type { Work } from "./state.ts";

const DATABASE = "undunted";
const SHELF = "bench";

/** Where the work was kept when there was one place for all windows. */
const OLD_KEY = "work";

/** How often each window had kept its work when this was kept: a version vector. */
type Versions = Readonly<Record<string, number>>;

/** What one window kept; no other window ever writes to its place. */
interface Kept {
  readonly key: string;
  readonly savedMs: number | null;
  readonly versions: Versions;
  readonly work: unknown;
}

/** Work in this browser's store that does not lie on the bench. */
export interface AsideWork {
  readonly key: string;
  /** When it was kept [ms since 1970]; null when that was not noted. */
  readonly savedMs: number | null;
  /** The work; null when this page cannot read it. */
  readonly work: Work | null;
  /** Why it cannot be read; empty when it can. */
  readonly why: string;
  /** As it is stored, for a file. */
  readonly raw: unknown;
}

/** What the store held when it was looked at. */
interface Opened {
  /** The work that was kept last and can be read; null when there is none. */
  readonly work: Work | null;
  /** Other work that is not part of it, and what cannot be read. */
  readonly aside: readonly AsideWork[];
}

/** Keeps the work of one window in this browser, beside that of others and never over it. */
export interface Keeper {
  /** Looks at everything that was kept, and goes on from the last of it. */
  readonly open: () => Promise<Result<Opened>>;
  /** Keeps the work; begun at once, so that it is done even when the page is left right after. */
  readonly keep: (work: Work) => Promise<Result<null>>;
  /** What another window kept since, having gone on from what this one holds; null when none did. */
  readonly newer: () => Promise<Work | null>;
  /** Goes on from work that lay aside, and takes it out of the store once this window kept it. */
  readonly adopt: (aside: AsideWork, work: Work) => Promise<Result<null>>;
  /** Takes one piece of work that lies aside out of the store. */
  readonly remove: (key: string) => Promise<Result<null>>;
  /** Takes everything out of the store. */
  readonly forget: () => Promise<Result<null>>;
}

/**
 * A keeper for one window.
 *
 * @param tab Name of the window that no other has.
 * @param nowMs The time [ms since 1970].
 */
export function createKeeper(tab: string, nowMs: () => number): Keeper {
  const ownKey = `${OLD_KEY}:${tab}`;
  let versions: Versions = {};
  let database: IDBDatabase | null = null;

  const opened = async (): Promise<IDBDatabase> => {
    if (database !== null) return database;
    const fresh = await openDatabase();
    const lost = () => {
      fresh.close();
      if (database === fresh) database = null;
    };
    fresh.onversionchange = lost;
    fresh.onclose = lost;
    database = fresh;
    return fresh;
  };
  const attempt = async <T>(act: () => Promise<T>): Promise<Result<T>> => {
    try {
      return ok(await act());
    } catch (error) {
      database?.close();
      database = null;
      return failed(notKept(error));
    }
  };
  const all = async () => allKept(await opened());
  const put = async (work: Work) => {
    const next = { ...versions, [tab]: (versions[tab] ?? 0) + 1 };
    versions = next;
    const value = { savedMs: nowMs(), versions: next, work: withBlobs(packed(work)) };
    const store = database ?? (await opened());
    await done(store, (shelf) => shelf.put(value, ownKey));
  };

  return {
    open: () =>
      attempt(async () => {
        const read = await Promise.all((await all()).map(asideOf));
        const last = read
          .filter(({ work }) => work !== null)
          .toSorted(byTime)
          .at(-1);
        if (last !== undefined) versions = last.versions;
        const isOver = (kept: Kept & AsideWork) =>
          last !== undefined && kept.work !== null && isPart(kept.versions, last.versions);
        const over = read.filter((kept) => kept !== last && isOver(kept));
        for (const { key } of over) await done(await opened(), (shelf) => shelf.delete(key));
        const aside = read.filter((kept) => kept !== last && !over.includes(kept));
        return { work: last?.work ?? null, aside };
      }),
    keep: (work) => attempt(() => put(work).then(() => null)),
    newer: async () => {
      const found = await attempt(async () => {
        const kept = (await all()).filter(
          ({ key, versions: theirs }) =>
            key !== ownKey && isPart(versions, theirs) && !isPart(theirs, versions),
        );
        const last = kept.toSorted(byTime).at(-1);
        return last === undefined ? null : asideOf(last);
      });
      if (!found.ok || found.value === null || found.value.work === null) return null;
      versions = found.value.versions;
      return found.value.work;
    },
    adopt: (aside, work) =>
      attempt(async () => {
        const theirs = (await all()).find(({ key }) => key === aside.key)?.versions ?? {};
        versions = joined(versions, theirs);
        await put(work);
        await done(await opened(), (shelf) => shelf.delete(aside.key));
        return null;
      }),
    remove: (key) =>
      attempt(async () => {
        await done(await opened(), (shelf) => shelf.delete(key));
        return null;
      }),
    forget: () =>
      attempt(async () => {
        await done(await opened(), (shelf) => shelf.clear());
        return null;
      }),
  };
}

/** Whether one version is the other or came before it. */
function isPart(versions: Versions, other: Versions): boolean {
  return Object.entries(versions).every(([tab, count]) => count <= (other[tab] ?? 0));
}

function joined(versions: Versions, other: Versions): Versions {
  const tabs = new Set([...Object.keys(versions), ...Object.keys(other)]);
  return Object.fromEntries(
    [...tabs].map((tab) => [tab, Math.max(versions[tab] ?? 0, other[tab] ?? 0)]),
  );
}

function byTime(one: { readonly savedMs: number | null }, other: typeof one): number {
  return (one.savedMs ?? 0) - (other.savedMs ?? 0);
}

async function allKept(database: IDBDatabase): Promise<readonly Kept[]> {
  let keys: Promise<IDBValidKey[]> | undefined;
  const values = await done(database, (shelf) => {
    keys = answered(shelf.getAllKeys());
    return shelf.getAll();
  });
  const names = await keys;
  return values.map((value: unknown, at) => keptOf(String(names?.[at]), value));
}

/** What is stored at a place; in the old one lies the work alone. */
function keptOf(key: string, value: unknown): Kept {
  const { savedMs, versions, work } = (value ?? {}) as Partial<Kept>;
  if (key === OLD_KEY || typeof savedMs !== "number")
    return { key, savedMs: null, versions: { [key]: 1 }, work: value };
  return { key, savedMs, versions: versions ?? { [key]: 1 }, work };
}

async function asideOf(kept: Kept): Promise<Kept & AsideWork> {
  const raw = await withoutBlobs(kept.work);
  const read = unpacked(raw, "what this browser kept");
  return read.ok
    ? { ...kept, work: read.value, why: "", raw }
    : { ...kept, work: null, why: read.problems.map(({ what }) => what).join("; "), raw };
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
  const why = error instanceof Error ? error.message || error.name : String(error);
  return {
    code: "page/not-kept",
    where: "this browser",
    what: `it does not let the page keep your work (${why})`,
    expected: "room in its own storage, as most browsers give outside of a private window",
    fix: "save the whole bench as a file, above, before you close the page",
  };
}

function openDatabase(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open(DATABASE, 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore(SHELF);
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => resolve(opening.result);
  });
}

/** One transaction with one request that counts; begun before this returns. */
async function done<T>(
  database: IDBDatabase,
  act: (shelf: IDBObjectStore) => IDBRequest<T>,
): Promise<T> {
  const transaction = database.transaction(SHELF, "readwrite");
  const request = act(transaction.objectStore(SHELF));
  const ended = new Promise<void>((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error ?? request.error);
  });
  // A large answer may come after its transaction has ended.
  const answer = answered(request);
  transaction.commit();
  const [result] = await Promise.all([answer, ended]);
  return result;
}

function answered<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}
