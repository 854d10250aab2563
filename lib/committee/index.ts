export { isExcused, withoutExcused } from "./excused";
export type { AgreedValue, Committee, Opening, OpenSheet, Rating, Scoresheet, Sheet, Statement } from "./model";
export {
  type CountedRating,
  levelsOf,
  openSheetsOf,
  ratedFigure,
  startingCommittee,
} from "./rated-figure";
export {
  type CommitteeInFile,
  type CommitteeText,
  committeeInFileSchema,
  committeeSchema,
  type ScoresheetText,
  type SheetText,
  scoresheetSchema,
  sheetSchema,
} from "./schema";
export { explainSheetGap, isExtreme, type SheetGap, sheetGaps } from "./sheet-gaps";
export { type Scoring, scoringOf } from "./sheets-awaited";
export { type BidSpread, type CriterionSpread, farApart, notAgreed, spreads } from "./spread";
