// The layout solver as a page has it: compiled once, on whatever threads the browser has for that, and handed to each worker that searches.
import wasm from 'highs/runtime?url';
import type { CompiledSolver } from '#solver';

/** It has an address of its own, and is asked for when the first search wants it; where it did not come, the next search asks anew. */
export const pageSolver = (): (() => Promise<CompiledSolver>) => {
  let compiled: Promise<CompiledSolver> | null = null;
  return () => {
    compiled ??= WebAssembly.compileStreaming(fetch(wasm)).catch((error: unknown) => {
      compiled = null;
      throw error;
    });
    return compiled;
  };
};
