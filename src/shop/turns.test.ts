import assert from 'node:assert/strict';
import { test } from 'node:test';
import { turns } from './turns.ts';

const rest = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 5));

test('one piece of work begins when the one before it has ended, whatever became of that', async () => {
  const inTurn = turns();
  const done: string[] = [];
  const work = (name: string, isFaulty = false) =>
    inTurn(
      () => true,
      async () => {
        done.push(`${name} begins`);
        await rest();
        done.push(`${name} ends`);
        if (isFaulty) throw new Error(name);
        return name;
      },
    );
  const all = await Promise.allSettled([work('first'), work('second', true), work('third')]);
  assert.deepEqual(done, ['first begins', 'first ends', 'second begins', 'second ends', 'third begins', 'third ends']);
  assert.deepEqual(
    all.map((one) => (one.status === 'fulfilled' ? one.value : 'failed')),
    ['first', 'failed', 'third'],
  );
});

test('what nobody waits for any more when its turn comes is not begun', async () => {
  const inTurn = turns();
  let isWanted = true;
  let begun = 0;
  const work = async () => {
    begun += 1;
    await rest();
    return 'done';
  };
  const first = inTurn(() => true, work);
  const second = inTurn(() => isWanted, work);
  isWanted = false;
  assert.deepEqual(await Promise.all([first, second]), ['done', null]);
  assert.equal(begun, 1);
});
