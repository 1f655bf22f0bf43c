import assert from 'node:assert/strict';
import { test } from 'node:test';
import { limits } from '#craft/limits';
import { roomForPhoto } from './photo-room.ts';

const photo = (characters: number) => ({ image: 'x'.repeat(characters), width: '6' });

test('a photograph has the room that all others leave, not that of the one whose place it takes', () => {
  const quilt = {
    fabrics: [
      { id: 'oat', colour: '#efe6d0', photo: photo(100) },
      { id: 'bark', colour: '#3a2a20', photo: photo(20) },
    ],
    colourways: [{ id: 'night', fabrics: { oat: { photo: photo(3) }, bark: { colour: '#000000' } } }],
  };
  // three quarters of what a document may be, our own figure (photo-room.ts); less 20 + 3, 100 + 20, 100 + 20 + 3
  const most = (limits.characters * 3) / 4;
  assert.equal(roomForPhoto(quilt, { cloth: 'oat', colourway: null }), most - 23);
  assert.equal(roomForPhoto(quilt, { cloth: 'oat', colourway: 'night' }), most - 120);
  assert.equal(roomForPhoto(quilt, { cloth: 'bark', colourway: 'night' }), most - 123);
});
