// Makes the pictures in our prose anew, from the examples, with the program's own drawings and its press. Needs pdftoppm
// (poppler-utils), as the tests of PDF do.
//
//   npm run pictures

import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { planQuilt, type QuiltPlan } from '#craft';
import { clothSignsFor, drawQuilt } from '#paper';
import { quiltAlt } from '#paper/pages';
import { sizeText } from '#paper/words';
import { pngOf } from '#print';
import { designSheets } from './pictures/design.ts';
import { pageSheet } from './pictures/page-sheet.ts';
import { rastered } from './pictures/rastered.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = join(root, 'docs/pictures');

const planOf = (example: string): QuiltPlan => {
  const planned = planQuilt(readFileSync(join(root, `examples/${example}.quilt.json`), 'utf8'));
  if (!planned.ok) throw new Error(`${example} has problems`);
  return planned.value;
};

const quiltPicture = async (plan: QuiltPlan): Promise<Uint8Array> => {
  const alt = quiltAlt(plan, sizeText([plan.top.set.width, plan.top.set.height], plan.quilt.unit));
  const { svg } = drawQuilt({ plan, signs: clothSignsFor(plan), fitPt: [720, 720], fill: 'colour', alt });
  return pngOf(svg, { widthPx: 1600 });
};

mkdirSync(folder, { recursive: true });
const made = (name: string, bytes: Uint8Array): void => {
  writeFileSync(join(folder, name), bytes);
  console.log(`docs/pictures/${name}  ${Math.ceil(bytes.length / 1024)} kB`);
};

made('harvest-home.png', await quiltPicture(planOf('harvest-home-throw')));
made('pages.png', await pageSheet(planOf('lantern-lane')));
for (const [name, pages] of designSheets({ star: planOf('lantern-lane'), cloth: planOf('hedge-sparrow') })) {
  const [first] = await rastered(pages, { dotsPerInch: 110 });
  if (first === undefined) throw new Error(`${name} has no page`);
  made(name, first);
}
