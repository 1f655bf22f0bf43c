import assert from 'node:assert/strict';
import { test } from 'node:test';
import { planQuilt } from '#craft';
import { purchaseChanges } from '#craft/shopping';
import { example } from '#documents';
import { lessonsOf, patternPages } from '#paper/pages';
import { type PictureOf, pictureFiles, picturesOf, type QuiltFile, quiltFiles, sizesPlanned } from './index.ts';

const planned = planQuilt(example('bramble-lane'), { budget: { steps: 0 } });
assert.ok(planned.ok);
const plan = planned.value;
const search = { steps: 0, solver: null };
const changes = purchaseChanges({ plan, search });
const sizes = sizesPlanned({ plan, ids: ['wall'], solver: null, say: () => undefined });
assert.ok(sizes.ok);

const files = (of: Partial<Parameters<typeof quiltFiles>[0]> = {}) =>
  quiltFiles({
    plan,
    sizes: [],
    changes: () => changes,
    chapters: null,
    handouts: [],
    runSheet: 'none',
    hand: 'right',
    search,
    ...of,
  });
const named = (list: readonly QuiltFile[], name: string) => {
  const file = list.find((one) => one.name === name);
  assert.ok(file, name);
  return file;
};
const pagesIn = (list: readonly QuiltFile[], name: string) => {
  const file = named(list, name);
  assert.ok(file.as === 'pdf');
  return file.pages();
};

test('for the left hand pattern and handouts are other pages; tables, pictures and run sheets are the same', () => {
  const [handout = ''] = lessonsOf(plan);
  const made = (hand: 'right' | 'left') =>
    files({ hand, handouts: [handout], runSheet: 'printed', chapters: ['cutting'] }).map((file) => [
      file.name,
      file.as === 'pdf' ? file.pages().facts : file.as === 'png' ? file.svg() : file.text(),
    ]);
  const [right, left] = [made('right'), made('left')];
  const differ = left.filter(([, made], i) => JSON.stringify(made) !== JSON.stringify(right[i]?.[1]));
  assert.deepEqual(
    differ.map(([name]) => name),
    ['pattern.pdf', `handout-${handout}.pdf`],
  );
});

test('what a quilt gives is named in one order, other sizes, handouts and run sheets where they are wished for', () => {
  const plain = ['plan.json', 'cutting.csv', 'quilt.svg', 'quilt.png', 'pattern.pdf'];
  assert.deepEqual(
    files().map(({ name }) => name),
    plain,
  );
  const all = files({ sizes: sizes.value, handouts: lessonsOf(plan), runSheet: 'printed' });
  assert.deepEqual(
    all.map(({ name }) => name),
    [
      ...plain.slice(0, 2),
      'plan-wall.json',
      'cutting-wall.csv',
      ...plain.slice(2),
      ...lessonsOf(plan).map((block) => `handout-${block}.pdf`),
      'run-sheet.pdf',
    ],
  );
});

test('the pattern has its chapters, its sizes, and what would change the purchase', () => {
  assert.ok(changes.length > 0);
  const usual = pagesIn(files(), 'pattern.pdf');
  assert.deepEqual(usual.facts, patternPages(plan, { changes }).facts);
  assert.notDeepEqual(usual.facts, patternPages(plan).facts);
  const wished = pagesIn(files({ sizes: sizes.value, chapters: ['cautions', 'cover'] }), 'pattern.pdf').facts;
  assert.deepEqual(wished.chapters, ['cover', 'cautions']);
  assert.equal(wished.sizes.length, 1);
});

test('nothing is made before it is asked for, and a picture is drawn once for lines and dots', () => {
  let asked = 0;
  const list = files({
    changes: () => {
      asked += 1;
      return changes;
    },
  });
  assert.equal(asked, 0);
  pagesIn(list, 'pattern.pdf');
  assert.equal(asked, 1);
  const [picture] = picturesOf(plan);
  assert.ok(picture);
  let drawn = 0;
  const counted: PictureOf = {
    ...picture,
    draw: (look) => {
      drawn += 1;
      return picture.draw(look);
    },
  };
  const [lines, dots] = pictureFiles({ picture: counted, look: 'grey' });
  assert.ok(lines?.as === 'text' && dots?.as === 'png');
  assert.deepEqual([lines.name, dots.name], ['quilt-grey.svg', 'quilt-grey.png']);
  assert.equal(lines.text(), dots.svg());
  assert.equal(drawn, 1);
});
