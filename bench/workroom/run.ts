// npm run bench:browser: how quickly the workroom answers in a real Chromium, with software drawing as on a plain machine. Times are of
// the clock: let nothing else run beside it.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { drawn, kept, type Opened, openWorkroom } from '../../test/browser/page.ts';

interface Line {
  readonly what: string;
  readonly found: number;
  readonly most: number;
  readonly unit: 'ms' | 'kB';
}

/** Notes, from the page's first moment, when the quilt is there, how long tasks and answers take. Text: see test/browser. */
const watching = `
  window.bench = { first: null, lags: [], long: [], answers: [], settled: [], searching: [], laid: [], ended: [] };
  const see = () => {
    if (window.bench.first === null && document.querySelector('[role=listbox] [role=option]')) {
      window.bench.first = -1;
      requestAnimationFrame(() => setTimeout(() => { window.bench.first = performance.now(); }));
    }
    const line = document.querySelector('.job-stops');
    if (line) {
      const behind = line.classList.contains('is-behind');
      if (behind !== window.bench.behind) {
        window.bench.behind = behind;
        if (!behind && window.bench.edited) window.bench.settled.push(performance.now() - window.bench.edited);
      }
    }
  };
  new MutationObserver(see).observe(document, { subtree: true, childList: true, attributes: true, attributeFilter: ['class'] });
  new PerformanceObserver((list) => { for (const entry of list.getEntries()) window.bench.long.push([entry.startTime, entry.duration]); })
    .observe({ type: 'longtask', buffered: true });
  const afterPaint = (from, into) => requestAnimationFrame(() => {
    const channel = new MessageChannel();
    channel.port1.onmessage = () => into.push(performance.now() - from);
    channel.port2.postMessage(0);
  });
  addEventListener('pointermove', (event) => { if (event.buttons) afterPaint(event.timeStamp, window.bench.lags); }, true);
  const stopKey = () => document.querySelector('.search-line button');
  const layout = () => document.querySelector('.cut-view .side section')?.textContent;
  for (const kind of ['click', 'keydown']) {
    addEventListener(kind, (event) => {
      window.bench.edited = event.timeStamp;
      afterPaint(event.timeStamp, window.bench.answers);
      if (kind === 'keydown' && stopKey()) afterPaint(event.timeStamp, window.bench.searching);
      if (kind === 'keydown' && event.ctrlKey) window.bench.awaited = { from: event.timeStamp, layout: layout() };
      if (kind === 'click' && event.target === stopKey()) window.bench.stopped = event.timeStamp;
    }, true);
  }
  new MutationObserver(() => {
    const { awaited, stopped } = window.bench;
    if (awaited && layout() !== awaited.layout) { window.bench.awaited = null; afterPaint(awaited.from, window.bench.laid); }
    if (stopped && !stopKey()) { window.bench.stopped = 0; afterPaint(stopped, window.bench.ended); }
  }).observe(document, { subtree: true, childList: true, characterData: true });
`;

interface Watched {
  readonly first: number;
  readonly lags: readonly number[];
  readonly long: readonly (readonly [at: number, took: number])[];
  readonly answers: readonly number[];
  readonly settled: readonly number[];
  /** Keys pressed while a search ran. */
  readonly searching: readonly number[];
  /** From an edit to its first layout on the screen. */
  readonly laid: readonly number[];
  /** From asking a search to end until it is seen to have ended. */
  readonly ended: readonly number[];
}

const watched = (page: Page): Promise<Watched> => page.evaluate('window.bench') as Promise<Watched>;
const forget = (page: Page): Promise<unknown> =>
  page.evaluate(
    'Object.assign(window.bench, { lags: [], long: [], answers: [], settled: [], searching: [], laid: [], ended: [], edited: 0 })',
  );

/** The value that so great a share lies at or below; 0 of none. */
const share = (values: readonly number[], part: number): number => {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(sorted.length * part) - 1)] ?? 0;
};
const median = (values: readonly number[]): number => share(values, 0.5);

