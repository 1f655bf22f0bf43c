import assert from 'node:assert/strict';
import { test } from 'node:test';
import { answerTo, isAnswered, quilt, star } from '#documents';
import type { Section } from './place-edits.ts';
import { becomePlain, fillUp, movePart, putBeside, rootPath, takePartOut, widen } from './section-edits.ts';
import type { Top } from './top-edits.ts';

const [a, b, c] = [{ block: 'a' }, { block: 'b' }, { block: 'c' }];
const top = (sections: Section): Top => ({ set: 'sections', sections });

test('a part is laid beside another in its run, or in a run of the two', () => {
  const own = top({ across: [a, b] });
  assert.equal(putBeside(own, { path: `${rootPath}/across/1`, side: 'left', part: c }), `${rootPath}/across/1`);
  assert.deepEqual(own.sections, { across: [a, c, b] });
  assert.equal(putBeside(own, { path: `${rootPath}/across/0`, side: 'below', part: c }), `${rootPath}/across/0/down/1`);
  assert.deepEqual(own.sections, { across: [{ down: [a, c] }, c, b] });
  // a run takes it at its own end
  assert.equal(putBeside(own, { path: rootPath, side: 'right', part: a }), `${rootPath}/across/3`);
  assert.equal(putBeside(own, { path: rootPath, side: 'above', part: a }), `${rootPath}/down/0`);
  assert.deepEqual(own.sections, { down: [a, { across: [{ down: [a, c] }, c, b, a] }] });
  assert.equal(putBeside(own, { path: `${rootPath}/down/7`, side: 'left', part: c }), null);
});

test('a part moves in its run and stays within it', () => {
  const own = top({ down: [a, b, c] });
  assert.equal(movePart(own, { path: `${rootPath}/down/0`, by: 1 }), `${rootPath}/down/1`);
  assert.deepEqual(own.sections, { down: [b, a, c] });
  assert.equal(movePart(own, { path: `${rootPath}/down/0`, by: -1 }), `${rootPath}/down/0`);
  assert.equal(movePart(own, { path: rootPath, by: 1 }), rootPath);
  assert.deepEqual(own.sections, { down: [b, a, c] });
});

test('what is taken out leaves no empty run, and the last part of all stays', () => {
  const own = top({ down: [{ across: [a] }, b] });
  takePartOut(own, `${rootPath}/down/0/across/0`);
  assert.deepEqual(own.sections, { down: [b] });
  assert.equal(takePartOut(own, `${rootPath}/down/0`), `${rootPath}/down/0`);
  assert.deepEqual(own.sections, { down: [b] });
  const more = top({ across: [a, b, c] });
  assert.equal(takePartOut(more, `${rootPath}/across/2`), `${rootPath}/across/1`);
  assert.deepEqual(more.sections, { across: [a, b] });
});

test('plain parts are strips of a width, or fills', () => {
  const own = top({ across: [a, { fill: 'oat' }] });
  const path = `${rootPath}/across/1`;
  becomePlain(own, { path, kind: 'strip', width: '2' });
  widen(own, { path, width: '3' });
  assert.deepEqual(own.sections, { across: [a, { strip: 'oat', width: '3' }] });
  becomePlain(own, { path, kind: 'fill', width: '2' });
  becomePlain(own, { path: `${rootPath}/across/0`, kind: 'fill', width: '2' });
  assert.deepEqual(own.sections, { across: [a, { fill: 'oat' }] });
});

test('blocks of different sizes fit when what the smaller one lacks is filled up, and the whole can be sewn', () => {
  const document = (sections: Section) =>
    quilt({
      blocks: [star({ id: 'a', size: '12' }), star({ id: 'b', size: '9' })],
      top: { set: 'sections', sections },
    });
  for (const where of ['end', 'both'] as const) {
    const own = document({ across: [a, b] });
    assert.ok(!isAnswered(own));
    fillUp(own.top, { path: `${rootPath}/across/1`, cloth: 'light', where });
    const { figures, picture } = answerTo(own);
    // 12 and 9 wide, 12 high
    assert.deepEqual(figures.top, [21, 12]);
    assert.equal(picture.strips.filter(({ role }) => role === 'fill').length, where === 'both' ? 2 : 1);
  }
});
