// One process that reads a document, plans it without a search for layouts, prints all chapters and writes the file, as the
// command does: what it took of time and of the processor, as JSON. Run by ./speed.ts.

import { readFileSync, writeFileSync } from 'node:fs';
import { planQuilt } from '#craft';
import { patternChapters, patternPages } from '#paper';
import { openPress, type Paper } from '#print';

export interface Once {
  readonly pages: number;
  readonly wallMs: number;
  readonly processorMs: number;
}

const [document = '', paper = 'letter', file = ''] = process.argv.slice(2);
const planned = planQuilt(readFileSync(document, 'utf8'), { budget: { steps: 0 } });
if (!planned.ok) throw new Error(`${document} is refused`);
const press = openPress();
const { bytes, pages } = await press.pdf(patternPages(planned.value, { chapters: patternChapters }), {
  paper: paper as Paper,
});
writeFileSync(file, bytes);
const { user, system } = process.cpuUsage();
const once: Once = { pages, wallMs: performance.now(), processorMs: (user + system) / 1000 };
console.log(JSON.stringify(once));
