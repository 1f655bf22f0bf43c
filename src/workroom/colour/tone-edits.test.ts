import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { QuiltDocument } from '#craft/design';
import { answerTo, examples, pictureOf } from '#documents';
import { drawAgain, exchangeTones, isScrappy, recolourTone, tonesOfQuilt } from './tone-edits.ts';

const all = examples();
const example = (title: string): QuiltDocument => {
  const found = all.find((one) => one.title === title);
  assert.ok(found, title);
  return structuredClone(found);
};
/** By placed block the cloths of a tone's patches. */
const shown = (quilt: QuiltDocument, tone: string): readonly string[] => {
  const { entries, placed } = pictureOf(quilt);
  return placed.flatMap(({ entry, fabrics }) =>
    (entries[entry]?.patches ?? []).flatMap((patch, i) => (patch.tone === tone ? [fabrics?.[i] ?? patch.fabric] : [])),
  );
};

test('every tone that is drawn in an example is offered, with the blocks that have it', () => {
  for (const quilt of all) {
    const offered = tonesOfQuilt(quilt);
    for (const { id, patches } of pictureOf(quilt).entries) {
      for (const tone of new Set(patches.map((patch) => patch.tone))) {
        // a frame's cloth stands for no tone; a tone of a pieced centre belongs to the block in it
        const own = quilt.blocks.find((block) => block.id === id);
        if (tone === '' || own?.frame?.some(({ fabric }) => fabric === tone)) continue;
        assert.ok(
          offered.some((use) => use.tone === tone),
          `${quilt.title}: ${tone} of ${id}`,
        );
      }
    }
  }
});

test('light stands before dark, and dark before what has a name of its own', () => {
  assert.deepEqual(
    tonesOfQuilt(example('Harvest Home')).map(({ tone }) => tone),
    ['light 1', 'light 2', 'light 3', 'dark 1', 'dark 2', 'dark 3', 'hearth'],
  );
  assert.deepEqual(
    tonesOfQuilt(example('Lantern Lane'))
      .map(({ tone }) => tone)
      .slice(0, 3),
    ['light', 'dark', 'accent'],
  );
});

test('a tone recoloured in the whole quilt is shown in the new cloth wherever it lies', () => {
  const quilt = example('Bramble lane');
  recolourTone(quilt, { tone: 'dark', cloths: ['moss'], blocks: quilt.blocks.map(({ id }) => id) });
  const cloths = shown(quilt, 'dark');
  assert.ok(cloths.length > 0 && cloths.every((cloth) => cloth === 'moss'), [...new Set(cloths)].join());
});

test('in chosen blocks alone the others keep their cloth', () => {
  const quilt = example('Bramble lane');
  const before = structuredClone(quilt);
  recolourTone(quilt, { tone: 'light', cloths: ['bramble'], blocks: ['fly'] });
  assert.deepEqual(quilt.blocks[0], before.blocks[0]);
  assert.equal(quilt.blocks[1]?.colourings?.default?.light, 'bramble');
});

test('several cloths are a list that is drawn from, one is that cloth', () => {
  const quilt = example('Bramble lane');
  recolourTone(quilt, { tone: 'light', cloths: ['cream', 'moss', 'cream'], blocks: ['nine', 'fly'] });
  assert.deepEqual(quilt.blocks[0]?.colourings?.default?.light, ['cream', 'moss']);
  assert.deepEqual(new Set(shown(quilt, 'light')), new Set(['cream', 'moss']));
  assert.ok(isScrappy(quilt));
  recolourTone(quilt, { tone: 'light', cloths: ['cream'], blocks: ['nine', 'fly'] });
  assert.ok(!isScrappy(quilt));
});

test('a tone that names a cloth itself gets an entry, and no block gets a tone that it has not', () => {
  const quilt = example('Heron Hanging');
  const before = structuredClone(quilt);
  const [use] = tonesOfQuilt(quilt);
  const other = quilt.fabrics.find(({ id }) => id !== use?.cloths[0])?.id ?? '';
  assert.ok(use);
  recolourTone(quilt, { tone: use.tone, cloths: [other], blocks: quilt.blocks.map(({ id }) => id) });
  assert.ok(shown(quilt, use.tone).every((cloth) => cloth === other));
  for (const [i, block] of quilt.blocks.entries())
    if (!use.blocks.includes(block.id)) assert.deepEqual(block, before.blocks[i]);
});

test('drawn again, the scrappy cloths lie otherwise, and no neighbours get alike that were not', () => {
  const quilt = example('Crumb tin');
  assert.ok(isScrappy(quilt));
  const drawn = (of: QuiltDocument) => {
    const { picture, notes } = answerTo(of);
    return {
      cloths: JSON.stringify(picture.placed.map(({ fabrics }) => fabrics)),
      alike: notes.filter(({ code }) => code === 'fabric/equal-neighbours').length,
    };
  };
  const first = drawn(quilt);
  drawAgain(quilt);
  assert.equal(quilt.draw, 2);
  const second = drawn(quilt);
  assert.notEqual(second.cloths, first.cloths);
  assert.equal(second.alike, first.alike);
  // the last that a document may ask for
  quilt.draw = 1_000_000;
  drawAgain(quilt);
  assert.equal(quilt.draw, 1);
});

test('a block that has no such tone is left as it is', () => {
  const quilt = example('Orchard Gate');
  const before = structuredClone(quilt);
  recolourTone(quilt, { tone: 'wing', cloths: ['oat'], blocks: quilt.blocks.map(({ id }) => id) });
  const touched = quilt.blocks.filter((block, i) => JSON.stringify(block) !== JSON.stringify(before.blocks[i]));
  assert.equal(touched.length, tonesOfQuilt(before).find(({ tone }) => tone === 'wing')?.blocks.length);
  assert.ok(touched.length < quilt.blocks.length);
});

test('two tones change places in one colouring alone', () => {
  const quilt = example('Bramble lane');
  const [nine] = quilt.blocks;
  assert.ok(nine?.colourings);
  nine.colourings.other = { light: 'cream', dark: 'bramble' };
  const before = structuredClone(quilt);
  const of = { block: 'nine', colouring: 'default', tones: ['light', 'dark'] } as const;
  exchangeTones(quilt, of);
  assert.deepEqual(nine.colourings.default, { light: 'bramble', dark: 'cream' });
  assert.deepEqual(nine.colourings.other, before.blocks[0]?.colourings?.other);
  assert.deepEqual(quilt.blocks.slice(1), before.blocks.slice(1));
  exchangeTones(quilt, of);
  assert.deepEqual(quilt, before);
  // a tone without an entry names a cloth itself
  nine.colourings.default = { light: 'cream' };
  exchangeTones(quilt, of);
  assert.deepEqual(nine.colourings.default, { light: 'dark', dark: 'cream' });
});
