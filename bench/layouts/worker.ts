// Runs inside a browser's worker: the same search as in Node, so many steps of it, and how long they took.

import { searchLayout } from '#craft/layout';
import type { Cutting, Job } from '#craft/strips';
import { openSolver } from '#solver';

export interface WorkerTask {
  readonly job: Job;
  readonly cutting: Cutting;
  readonly steps: number;
}

export interface WorkerAnswer {
  readonly length: number;
  readonly bound: number;
  readonly firstMs: number;
  readonly ms: number;
}

const solver = await openSolver();

/** The first step is counted; a search that ends sooner answers with its end. */
export const stepped = ({ job, cutting, steps }: WorkerTask): WorkerAnswer => {
  const begun = performance.now();
  const search = searchLayout({ job, cutting, shop: null, solver });
  let next = search.next();
  const firstMs = performance.now() - begun;
  for (let step = 1; step < steps && next.done !== true; step++) next = search.next();
  const { length, bound } = next.value;
  return { length, bound, firstMs, ms: performance.now() - begun };
};

// in Node the bench calls `stepped` itself
if (typeof self !== 'undefined' && typeof self.postMessage === 'function') {
  self.onmessage = ({ data }: MessageEvent<WorkerTask>) => self.postMessage(stepped(data));
  self.postMessage('ready');
}
