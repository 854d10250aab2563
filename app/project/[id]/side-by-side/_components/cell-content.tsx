"use client";
import { memo } from "react";
import type { Said, ShownCell, ShownMark } from "../_comparison/model";
import { isOpened, type Part, partKey } from "../_comparison/opened-parts";
import { BehindCell } from "./behind-cell";
import { MarkOf } from "./mark-sheet";

/** What all cells of the table share. */
export type CellSetting = Readonly<{
  /** Names of the levels of evidence, weakest first. */
  evidence: readonly string[];
  toggle: (key: string) => void;
}>;

type Shown = Readonly<{
  cell: ShownCell;
  row: string;
  bid: string;
  /** Row and bid in words, for the names of buttons. */
  of: string;
  /** Row and bid by number, short, since every button of the table carries it. */
  at: string;
  isPinned: boolean;
  opened: string;
  setting: CellSetting;
}>;

/**
 * All that stands in a cell, in plain elements that the table's styles name: with some thousand cells every class and
 * wrapper counts. The parts that are only heard (i) say the unit, and what a button belongs to.
 */
export const CellContent = memo(function CellContent({ cell, isPinned, ...place }: Shown) {
  const { status, said, marks, hasWorking, hasReasons } = cell;
  const isBare = status === null && said.length === 0 && marks.length === 0;
  return (
    <td data-pinned={isPinned || undefined}>
      <div>
        {status === null ? null : (
          <span data-tone={status === "over-claimed" || status === "falls short" ? "trouble" : undefined}>
            <MarkOf word={status} />
            {status}
          </span>
        )}
        {said.map((one, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the statements of a cell never change places
          <SaidText key={index} said={one} index={index} {...place} />
        ))}
        {isBare ? <Nothing /> : null}
        {hasWorking ? <Opener part="working" label="Show working" name={` of ${place.of}`} {...place} /> : null}
        {hasReasons ? <Opener part="why" label="Why" name={`: ${place.of}`} {...place} /> : null}
        {marks.length === 0 ? null : <Marks marks={marks} {...place} />}
      </div>
    </td>
  );
});

const Nothing = () => (
  <>
    <span aria-hidden="true">–</span>
    <i>nothing here</i>
  </>
);

type Place = Omit<Shown, "cell" | "isPinned">;

function SaidText({ said: { text, unit, qualifier, level }, index, ...place }: Place & { said: Said; index: number }) {
  return (
    <>
      <b>
        {text}
        {unit === "" ? null : <i>{unit}</i>}
        {qualifier === "" ? null : <small>{` ${qualifier}`}</small>}
      </b>
      {level === 0 ? null : (
        <Opener
          part={index}
          label={place.setting.evidence[level - 1] ?? ""}
          name={`: ${place.of}`}
          level={level}
          {...place}
        />
      )}
    </>
  );
}

type Opens = Place & Readonly<{ part: Part; label: string; name: string; level?: number }>;

/**
 * A button that opens what lies behind the cell, right below itself. It belongs to no form, so it needs no type, and its
 * name in the table is no attribute: each word of it would be sent some thousand times.
 */
function Opener({ part, label, name, level, ...place }: Opens) {
  const key = partKey(place.at, part);
  const isOpen = isOpened(place.opened, key);
  return (
    <>
      {/* biome-ignore lint/a11y/useButtonType: see above */}
      <button aria-expanded={isOpen} data-level={level} onClick={() => place.setting.toggle(key)}>
        {label}
        <i>{name}</i>
      </button>
      {isOpen ? <BehindCell row={place.row} bid={place.bid} part={part} /> : null}
    </>
  );
}

/** The most serious finding by its title, and how many more there are. */
function Marks({ marks, ...place }: Place & { marks: readonly ShownMark[] }) {
  const [first] = marks;
  const more = marks.reduce((sum, { count }) => sum + count, -1);
  if (first === undefined) return null;
  const key = partKey(place.at, "findings");
  const isOpen = isOpened(place.opened, key);
  const lead = first.isSettled ? `settled: ${first.title}` : `${first.severity}: ${first.title}`;
  return (
    <>
      {/* biome-ignore lint/a11y/useButtonType: as of every opener */}
      <button
        aria-expanded={isOpen}
        data-mark={first.isSettled || first.severity === "note" ? "quiet" : "loud"}
        onClick={() => place.setting.toggle(key)}
      >
        {more === 0 ? lead : `${lead}, and ${more} more`}
      </button>
      {isOpen ? <BehindCell row={place.row} bid={place.bid} part="findings" /> : null}
    </>
  );
}
