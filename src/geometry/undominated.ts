/** What a way to hang costs: openings for air, openings for plastic, and its height. */
type Cost = { readonly vents: number; readonly drains: number; readonly head: number };

/** As the list is read: the fewest openings, then the least head, then the fewest vents. */
export function inOrder<Way extends Cost>(ways: readonly Way[]): readonly Way[] {
  return ways.toSorted(
    (a, b) => a.vents + a.drains - (b.vents + b.drains) || a.head - b.head || a.vents - b.vents,
  );
}

/**
 * Those no other beats, in the order of the list; heads within 2 % of `size` count as equal. One that is left out is beaten
 * by one that stays: whatever beats it has no more openings, so it has been looked at before.
 */
export function undominated<Way extends Cost>(ways: readonly Way[], size: number): readonly Way[] {
  const slack = 0.02 * size;
  const front: Way[] = [];
  for (const one of inOrder(ways)) {
    const isBeaten = front.some(
      ({ vents, drains, head }) => vents <= one.vents && drains <= one.drains && head <= one.head + slack,
    );
    if (!isBeaten) front.push(one);
  }
  return front;
}
