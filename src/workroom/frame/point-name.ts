// What a restore point is called before she calls it otherwise.
import type { Editing, JsonObject } from '#workroom/editing';

export const pointName = ({ steps, done }: Editing<JsonObject>): string => {
  const last = steps[done - 1];
  return last === undefined ? 'As it began' : `After “${last.what}”`;
};
