import { propertyOf } from "#lib/claim";
import { methodsInWords, type ToldRow } from "#lib/document";
import type { UnitSystem } from "#lib/quantity";
import { columnLabel, inColumn, promisedColumns } from "#lib/submittal";
import { ChartFrame } from "../../../../_components/chart/chart-frame";
import { hasCourse } from "../_rows/chart-points";
import { RowChart } from "./row-chart";

const marks =
  "Full marks on the line were measured, hollow ones promised: a circle by the bid, a square on its corner by the submittal.";

/** Each property that was measured at two ages or more, over the years. */
export function ChartSection({ told, units }: { told: readonly ToldRow[]; units: UnitSystem }) {
  const drawn = told.filter(({ row }) => hasCourse(row));
  if (drawn.length === 0) return null;
  return (
    <section aria-labelledby="over-time">
      <h2 id="over-time">Over time</h2>
      {drawn.map(({ row, findings }) => {
        const title = [propertyOf(row.property).label, methodsInWords(row)].filter((part) => part !== "").join(", ");
        const found = [...findings.deviations, ...findings.notes];
        const summary = `${marks} ${found.length === 0 ? "Nothing measured falls short." : found.join(" ")}`;
        return (
          <ChartFrame
            key={title}
            title={title}
            summary={summary}
            draw={(width) => (
              <RowChart row={row} width={width} units={units} label={`${title} over the years. ${summary}`} />
            )}
            table={
              <table>
                <caption>{title}</caption>
                <thead>
                  <tr>
                    <th scope="col">Who</th>
                    <th scope="col">Figure</th>
                  </tr>
                </thead>
                <tbody>
                  {promisedColumns([row]).flatMap((column) =>
                    inColumn(row, column).map(({ value, detail }) => (
                      <tr key={`${columnLabel(column)} ${value} ${detail}`}>
                        <th scope="row">{columnLabel(column)}</th>
                        <td>
                          {value}
                          {detail === "" ? "" : ` (${detail})`}
                        </td>
                      </tr>
                    )),
                  )}
                </tbody>
              </table>
            }
          />
        );
      })}
    </section>
  );
}
