import { type HardnessOutlook, type YearOrOpen, yearInWords } from "#lib/impact";
import type { UnitSystem } from "#lib/quantity";
import { formatValue } from "#lib/quantity";
import { BidColumns, RowHead } from "../../../../_components/bid-columns";
import { Scroller } from "../../../../_components/scroller";
import type { OutlookLine } from "./outlook-line";

type Known = Extract<HardnessOutlook, { kind: "outlook" }>;

const rows: readonly Readonly<{ what: string; bound: "limit" | "softest"; found: (outlook: Known) => YearOrOpen }>[] = [
  { what: "the hard side of the range is at or above", bound: "limit", found: (o) => o.firstYearPossiblyAbove },
  { what: "the likely level is at or above", bound: "limit", found: (o) => o.firstYearLikelyAbove },
  { what: "the soft side of the range is below", bound: "softest", found: (o) => o.firstYearPossiblyTooSoft },
  { what: "the likely level is below", bound: "softest", found: (o) => o.firstYearLikelyTooSoft },
];

const boundWords = { limit: "the limit", softest: "the target window" } as const;

/** The first year in which each bid could leave, or is likely to leave, what the owner asks. */
export function FirstYearsTable({
  lines,
  units,
}: {
  lines: readonly (OutlookLine & Readonly<{ bidder: string }>)[];
  units: UnitSystem;
}) {
  const [any] = lines;
  if (any === undefined) return null;
  return (
    <Scroller label="First years outside the owner’s limits">
      <table>
        <caption className="visually-hidden">First year in which a bid leaves the limit or the target window</caption>
        <BidColumns corner="First year in which …" bids={lines} />
        <tbody>
          {rows.map(({ what, bound, found }) => (
            <tr key={what}>
              <RowHead>
                {what} {boundWords[bound]}, {formatValue("impactLevel", any.outlook[bound], units)}
              </RowHead>
              {lines.map(({ letter, outlook }) => (
                <td key={letter}>{yearInWords(found(outlook))}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  );
}
