// How does a colour look to eyes that lack one kind of cone, or with its hue left out? Each way of seeing is a matrix on linear
// light. A picture for judging by, not a diagnosis.
import { lightnessOf, parseColour } from './colour.ts';

/** Long, middle or short waves unseen; "grey" keeps the lightness alone. */
export type Sight = 'grey' | 'protan' | 'deutan' | 'tritan';

/** By rows: red, green and blue out of red, green and blue, in linear light. */
export type LightMatrix = readonly [number, number, number, number, number, number, number, number, number];

const y = [0.2126, 0.7152, 0.0722] as const;

/**
 * Of a grey every matrix gives the same grey: its rows add up to 1.
 *
 * @source docs/formulas.md#sight; Machado, Oliveira and Fernandes 2009, severity 1, from memory and checked against the table that the
 * library culori has; grey: the luminance of IEC 61966-2-1
 */
export const sightMatrices: Readonly<Record<Sight, LightMatrix>> = {
  grey: [...y, ...y, ...y],
  protan: [0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998],
  deutan: [0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.01182, 0.04294, 0.968881],
  tritan: [1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.3039],
};

/**
 * The same for many pixels at once: red, green, blue and a fourth, 0 to 255, changed where they stand; the fourth stays.
 */
export const seePixels = (pixels: Uint8ClampedArray, sight: Sight): void => {
  const m = sightMatrices[sight];
  for (let i = 0; i + 3 < pixels.length; i += 4) {
    const r = lightOf[pixels[i] as number] as number;
    const g = lightOf[pixels[i + 1] as number] as number;
    const b = lightOf[pixels[i + 2] as number] as number;
    pixels[i] = channelOf(m[0] * r + m[1] * g + m[2] * b);
    pixels[i + 1] = channelOf(m[3] * r + m[4] * g + m[5] * b);
    pixels[i + 2] = channelOf(m[6] * r + m[7] * g + m[8] * b);
  }
};

/** @param colour #rgb or #rrggbb; RangeError otherwise @returns #rrggbb */
export const seenAs = (colour: string, sight: Sight): string => {
  const read = parseColour(colour);
  if (!read.ok) throw new RangeError(`not a colour: ${colour}`);
  const pixel = new Uint8ClampedArray([1, 3, 5, 0].map((at) => Number.parseInt(read.value.slice(at, at + 2), 16) || 0));
  seePixels(pixel, sight);
  return hex(pixel);
};

/** CIE L* of a colour as it is seen so. */
export const lightnessSeen = (colour: string, sight: Sight): number => lightnessOf(seenAs(colour, sight));

/**
 * The mean of many pixels, in linear light: what a photograph of cloth reads as from across the room.
 *
 * @param pixels red, green, blue and a fourth that does not count; at least one pixel, RangeError otherwise
 * @returns #rrggbb
 * @source docs/formulas.md#mean-colour
 */
export const meanColour = (pixels: Uint8ClampedArray): string => {
  const count = Math.floor(pixels.length / 4);
  if (count === 0) throw new RangeError('a picture without pixels has no colour');
  const sum = [0, 0, 0];
  for (let i = 0; i + 3 < pixels.length; i += 4) {
    for (const c of [0, 1, 2]) sum[c] = (sum[c] as number) + (lightOf[pixels[i + c] as number] as number);
  }
  return hex(sum.map((all) => channelOf(all / count)));
};

const hex = (pixel: ArrayLike<number>): string =>
  `#${[0, 1, 2].map((c) => (pixel[c] as number).toString(16).padStart(2, '0')).join('')}`;

/** Linear light of a channel of 8 bits. @source IEC 61966-2-1, from memory */
const lightOf: readonly number[] = Array.from({ length: 256 }, (_, step) => {
  const c = step / 255;
  return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
});

const fineSteps = 4095;

/** A channel of 8 bits of linear light, by a table fine enough for the steps of dark tones. */
const channels: readonly number[] = Array.from({ length: fineSteps + 1 }, (_, step) => {
  const light = step / fineSteps;
  return Math.round(255 * (light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055));
});

const channelOf = (light: number): number =>
  channels[Math.round(fineSteps * Math.min(1, Math.max(0, light)))] as number;
