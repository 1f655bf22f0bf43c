export type { Hatch } from './hatch.ts';
export type { Look } from './looks.ts';
export { signsAs } from './looks.ts';
export type { ClothSign, ClothSigns } from './sign.ts';
export { clothSignsFor, signOf } from './sign.ts';
