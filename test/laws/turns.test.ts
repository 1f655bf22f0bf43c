// Where the words at the machine say that the newest part of a unit lies, there it lies when the next seam is at the right hand:
// read from the pages of every example, computed from the patches of the block.

import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { test } from 'node:test';
import { type BlockPlan, planQuilt, type QuiltPlan } from '#craft';
import { centroid, type Point } from '#ground/plane';
import { patternPages } from '#paper';

const planOf = (name: string): QuiltPlan => {
  const planned = planQuilt(readFileSync(`examples/${name}`, 'utf8'), { budget: { steps: 0 } });
  assert.ok(planned.ok, name);
  return planned.value;
};

const eighth = Math.SQRT1_2;
const saidWays: Readonly<Record<string, Point>> = {
  'at the right': { x: 1, y: 0 },
  'at the lower right': { x: eighth, y: eighth },
  'at the bottom': { x: 0, y: 1 },
  'at the lower left': { x: -eighth, y: eighth },
  'at the left': { x: -1, y: 0 },
  'at the upper left': { x: -eighth, y: -eighth },
  'at the top': { x: 0, y: -1 },
  'at the upper right': { x: eighth, y: -eighth },
};

const meanOf = (block: BlockPlan, patches: readonly number[]): Point => {
  const all = patches.map((i) => centroid(block.patches[i]?.points ?? []));
  return { x: all.reduce((sum, p) => sum + p.x, 0) / all.length, y: all.reduce((sum, p) => sum + p.y, 0) / all.length };
};

const less = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });
const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;

/** How well the words agree with the drawing: cosine of the angle between them; null where the unit lies elsewhere in the block. */
const agreement = (block: BlockPlan, at: number, words: string): number | null => {
  const step = block.steps[at];
  const made = block.steps.find(({ makes }) => makes === step?.join[0]);
  if (step === undefined || made === undefined) return null;
  const unit = [...made.patches[0], ...made.patches[1]].sort((a, b) => a - b).join();
  if ([...step.patches[0]].sort((a, b) => a - b).join() !== unit) return null;
  const place = Object.keys(saidWays).find((way) => new RegExp(`${way};`).test(words));
  if (place === undefined) return null;
  // a curve lies at the machine by its ends
  const [a, b] = (step.kind === 'curved' ? [step.line[0], step.line.at(-1)] : step.line) as [Point, Point];
  const along = less(b, a);
  const square = { x: -along.y / Math.hypot(along.x, along.y), y: along.x / Math.hypot(along.x, along.y) };
  const isToward = dot(square, less(meanOf(block, step.patches[1]), a)) > 0;
  const right = isToward ? square : { x: -square.x, y: -square.y };
  const newest = less(meanOf(block, made.patches[1]), meanOf(block, made.patches[0]));
  const lies = { x: dot(newest, right), y: newest.y * right.x - newest.x * right.y };
  return dot(lies, saidWays[place] as Point) / Math.hypot(lies.x, lies.y);
};

test('the newest part of a unit lies at the machine where the words say', () => {
  let checked = 0;
  for (const name of readdirSync('examples').filter((file) => file.endsWith('.quilt.json'))) {
    const plan = planOf(name);
    const pages = patternPages(plan, { chapters: ['blocks'] }).facts.blocks;
    plan.blocks
      .filter(({ patches }) => patches.length > 0)
      .forEach((block, i) => {
        pages[i]?.steps.forEach(({ machine }, at) => {
          const agrees = agreement(block, at, machine);
          if (agrees === null) return;
          checked++;
          assert.ok(agrees > 0.7, `${name}, ${block.id}, step ${at + 1}: ${machine}`);
        });
      });
  }
  // enough are read for the law to say something
  assert.ok(checked > 100, String(checked));
});
