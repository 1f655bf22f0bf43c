// Quilt documents as the workroom has them, and what it is told of them.

import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { inspect } from 'node:util';
import type { QuiltDocument } from '#craft/design';
import { askMeasures, askQuilt, type Measured, type QuiltAnswer, type QuiltPicture } from '#workroom/asking';
import type { JsonObject } from '#workroom/editing';

const ending = '.quilt.json';

/** One of examples/, by its name without an ending. */
export const example = (name: string): QuiltDocument =>
  JSON.parse(readFileSync(`examples/${name}${ending}`, 'utf8')) as QuiltDocument;

/** All of examples/, in the order of their names. */
export const examples = (): readonly QuiltDocument[] =>
  readdirSync('examples')
    .filter((file) => file.endsWith(ending))
    .toSorted()
    .map((file) => example(file.slice(0, -ending.length)));

/** As a file holds it, where an editor's types have it. */
const asFile = (document: QuiltDocument): JsonObject => document as unknown as JsonObject;

export const isAnswered = (document: QuiltDocument): boolean => askQuilt(asFile(document)).ok;

/** Of the first good layouts; or a failed test that shows the problems. */
export const answerTo = (document: QuiltDocument): QuiltAnswer => {
  const reply = askQuilt(asFile(document));
  assert.ok(reply.ok, reply.ok ? '' : inspect(reply.problems, { depth: 6 }));
  return reply.value;
};

export const pictureOf = (document: QuiltDocument): QuiltPicture => answerTo(document).picture;

export const measuresOf = (document: QuiltDocument): Measured => askMeasures(asFile(document));
