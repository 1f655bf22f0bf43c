// Fields: how a length, a count, a cloth or a choice is given.
export { bedWords } from './bed-words.ts';
export { ChoiceKeys } from './choice-keys.tsx';
export { ClothField } from './cloth-field.tsx';
export { CountField } from './count-field.tsx';
export { LengthField } from './length-field.tsx';
export { NameField } from './name-field.tsx';
export { PriceField } from './price-field.tsx';
export { WrittenField } from './written-field.tsx';
