import assert from 'node:assert/strict';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable, Writable } from 'node:stream';
import { after, before, describe, it } from 'node:test';
import type { FastifyInstance } from 'fastify';
import sharp from 'sharp';
import { main } from '#cli';
import { makeShop } from '#shop';
import type { PagesTold, Refusal } from '#wire';

const document = readFileSync('examples/orchard-pair.quilt.json', 'utf8');

describe('the shop', () => {
  let shop: FastifyInstance;
  const pages = mkdtempSync(join(tmpdir(), 'seamstead-pages-'));
  before(async () => {
    writeFileSync(join(pages, 'index.html'), '<!doctype html><title>Workroom</title>');
    shop = await makeShop({ pages });
  });
  after(async () => {
    await shop.close();
    rmSync(pages, { recursive: true });
  });

  it('gives the page, and lets it reach nothing else', async () => {
    const answer = await shop.inject('/');
    assert.equal(answer.statusCode, 200);
    const policy = String(answer.headers['content-security-policy']);
    assert.match(policy, /default-src 'self'/);
    assert.doesNotMatch(policy, /upgrade-insecure-requests/);
  });

  const asked = (url: string, of: { readonly text?: string; readonly type?: string } = {}) =>
    shop.inject({
      method: 'POST',
      url,
      headers: { 'content-type': of.type ?? 'application/json' },
      payload: of.text ?? document,
    });

  it('tells how many pages a print has, how large they are and how long the file', async () => {
    const pdf = await asked('/api/files/pattern.pdf?paper=a4');
    assert.equal(pdf.statusCode, 200, pdf.payload.slice(0, 300));
    assert.equal(pdf.headers['content-type'], 'application/pdf');
    const text = pdf.rawPayload.toString('latin1');
    assert.ok(text.startsWith('%PDF-'));
    // A4 in points (ISO 216, 210 × 297 mm)
    assert.ok(text.includes('/MediaBox [0 0 595.27'));
    const told = (await asked('/api/pages/pattern.pdf?paper=a4')).json<PagesTold>();
    assert.equal(told.bytes, pdf.rawPayload.length);
    assert.equal(told.pages, text.match(/\/Type\s*\/Page\b/g)?.length);
    assert.ok(Math.abs(told.sizePt[0] - 595.276) < 0.01 && Math.abs(told.sizePt[1] - 841.89) < 0.01, `${told.sizePt}`);
    assert.deepEqual(told.missingSigns, []);
    const letter = (await asked('/api/pages/pattern.pdf')).json<PagesTold>();
    // US letter in points
    assert.deepEqual(letter.sizePt, [612, 792]);
    const short = (await asked('/api/pages/pattern.pdf?chapters=cover,cautions')).json<PagesTold>();
    assert.ok(short.pages < letter.pages);
  });

  it('gives a picture of each page, as wide as asked, with the words of its drawings', async () => {
    const page = async (query: string) => (await asked(`/api/page/pattern.pdf?${query}`)).rawPayload;
    const first = await sharp(await page('page=1&width=306')).metadata();
    // half of US letter's points
    assert.deepEqual([first.format, first.width, first.height], ['png', 306, 396]);
    const [second, again] = [await page('page=2&width=306'), await page('page=2&width=306')];
    assert.deepEqual(second, again);
    assert.notDeepEqual(second, await page('page=1&width=306'));
  });

  it('gives the files that the command line writes, byte for byte', async () => {
    const out = mkdtempSync(join(tmpdir(), 'seamstead-files-'));
    try {
      const quiet = () => new Writable({ write: (_chunk, _encoding, done) => done() });
      const terminal = { stdin: Readable.from([]), stdout: quiet(), stderr: quiet() };
      const file = 'examples/bramble-lane.quilt.json';
      const run = (...argv: string[]) => main({ argv: [...argv, '--out', out], ...terminal });
      const wishes = [
        '--sizes',
        'wall',
        '--chapters',
        'cover,cloth,cutting,swatches',
        '--paper',
        'a4',
        '--hand',
        'left',
      ];
      assert.equal(await run('plan', file, ...wishes, '--handout', 'all', '--run-sheet'), 0);
      assert.equal(await run('draw', file, '--as', 'colour'), 0);
      const text = readFileSync(file, 'utf8');
      const names = readdirSync(out);
      assert.ok(names.length >= 14, names.join(' '));
      for (const name of names) {
        const query = 'paper=a4&hand=left&chapters=swatches,cover,cutting,cloth&sizes=wall';
        const answer = await asked(`/api/files/${name}?${query}`, { text });
        assert.equal(answer.statusCode, 200, name);
        assert.ok(answer.rawPayload.equals(readFileSync(join(out, name))), `${name} is another`);
      }
    } finally {
      rmSync(out, { recursive: true });
    }
  });

  it('refuses a document with its problems, each with place and what to do', async () => {
    const wrong = JSON.stringify({ ...JSON.parse(document), unit: 'ell' });
    for (const url of ['/api/files/pattern.pdf', '/api/pages/pattern.pdf', '/api/page/pattern.pdf?page=1&width=100']) {
      const answer = await asked(url, { text: wrong });
      assert.equal(answer.statusCode, 422);
      const { problems } = answer.json<Refusal>();
      assert.equal(problems[0]?.where, '/unit');
      assert.ok(problems[0]?.mend);
    }
    assert.equal((await asked('/api/files/pattern.pdf', { text: 'no JSON' })).statusCode, 422);
  });

  it('refuses wishes that it cannot read, and what the quilt has not, by name', async () => {
    for (const [url, status, told] of [
      ['/api/files/pattern.pdf?paper=a3', 400, /letter or a4/],
      ['/api/files/pattern.pdf?hand=both', 400, /right or left/],
      ['/api/files/pattern.pdf?colour=red', 400, /only paper, hand, chapters, sizes/],
      ['/api/files/pattern.pdf?chapters=', 400, /names with commas/],
      ['/api/files/pattern.pdf?chapters=cover,preface', 400, /no chapter preface.*cover, quilt/],
      ['/api/files/pattern.pdf?chapters=handout', 400, /no chapter handout/],
      ['/api/files/pattern.pdf?sizes=giant', 400, /no size giant/],
      ['/api/page/pattern.pdf?page=0&width=100', 400, /whole number from 1/],
      ['/api/page/pattern.pdf?page=1&width=9000', 400, /from 40 to 2600/],
      ['/api/page/pattern.pdf?page=400&width=100', 404, /no page 400.*It has \d+ pages/],
      ['/api/pages/quilt.svg', 404, /no pages/],
      ['/api/files/secrets.txt', 404, /It has plan.json, cutting.csv/],
      ['/api/files/..%2Fpackage.json', 404, /no such file/],
    ] as const) {
      const answer = await asked(url);
      assert.equal(answer.statusCode, status, url);
      assert.match(answer.payload, told, url);
      assert.ok(answer.json<Refusal>().problems.every(({ mend }) => mend !== ''));
    }
  });

  it('refuses what is no JSON, and an address where nothing is', async () => {
    assert.equal((await asked('/api/files/pattern.pdf', { type: 'text/plain' })).statusCode, 415);
    assert.equal((await shop.inject('/api/else')).statusCode, 404);
    assert.equal((await shop.inject('/../package.json')).statusCode, 404);
  });

  it('says where a workroom is missing', async () => {
    await assert.rejects(makeShop({ pages: join(pages, 'none') }), /npm run build/);
  });
});
