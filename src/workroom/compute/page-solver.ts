// The layout solver as a page finds it: its compiled part has an address of its own.
import wasm from 'highs/runtime?url';
import type { IntegerSolver } from '#craft/strips';
import { openSolver } from '#solver';

export const pageSolver = (): Promise<IntegerSolver> => openSolver({ wasm });
