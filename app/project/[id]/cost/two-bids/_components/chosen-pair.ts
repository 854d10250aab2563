import type { PricedBid } from "../../_components/priced-bid";

type Asked = Readonly<Record<string, string | readonly string[] | undefined>>;

/**
 * The two bids that an address asks for: its own where it names two that are priced, else the cheapest and the next one.
 * Null with fewer than two priced bids.
 */
export function chosenPair(bids: readonly PricedBid[], asked: Asked): readonly [PricedBid, PricedBid] | null {
  const byCost = bids.toSorted((one, other) => one.presentValue - other.presentValue);
  const named = (name: string) => bids.find(({ bid }) => bid.id === asked[name]);
  const first = named("first") ?? byCost.find((bid) => bid !== named("second"));
  const second = named("second") ?? byCost.find((bid) => bid !== first);
  if (first === undefined || second === undefined) return null;
  if (first !== second) return [first, second];
  const other = byCost.find((bid) => bid !== first);
  return other === undefined ? null : [first, other];
}
