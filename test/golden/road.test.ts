// Every example through every stage of the road, and once what sets the pages of all, against what was accepted after looking at it.
// `npm run accept -- NAME` writes what one example gives now, `npm run accept -- pages` what sets the pages.

import assert from 'node:assert/strict';
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { test } from 'node:test';
import { inspect } from 'node:util';
import { planQuilt } from '#craft';
import { leftHandText, sourcesText, stagesOf } from './stages.ts';

const examples = new URL('../../examples/', import.meta.url);
const ending = '.quilt.json';
const names = readdirSync(examples)
  .filter((file) => file.endsWith(ending))
  .map((file) => file.slice(0, -ending.length));

/** What is not an example's own. */
const pages = 'pages';

/** It has what either hand finds otherwise: strips that are cut apart, and strip sets. */
const alsoLeftHanded = 'ferry-landing';

/** Without a solver, so that the same bytes come out wherever it cannot be loaded. */
const stagesFor = (name: string): Readonly<Record<string, string>> => {
  if (name === pages) return { 'pattern.typ': sourcesText() };
  const outcome = planQuilt(readFileSync(new URL(`${name}${ending}`, examples), 'utf8'));
  assert.ok(outcome.ok, outcome.ok ? '' : inspect(outcome.problems, { depth: 6 }));
  const stages = stagesOf(outcome.value);
  return name === alsoLeftHanded ? { ...stages, 'left-hand.txt': leftHandText(outcome.value) } : stages;
};

const accepting = process.env.SEAMSTEAD_ACCEPT;

if (accepting === undefined) {
  for (const name of [...names, pages]) {
    const folder = new URL(`${name}/`, import.meta.url);
    const stages = stagesFor(name);
    for (const [file, text] of Object.entries(stages)) {
      test(`${name} gives the accepted ${file}`, () => {
        const accepted = readFileSync(new URL(file, folder), 'utf8');
        if (text !== accepted)
          assert.fail(`${firstDifference(accepted, text)}\nif it is meant: npm run accept -- ${name}`);
      });
    }
    test(`${name} has no accepted stage that the road no longer has`, () => {
      assert.deepEqual(readdirSync(folder).toSorted(), Object.keys(stages).toSorted());
    });
  }
} else {
  test(`${accepting} is written down as accepted`, () => {
    const known = [...names, pages];
    assert.ok(known.includes(accepting), `nothing named ${accepting}; there are ${known.join(', ')}`);
    const folder = new URL(`${accepting}/`, import.meta.url);
    const stages = stagesFor(accepting);
    rmSync(folder, { recursive: true, force: true });
    mkdirSync(folder);
    for (const [file, text] of Object.entries(stages)) writeFileSync(new URL(file, folder), text);
  });
}

/** The first line that differs, with its number: whole files are too long to read in a report. */
function firstDifference(accepted: string, found: string): string {
  const [before, now] = [accepted.split('\n'), found.split('\n')];
  const line = before.findIndex((text, i) => text !== now[i]);
  const at = line < 0 ? before.length : line;
  return `line ${at + 1} was\n  ${before[at]?.slice(0, 400)}\nand is\n  ${now[at]?.slice(0, 400)}`;
}
