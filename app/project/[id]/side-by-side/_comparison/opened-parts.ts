import { fields } from "./table-choice";

/** What of a cell is opened: one of its statements, the working, the reasons of its status, or its findings. */
export type Part = number | "working" | "why" | "findings";

/** A cell by the ids of its row and its bid. */
export type Place = Readonly<{ row: string; bid: string }>;

export const placeKey = ({ row, bid }: Place): string => `${row} ${bid}`;

/** The name of a button: row and bid by number, as in "12.3", and what it opens. */
export const partKey = (at: string, part: Part): string => `${at}.${part}`;

/** What an address opens: whole rows by number, as the links do that stand there without script. */
export const openedIn = (address: URLSearchParams): ReadonlySet<string> => new Set(address.getAll(fields.open));

/** The number of a whole row that is opened; null where a name stands for something else. */
export const wholeRow = (key: string): number | null => (/^\d{1,6}$/.test(key) ? Number(key) : null);

/** What is opened in a row, as names parted by spaces: the row as a whole, or single parts. */
export const openedInRow = (opened: ReadonlySet<string>, row: number): string =>
  [...opened].filter((key) => key === `${row}` || key.startsWith(`${row}.`)).join(" ");

/** Whether a part is open, by itself or with its whole row. One that is named in an open row is closed there. */
export function isOpened(opened: string, key: string): boolean {
  if (opened === "") return false;
  const names = opened.split(" ");
  return names.some((name) => wholeRow(name) !== null) !== names.includes(key);
}
