// Things with three measures, each the better the less, in an order in which the first few show the whole range.

const hair = 1e-9;

/** The three ends, then always the one that is farthest from all before it, each measure taken as a share of its range. */
export const spreadOver = <T>(
  things: readonly T[],
  threeOf: (thing: T) => readonly [number, number, number],
): readonly T[] => {
  const values = things.map(threeOf);
  const ranges = [0, 1, 2].map((i) => {
    const all = values.map((three) => three[i] as number);
    return [Math.min(...all), Math.max(...all)] as const;
  });
  const places = values.map((three) =>
    three.map((value, i) => {
      const [low, high] = ranges[i] as readonly [number, number];
      return high - low < hair ? 0 : (value - low) / (high - low);
    }),
  );
  const order = [...new Set([0, 1, 2].map((i) => endOf(places, i)))].filter((at) => at < things.length);
  const far = places.map(() => Number.POSITIVE_INFINITY);
  const taken = new Set<number>();
  const take = (to: number): void => {
    taken.add(to);
    places.forEach((place, at) => {
      const by = place.reduce((all, value, i) => all + (value - (places[to]?.[i] ?? 0)) ** 2, 0);
      far[at] = Math.min(far[at] as number, by);
    });
  };
  for (const at of order) take(at);
  while (order.length < things.length) {
    const next = far.reduce(
      (best, by, at) => (!taken.has(at) && (best < 0 || by > (far[best] as number)) ? at : best),
      -1,
    );
    order.push(next);
    take(next);
  }
  return order.map((at) => things[at] as T);
};

/** The least in one measure; of those alike the least in all together. */
const endOf = (places: readonly (readonly number[])[], i: number): number =>
  places.reduce((best, place, at) => {
    const other = places[best] as readonly number[];
    const by = (place[i] as number) - (other[i] as number);
    const rest = sumOf(place) - sumOf(other);
    return by < -hair || (Math.abs(by) <= hair && rest < -hair) ? at : best;
  }, 0);

const sumOf = (place: readonly number[]): number => place.reduce((all, value) => all + value, 0);
