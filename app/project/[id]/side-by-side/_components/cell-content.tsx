"use client";
import { memo } from "react";
import type { Said, ShownCell, ShownMark } from "../_comparison/model";
import { BehindCell, type Part } from "./behind-cell";
import { MarkOf } from "./mark-sheet";

/** Where a cell stands. `at` is short, since every button of the table carries it. */
export type CellPlace = Readonly<{ row: string; bid: string; of: string; at: string; evidence: readonly string[] }>;

type Shown = Readonly<{ place: CellPlace; cell: ShownCell; isPinned: boolean; opened: string }>;

/** The name of a button's part in the form: the row and bid by number, then what is opened. */
export const partKey = (at: string, part: Part): string => `${at}.${part}`;

/**
 * All that stands in a cell, in plain elements that the table's styles name: with some thousand cells every class and
 * wrapper counts. The hidden parts (i) say the unit and what a button belongs to.
 */
export const CellContent = memo(
  function CellContent({ place, cell: { status, said, marks, hasWorking, hasReasons }, isPinned, opened }: Shown) {
    const isBare = status === null && said.length === 0 && marks.length === 0;
    const opens = { place, opened };
    return (
      <td data-pinned={isPinned || undefined}>
        {status === null ? null : (
          <span data-tone={status === "over-claimed" || status === "falls short" ? "trouble" : undefined}>
            <MarkOf word={status} />
            {status}
          </span>
        )}
        {said.map((one, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the statements of a cell never change places
          <SaidText key={index} said={one} index={index} {...opens} />
        ))}
        {isBare ? <Nothing /> : null}
        {hasWorking ? <Opener part="working" label="Show working" of={` of ${place.of}`} {...opens} /> : null}
        {hasReasons ? <Opener part="why" label="Why" of={`: ${place.of}`} {...opens} /> : null}
        {marks.length === 0 ? null : <Marks marks={marks} {...opens} />}
      </td>
    );
  },
  (before, after) =>
    before.cell === after.cell &&
    before.isPinned === after.isPinned &&
    before.opened === after.opened &&
    before.place.at === after.place.at &&
    before.place.of === after.place.of,
);

const Nothing = () => (
  <>
    <span aria-hidden="true">–</span>
    <i>nothing here</i>
  </>
);

type Opens = Readonly<{ place: CellPlace; opened: string }>;

function SaidText({ said, index, ...opens }: Opens & { said: Said; index: number }) {
  const { text, unit, qualifier, level } = said;
  const figure = (
    <b>
      {text}
      {unit === "" ? null : <i>{unit}</i>}
    </b>
  );
  if (level === 0) return figure;
  const { evidence, of } = opens.place;
  return (
    <div>
      {figure}
      {qualifier === "" ? null : <small>{` ${qualifier}`}</small>}
      <Opener part={index} label={evidence[level - 1] ?? ""} of={`: ${of}`} level={level} {...opens} />
    </div>
  );
}

type OpenerParts = Opens & Readonly<{ part: Part; label: string; of: string; level?: number }>;

/** A button that opens what lies behind, by the table's form: without script the server lays it out. */
function Opener({ part, label, of, level, place, opened }: OpenerParts) {
  const key = partKey(place.at, part);
  const isOpen = isOpened(opened, key);
  return (
    <>
      {/* biome-ignore lint/a11y/useButtonType: submitting is what a button does by itself; said in each cell it would weigh */}
      <button name="open" value={key} aria-expanded={isOpen} data-level={level}>
        {label}
        <i>{of}</i>
      </button>
      {isOpen ? <BehindCell row={place.row} bid={place.bid} part={part} /> : null}
    </>
  );
}

const isOpened = (opened: string, key: string): boolean => opened !== "" && opened.split(" ").includes(key);

/** The most serious finding by its title, and how many more there are. */
function Marks({ marks, place, opened }: Opens & { marks: readonly ShownMark[] }) {
  const [first, ...more] = marks;
  if (first === undefined) return null;
  const key = partKey(place.at, "findings");
  const isOpen = isOpened(opened, key);
  const lead = first.isSettled ? `settled: ${first.title}` : `${first.severity}: ${first.title}`;
  return (
    <>
      {/* biome-ignore lint/a11y/useButtonType: as above */}
      <button
        name="open"
        value={key}
        aria-expanded={isOpen}
        data-mark={first.isSettled || first.severity === "note" ? "quiet" : "loud"}
      >
        <MarkOf word="finding" />
        {more.length === 0 ? lead : `${lead}, and ${more.length} more`}
        <i>{`: ${place.of}`}</i>
      </button>
      {isOpen ? <BehindCell row={place.row} bid={place.bid} part="findings" /> : null}
    </>
  );
}
