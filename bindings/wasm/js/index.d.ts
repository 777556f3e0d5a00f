export * from "./facade.js";

/** A module: compiled, its bytes, a response, or where it lies. */
export type Source = WebAssembly.Module | BufferSource | Response | URL | string;

/** Makes the functions ready; runs once, however often it is called. The module is inside unless another is given. */
export default function init(source?: Source | PromiseLike<Source>): Promise<void>;
/** The same without waiting, where that is allowed: Node, workers, tests. */
export declare function initSync(source?: WebAssembly.Module | BufferSource): void;
