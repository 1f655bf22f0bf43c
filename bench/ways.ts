// What the front of ways to make costs on the examples that have units, and what its ends come to. Each run begins with nothing remembered.

import { readdirSync, readFileSync } from 'node:fs';
import { planQuilt, type QuiltPlan } from '#craft';
import { type Front, searchFront, usualFront } from '#craft/front';
import { recalling } from '#ground/recall';
import { printTable } from './table.ts';

const examples = new URL('../examples/', import.meta.url);
const ending = '.quilt.json';
const runs = 3;

export const printWays = (): void => {
  const rows: (readonly string[])[] = [];
  for (const file of readdirSync(examples).filter((one) => one.endsWith(ending))) {
    const planned = planQuilt(readFileSync(new URL(file, examples), 'utf8'), { budget: { steps: 0 } });
    if (!planned.ok) throw new Error(`${file} is refused: ${planned.problems[0]?.code}`);
    const found = Array.from({ length: runs }, () => timed(planned.value)).toSorted((a, b) => a.seconds - b.seconds);
    const { front, weighed, stood, seconds } = found[Math.floor(runs / 2)] as (typeof found)[number];
    if (front.choices === 1) continue;
    rows.push([
      file.slice(0, -ending.length),
      front.choices > 1e6 ? 'more than a million' : String(front.choices),
      String(front.tried),
      String(front.points.length),
      `${least(front, 'cloth').toFixed(3)} ${planned.value.quilt.unit}`,
      `${least(front, 'minutes')} min`,
      told(front, planned.value.quilt.unit),
      `${weighed.toFixed(2)} s`,
      `${stood.toFixed(2)} s`,
      `${seconds.toFixed(2)} s`,
    ]);
  }
  printTable([
    [
      'quilt',
      'choices',
      'planned',
      'points',
      'least cloth',
      'least time',
      'no choice takes less than',
      'processor time until all are weighed',
      'until the least cloth',
      'with the proof, median of 3',
    ],
    ...rows,
  ]);
};

interface Timed {
  readonly front: Front;
  /** Seconds of processor time until the last choice was weighed, until no more cloth was saved, and until all was bounded. */
  readonly weighed: number;
  readonly stood: number;
  readonly seconds: number;
}

const timed = (plan: QuiltPlan): Timed => {
  const begun = process.cpuUsage();
  const since = (): number => {
    const { user, system } = process.cpuUsage(begun);
    return (user + system) / 1e6;
  };
  let [weighed, tried] = [0, 0];
  let stood = 0;
  let cloth = Number.POSITIVE_INFINITY;
  const search = searchFront({ plan, ...usualFront, memory: recalling(5000) });
  for (let at = search.next(); ; at = search.next()) {
    const now = least(at.value, 'cloth');
    if (now < cloth) stood = since();
    cloth = now;
    if (at.value.tried > tried) weighed = since();
    tried = at.value.tried;
    if (at.done) return { front: at.value, weighed, stood, seconds: since() };
  }
};

/** What is proven of cloth and time, however cloth is laid out. */
const told = ({ least }: Front, unit: string): string =>
  [
    ...(least.cloth === null ? [] : [`${least.cloth.toFixed(3)} ${unit}`]),
    ...(least.minutes === null ? [] : [`${least.minutes} min`]),
  ].join(', ');

const least = ({ points }: Front, of: 'cloth' | 'minutes'): number => Math.min(...points.map((point) => point[of]));
