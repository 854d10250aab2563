export { auditWorkbook } from "./audit-workbook/audit-workbook";
export { blankBidForm, type FormSetting } from "./bid-form/blank-form";
export type { FormChange, TextChange } from "./bid-form/change";
export { type FormExpected, readBidForm } from "./bid-form/filled-form";
export { type MergedBid, type MergeSetting, mergedBid, type Unmentioned } from "./bid-form/merged-bid";
export type { FilledForm, FormCell, FormOwner, NamedMaterial } from "./bid-form/model";
export { explainForm, type FormProblem } from "./bid-form/problem";
export { withoutPrices } from "./bid-form/without-prices";
export { type BoardPaper, type BoardPart, boardPaper } from "./board-paper/board-paper";
export { type PaperFacts, printedPaper } from "./board-paper/printed-paper";
export { readingGrade, widestGrade } from "./board-paper/reading-grade";
export { type DecidingFigure, type Recommendation, recommendation } from "./board-paper/recommendation";
export type { Support } from "./board-paper/support";
export { claimsCsv, claimsOfBidsCsv } from "./claims-csv";
export { boundedGap, lackingSentences } from "./cost-sentences";
export { pluggedPart, pluggedSentences } from "./plugs";
export type {
  NumberPlace,
  PrintedBlock,
  PrintedColumn,
  PrintedDocument,
  PrintedTable,
  PrintedText,
  Run,
  RunStyle,
} from "./printed/model";
export { writtenNumbers } from "./printed/numbering";
export type { PrintedFonts } from "./printed/pdf/fonts";
export { printedAsPdf } from "./printed/pdf/printed-as-pdf";
export { printedAsText } from "./printed/plain-text";
export { printedAsWord } from "./printed/word/printed-as-word";
export {
  explainProjectFile,
  type ProjectFileProblem,
  type ProjectTexts,
  projectFileJsonSchema,
  projectFileOf,
  type ReadProjectFile,
  readProjectFile,
} from "./project-file";
export { type FactsFrame, printedCloseoutFacts, printedWarrantyFacts } from "./promised/printed-facts";
export { methodsInWords, promisedCsv, type ToldRow } from "./promised/promised-csv";
export type { Question } from "./questions";
export { letterText, type QuestionsLetter, questionsLetter } from "./questions-letter";
export { printedAddendum } from "./specification/printed-addendum";
export { printedSection, type SectionFrame, type SectionNotes } from "./specification/printed-section";
export { sectionInput } from "./specification/section-input";
export { formFileBytes } from "./workbook/limits";
