import assert from 'node:assert/strict';
import { test } from 'node:test';
import { planQuilt } from '#craft';
import { example } from '#documents';
import { clothSignsFor } from '#paper/cloth';
import { drawPressedBlock } from './index.ts';

test('the arrow of a curved seam stands on the curve, square to it and off its ends', () => {
  const outcome = planQuilt(example('mill-pond'), { budget: { steps: 0 } });
  assert.ok(outcome.ok);
  const plan = outcome.value;
  const block = plan.blocks.find(({ id }) => id === 'ring') ?? assert.fail('no ring');
  const { svg, heightPt } = drawPressedBlock({
    block,
    signs: clothSignsFor(plan),
    fitPt: [230, 230],
    chosen: null,
    way: 'first',
    alt: 'the ring',
  });
  const [, , shaft = ''] = /class="pressed-seam".*?<path d="(.*?)".*?<path d="(.*?)"/s.exec(svg) ?? [];
  const [x0, y0, x1, y1] = [...shaft.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)]
    .slice(0, 2)
    .flatMap(([, x, y]) => [Number(x), Number(y)]) as [number, number, number, number];
  // by hand: the block in 6 pt of room, its seam a quarter round about its lower left corner, pressed to the hollow or away from it
  const [cx, cy] = [6, heightPt - 6];
  const turn = Math.atan2(cy - y0, x0 - cx);
  assert.ok(turn > Math.PI / 6 && turn < Math.PI / 3, `${turn}`);
  // square to the radius there is nothing of it: off the middle the chord's own way would be 0.19 of it
  const [dx, dy] = [x1 - x0, y1 - y0];
  const aside = (dx * (cy - y0) + dy * (x0 - cx)) / (Math.hypot(dx, dy) * Math.hypot(cy - y0, x0 - cx));
  assert.ok(Math.abs(aside) < 0.05, `along the radius: ${aside}`);
  assert.ok(Math.hypot(x1 - x0, y1 - y0) > 3, 'a whole arrow');
});
