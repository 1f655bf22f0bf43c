// Which steps of cutting are done: kept in this browser for each quilt, never in the quilt. A step is known by what it says, so that
// a tick stays as long as the step does, whatever else of the plan changes.
import { keptBeside, parsed } from '#workroom/room';

export type Ticks = readonly string[];

/** The newest; our own figure, more than any quilt has steps. */
const most = 4000;

export const ticksIn = (text: string | null): Ticks => {
  const kept = parsed(text);
  return Array.isArray(kept) ? kept.filter((key): key is string => typeof key === 'string').slice(-most) : [];
};

export const ticked = (ticks: Ticks, key: string): Ticks => [...ticks.filter((one) => one !== key), key].slice(-most);

export const unticked = (ticks: Ticks, keys: ReadonlySet<string>): Ticks => ticks.filter((one) => !keys.has(one));

/** Ticks of one cloth that no step of it has any more. */
export const strayTicks = (ticks: Ticks, of: { readonly cloth: string; readonly keys: ReadonlySet<string> }): Ticks =>
  ticks.filter((key) => key.startsWith(`${of.cloth}: `) && !of.keys.has(key));

export const ticksOf = keptBeside({ name: 'cut', read: ticksIn });
