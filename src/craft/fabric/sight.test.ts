import assert from 'node:assert/strict';
import { test } from 'node:test';
import { filterDeficiencyDeuter, filterDeficiencyProt, filterDeficiencyTrit } from 'culori/fn';
import { lightnessOf, lightnessSeen, meanColour, type Sight, seenAs, sightMatrices } from '#craft/fabric';

const sights: readonly Sight[] = ['grey', 'protan', 'deutan', 'tritan'];
const channelsOf = (colour: string): readonly number[] =>
  [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));
const apart = (a: string, b: string): number =>
  Math.max(...channelsOf(a).map((channel, i) => Math.abs(channel - (channelsOf(b)[i] as number))));

test('the matrices are those of the table that the library culori has of the same paper', () => {
  const filters = { protan: filterDeficiencyProt, deutan: filterDeficiencyDeuter, tritan: filterDeficiencyTrit };
  const columns = [
    { mode: 'rgb', r: 1, g: 0, b: 0 },
    { mode: 'rgb', r: 0, g: 1, b: 0 },
    { mode: 'rgb', r: 0, g: 0, b: 1 },
  ] as const;
  for (const [sight, filter] of Object.entries(filters)) {
    const seen = columns.map((column) => filter(1)(column) as { r: number; g: number; b: number });
    const matrix = (['r', 'g', 'b'] as const).flatMap((row) => seen.map((column) => column[row]));
    assert.deepEqual([...sightMatrices[sight as Sight]], matrix, sight);
  }
});

test('greys are seen as they are, whatever the eyes', () => {
  for (const sight of sights) {
    const m = sightMatrices[sight];
    // the paper gives six places
    for (const row of [0, 3, 6])
      assert.ok(Math.abs((m[row] as number) + (m[row + 1] as number) + (m[row + 2] as number) - 1) < 2e-6, sight);
    for (const grey of ['#000000', '#0d0d0d', '#777777', '#c3c3c3', '#ffffff'])
      assert.ok(apart(seenAs(grey, sight), grey) <= 1, `${sight} ${grey} ${seenAs(grey, sight)}`);
  }
});

test('in grey a colour keeps its lightness', () => {
  for (const colour of ['#b1452f', '#2f3c44', '#efe6d0', '#d8b36a', '#4f5d2f', '#3355ff']) {
    // half a step of 8 bits is a quarter of L* at most
    assert.ok(Math.abs(lightnessSeen(colour, 'grey') - lightnessOf(colour)) < 0.35, colour);
  }
});

/** L, M, S of linear sRGB: XYZ by IEC 61966-2-1, cones by Smith and Pokorny 1975; from memory. */
const cones = ([r, g, b]: readonly [number, number, number]): readonly [number, number, number] => {
  const x = 0.4124 * r + 0.3576 * g + 0.1805 * b;
  const y = 0.2126 * r + 0.7152 * g + 0.0722 * b;
  const z = 0.0193 * r + 0.1192 * g + 0.9505 * b;
  return [0.15514 * x + 0.54312 * y - 0.03286 * z, -0.15514 * x + 0.45684 * y + 0.03286 * z, 0.01608 * z];
};

/**
 * Viénot, Brettel and Mollon 1999, worked out from what the paper says: the missing cone's answer is the one that makes white and
 * the blue of the screen stay as they are. Luminance of what is seen so, 0 to 1.
 */
const luminanceAfterVienot = (sight: 'protan' | 'deutan', rgb: readonly [number, number, number]): number => {
  const [white, blue, own] = [cones([1, 1, 1]), cones([0, 0, 1]), cones(rgb)];
  const [missing, kept] = sight === 'protan' ? ([0, 1] as const) : ([1, 0] as const);
  // missing = p · kept + q · short, for white and for blue
  const det = white[kept] * blue[2] - blue[kept] * white[2];
  const p = (white[missing] * blue[2] - blue[missing] * white[2]) / det;
  const q = (white[kept] * blue[missing] - blue[kept] * white[missing]) / det;
  const filled = p * own[kept] + q * own[2];
  // luminance is the sum of the long and the middle cones
  return filled + own[kept];
};

const linear = (colour: string): readonly [number, number, number] =>
  channelsOf(colour).map((channel) => {
    const c = channel / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
const lightness = (luminance: number): number =>
  luminance > (6 / 29) ** 3 ? 116 * Math.cbrt(luminance) - 16 : (29 / 3) ** 3 * luminance;

test('how light colours of cloth look is near what the other paper gives', () => {
  for (const sight of ['protan', 'deutan'] as const) {
    for (const colour of ['#b1452f', '#2f3c44', '#efe6d0', '#d8b36a', '#4f5d2f', '#7a3b57', '#37648b', '#c0392b']) {
      const other = lightness(luminanceAfterVienot(sight, linear(colour)));
      const own = lightnessSeen(colour, sight);
      // our own bound: half the difference that reads apart
      assert.ok(Math.abs(own - other) < 7.5, `${sight} ${colour}: ${own.toFixed(1)}, ${other.toFixed(1)}`);
    }
  }
});

test('known confusions are confused, and only by those eyes', () => {
  // a red and a green of one lightness, as the trade’s Christmas cloths (from memory: the confusion of protan and deutan eyes)
  const hueApart = (a: string, b: string): number => {
    const [first, second] = [channelsOf(a), channelsOf(b)];
    return Math.abs((first[0] as number) - (first[1] as number) - ((second[0] as number) - (second[1] as number)));
  };
  const [red, green] = ['#b5522f', '#5f7a2c'];
  for (const sight of ['protan', 'deutan'] as const) {
    assert.ok(hueApart(seenAs(red, sight), seenAs(green, sight)) < hueApart(red, green) / 3, sight);
  }
  assert.ok(hueApart(seenAs(red, 'tritan'), seenAs(green, 'tritan')) > hueApart(red, green) / 2);
  // deep red goes near black where long waves are not seen
  assert.ok(lightnessSeen('#c00000', 'protan') < lightnessOf('#c00000') - 8);
  assert.ok(lightnessSeen('#c00000', 'deutan') > lightnessSeen('#c00000', 'protan') + 8);
});

test('the mean of a picture is that of its light', () => {
  const pixels = (...colours: readonly string[]) =>
    new Uint8ClampedArray(colours.flatMap((colour) => [...channelsOf(colour), 255]));
  assert.equal(meanColour(pixels('#b1452f', '#b1452f')), '#b1452f');
  // half black and half white is a luminance of a half: sRGB 188, by IEC 61966-2-1 worked by hand
  assert.equal(meanColour(pixels('#000000', '#ffffff')), '#bcbcbc');
  assert.throws(() => meanColour(new Uint8ClampedArray(0)), RangeError);
});
