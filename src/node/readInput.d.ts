import { type Result } from "../core/problem.ts";
/** The bytes of a file, or of standard input for `-`. */
export declare function readInput(path: string): Promise<Result<Uint8Array>>;
/** The text of a UTF-8 file; a byte-order mark is dropped. */
export declare function readText(path: string): Promise<Result<string>>;