/** Log cabins of 13 patches in a barn raising. */
const barn = (side: readonly [rows: number, columns: number]): string => {
  const harvest = JSON.parse(readFileSync('examples/harvest-home-throw.quilt.json', 'utf8'));
  const top = { arrangement: { kind: 'barn-raising', block: 'cabin', rows: side[0], columns: side[1] } };
  const { finish: _, ...rest } = harvest;
  return JSON.stringify({ ...rest, title: `Barn ${side.join(' by ')}`, top });
};

const openFile = async (page: Page, at: string, text: string): Promise<void> => {
  await page.goto(at);
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'From a file' }).click(),
  ]);
  await chooser.setFiles({ name: 'barn.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await drawn(page);
  await kept(page);
};

const firstQuilt = async (opened: Opened): Promise<readonly Line[]> => {
  const times: number[] = [];
  const long: number[] = [];
  for (let run = 0; run < 5; run++) {
    const { page, context } = await opened.page();
    await openFile(page, opened.numeric, readFileSync('examples/harvest-home-throw.quilt.json', 'utf8'));
    const address = page.url();
    await page.close();
    // the quilt is in the cupboard, and nothing of the page in any cache
    const fresh = await context.newPage();
    await fresh.addInitScript({ content: watching });
    const devtools = await context.newCDPSession(fresh);
    await devtools.send('Network.setCacheDisabled', { cacheDisabled: true });
    await fresh.goto(address);
    await drawn(fresh);
    await fresh.waitForFunction('window.bench.first > 0');
    await fresh.waitForTimeout(2500);
    const { first, long: tasks } = await watched(fresh);
    times.push(first);
    long.push(Math.max(0, ...tasks.filter(([at]) => at > first).map(([, took]) => took)));
    await context.close();
  }
  return [
    { what: 'first quilt on the screen, nothing cached', found: median(times), most: 1000, unit: 'ms' },
    { what: 'longest task after it', found: median(long), most: 50, unit: 'ms' },
  ];
};

const atSize = async (
  opened: Opened,
  of: { readonly side: readonly [number, number]; readonly lagMs: number; readonly answerMs: number },
): Promise<readonly Line[]> => {
  const { page, context } = await opened.page();
  await page.addInitScript({ content: watching });
  await openFile(page, opened.numeric, barn(of.side));
  const patches = of.side[0] * of.side[1] * 13;
  await page.waitForTimeout(4000);
  await forget(page);
  const box = await page.locator('.drawing-canvas').boundingBox();
  if (box === null) throw new Error('the drawing has no place');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let i = 0; i < 150; i++) {
    await page.mouse.move(x + 90 * Math.sin(i / 12), y + 60 * Math.sin(i / 9));
    await page.waitForTimeout(12);
  }
  await page.mouse.up();
  const { lags } = await watched(page);
  await forget(page);
  const list = page.getByRole('listbox', { name: /^The quilt/ });
  await list.focus();
  for (let i = 0; i < 60; i++) {
    await page.keyboard.press(['ArrowRight', 'ArrowDown', 'ArrowLeft', 'ArrowDown'][i % 4] ?? '');
    await page.waitForTimeout(40);
  }
  for (let i = 0; i < 40; i++) {
    await page.mouse.click(box.x + 60 + ((i * 97) % (box.width - 120)), box.y + 60 + ((i * 61) % (box.height - 120)));
    await page.waitForTimeout(60);
  }
  const { answers } = await watched(page);
  await context.close();
  return [
    { what: `drag, ${patches} patches, 98 of 100`, found: share(lags, 0.98), most: of.lagMs, unit: 'ms' },
    {
      what: `click or key to paint, ${patches} patches, 98 of 100`,
      found: share(answers, 0.98),
      most: of.answerMs,
      unit: 'ms',
    },
  ];
};

const figuresAfterEdit = async (opened: Opened): Promise<readonly Line[]> => {
  const { page, context } = await opened.page();
  await page.addInitScript({ content: watching });
  await openFile(page, opened.numeric, barn([12, 13]));
  await page.waitForTimeout(3000);
  const list = page.getByRole('listbox', { name: /^The quilt/ });
  await list.focus();
  await page.keyboard.press('Home');
  await forget(page);
  for (let i = 0; i < 12; i++) {
    await page.keyboard.press('t');
    await page.waitForTimeout(1500);
  }
  const { settled } = await watched(page);
  await context.close();
  return [{ what: 'figures after an edit, 2028 patches, median', found: median(settled), most: 100, unit: 'ms' }];
};

