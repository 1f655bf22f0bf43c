export type { Hatch } from './hatch.ts';
export type { ClothSign, ClothSigns } from './sign.ts';
export { clothSignsFor, signOf } from './sign.ts';
