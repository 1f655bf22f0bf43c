import assert from 'node:assert/strict';
import { after, test } from 'node:test';
import { patternPages } from '#paper';
import { documentOf, planOf, specimenDocument } from '#paper/specimen';
import { PressFailure } from './failure.ts';
import { openPress } from './press.ts';

const press = openPress();
after(() => press.close());
const pages = patternPages(planOf(specimenDocument));

test('the pattern prints on Letter and on A4, tagged, and the same twice', async () => {
  for (const [paper, box] of [
    // the sizes of Letter (8½ × 11 in) and of A4 (ISO 216, 210 × 297 mm) in points
    ['letter', '/MediaBox [0 0 612 792]'],
    ['a4', '/MediaBox [0 0 595.27'],
  ] as const) {
    const first = await press.pdf(pages, { paper });
    const again = await press.pdf(pages, { paper });
    assert.ok(first.pages >= 8);
    assert.deepEqual(first.bytes, again.bytes);
    const text = Buffer.from(first.bytes).toString('latin1');
    assert.ok(text.startsWith('%PDF-'));
    assert.ok(text.includes(box), `${paper} has no ${box}`);
    assert.ok(text.includes('pdfuaid'), 'the file does not say that it is PDF/UA');
    assert.deepEqual(first.missingSigns, []);
  }
});

test('the same pages are had as pictures, each of the paper’s size, with all letters that stand on it', async () => {
  const { pages: drawn, sizePt } = await press.pictures(pages, { paper: 'letter' });
  assert.equal(drawn.length, (await press.pdf(pages, { paper: 'letter' })).pages);
  // Letter, 8½ × 11 in, in points
  assert.deepEqual(sizePt, [612, 792]);
  for (const svg of drawn) {
    const used = new Set([...svg.matchAll(/xlink:href="#(\w+)"/g)].map(([, id]) => id));
    const had = new Set([...svg.matchAll(/<symbol id="(\w+)"/g)].map(([, id]) => id));
    assert.deepEqual(had, used);
    // each is moved to its own paper: what lies on another page would lie far below
    assert.ok(![...svg.matchAll(/^ {4}<g transform="matrix\(1 0 0 1 0 ([\d.]+)/gm)].length);
    assert.ok(!svg.includes('<text'));
    for (const [, inner = ''] of svg.matchAll(/data:image\/svg\+xml;base64,([^"]+)"/g))
      assert.ok(!Buffer.from(inner, 'base64').toString().includes('<text'));
  }
});

test('words that look like code, and signs that no font of ours has, still print', async () => {
  const title = '#panic("x") $x^2$ [*b*] @ref \\ <tag> "quotes" // ← ‘so’ 🧵 עברית';
  const named = specimenDocument.fabrics.map((fabric) => ({ ...fabric, name: title }));
  const hostile = patternPages(
    planOf(documentOf({ title, designer: title, notes: `= ${title}\n+ #`, fabrics: named })),
  );
  const { missingSigns } = await press.pdf(hostile, { paper: 'letter' });
  assert.ok(missingSigns.includes('🧵') && missingSigns.includes('ע'), missingSigns.join(' '));
  assert.ok(!missingSigns.includes('←'));
});

test('a fault in the pages is named with its file and line', async () => {
  const broken = {
    ...pages,
    sources: {
      ...pages.sources,
      '/cover.typ': '#let cover(facts) = [\n\n#nothing-of-that-name]\n#let cloths(facts) = []',
    },
  };
  await assert.rejects(press.pdf(broken, { paper: 'letter' }), (error: unknown) => {
    assert.ok(error instanceof PressFailure);
    assert.equal(error.faults[0]?.file, '/cover.typ');
    assert.equal(error.faults[0]?.line, 3);
    return true;
  });
  // and the press still works
  assert.ok((await press.pdf(pages, { paper: 'letter' })).pages > 0);
});

test('a picture without an alternative text is a failure, not a silent gap', async () => {
  const main = '#set document(title: "t", date: none)\n#image("/pictures/quilt.svg")';
  await assert.rejects(press.pdf({ ...pages, sources: { '/main.typ': main } }, { paper: 'letter' }), /alt/i);
});

test('an unknown font is a failure', async () => {
  const main = '#set document(title: "t", date: none)\n#set text(font: "No Such Type")\nwords';
  await assert.rejects(press.pdf({ ...pages, sources: { '/main.typ': main } }, { paper: 'letter' }), PressFailure);
});

test('pages can read no file of the machine', async () => {
  const main = '#set document(title: "t", date: none)\n#read("/../../etc/hostname")';
  await assert.rejects(press.pdf({ ...pages, sources: { '/main.typ': main } }, { paper: 'letter' }), PressFailure);
});
