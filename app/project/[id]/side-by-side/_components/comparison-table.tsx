"use client";
import { useTable } from "@tanstack/react-table";
import { memo, useMemo, useState } from "react";
import { Scroller } from "../../../../_components/scroller";
import styles from "./comparison-table.module.css";
import { CopyTable } from "./copy-table";
import { TableControls } from "./table-controls";
import { type BidHead, filterState, type Line, pinningState, type RowFilter, tableOptions } from "./table-model";

/**
 * The table that the server laid out, with its rows chosen, its groups closed and its columns ordered by the reader.
 * Every row stays in the document, so that what was opened stays open and a print shows closed groups too.
 */
export function ComparisonTable({ lines, bids }: { lines: readonly Line[]; bids: readonly BidHead[] }) {
  const [options] = useState(() => tableOptions(lines, bids));
  const data = useMemo(() => [...lines], [lines]);
  const table = useTable({ ...options, data });
  const [filter, setFilter] = useState<RowFilter>({
    choice: "all",
    hidesEqual: false,
    shown: bids.map(() => true),
  });
  const pinned = table.state.columnPinning.start[1] ?? "";
  const columns = [...table.getStartVisibleLeafColumns(), ...table.getCenterVisibleLeafColumns()].slice(1);
  const order = useOrder(columns.map(({ id }) => bids.findIndex((bid) => bid.id === id)));
  const kept = table.getFilteredRowModel().rowsById;
  const all = lines.flatMap((group) => group.lines);
  const shown = all.filter(({ id }) => id in kept);

  function choose(next: RowFilter) {
    setFilter(next);
    table.setColumnFilters(filterState(next));
    table.setColumnVisibility(Object.fromEntries(bids.map(({ id }, index) => [id, next.shown[index] ?? true])));
  }
  const copied = () => [
    ["", ...order.map((index) => bids[index]?.name ?? "")],
    ...shown.map(({ label, cells }) => [label, ...order.map((index) => cells[index]?.text ?? "")]),
  ];

  return (
    <>
      <TableControls
        bids={bids}
        filter={filter}
        choose={choose}
        pinned={pinned}
        pin={(id) => table.setColumnPinning(pinningState(id))}
        areAllOpen={table.getIsAllRowsExpanded()}
        openAll={(open) => table.toggleAllRowsExpanded(open)}
      />
      <p role="status" className={styles.count}>
        {shown.length === all.length ? `All ${all.length} rows.` : `${shown.length} of ${all.length} rows.`}
      </p>
      <div className={styles.frame}>
        <Scroller label="All bids side by side">
          <table className={styles.table}>
            <caption className="visually-hidden">Claims and derived figures of all bids</caption>
            <thead>
              <tr>
                <th scope="col" className={styles.corner}>
                  Property or figure
                </th>
                {order.map((index) => (
                  <th key={index} scope="col" className={bids[index]?.id === pinned ? styles.pinned : undefined}>
                    {bids[index]?.head}
                  </th>
                ))}
              </tr>
            </thead>
            {lines.map((group) => {
              const isOpen = table.getRow(group.id, true).getIsExpanded();
              return (
                <tbody key={group.id} hidden={!(group.id in kept)}>
                  <tr className={styles.group}>
                    <th scope="rowgroup" colSpan={order.length + 1}>
                      <button
                        type="button"
                        className="plain"
                        aria-expanded={isOpen}
                        onClick={() => table.getRow(group.id, true).toggleExpanded(!isOpen)}
                      >
                        {group.label}
                      </button>
                    </th>
                  </tr>
                  {group.lines.map((line) => (
                    <TableRow
                      key={line.id}
                      line={line}
                      order={order}
                      pinned={pinned === "" ? -1 : bids.findIndex(({ id }) => id === pinned)}
                      state={line.id in kept ? (isOpen ? "shown" : "closed") : "left-out"}
                    />
                  ))}
                </tbody>
              );
            })}
          </table>
        </Scroller>
      </div>
      <CopyTable rows={copied} />
    </>
  );
}

/** The same list as long as its entries are the same, so that rows which did not change are not drawn again. */
function useOrder(order: readonly number[]): readonly number[] {
  const key = order.join();
  return useMemo(() => (key === "" ? [] : key.split(",").map(Number)), [key]);
}

type RowProps = Readonly<{
  line: Line;
  order: readonly number[];
  pinned: number;
  state: "shown" | "closed" | "left-out";
}>;

const TableRow = memo(function TableRow({ line, order, pinned, state }: RowProps) {
  const classes = [line.apart ? styles.apart : "", state === "closed" ? styles.closed : ""].filter(Boolean).join(" ");
  return (
    <tr className={classes} hidden={state === "left-out"}>
      <th scope="row">{line.head}</th>
      {order.map((index) => (
        <td key={index} className={index === pinned ? styles.pinned : undefined}>
          {line.slots[index]}
        </td>
      ))}
    </tr>
  );
});
