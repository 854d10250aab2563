import { writeXlsx } from "hucre/xlsx";
import type { Evaluation, Project } from "#lib/evaluation";
import type { PlainDate } from "#lib/quantity";
import { auditLines } from "./audit-lines";
import { discountingPage } from "./discounting-sheet";
import { flowsPage } from "./flows-sheet";
import { inputsPage } from "./inputs-sheet";
import { levellingPage, openItems } from "./levelling-sheet";
import { livesPage } from "./lives-sheet";
import { readMePage } from "./read-me-sheet";
import { scoresPage } from "./scores-sheet";
import { totalsPage } from "./totals-sheet";

/** The file says this day of itself, so that one project always gives the same bytes. */
const noDay = new Date(Date.UTC(2000, 0, 1));

/**
 * Costs and scores of a project as a workbook with live formulas, as the bytes of an XLSX file. It holds no results:
 * the spreadsheet program works them out. The same project gives the same bytes on the same day.
 * @param evaluation that of this project
 * @param madeOn the day that the file names as its own; null for none
 * @param procedure what is to be said of stage and amendments, in sentences
 */
export async function auditWorkbook(
  project: Project,
  evaluation: Evaluation,
  madeOn: PlainDate | null,
  procedure: readonly string[] = [],
): Promise<Uint8Array> {
  const studyYears = project.brief.money.studyPeriod.years;
  const lines = auditLines(project, evaluation);
  const levellingOpen = (key: string): string | null => {
    const index = evaluation.bids.findIndex(({ letter }) => letter === key);
    return index === -1 ? null : openItems(index, evaluation.bids[0]?.cost.scope.length ?? 0);
  };
  const inputs = inputsPage({ project, evaluation, lines, levellingOpen });
  const lives = livesPage(lines.lines, inputs.places, studyYears);
  const flows = flowsPage(lines, inputs.places, lives.cells, studyYears);
  const discounting = discountingPage(flows.places, studyYears);
  const placed = { evaluation, lines, inputs: inputs.places, flows: flows.places, discounting: discounting.places };
  const totals = totalsPage(placed);
  return writeXlsx({
    sheets: [
      readMePage(project, evaluation, { madeOn, procedure }),
      inputs.sheet,
      levellingPage(placed),
      flows.sheet,
      lives.sheet,
      discounting.sheet,
      totals.sheet,
      scoresPage({ project, evaluation, inputs: inputs.places, totals: totals.places }),
    ],
    namedRanges: [...inputs.places.named],
    properties: { title: "Audit workbook", created: noDay, modified: noDay },
  });
}
