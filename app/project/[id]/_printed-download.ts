import { type PrintedDocument, printedAsPdf, printedAsWord } from "#lib/document";
import { printedFonts } from "../../_data/printed-fonts";
import { download } from "./_file-name";

const types = {
  docx: "application/vnd.openxmlformats-officedocument.wordprocessingml.document",
  pdf: "application/pdf",
} as const;

type PrintedFormat = keyof typeof types;

/** The format that an address asks for; null where there is no such. */
export const printedFormat = (asked: string | null): PrintedFormat | null =>
  asked === "docx" || asked === "pdf" ? asked : null;

/** A document as a file of the format asked for. */
export async function printedDownload(
  printed: PrintedDocument,
  format: PrintedFormat,
  name: string,
): Promise<Response> {
  const bytes = await (format === "pdf" ? printedAsPdf(printed, await printedFonts()) : printedAsWord(printed));
  return download(bytes, name, types[format]);
}
