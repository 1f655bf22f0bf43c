import assert from 'node:assert/strict';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, describe, it } from 'node:test';
import type { FastifyInstance } from 'fastify';
import { makeShop } from '#shop';
import type { PagePictures, Refusal } from '#wire';

const document = readFileSync('examples/orchard-pair.quilt.json', 'utf8');
const json = { 'content-type': 'application/json' };

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

  it('prints a document as PDF, on the paper asked for', async () => {
    const answer = await shop.inject({
      method: 'POST',
      url: '/api/pattern?paper=a4',
      headers: json,
      payload: document,
    });
    assert.equal(answer.statusCode, 200, answer.payload.slice(0, 300));
    assert.equal(answer.headers['content-type'], 'application/pdf');
    const text = answer.rawPayload.toString('latin1');
    assert.ok(text.startsWith('%PDF-'));
    // A4 in points (ISO 216, 210 × 297 mm)
    assert.ok(text.includes('/MediaBox [0 0 595.27'));
  });

  it('gives pictures of the pages', async () => {
    const answer = await shop.inject({ method: 'POST', url: '/api/pages', headers: json, payload: document });
    const { svg, pages: count, sizePt } = answer.json<PagePictures>();
    assert.ok(svg.startsWith('<svg') && count >= 8);
    // US letter in points
    assert.deepEqual(sizePt, [612, 792]);
  });

  it('refuses a document with its problems, each with place and what to do', async () => {
    const wrong = JSON.stringify({ ...JSON.parse(document), unit: 'ell' });
    const answer = await shop.inject({ method: 'POST', url: '/api/pattern', headers: json, payload: wrong });
    assert.equal(answer.statusCode, 422);
    const { problems } = answer.json<Refusal>();
    assert.equal(problems[0]?.where, '/unit');
    assert.ok(problems[0]?.mend);
  });

  it('refuses what is no JSON, an unknown paper, and an address where nothing is', async () => {
    const asked = (url: string, headers: Record<string, string>) =>
      shop.inject({ method: 'POST', url, headers, payload: document });
    assert.equal((await asked('/api/pattern', { 'content-type': 'text/plain' })).statusCode, 415);
    assert.equal((await asked('/api/pattern?paper=a3', json)).statusCode, 400);
    assert.equal((await shop.inject('/api/else')).statusCode, 404);
    assert.equal((await shop.inject('/../package.json')).statusCode, 404);
  });

  it('says where a workroom is missing', async () => {
    await assert.rejects(makeShop({ pages: join(pages, 'none') }), /npm run build/);
  });
});
