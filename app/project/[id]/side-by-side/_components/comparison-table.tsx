"use client";
import { useSearchParams } from "next/navigation";
import { useCallback, useId, useMemo, useState } from "react";
import { Scroller } from "../../../../_components/scroller";
import type { BidOrders } from "../_comparison/bid-order";
import type { Cell } from "../_comparison/model";
import { openedIn, openedInRow } from "../_comparison/opened-parts";
import { type PackedTable, unpackedTable } from "../_comparison/packed-table";
import { gistsOf, rowsKept } from "../_comparison/rows-kept";
import {
  addressOf,
  choiceFrom,
  columnsOf,
  fields,
  movedBid,
  type Side,
  type TableChoice,
} from "../_comparison/table-choice";
import { BehindContext } from "./behind-cell";
import { BidHeads } from "./bid-heads";
import cells from "./cells.module.css";
import styles from "./comparison-table.module.css";
import { CopyTable } from "./copy-table";
import { MarkSheet } from "./mark-sheet";
import { TableControls } from "./table-controls";
import { type BidHead, TableRow } from "./table-row";

type Comparison = Readonly<{
  project: string;
  table: PackedTable;
  bids: readonly BidHead[];
  orders: BidOrders;
  /** Names of the levels of evidence, weakest first. */
  evidence: readonly string[];
  /** Cells that the address opens, by row and bid. */
  given: readonly (readonly [string, Cell])[];
}>;

/**
 * The table of all bids, laid out as the address asks on the server, and by the reader's choices in the browser. The
 * choices are a form: without script each is a request that the server answers with the same table. The table stands
 * outside that form, as a browser looks through all buttons of a form whenever one comes or goes.
 */
export function ComparisonTable({ project, table, bids, orders, evidence, given }: Comparison) {
  const address = useSearchParams();
  const [choice, setChoice] = useState(() => choiceFrom(address, orders));
  const [opened, setOpened] = useState<ReadonlySet<string>>(() => openedIn(address));
  const [closed, setClosed] = useState<ReadonlySet<string>>(new Set());
  const [said, setSaid] = useState("");
  const groups = useMemo(() => unpackedTable(table), [table]);
  const gists = useMemo(() => gistsOf(groups), [groups]);
  const rows = useMemo(() => groups.flatMap((group) => group.rows), [groups]);
  const kept = useMemo(() => rowsKept(rows, gists, choice, orders.entered), [rows, gists, choice, orders]);
  const columns = useSame(columnsOf(choice, orders).map((id) => bids.findIndex((bid) => bid.id === id)));
  const source = useMemo(
    () => ({ project, given: new Map(table === null ? [] : given), asked: new Map() }),
    [project, table, given],
  );

  // for links that only stand there without script, so it need not follow the choice
  const [query] = useState(() => addressOf(choice, orders));

  function choose(next: TableChoice) {
    setChoice(next);
    const chosen = addressOf(next, orders);
    window.history.replaceState(null, "", chosen === "" ? window.location.pathname : `?${chosen}`);
  }
  function move(bid: string, side: Side) {
    const next = movedBid(choice, orders, bid, side);
    if (next === choice) return;
    choose(next);
    const shown = columnsOf(next, orders);
    const letter = bids.find(({ id }) => id === bid)?.letter ?? "";
    setSaid(`Bid ${letter} is now bid ${shown.indexOf(bid) + 1} of ${shown.length}.`);
  }
  const toggle = useCallback((key: string) => setOpened((before) => toggled(before, key)), []);
  const setting = useMemo(() => ({ evidence, toggle }), [evidence, toggle]);
  const form = useId();
  function submitted(event: React.SyntheticEvent<HTMLFormElement, SubmitEvent>) {
    event.preventDefault();
    const button = event.nativeEvent.submitter;
    if (!(button instanceof HTMLButtonElement)) return;
    const [, side, bid] = /^(left|right)\.(.*)$/.exec(button.name === fields.move ? button.value : "") ?? [];
    if (bid !== undefined && (side === "left" || side === "right")) move(bid, side);
  }
  const copied = () => [
    ["", ...columns.map((index) => `Bid ${bids[index]?.letter}, ${bids[index]?.bidder}`)],
    ...rows
      .filter(({ id }) => kept.has(id))
      .map(({ id, label, unit }) => [
        unit === "" ? label : `${label}, ${unit}`,
        ...columns.map((index) => gists.get(id)?.[index]?.text ?? ""),
      ]),
  ];

  let number = -1;
  return (
    <BehindContext value={source}>
      <MarkSheet />
      <form id={form} method="get" onSubmit={submitted}>
        {[...openedIn(address)].map((key) => (
          <input key={key} type="hidden" name={fields.open} value={key} />
        ))}
        <TableControls
          bids={bids}
          orders={orders}
          choice={choice}
          choose={choose}
          areAllOpen={closed.size === 0}
          openAll={(open) => setClosed(new Set(open ? [] : groups.map(({ id }) => id)))}
        />
      </form>
      <p role="status" className={styles.count}>
        {kept.size === rows.length ? `All ${rows.length} rows.` : `${kept.size} of ${rows.length} rows.`}
      </p>
      <p role="status" className="visually-hidden">
        {said}
      </p>
      <div className={styles.frame}>
        <Scroller label="All bids side by side">
          <table className={`${styles.table} ${cells.cells}`}>
            <caption className="visually-hidden">Claims and derived figures of all bids</caption>
            <thead>
              <tr>
                <th scope="col" className={styles.corner}>
                  Property or figure
                </th>
                <BidHeads bids={bids} columns={columns} choice={choice} orders={orders} form={form} />
              </tr>
            </thead>
            {groups.map((group) => {
              const isOpen = !closed.has(group.id);
              return (
                <tbody key={group.id} hidden={!group.rows.some(({ id }) => kept.has(id))}>
                  <tr className={styles.group}>
                    <th scope="rowgroup" colSpan={columns.length + 1}>
                      <button
                        type="button"
                        className="plain"
                        aria-expanded={isOpen}
                        onClick={() => setClosed(toggled(closed, group.id))}
                      >
                        {group.label}
                      </button>
                    </th>
                  </tr>
                  {group.rows.map((row) => {
                    number += 1;
                    return (
                      <TableRow
                        key={row.id}
                        row={row}
                        number={number}
                        bids={bids}
                        columns={columns}
                        pinned={choice.pinned}
                        setting={setting}
                        opened={openedInRow(opened, number)}
                        openRow={`?${query === "" ? "" : `${query}&`}open=${number}`}
                        state={kept.has(row.id) ? (isOpen ? "shown" : "closed") : "left-out"}
                      />
                    );
                  })}
                </tbody>
              );
            })}
          </table>
        </Scroller>
      </div>
      <CopyTable rows={copied} />
    </BehindContext>
  );
}

function toggled(set: ReadonlySet<string>, entry: string): ReadonlySet<string> {
  const next = new Set(set);
  if (!next.delete(entry)) next.add(entry);
  return next;
}

/** The same list as long as its entries are the same, so that rows which did not change are not drawn again. */
function useSame(list: readonly number[]): readonly number[] {
  const key = list.join();
  return useMemo(() => (key === "" ? [] : key.split(",").map(Number)), [key]);
}
