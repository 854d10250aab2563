// Cells for spreadsheets as the cost-and-decision reference has them, section 7, after OWASP and RFC 4180. Ids in brackets
// are those of its machine-readable twin. It puts every cell in quotation marks; here those that need none have none, so
// the cells are compared as another reader sees them.
import { parseCsv } from "hucre/csv";
import { expect, test } from "vitest";
import { commaSeparated } from "#lib/claim";

test.each([
  ["csv-01", "=1+1", "'=1+1"],
  ["csv-02", "+1", "'+1"],
  ["csv-03", "-2+3", "'-2+3"],
  ["csv-04", "@SUM(A1)", "'@SUM(A1)"],
  ["csv-05", "\t=1", "'\t=1"],
  ["csv-07", "plain", "plain"],
  ["csv-08", 'say "hi"', 'say "hi"'],
  ["csv-10", "\uff1d1+1", "'\uff1d1+1"],
  ["csv-11", "a,b", "a,b"],
  ["csv-12", "line1\nline2", "line1\nline2"],
])("[%s] %j is read as %j elsewhere", (_, text, expected) => {
  expect(parseCsv(commaSeparated([[text]]), { delimiter: "," })).toEqual([[expected]]);
});
