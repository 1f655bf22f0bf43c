// Finishing: what goes round and behind the top.
export { type BackingPanels, backingFor, joinAllowance, panelsFor } from './backing.ts';
export { type BindingCount, bindingFor, bindingTail } from './binding.ts';
export { minutesOf } from './minutes.ts';
