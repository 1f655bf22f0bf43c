import assert from 'node:assert/strict';
import { test } from 'node:test';
import sharp from 'sharp';
import { clothSignsFor, drawQuilt } from '#paper';
import { planOf, specimenDocument } from '#paper/specimen';
import { pngOf } from './png.ts';

const plan = planOf(specimenDocument);
const { svg } = drawQuilt({ plan, signs: clothSignsFor(plan), fitPt: [300, 300], fill: 'colour', alt: 'The specimen' });

test('the picture has the width asked for and the quilt’s proportions', async () => {
  const { width, height } = await sharp(await pngOf(svg, { widthPx: 440 })).metadata();
  // the specimen is 11 × 11
  assert.deepEqual([width, height], [440, 440]);
});

test('cloth keeps its true colour', async () => {
  const { data, info } = await sharp(await pngOf(svg, { widthPx: 440 }))
    .raw()
    .toBuffer({ resolveWithObject: true });
  const at = (x: number, y: number) => {
    const i = (y * info.width + x) * info.channels;
    return `#${[...data.subarray(i, i + 3)].map((channel) => channel.toString(16).padStart(2, '0')).join('')}`;
  };
  // by hand, 40 px to the inch: the border's middle (bark) and the middle of the first cabin's centre at 3½, 3½ (brick)
  assert.equal(at(220, 40), '#4a3426');
  assert.equal(at(140, 140), '#9c3f2c');
});

test('text that is no picture is refused', async () => {
  await assert.rejects(pngOf('not a picture', { widthPx: 100 }));
});
