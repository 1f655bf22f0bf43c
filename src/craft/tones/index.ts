// Which cloth every patch of a tone is cut from, and whether light and dark read apart.
export { lightnessBy } from './cloth-lightness.ts';
export { clothsSewnAs, type DrawnCloths, planScraps, sewnAs } from './scrap-plan.ts';
export { type ValueNote, valueNotes } from './value-plan.ts';
export { type ValuesNear, valuesNear } from './value-sight.ts';
