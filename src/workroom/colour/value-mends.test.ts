import assert from 'node:assert/strict';
import { test } from 'node:test';
import { lightnessOf } from '#craft/fabric';
import { answerTo, quilt } from '#documents';
import { litFor } from './lit.ts';
import { seenCloths } from './seen-cloths.ts';
import { recolourTone } from './tone-edits.ts';
import { mendsFor } from './value-mends.ts';

const cabins = (cloths: Readonly<Record<string, string>>) =>
  quilt({
    fabrics: Object.entries(cloths).map(([id, colour]) => ({ id, colour })),
    blocks: [
      {
        id: 'cabin',
        recipe: {
          kind: 'log-cabin',
          centre: '1',
          centreTone: 'hearth',
          rounds: [{ width: '1', tones: ['light', 'light', 'dark', 'dark'] }],
        },
        colourings: { default: { hearth: 'a', light: 'a', dark: 'b' } },
      },
    ],
    top: {
      rows: [
        [{ block: 'cabin' }, { plain: 'b' }],
        [{ plain: 'b' }, { block: 'cabin' }],
      ],
    },
  });

test('each cloth offered parts the halves once it is taken, and it is the one that changes least', () => {
  // by CIE L*: 50, 54, then 68 and 82 above, 30 below
  const document = cabins({ a: '#808080', b: '#777777', paler: '#a6a6a6', palest: '#cccccc', deep: '#474747' });
  const { values, picture } = answerTo(document);
  const [near] = values;
  assert.ok(near && near.sight === null);
  const cloths = seenCloths(document, null);
  const mends = mendsFor({ near, document, cloths });
  assert.deepEqual(
    mends.map(({ tone, cloth, way }) => [tone, cloth, way]),
    [
      ['light', 'paler', 'lighter'],
      ['dark', 'deep', 'darker'],
    ],
  );
  for (const { tone, cloth } of mends) {
    const mended = structuredClone(document);
    recolourTone(mended, { tone, cloths: [cloth], blocks: [near.block], colouring: near.colouring });
    assert.deepEqual(answerTo(mended).values, []);
  }
  // the blocks are lit, and the plain squares beside them are not
  assert.deepEqual(litFor({ near: [near], problems: [], picture, document }), ['block 0', 'block 1']);
});

test('where no cloth of the quilt would do, none is offered', () => {
  const document = cabins({ a: '#808080', b: '#777777', c: '#7b7b7b' });
  const [near] = answerTo(document).values;
  assert.ok(near);
  assert.deepEqual(mendsFor({ near, document, cloths: seenCloths(document, null) }), []);
});

test('what is near for one kind of eyes is mended by what those eyes see', () => {
  // a red that protan eyes see darker: 53 as most see it
  const document = cabins({ a: '#ff0000', b: '#4b4b4b', pink: '#ff8080', brick: '#ee4433' });
  const [near] = answerTo(document).values;
  assert.equal(near?.sight, 'protan');
  assert.ok(near);
  const [mend] = mendsFor({ near, document, cloths: seenCloths(document, null) });
  assert.equal(mend?.way, 'lighter');
  assert.ok(lightnessOf('#ff8080') > 60);
  const mended = structuredClone(document);
  recolourTone(mended, { tone: mend?.tone ?? '', cloths: [mend?.cloth ?? ''], blocks: ['cabin'] });
  assert.deepEqual(answerTo(mended).values, []);
});

test('what a problem names is lit: a cloth wherever it lies, a block, a strip', () => {
  const document = cabins({ a: '#ffffff', b: '#777777' });
  document.top.borders = [{ width: '2', fabric: 'a' }];
  const { picture } = answerTo(document);
  const lit = (where: string) => litFor({ near: [], problems: [{ where }], picture, document });
  assert.ok(lit('/fabrics/0/usableWidth').includes('block 0'));
  assert.ok(lit('/top/borders/0/width').length > 0 && !lit('/top/borders/0/width').includes('block 0'));
  assert.deepEqual(lit('/blocks/0/recipe'), ['block 0', 'block 1']);
  assert.deepEqual(lit('/notes'), []);
});
