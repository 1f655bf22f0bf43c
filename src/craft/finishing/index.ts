// Finishing: what goes round and behind the top, what hangs it, and the bed that it is for.
export { type BackingPanels, backingFor, joinAllowance, panelsFor } from './backing.ts';
export { type BattingPackage, battingPackageFor } from './batting.ts';
export { type BedName, type BedTask, bedNames, mattressOf, quiltForBed } from './beds.ts';
export { type BiasBinding, type BiasTask, biasBindingFor, biasFromSquare, biasSquareFor } from './bias.ts';
export { type BindingCount, bindingFor, bindingTail } from './binding.ts';
export { type EvenLines, evenLines } from './quilting.ts';
export { type Sleeve, sleeveFor } from './sleeve.ts';
export { lockstitchThread, type Thread, threadFor, withWaste } from './thread.ts';
