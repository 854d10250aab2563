"use server";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import { issueId, issueSchema } from "#lib/requirement";
import { explainRefusal } from "#lib/store";
import { currentEditor } from "../../../../_data/editor";
import { projectStore } from "../../../../_data/store";
import { loadSection } from "../_drafted/load-section";
import { draftMark, sealedIssue } from "../_drafted/sealed-issue";

export type IssueOutcome = Readonly<{ date: string; reason: string; problems: readonly string[] }>;

/** Gives the section out as it stands: the first time as the issue for bids, then as an addendum. It can’t be taken back. */
export async function giveOut(project: string, _before: IssueOutcome, form: FormData): Promise<IssueOutcome> {
  const typed = { date: String(form.get("date") ?? ""), reason: String(form.get("reason") ?? "").trim() };
  const loaded = await loadSection(z.string().parse(project));
  if (loaded === null) return { ...typed, problems: ["This project is no longer here."] };
  const sequence = loaded.documents.issues.length;
  const issue = sealedIssue(loaded, { ...typed, sequence });
  const problems = [
    ...(String(form.get("seen")) === draftMark(loaded)
      ? []
      : ["The section changed since this page was opened. Look at it again before you give it out."]),
    ...(loaded.blanks.length > 0 && form.get("withBlanks") !== "on"
      ? ["The text has blanks. Fill them in, or tick that it is given out with them."]
      : []),
    ...(issueSchema.safeParse(issue).error?.issues ?? []).map(({ message }) => message),
  ];
  if (problems.length > 0) return { ...typed, problems };
  const outcome = await (await projectStore()).documents.create(
    { project, kind: "issue", id: issueId(sequence) },
    issue,
    await currentEditor(),
  );
  switch (outcome.kind) {
    case "refused":
      return { ...typed, problems: [explainRefusal(outcome.because)] };
    case "gone":
    case "conflict":
      return { ...typed, problems: ["Somebody gave the section out meanwhile. Open the page again and look at it."] };
    case "saved":
      revalidatePath(`/project/${project}`, "layout");
      redirect(`/project/${project}/specification/versions#${issueId(sequence)}`);
  }
}
