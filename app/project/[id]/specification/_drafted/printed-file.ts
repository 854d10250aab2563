import {
  type PrintedDocument,
  printedAddendum,
  printedAsPdf,
  printedAsText,
  printedAsWord,
  printedSection,
} from "#lib/document";
import { type Issue, issueName } from "#lib/requirement";
import { printedFonts } from "../../../../_data/printed-fonts";
import { addendumFrame, draftFrame, issueFrame } from "./frame";
import type { LoadedSection } from "./load-section";

/** The formats in which a text is taken along. */
const formats = {
  docx: {
    type: "application/vnd.openxmlformats-officedocument.wordprocessingml.document",
    write: printedAsWord,
  },
  pdf: {
    type: "application/pdf",
    write: async (printed: PrintedDocument) => printedAsPdf(printed, await printedFonts()),
  },
  txt: {
    type: "text/plain; charset=utf-8",
    write: async (printed: PrintedDocument) => new TextEncoder().encode(printedAsText(printed)),
  },
} as const;

type Format = keyof typeof formats;

/** A file as it is sent. `name` says what it holds. */
export type PrintedFile = Readonly<{ bytes: Uint8Array<ArrayBuffer>; type: string; name: string; format: Format }>;

/** The seal stands in the footer, so that a page can be held against the text that was given out. */
const sealed = (printed: PrintedDocument, { seals }: Issue): PrintedDocument => ({
  ...printed,
  footer: `${printed.footer} · SHA-256 of the text: ${seals.text}`,
});

function printedIssue(loaded: LoadedSection, sequence: number, isChanges: boolean) {
  const { project, documents } = loaded;
  const issues = documents.issues.map(({ model }) => model);
  const issue = issues.find((each) => each.sequence === sequence);
  const before = issues.find((each) => each.sequence === sequence - 1);
  if (issue === undefined || (isChanges && before === undefined)) return null;
  const frame = issueFrame(project.brief, issue);
  return isChanges && before !== undefined
    ? {
        issue,
        printed: printedAddendum(before, issue, addendumFrame(project.brief, issue, loaded)),
        what: `${issueName(issue)} changes`,
      }
    : { issue, printed: sealed(printedSection(issue.section, frame, "without notes"), issue), what: issueName(issue) };
}

/**
 * The file of a name: “draft.pdf”, “draft-with-notes.docx”, “issue-0.txt” for a whole text that was given out,
 * “changes-1.docx” for what an addendum changes. Null where there is none of that name.
 */
export async function printedFile(loaded: LoadedSection, name: string, today: string): Promise<PrintedFile | null> {
  const read = /^(draft|draft-with-notes|(issue|changes)-(\d{1,2}))\.(docx|pdf|txt)$/.exec(name);
  if (read === null) return null;
  const [, whole, kind, sequence, ending] = read;
  const format = formats[ending as Format];
  const file = async (printed: PrintedDocument, what: string): Promise<PrintedFile> => ({
    ...{ bytes: await format.write(printed), type: format.type, name: what, format: ending as Format },
  });
  if (kind === undefined) {
    const notes = whole === "draft" ? "without notes" : "with notes to the specifier";
    return file(printedSection(loaded.section, draftFrame(loaded.project.brief, loaded, today), notes), "draft");
  }
  const found = printedIssue(loaded, Number(sequence), kind === "changes");
  if (found === null) return null;
  // the text is sent as it was sealed, whatever the writers have learned since
  if (ending === "txt" && kind === "issue")
    return {
      bytes: new TextEncoder().encode(found.issue.text),
      type: formats.txt.type,
      name: found.what,
      format: "txt",
    };
  return file(found.printed, found.what);
}
