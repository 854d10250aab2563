import { TextRun } from "docx";
import type { PrintedText, RunStyle } from "../model";
import { printable, runsOf } from "../runs";

const looks = {
  plain: {},
  strong: { bold: true },
  emphasis: { italics: true },
  added: { bold: true, underline: {} },
  removed: { strike: true },
} as const satisfies Readonly<Record<RunStyle, object>>;

export const wordRuns = (text: PrintedText): TextRun[] =>
  runsOf(text).map((run) => new TextRun({ text: printable(run.text), ...looks[run.style] }));
