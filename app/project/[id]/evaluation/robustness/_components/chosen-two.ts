import type { JudgedBid } from "../../../_components/judged-bids";

type Asked = Readonly<Record<string, string | readonly string[] | undefined>>;

/** The two bids that an address names, else the first two in the order. Null with fewer than two bids. */
export function chosenTwo(ordered: readonly JudgedBid[], asked: Asked): readonly [JudgedBid, JudgedBid] | null {
  const named = (name: string) => ordered.find(({ evaluated }) => evaluated.id === asked[name]);
  const first = named("first") ?? ordered.find((bid) => bid !== named("second"));
  const second = named("second") ?? ordered.find((bid) => bid !== first);
  if (first === undefined || second === undefined) return null;
  if (first !== second) return [first, second];
  const other = ordered.find((bid) => bid !== first);
  return other === undefined ? null : [first, other];
}
