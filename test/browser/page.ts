// A workroom to try: the built page behind the shop's server, a real Chromium in front of it.
import assert from 'node:assert/strict';
import { networkInterfaces } from 'node:os';
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { listenAt, makeShop } from '#shop';
import { readyWorkroom } from '../../scripts/ready/workroom.mjs';
import { browserFlags, browserPath } from '../outside/chromium.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
export interface Opened {
  /** This machine by its name: to a browser a secure place. */
  readonly local: string;
  /** This machine by its number over plain http: not one. */
  readonly numeric: string;
  /** A fresh browser's page; what it asks of other hosts and says of faults is noted. */
  readonly page: (wishes?: PageWishes) => Promise<Tried>;
  readonly close: () => Promise<void>;
}

export interface PageWishes {
  readonly width?: number;
  readonly height?: number;
  readonly theme?: 'light' | 'dark';
  readonly touch?: 'touch' | 'mouse';
}

export interface Tried {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Requests to other hosts, faults of scripts, refusals of the content policy. */
  readonly faults: string[];
}

/** Two tests of a file at once, each with a browser's page of its own: one often waits for what the other need not. */
export const sideBySide = { concurrency: 2 };

export const openWorkroom = async (): Promise<Opened> => {
  const shop = await makeShop({ pages: await readyWorkroom(root, console.error) });
  const port = await listenAt(shop, { host: '0.0.0.0', port: 0 });
  const browser: Browser = await chromium.launch({ executablePath: browserPath(), args: browserFlags });
  const hosts = [`localhost:${port}`, `${numericAddress()}:${port}`];
  return {
    local: `http://${hosts[0]}/`,
    numeric: `http://${hosts[1]}/`,
    page: async ({ width = 1280, height = 800, theme = 'light', touch = 'mouse' } = {}) => {
      const context = await browser.newContext({
        viewport: { width, height },
        colorScheme: theme,
        hasTouch: touch === 'touch',
        acceptDownloads: true,
      });
      // a page that draws hundreds of sheets on a busy machine answers late
      context.setDefaultTimeout(60_000);
      const faults: string[] = [];
      context.on('request', (request) => {
        const url = new URL(request.url());
        if (url.protocol.startsWith('http') && !hosts.includes(url.host)) faults.push(`asks ${url.host}`);
      });
      context.on('weberror', (error) => void faults.push(String(error.error())));
      const page = await context.newPage();
      // held from the first on: where it begins only as a file is asked for, a busy page may ask before
      page.on('filechooser', () => undefined);
      page.on('console', (message) => {
        if (message.type() === 'error') faults.push(message.text());
      });
      return { page, context, faults };
    },
    close: async () => {
      await browser.close();
      await shop.close();
    },
  };
};

/** Of the machine on its network; where it has none, its own loop's number, which a browser takes for secure. */
const numericAddress = (): string => {
  const all = Object.values(networkInterfaces()).flat();
  return all.find((one) => one !== undefined && one.family === 'IPv4' && !one.internal)?.address ?? '127.0.0.1';
};

/** Opens the demo from home, and waits until it is drawn and its first figures stand. */
export const openDemo = async (page: Page, at: string, title = 'Harvest Home'): Promise<void> => {
  await page.goto(at);
  await page.getByRole('button', { name: title }).click();
  await drawn(page);
};

/** Home without any quilt, and whatever listens there listening. */
export const openHome = async (page: Page, at: string): Promise<void> => {
  await page.goto(at);
  await page.getByText('None yet in this browser').waitFor();
};

export const drawn = async (page: Page): Promise<void> => {
  await page.getByRole('listbox', { name: /^The quilt/ }).waitFor();
  await page.locator('.job-stops:not(.is-behind)').waitFor();
};

/** Until the line says that all is kept. */
export const kept = async (page: Page): Promise<void> => {
  await page.locator('.keeping.is-kept').waitFor();
};

/** As the eye reads it: spaces that do not break are for it alone. */
export const plain = (text: string | null): string => (text ?? '').replace(/\s+/g, ' ').trim();

/** Waits until what is read is as wanted, and says what it was where it is not. */
export const becomes = async <T>(read: () => Promise<T>, wanted: T | RegExp): Promise<void> => {
  const until = Date.now() + 30_000;
  for (;;) {
    const now = await read();
    const found = typeof now === 'string' ? plain(now) : now;
    const isSo =
      wanted instanceof RegExp ? wanted.test(String(found)) : JSON.stringify(found) === JSON.stringify(wanted);
    if (isSo) return;
    if (Date.now() > until) assert.deepEqual(found, wanted);
    await new Promise((resolve) => setTimeout(resolve, 40));
  }
};
