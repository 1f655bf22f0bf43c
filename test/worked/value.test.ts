// Light and dark that do not read apart, by hand from CIE L* of greys.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { valuesNear } from '#craft';
import { isReversed } from '#craft/fabric';
import type { Written } from '../documents/documents.ts';
import { near, planned, quilt, rectangle } from '../documents/documents.ts';

const grey = (id: string, colour: string): Written => ({ id, colour });

const cabin = (colouring: Written): Written => ({
  id: 'cabin',
  recipe: {
    kind: 'log-cabin',
    centre: 1,
    centreTone: 'hearth',
    rounds: [{ width: 1, tones: ['l1', 'l1', 'd1', 'd1'] }],
  },
  colourings: { default: { hearth: 'mid', ...colouring } },
});

// CIE 15 L*, IEC 61966-2-1 sRGB: #777777 has 50.03 (derived, case colour-mid-grey), white 100 and black 0 by definition
const fabrics = [grey('mid', '#777777'), grey('near', '#808080'), grey('white', '#ffffff'), grey('black', '#000000')];

const noteOf = (blocks: readonly Written[]) => {
  const plan = planned(quilt({ fabrics, blocks, top: { rows: [blocks.map(({ id }) => ({ block: id }))] } }));
  return plan.notes.find(({ code }) => code === 'fabric/values-near');
};

test('two halves of a log cabin that are nearly one grey are told, with both cloths and figures', () => {
  const note = noteOf([cabin({ l1: 'near', d1: 'mid' })]);
  assert.ok(note?.code === 'fabric/values-near');
  assert.deepEqual([note.light.fabrics, note.dark.fabrics, note.block], [['near'], ['mid'], 'cabin']);
  near(note.dark.lightness, 50.034439, 1e-4);
});

test('halves that differ by 15 or more are not told, nor one cloth all round', () => {
  assert.equal(noteOf([cabin({ l1: 'white', d1: 'mid' })]), undefined);
  assert.equal(noteOf([cabin({ l1: 'mid', d1: 'mid' })]), undefined);
});

const two = (left: string, right: string, colouring: Written): Written => ({
  id: 'two',
  size: 2,
  patches: {
    grid: [2, 1],
    list: [
      { points: rectangle(0, 0, 1, 1), tone: left },
      { points: rectangle(1, 0, 1, 1), tone: right },
    ],
  },
  colourings: { default: colouring },
});

test('a tone named light that is darker than one named dark is told as well', () => {
  const note = noteOf([two('light-1', 'dark', { 'light-1': 'black', dark: 'white' })]);
  assert.ok(note?.code === 'fabric/values-near');
  near(note.light.lightness - note.dark.lightness, -100, 1e-3);
  // they read apart well enough, the other way round
  assert.ok(isReversed(note));
  const alike = noteOf([two('light-1', 'dark', { 'light-1': 'mid', dark: 'near' })]);
  assert.ok(alike?.code === 'fabric/values-near' && !isReversed(alike));
});

test('two tones of other names are measured where they share an edge', () => {
  assert.ok(noteOf([two('sky', 'sea', { sky: 'near', sea: 'mid' })]));
  assert.equal(noteOf([two('sky', 'sea', { sky: 'white', sea: 'mid' })]), undefined);
});

test('halves that read apart for most, and not for eyes without the cones for long or for short waves, are told for those', () => {
  // by the matrices of docs/formulas.md#sight: a pure red of L* 53 goes down to 39 for protan eyes, and a grey stays as it is
  const own = [
    { id: 'mid', colour: '#777777' },
    { id: 'red', colour: '#ff0000' },
    { id: 'soot', colour: '#4b4b4b' },
  ];
  const block = cabin({ l1: 'red', d1: 'soot' });
  const colourways = [{ id: 'plain', fabrics: { red: { colour: '#ffffff' } } }];
  const plan = planned(quilt({ fabrics: own, blocks: [block], colourways, top: { rows: [[{ block: 'cabin' }]] } }));
  assert.deepEqual(
    plan.notes.filter(({ code }) => code === 'fabric/values-near'),
    [],
  );
  const told = valuesNear(plan);
  assert.deepEqual(
    told.map(({ sight, colourway, block: id }) => [sight, colourway, id]),
    [['protan', null, 'cabin']],
  );
  near(told[0]?.dark.lightness ?? 0, 31.7, 0.3);
});

test('what most see as near is told once, with its colourway', () => {
  const colourways = [{ id: 'dull', fabrics: { white: { colour: '#7c7c7c' } } }];
  const block = cabin({ l1: 'white', d1: 'mid' });
  const plan = planned(quilt({ fabrics, blocks: [block], colourways, top: { rows: [[{ block: 'cabin' }]] } }));
  assert.deepEqual(
    valuesNear(plan).map(({ sight, colourway }) => [sight, colourway]),
    [[null, 'dull']],
  );
});
