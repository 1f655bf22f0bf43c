// The examples, planned for benches that are not about layouts.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { planQuilt, type QuiltPlan } from '#craft';

const folder = fileURLToPath(new URL('../examples', import.meta.url));
const ending = '.quilt.json';

export const exampleNames: readonly string[] = readdirSync(folder)
  .filter((file) => file.endsWith(ending))
  .map((file) => file.slice(0, -ending.length));

export const planWithoutSearch = (name: string): QuiltPlan => {
  const planned = planQuilt(readFileSync(join(folder, `${name}${ending}`), 'utf8'), { budget: { steps: 0 } });
  if (!planned.ok) throw new Error(`the example ${name} is refused: ${planned.problems[0]?.code}`);
  return planned.value;
};
