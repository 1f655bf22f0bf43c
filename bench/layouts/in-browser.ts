// Does a browser's worker search as fast as Node, and does it find the same? Engine and solver are bundled for it and served to a
// Chromium on this machine.

import { accessSync, constants, readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { createRequire } from 'node:module';
import type { AddressInfo } from 'node:net';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { chromium, type Page } from 'playwright-core';
import { msText, printTable } from '../table.ts';
import { mean, median } from './measure.ts';
import { deep, flat, kitSized, quiltSized } from './quilt-sized.ts';
import { stepped, type WorkerAnswer, type WorkerTask } from './worker.ts';

/** Node may compute so long on each problem; the worker then takes as many steps. */
const nodeMs = 400;

const flags = ['--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking', '--disable-sync'];

export const printInBrowser = async ({ problems }: { readonly problems: number }): Promise<void> => {
  const served = await serve();
  const browser = await chromium.launch({ executablePath: browserPath(), args: flags });
  try {
    const page = await browser.newPage();
    await page.goto(served.address);
    await startWorker(page);
    const rows: (readonly string[])[] = [];
    for (const cutting of [flat, deep])
      for (const { name, turning, problem } of [...quiltSized, ...kitSized]) {
        const pairs: (readonly [node: WorkerAnswer, browser: WorkerAnswer])[] = [];
        for (let seed = 1; seed <= problems; seed++) {
          const job = problem(seed);
          const steps = stepsWithin({ job, cutting });
          // the machine warms up on both sides
          await askWorker(page, { job, cutting, steps: 1 });
          const inNode = stepped({ job, cutting, steps });
          pairs.push([inNode, await askWorker(page, { job, cutting, steps })]);
        }
        const differ = pairs.filter(([a, b]) => a.length !== b.length || a.bound !== b.bound);
        if (differ.length > 0) throw new Error(`${name}: the browser finds another layout`);
        const took = (side: 0 | 1, of: 'ms' | 'firstMs'): number => mean(pairs.map((pair) => pair[side][of]));
        const ratio = median(pairs.map(([a, b]) => b.ms / a.ms));
        rows.push([
          `${name}, ${cutting.stages} stages`,
          turning,
          msText(took(0, 'firstMs')),
          msText(took(1, 'firstMs')),
          msText(took(0, 'ms')),
          msText(took(1, 'ms')),
          ratio.toFixed(2),
        ]);
      }
    printTable([['problems', 'turning', 'first, Node', 'first, browser', 'Node', 'browser', 'ratio'], ...rows]);
  } finally {
    await browser.close();
    served.close();
  }
};

const stepsWithin = ({ job, cutting }: Omit<WorkerTask, 'steps'>): number => {
  let steps = 1;
  while (steps < 4096 && stepped({ job, cutting, steps }).ms < nodeMs / 2) steps *= 2;
  return steps;
};

const startWorker = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const worker = new Worker('/worker.js', { type: 'module' });
        worker.onmessage = () => resolve();
        worker.onerror = ({ message }) => reject(new Error(message));
        Object.assign(globalThis, { worker });
      }),
  );

const askWorker = (page: Page, task: WorkerTask): Promise<WorkerAnswer> =>
  page.evaluate(
    (asked) =>
      new Promise<WorkerAnswer>((resolve, reject) => {
        const { worker } = globalThis as unknown as { readonly worker: Worker };
        worker.onmessage = ({ data }) => resolve(data);
        worker.onerror = ({ message }) => reject(new Error(message));
        worker.postMessage(asked);
      }),
    task,
  );

/** The page, the worker in one file, and the solver's machine code beside it. */
const serve = async (): Promise<{ readonly address: string; readonly close: () => void }> => {
  const bundled = await build({
    entryPoints: [fileURLToPath(new URL('./worker.ts', import.meta.url))],
    bundle: true,
    write: false,
    platform: 'browser',
    format: 'esm',
    target: 'es2022',
    external: ['node:*'],
    logLevel: 'error',
  });
  const script = bundled.outputFiles[0]?.text ?? '';
  const solver = readFileSync(createRequire(import.meta.url).resolve('highs/runtime'));
  const files: Readonly<Record<string, readonly [type: string, body: string | Buffer]>> = {
    '/': ['text/html', '<!doctype html><title>bench</title>'],
    '/worker.js': ['text/javascript', script],
    '/highs.wasm': ['application/wasm', solver],
  };
  const server = createServer(({ url = '' }, response) => {
    const [type, body] = files[url] ?? ['text/plain', ''];
    response.writeHead(url in files ? 200 : 404, { 'content-type': type }).end(body);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return { address: `http://127.0.0.1:${port}/`, close: () => server.close() };
};

const browserPath = (): string => {
  const named = process.env.CHROMIUM_PATH;
  const folders = (process.env.PATH ?? '').split(delimiter);
  const names = ['chromium', 'chromium-browser', 'google-chrome'];
  const places = [...(named ? [named] : []), ...folders.flatMap((folder) => names.map((name) => join(folder, name)))];
  const found = places.find((path) => {
    try {
      accessSync(path, constants.X_OK);
      return true;
    } catch {
      return false;
    }
  });
  if (found === undefined) throw new Error('no Chromium is installed: name one in CHROMIUM_PATH');
  return found;
};
