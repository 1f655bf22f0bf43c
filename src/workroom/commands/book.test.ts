import assert from 'node:assert/strict';
import { test } from 'node:test';
import { type Command, commandBook, found } from './book.ts';
import { keysOf, keyWords } from './keys.ts';

const command = (id: string, more: Partial<Command> = {}): Command => ({
  id,
  words: id,
  part: 'Set',
  run: () => undefined,
  ...more,
});
const none = { ctrlKey: false, metaKey: false, shiftKey: false, altKey: false };

test('a command is there while its view is, and keys reach it', () => {
  const book = commandBook();
  const leave = book.offer([command('turn', { keys: ['T'] })]);
  assert.equal(book.forKeys('T')?.id, 'turn');
  leave();
  assert.equal(book.forKeys('T'), null);
});

test('what cannot be done now has no keys', () => {
  const book = commandBook();
  book.offer([command('undo', { keys: ['Mod+Z'], isOff: true })]);
  assert.equal(book.forKeys('Mod+Z'), null);
});

test('of one command offered twice the later counts, once', () => {
  const book = commandBook();
  book.offer([command('undo', { words: 'Undo' })]);
  book.offer([command('undo', { words: 'Undo the turn' })]);
  assert.deepEqual(
    book.all().map(({ words }) => words),
    ['Undo the turn'],
  );
});

test('keys are written alike however they were pressed', () => {
  assert.equal(keysOf({ ...none, key: 'z', metaKey: true, shiftKey: true }), 'Mod+Shift+Z');
  assert.equal(keysOf({ ...none, key: 'Z', ctrlKey: true, shiftKey: true }), 'Mod+Shift+Z');
  assert.equal(keysOf({ ...none, key: '?', shiftKey: true }), '?');
  assert.equal(keyWords('Mod+Shift+Z', 'other'), 'Ctrl Shift Z');
  assert.equal(keyWords('Mod+Shift+Z', 'apple'), '⌘⇧Z');
  assert.equal(keyWords('+', 'other'), '+');
  assert.equal(keyWords('Mod++', 'other'), 'Ctrl +');
  assert.equal(keyWords(' ', 'other'), 'Space');
});

test('a search finds commands by any of their words', () => {
  const commands = [command('a', { words: 'Turn the block' }), command('b', { words: 'Undo', part: 'Edit' })];
  assert.deepEqual(
    found(commands, 'BLOCK set').map(({ id }) => id),
    ['a'],
  );
  assert.equal(found(commands, '').length, 2);
});
