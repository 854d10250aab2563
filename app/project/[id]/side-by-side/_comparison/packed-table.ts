import type { Severity } from "#lib/crosscheck";
import { type StatusWord, statusWords } from "../../../../_components/status";
import { type Group, type RowHead, type ShownCell, type ShownMark, shownCell } from "./model";

/** A row with what its cells show. */
export type ShownRow = RowHead & Readonly<{ cells: readonly ShownCell[] }>;
export type ShownGroup = Readonly<{ id: string; label: string; rows: readonly ShownRow[] }>;

/**
 * The table as it travels to the browser: every text once, cells as places in that list. Forty bids say much alike, so
 * this takes a quarter of the room.
 */
export type PackedTable = Readonly<{
  words: readonly string[];
  groups: readonly Readonly<{
    id: string;
    label: string;
    rows: readonly (RowHead & Readonly<{ cells: readonly (readonly number[])[] }>)[];
  }>[];
}>;

const severities = ["can't be true", "needs an answer", "note"] as const satisfies readonly Severity[];
const hasWorking = 1;
const hasReasons = 2;

/** Numbers before the statements: status, what opens, how many statements. Then four a statement and four a mark. */
const headLength = 3;
const saidLength = 4;
const markLength = 4;

/** The groups without what only opens. */
export function packedTable(groups: readonly Group[]): PackedTable {
  const places = new Map<string, number>();
  const placeOf = (word: string): number => {
    const place = places.get(word) ?? places.size;
    places.set(word, place);
    return place;
  };
  const packedCell = (cell: ShownCell): readonly number[] => [
    cell.status === null ? -1 : statusWords.indexOf(cell.status),
    (cell.hasWorking ? hasWorking : 0) + (cell.hasReasons ? hasReasons : 0),
    cell.said.length,
    ...cell.said.flatMap(({ text, unit, qualifier, level }) => [
      placeOf(text),
      placeOf(unit),
      placeOf(qualifier),
      level,
    ]),
    ...cell.marks.flatMap(({ severity, title, isSettled, count }) => [
      severities.indexOf(severity),
      placeOf(title),
      Number(isSettled),
      count,
    ]),
  ];
  const packed = groups.map(({ id, label, rows }) => ({
    id,
    label,
    rows: rows.map((row) => ({ ...row, cells: row.cells.map((cell) => packedCell(shownCell(cell))) })),
  }));
  return { words: [...places.keys()], groups: packed };
}

/** The groups that were packed. */
export function unpackedTable({ words, groups }: PackedTable): readonly ShownGroup[] {
  return groups.map(({ id, label, rows }) => ({
    id,
    label,
    rows: rows.map((row) => ({ ...row, cells: row.cells.map((numbers) => unpackedCell(numbers, words)) })),
  }));
}

function unpackedCell(numbers: readonly number[], words: readonly string[]): ShownCell {
  const at = (place: number): number => numbers[place] ?? -1;
  const word = (place: number): string => words[at(place)] ?? "";
  const marksFrom = headLength + saidLength * at(2);
  const starts = (from: number, to: number, step: number) =>
    Array.from({ length: (to - from) / step }, (_, index) => from + step * index);
  return {
    status: statusAt(at(0)),
    hasWorking: (at(1) & hasWorking) !== 0,
    hasReasons: (at(1) & hasReasons) !== 0,
    said: starts(headLength, marksFrom, saidLength).map((start) => ({
      text: word(start),
      unit: word(start + 1),
      qualifier: word(start + 2),
      level: at(start + 3),
    })),
    marks: starts(marksFrom, numbers.length, markLength).map(
      (start): ShownMark => ({
        severity: severities[at(start)] ?? "note",
        title: word(start + 1),
        isSettled: at(start + 2) === 1,
        count: at(start + 3),
      }),
    ),
  };
}

const statusAt = (place: number): StatusWord | null => statusWords[place] ?? null;
