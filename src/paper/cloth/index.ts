export type { Hatch } from './hatch.ts';
export { hatchFor } from './hatch.ts';
export { lettersFor } from './letters.ts';
export type { ClothSign, ClothSigns } from './sign.ts';
export { clothSignsFor, signOf } from './sign.ts';
