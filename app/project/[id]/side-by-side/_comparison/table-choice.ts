import { type BidOrder, type BidOrders, bidOrders } from "./bid-order";
import { type RowChoice, rowChoices } from "./row-choice";

/** What a reader chose to see. It stands in the page's address, so that a link shows the same. */
export type TableChoice = Readonly<{
  rows: RowChoice;
  hidesEqual: boolean;
  /** Ids of the bids that are shown, at least one. */
  shown: readonly string[];
  /** A named order, or all ids as the reader moved them. */
  order: BidOrder | readonly string[];
  /** The bid that is kept in front; empty for none. */
  pinned: string;
}>;

export type Side = "left" | "right";

/** Names of the fields, in the address and in the form. */
export const fields = {
  rows: "rows",
  equal: "equal",
  bid: "bid",
  order: "order",
  pin: "pin",
  move: "move",
  open: "open",
} as const;

export const startingChoice = ({ entered }: BidOrders): TableChoice => ({
  rows: "all",
  hidesEqual: false,
  shown: entered,
  order: "entered",
  pinned: "",
});

const isKeyOf = <Key extends string>(words: Readonly<Record<Key, string>>, text: string): text is Key =>
  Object.hasOwn(words, text);

/** What an address asks for. What it names and this project does not have is passed over. */
export function choiceFrom(address: URLSearchParams, orders: BidOrders): TableChoice {
  const known = (ids: readonly string[]) => orders.entered.filter((id) => ids.includes(id));
  const rows = address.get(fields.rows) ?? "";
  const shown = known(address.getAll(fields.bid));
  const [pinned = ""] = known([address.get(fields.pin) ?? ""]);
  const choice: TableChoice = {
    rows: isKeyOf(rowChoices, rows) ? rows : "all",
    hidesEqual: address.get(fields.equal) === "hidden",
    shown: shown.length === 0 ? orders.entered : shown,
    order: orderFrom(address.get(fields.order) ?? "", orders),
    pinned,
  };
  const [, moved, side] = /^(left|right)\.(.*)$/.exec(address.get(fields.move) ?? "") ?? [];
  return moved === undefined || side === undefined ? choice : movedBid(choice, orders, side, moved as Side);
}

/** An order by name, or ids in a row. Bids that the list leaves out follow as entered. */
export function orderFrom(text: string, { entered }: BidOrders): TableChoice["order"] {
  if (isKeyOf(bidOrders, text)) return text;
  const named = [...new Set(text.split(","))].filter((id) => entered.includes(id));
  if (named.length === 0) return "entered";
  return [...named, ...entered.filter((id) => !named.includes(id))];
}

/** The part of an address that `choiceFrom` reads back; empty for what a page starts with. */
export function addressOf(choice: TableChoice, orders: BidOrders): string {
  const address = new URLSearchParams();
  if (choice.rows !== "all") address.set(fields.rows, choice.rows);
  if (choice.hidesEqual) address.set(fields.equal, "hidden");
  if (choice.shown.length < orders.entered.length) for (const id of choice.shown) address.append(fields.bid, id);
  if (choice.order !== "entered") address.set(fields.order, orderText(choice.order));
  if (choice.pinned !== "") address.set(fields.pin, choice.pinned);
  return address.toString().replaceAll("%2C", ",");
}

export const orderText = (order: TableChoice["order"]): string => (typeof order === "string" ? order : order.join(","));

const allInOrder = ({ order }: TableChoice, orders: BidOrders): readonly string[] =>
  typeof order === "string" ? orders[order] : order;

/** The bids that are shown, from the first column to the last: the one kept in front, then the others in order. */
export function columnsOf(choice: TableChoice, orders: BidOrders): readonly string[] {
  const shown = allInOrder(choice, orders).filter((id) => choice.shown.includes(id));
  return shown.toSorted((one, other) => Number(other === choice.pinned) - Number(one === choice.pinned));
}

/** The column that a bid would change places with; null at the edge and for a bid that is kept in front. */
export function neighbourOf(choice: TableChoice, orders: BidOrders, bid: string, side: Side): string | null {
  const columns = columnsOf(choice, orders).filter((id) => id !== choice.pinned);
  const at = columns.indexOf(bid);
  return at === -1 ? null : (columns[side === "left" ? at - 1 : at + 1] ?? null);
}

/** The bid one column further to a side. Bids that are not shown keep their places. */
export function movedBid(choice: TableChoice, orders: BidOrders, bid: string, side: Side): TableChoice {
  const neighbour = neighbourOf(choice, orders, bid, side);
  if (neighbour === null) return choice;
  const swapped = new Map([
    [bid, neighbour],
    [neighbour, bid],
  ]);
  return { ...choice, order: allInOrder(choice, orders).map((id) => swapped.get(id) ?? id) };
}
