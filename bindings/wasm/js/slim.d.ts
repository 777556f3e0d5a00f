import type { Source } from "./index.js";

export * from "./facade.js";
export type { Source };

/** Makes the functions ready; runs once, however often it is called. The module is fetched from beside this file unless given. */
export default function init(source?: Source | PromiseLike<Source>): Promise<void>;
/** The same without waiting. */
export declare function initSync(source: WebAssembly.Module | BufferSource): void;