/** At Cut, on the sampler: one cloth's width is changed back and forth, the arrows go from piece to piece while the search runs. */
const whileSearching = async (opened: Opened): Promise<readonly Line[]> => {
  const { page, context } = await opened.page();
  await page.addInitScript({ content: watching });
  await openFile(page, opened.numeric, readFileSync('examples/twelve-fields.quilt.json', 'utf8'));
  await page.getByRole('link', { name: /^Colour/ }).click();
  const width = page.getByRole('textbox', { name: /Usable width/ });
  await width.fill('39');
  await width.press('Enter');
  await page.getByRole('link', { name: /^Cut/ }).click();
  const cloth = page.getByRole('listbox', { name: /^Cloth .* unrolled/ });
  await cloth.focus();
  await page.waitForTimeout(6000);
  await forget(page);
  const stop = page.getByRole('button', { name: 'These will do' });
  for (let round = 0; round < 16; round++) {
    await page.keyboard.press(round % 2 === 0 ? 'Control+z' : 'Control+Shift+z');
    await stop.waitFor();
    await cloth.focus();
    for (let i = 0; i < 12; i++) {
      await page.keyboard.press(['ArrowDown', 'ArrowRight', 'ArrowDown', 'ArrowLeft'][i % 4] ?? '');
      await page.waitForTimeout(25);
    }
    if (round % 2 === 1 && (await stop.isVisible())) await stop.click({ timeout: 500 }).catch(() => undefined);
    // the next edit of every second round comes while the search still runs
    await page.waitForTimeout(round % 2 === 1 ? 600 : 0);
  }
  const { searching, laid, ended } = await watched(page);
  await context.close();
  return [
    {
      what: `key to paint while a search runs, ${searching.length} keys, 98 of 100`,
      found: share(searching, 0.98),
      most: 50,
      unit: 'ms',
    },
    { what: `search ended, ${ended.length} times, the longest`, found: Math.max(0, ...ended), most: 200, unit: 'ms' },
    {
      what: `first layout of the sampler after an edit, ${laid.length} edits, median`,
      found: median(laid),
      most: 150,
      unit: 'ms',
    },
    { what: 'the same, 9 of 10', found: share(laid, 0.9), most: 150, unit: 'ms' },
  ];
};

const sizes = (): readonly Line[] => {
  const folder = join('dist', 'workroom', 'assets');
  const page = readFileSync(join('dist', 'workroom', 'index.html'), 'utf8');
  const all = readdirSync(folder)
    .filter((file) => /\.(js|css)$/.test(file))
    .map((file) => ({ file, kB: gzipSync(readFileSync(join(folder, file)), { level: 9 }).length / 1000 }));
  const sum = (list: typeof all) => list.reduce((total, { kB }) => total + kB, 0);
  return [
    {
      what: 'first script and look, compressed',
      found: sum(all.filter(({ file }) => page.includes(file))),
      most: 230,
      unit: 'kB',
    },
    { what: 'all scripts and looks, compressed', found: sum(all), most: 700, unit: 'kB' },
  ];
};

const opened = await openWorkroom();
const parts: Readonly<Record<string, () => Promise<readonly Line[]>>> = {
  first: () => firstQuilt(opened),
  large: () => atSize(opened, { side: [28, 28], lagMs: 33, answerMs: 50 }),
  larger: () => atSize(opened, { side: [44, 44], lagMs: 50, answerMs: 100 }),
  figures: () => figuresAfterEdit(opened),
  searching: () => whileSearching(opened),
  sizes: async () => sizes(),
};
/** A part's name measures that alone. */
const [asked] = process.argv.slice(2);
try {
  for (const [name, part] of Object.entries(parts)) {
    if (asked !== undefined && asked !== name) continue;
    for (const { what, found, most, unit } of await part()) {
      const mark = found <= most ? 'ok  ' : 'OVER';
      console.log(`${mark}  ${what.padEnd(62)} ${found.toFixed(0).padStart(6)} ${unit}   at most ${most}`);
    }
  }
} finally {
  await opened.close();
}
