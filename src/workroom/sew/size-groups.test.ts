import assert from 'node:assert/strict';
import { test } from 'node:test';
import { type SizeStep, sizeGroups, stepsText } from './size-groups.ts';

const step = (number: number, place: string, across = '9½ in'): SizeStep => ({
  number,
  place,
  heading: 'B goes to the right',
  across,
  down: '',
});

test('steps side by side in one row are a group, and what is not measured is in none', () => {
  const steps = [
    step(1, 'Row 1'),
    step(2, 'Row 1'),
    step(3, 'Row 2', ''),
    step(4, 'Joining the rows'),
    step(5, 'Row 1'),
  ];
  assert.deepEqual(
    sizeGroups(steps).map((group) => `${group.place}, ${stepsText(group.steps)}`),
    ['Row 1, steps 1 to 2', 'Joining the rows, step 4', 'Row 1, step 5'],
  );
});

test('the steps of a block are one group without a name', () => {
  assert.deepEqual(
    sizeGroups([step(1, ''), step(2, '')]).map(({ place, steps }) => [place, steps.length]),
    [['', 2]],
  );
});
