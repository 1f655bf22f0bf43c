import assert from 'node:assert/strict';
import { test } from 'node:test';
import { example, pictureOf } from '#documents';
import { litFor } from './lit.ts';

test('a cloth that a problem is of lights what is cut from it, and other problems light what they lie at', () => {
  const document = example('harvest-home-throw');
  const picture = pictureOf(document);
  const lit = (where: string) => litFor({ near: [], problems: [{ where }], picture, document });
  const nth = (id: string) => document.fabrics.findIndex((fabric) => fabric.id === id);
  // the document: the outer border is slate, the inner one oat, and slate lies in every block; ember in the centres alone
  assert.equal(lit(`/fabrics/${nth('ember')}/usableWidth`).length, 36);
  assert.equal(lit(`/fabrics/${nth('slate')}/usableWidth`).length, 36 + 4);
  assert.deepEqual(lit('/top/rows/1/2'), ['block 8']);
  assert.equal(lit('/top/borders/1/width').length, 4);
  assert.equal(lit('/blocks/0/recipe').length, 36);
  assert.deepEqual(lit('/top'), []);
});
