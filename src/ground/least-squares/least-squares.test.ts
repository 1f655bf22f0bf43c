import assert from 'node:assert/strict';
import { test } from 'node:test';
import { cumulativeStdNormalProbability, linearRegression, mean, sampleVariance, sum } from 'simple-statistics';
import { chanceFrom } from '#ground/chance';
import { fitOf, inNinetyFive, logDeterminant, product, rareChiSquare, whitenerFor } from './index.ts';

const near = (found: number, expected: number, within: number): void =>
  assert.ok(Math.abs(found - expected) <= within, `found ${found}, expected ${expected}`);

const chance = chanceFrom(9);
const places = Array.from({ length: 12 }, (_, i) => i + chance());
const values = places.map((x) => 3 - 0.4 * x + chance() - 0.5);
const ones = places.map(() => 1);

test('a line through values of even weight is that of a general library of statistics', () => {
  // simple-statistics: linearRegression
  const { m, b } = linearRegression(places.map((x, i) => [x, values[i] as number]));
  const fit = fitOf(values, [ones, places]);
  near(fit?.coefficients[0] as number, b, 1e-9);
  near(fit?.coefficients[1] as number, m, 1e-9);
  // simple-statistics: the variance of a slope is that of the values over the sum of squares of the places
  near(fit?.covariance[1]?.[1] as number, 1 / (sampleVariance(places) * (places.length - 1)), 1e-9);
});

test('of values of uneven weight the mean is the one weighted by them', () => {
  const deviations = places.map((_, i) => 1 + (i % 3));
  const covariance = deviations.map((d, i) => deviations.map((_, j) => (i === j ? d * d : 0)));
  const whiten = whitenerFor(covariance);
  const weights = deviations.map((d) => 1 / (d * d));
  const weighted = sum(values.map((value, i) => value * (weights[i] as number))) / sum(weights);
  near(fitOf(whiten(values), [whiten(ones)])?.coefficients[0] as number, weighted, 1e-12);
});

test('values that vary together are made independent: what they share counts once', () => {
  // derived: two readings with one error in common of variance 3, and one of 1 each: their mean has 3 + 1/2
  const whiten = whitenerFor([
    [4, 3],
    [3, 4],
  ]);
  const fit = fitOf(whiten([1, 2]), [whiten([1, 1])]);
  near(fit?.coefficients[0] as number, mean([1, 2]), 1e-12);
  near(fit?.covariance[0]?.[0] as number, 3.5, 1e-12);
  assert.throws(
    () =>
      whitenerFor([
        [1, 2],
        [2, 1],
      ]),
    RangeError,
  );
});

test('a curve through values of even weight leaves nothing that its three columns could still take', () => {
  // general statistics: residuals of least squares are square to every column, and the covariance is the inverse of the columns' products
  const columns = [ones, places, places.map((x) => x * x)];
  const fit = fitOf(values, columns);
  assert.ok(fit);
  const rest = values.map((value, i) =>
    columns.reduce((all, column, j) => all - (fit.coefficients[j] as number) * (column[i] as number), value),
  );
  for (const column of columns) near(product(rest, column) / product(column, column), 0, 1e-9);
  const normal = columns.map((a) => columns.map((b) => product(a, b)));
  normal.forEach((row, i) => {
    fit.covariance.forEach((_, j) => {
      const column = fit.covariance.map((of) => of[j] as number);
      near(product(row, column), i === j ? 1 : 0, 1e-6);
    });
  });
  near(fit.chiSquare, product(rest, rest), 1e-9);
});

test('how far values spread together is told by the determinant of their covariance', () => {
  // by hand: 4 · 4 − 3 · 3 = 7
  const spread = logDeterminant([
    [4, 3],
    [3, 4],
  ]);
  near(spread, Math.log(7), 1e-12);
});

test('columns that say the same have no fit', () => {
  assert.equal(fitOf(values, [ones, ones.map(() => 2)]), null);
  assert.equal(fitOf(values, [ones.map(() => 0)]), null);
  assert.equal(fitOf(values, [ones, places, places.map((x) => 3 - x / 7)]), null);
});

test('limits are those of the tables', () => {
  // simple-statistics: the table of the normal distribution, 0.0250 beyond 1.96
  near(cumulativeStdNormalProbability(inNinetyFive), 0.975, 1e-4);
  // tables of the chi-square distribution, 0.001 (from memory): 29.59 for 10 degrees, 59.70 for 30; the cube root comes within 0.2 of both
  for (const [degrees, value] of [
    [10, 29.59],
    [30, 59.7],
  ] as const) {
    near(rareChiSquare(degrees), value, 0.2);
  }
});
