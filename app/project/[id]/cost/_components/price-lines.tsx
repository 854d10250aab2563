import Link from "next/link";
import {
  amountText,
  assumptionsOf,
  type CostEntry,
  type PriceLine,
  placeOfLine,
  priceRoles,
  pricesOf,
  type StudyYears,
} from "#lib/cost";
import type { Origin } from "#lib/figure";
import { type CurrencyCode, formatMoney, type In } from "#lib/quantity";
import { BidLetter } from "../../../../_components/bid-letter";
import { Scroller } from "../../../../_components/scroller";
import { tableRoles } from "../../../../_components/table-roles";
import { originAddress } from "../../../../_components/working";
import { GivenByMark } from "./given-by";
import { partWords } from "./part-words";
import { type PricedBid, presentValueText } from "./priced-bid";
import styles from "./tables.module.css";

export type PriceLinesSetting = Readonly<{
  project: string;
  area: In<"m²">;
  years: StudyYears;
  currency: CurrencyCode;
}>;

/** Every price line of a bid: as entered, who gives it, and what each part of it is worth at the base date. */
export function PriceLines({ priced, setting }: { priced: PricedBid; setting: PriceLinesSetting }) {
  const { bid, index, prices } = priced;
  return (
    <>
      <h3 className={styles.bidTitle}>
        <BidLetter letter={bid.letter} index={index} /> {bid.bidder}
      </h3>
      <Scroller label={`Price lines of bid ${bid.letter}`}>
        <table className={`${styles.wide} ${styles.lines}`} {...tableRoles.table}>
          <caption className="visually-hidden">Price lines of bid {bid.letter}</caption>
          <thead {...tableRoles.rows}>
            <tr {...tableRoles.row}>
              <th scope="col" {...tableRoles.columnHead}>
                Price line
              </th>
              <th scope="col" {...tableRoles.columnHead}>
                As entered
              </th>
              <th scope="col" {...tableRoles.columnHead}>
                Part
              </th>
              <th scope="col" {...tableRoles.columnHead}>
                Given by
              </th>
              <th scope="col" {...tableRoles.columnHead} className="number">
                Present value
              </th>
            </tr>
          </thead>
          {prices.map((line) => (
            <LineRows
              key={line.id}
              line={line}
              entries={entriesShown(bid.cost.entries, line)}
              from={placeOfLine(line.id, bid.id, bid.cost.lines.find((one) => one.line.id === line.id)?.origin)}
              setting={setting}
            />
          ))}
          <tfoot {...tableRoles.rows}>
            <tr {...tableRoles.row}>
              <th scope="row" colSpan={4} {...tableRoles.rowHead}>
                Present value of bid {bid.letter}
              </th>
              <td className="number" {...tableRoles.cell}>
                {presentValueText(priced, setting.currency)}
              </td>
            </tr>
          </tfoot>
        </table>
      </Scroller>
    </>
  );
}

/** The parts of a line that are worth something; the first one where none is. */
function entriesShown(entries: readonly CostEntry[], { id }: PriceLine): readonly CostEntry[] {
  const ofLine = entries.filter(({ line }) => line === id);
  const worthy = ofLine.filter(({ presentValue }) => presentValue !== 0);
  return worthy.length > 0 ? worthy : ofLine.slice(0, 1);
}

function LineRows({
  line,
  entries,
  from,
  setting,
}: {
  line: PriceLine;
  entries: readonly CostEntry[];
  /** With the bid, or in the owner's levelling and links. */
  from: Origin;
  setting: PriceLinesSetting;
}) {
  const { project, area, years, currency } = setting;
  const address = originAddress(project, from);
  return (
    <tbody {...tableRoles.rows}>
      {entries.map((entry, position) => (
        <tr key={entry.part} {...tableRoles.row}>
          {position > 0 ? null : (
            <>
              <th scope="rowgroup" rowSpan={entries.length} {...tableRoles.rowHead}>
                {address === null ? (
                  line.label
                ) : (
                  <Link href={address} prefetch={false}>
                    {line.label}
                  </Link>
                )}
                {line.role.kind === "base-bid" ? null : (
                  <p className={styles.note}>{priceRoles[line.role.kind].label}</p>
                )}
                {line.document === "" ? null : <p className={styles.note}>{placeText(line)}</p>}
              </th>
              <td rowSpan={entries.length} {...tableRoles.cell}>
                <ul className={styles.entered}>
                  {pricesOf(line, years).map(({ label, amount, schedule }, order) => (
                    <li key={label}>
                      {order === 0 ? null : `${label}: `}
                      {amountText(amount, area, currency)}
                      <p className={styles.note}>{schedule}</p>
                    </li>
                  ))}
                  {assumptionsOf(line, years).map((assumption) => (
                    <li key={assumption} className={styles.note}>
                      {assumption}
                    </li>
                  ))}
                </ul>
              </td>
            </>
          )}
          <td {...tableRoles.cell}>{partWords[entry.part]}</td>
          <td {...tableRoles.cell}>
            <GivenByMark by={entry.givenBy} />
          </td>
          <td className="number" {...tableRoles.cell}>
            {formatMoney(entry.presentValue, currency)}
          </td>
        </tr>
      ))}
    </tbody>
  );
}

const placeText = ({ document, page }: PriceLine) => (page === "" ? document : `${document}, p. ${page}`);
