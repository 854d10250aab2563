import { strFromU8, unzipSync } from "fflate";
import { expect, test } from "vitest";
import { auditWorkbook, boardPaper, letterText, printedAsText, printedPaper, questionsLetter } from "#lib/document";
import { evaluate } from "#lib/evaluation";
import { type Procedure, procedureSentences } from "#lib/procedure";
import { nothingWritten } from "#lib/recommendation";
import { ratedProject } from "../evaluation/procedure/rated-project";

const by = { id: "dana-ruiz", name: "Dana Ruiz" };
const procedure: Procedure = {
  prices: "open",
  steps: [{ stage: "frozen", at: "2026-11-10T10:00:00.000Z", by, note: "", accepted: [], bid: "", key: "" }],
  amendments: [
    {
      ...{ at: "2026-11-20T10:00:00.000Z", by, reason: "The insurer asks for it.", document: "requirements" },
      changes: [{ field: "impact, limit", from: "165 g", to: "160 g" }],
    },
  ],
};
const keptSince = "2026-11-01T00:00:00.000Z";
const amendment =
  "Amendment 1, November 20, 2026, by Dana Ruiz: The insurer asks for it. (impact, limit: 165 g → 160 g)";
/** Everything that the parts of a workbook hold, as text. */
const partsOf = (bytes: Uint8Array) =>
  Object.values(unzipSync(bytes))
    .map((part) => strFromU8(part))
    .join("\n");
const evaluation = evaluate(ratedProject);

test("the board’s paper says at which stage it was made and what was amended, with the reason", () => {
  const { name: project, owner, notice } = ratedProject.brief;
  const facts = { project, owner, notice, date: "2026-11-26", procedure, keptSince };
  const text = printedAsText(printedPaper(boardPaper(ratedProject, evaluation, nothingWritten, "us"), facts));
  for (const words of ["Criteria frozen on November 10, 2026 by Dana Ruiz.", "The insurer asks for it."])
    expect(text.replace(/\s+/g, " ")).toContain(words);
});

test("the audit workbook says it on its first sheet", async () => {
  const bytes = await auditWorkbook(ratedProject, evaluation, null, procedureSentences(procedure, keptSince));
  expect(partsOf(bytes)).toContain(amendment);
  expect(partsOf(await auditWorkbook(ratedProject, evaluation, null))).not.toContain("Amendment");
});

test("the letter of questions says it to every bidder", () => {
  const [bid] = evaluation.bids;
  if (bid === undefined) throw new Error("expected a bid");
  const letter = questionsLetter(ratedProject.brief, bid, "us", procedureSentences(procedure, keptSince));
  expect(letterText(letter)).toContain(`Stage and amendments: ${amendment}`);
});
