import assert from 'node:assert/strict';
import { test } from 'node:test';
import { atNewestVersion, type Migration, newestVersion } from '#craft/design';

/** Two made-up steps: version 1 said "seams", version 2 "allowance", version 3 says "seam" with a unit. */
const table: { readonly migrations: readonly Migration[]; readonly newest: number } = {
  migrations: [
    { from: 2, migrate: ({ allowance, ...rest }) => ({ ...rest, seam: `${allowance} in` }) },
    { from: 1, migrate: ({ seams, ...rest }) => ({ ...rest, allowance: seams }) },
  ],
  newest: 3,
};

const document = (version: unknown, rest: object = {}) => ({ format: 'seamstead-quilt', version, ...rest });

test('an older document goes through every step in turn, and today’s through none', () => {
  const today = document(3, { seam: '1/4 in' });
  assert.deepEqual(atNewestVersion(document(1, { seams: '1/4' }), table), { ok: true, value: today });
  assert.deepEqual(atNewestVersion(document(2, { allowance: '1/4' }), table), { ok: true, value: today });
  assert.deepEqual(atNewestVersion(today, table), { ok: true, value: today });
});

test('a document that is migrated is not changed in place', () => {
  const old = Object.freeze(document(1, { seams: '1/4' }));
  atNewestVersion(old, table);
  assert.deepEqual(old, document(1, { seams: '1/4' }));
});

test('a newer version, none, or one that is no whole number from 1 is refused by name', () => {
  const codes = (version: unknown) => {
    const read = atNewestVersion(document(version), table);
    return read.ok ? [] : read.problems.map(({ code }) => code);
  };
  assert.deepEqual(codes(4), ['design/newer-version']);
  for (const version of [undefined, null, 0, -1, 1.5, '3', Number.NaN, [3]]) {
    assert.deepEqual(codes(version), ['design/version'], String(version));
  }
});

test('a step that is missing from the table is our own mistake and is thrown', () => {
  assert.throws(() => atNewestVersion(document(1), { migrations: [], newest: 2 }), /no migration from version 1/);
});

test('the table leads to the newest version that the reader takes', () => {
  assert.equal(newestVersion, 1);
});
