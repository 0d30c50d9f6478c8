/** A point of a trade-off: what it costs and what it is worth. */
export interface Offer {
  readonly cost: number;
  readonly worth: number;
}

/**
 * The offers for which no other one is at least as cheap and at least as good, and better in one of the two; cheapest
 * first. Of equal offers the first stays.
 */
export function tradeOffFront<T extends Offer>(offers: readonly T[]): readonly T[] {
  const ordered = offers
    .map((offer, place) => ({ offer, place }))
    .sort((a, b) => a.offer.cost - b.offer.cost || b.offer.worth - a.offer.worth || a.place - b.place);
  const front: T[] = [];
  let best = Number.NEGATIVE_INFINITY;
  for (const { offer } of ordered) {
    if (offer.worth <= best) continue;
    best = offer.worth;
    front.push(offer);
  }
  return front;
}
