import { fields } from "./table-choice";

/**
 * What an address opens, as names of buttons. One that is named twice is closed again: without script a press sends
 * what is open and the button that was pressed.
 */
export function openedIn(address: URLSearchParams): ReadonlySet<string> {
  const opened = new Set<string>();
  for (const key of address.getAll(fields.open)) if (!opened.delete(key)) opened.add(key);
  return opened;
}

/** The place of a row and of a bid in a button's name, each counted from 0; null where the name is no such thing. */
export function placeIn(key: string): Readonly<{ row: number; bid: number }> | null {
  const [, row, bid] = /^(\d{1,6})\.(\d{1,6})\.[\w-]+$/.exec(key) ?? [];
  return row === undefined || bid === undefined ? null : { row: Number(row), bid: Number(bid) };
}
