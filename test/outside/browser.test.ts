// The quilt's picture in a real browser: another program's reading of our SVG, colours and places.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { chromium } from 'playwright-core';
import sharp from 'sharp';
import { planQuilt } from '#craft';
import { clothSignsFor, drawQuilt } from '#paper';
import { browserFlags, browserPath } from './chromium.ts';

test('the centre of every block of the throw shows the colour of its hearth in a browser, and the border its own', async () => {
  const planned = planQuilt(readFileSync('examples/harvest-home-throw.quilt.json', 'utf8'), { budget: { steps: 0 } });
  assert.ok(planned.ok);
  const plan = planned.value;
  const pixels = 12;
  const { width } = plan.top.set;
  const { svg } = drawQuilt({
    plan,
    signs: clothSignsFor(plan),
    fitPt: [width * pixels + 2, width * pixels + 2],
    fill: 'colour',
    alt: 'the quilt',
  });
  const browser = await chromium.launch({ executablePath: browserPath(), args: browserFlags });
  try {
    const page = await browser.newPage({
      viewport: { width: Math.ceil(width * pixels) + 2, height: Math.ceil(width * pixels) + 2 },
    });
    await page.setContent(
      `<style>body{margin:0}svg{display:block;width:${width * pixels + 2}px;height:auto}</style>${svg}`,
    );
    const shot = await sharp(await page.screenshot())
      .removeAlpha()
      .raw()
      .toBuffer({ resolveWithObject: true });
    const colourAt = (x: number, y: number): string => {
      const place = (Math.round(1 + y * pixels) * shot.info.width + Math.round(1 + x * pixels)) * 3;
      return `#${[0, 1, 2].map((i) => (shot.data[place + i] as number).toString(16).padStart(2, '0')).join('')}`;
    };
    const colourOf = new Map(plan.quilt.fabrics.map(({ id, colour }) => [id, colour]));
    for (const { at, size } of plan.top.set.placed) {
      assert.equal(colourAt(at[0] + size[0] / 2, at[1] + size[1] / 2), colourOf.get('ember'));
    }
    assert.equal(colourAt(1.5, 1.5), colourOf.get('slate')); // the outer border is 3½ in wide, by the document
  } finally {
    await browser.close();
  }
});
