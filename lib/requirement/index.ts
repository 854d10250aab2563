export type { ClauseLattice, TightCombination } from "./competition/clause-lattice";
export { type ClauseCompetition, type Competition, competition, type HowMany } from "./competition/competition";
export { competitionSentences } from "./competition/explain-competition";
export type { KnownSystem, LimitClause, LimitMove, Standing, StandingMatrix, SystemFigure } from "./competition/model";
export type { Relaxation } from "./competition/relaxations";
export { completenessNotes, completenessRules } from "./completeness/completeness-notes";
export type { CompletenessNote, WrittenSection } from "./completeness/model";
export { type ChoiceId, type Choices, sectionChoices } from "./drafting/choices";
export {
  type ArticleChange,
  comparedSections,
  comparisonText,
  type ParagraphChange,
  type WordChange,
} from "./drafting/compared-sections";
export { draftSection } from "./drafting/draft-section";
export { announcedCriteria } from "./drafting/evaluation-appendix";
export { limitInWords } from "./drafting/limit-in-words";
export type { DraftingInput, DraftSection, SectionFacts } from "./drafting/model";
export {
  blanksOf,
  type NumberedArticle,
  type NumberedParagraph,
  type NumberedSection,
  numberedSection,
} from "./drafting/numbered-section";
export { type PlainTextOptions, sectionText } from "./drafting/plain-text";
export type { AskedSubmittal, Clause, HoldsAt, Requirement, RequirementSubject, Role, SubmittalKind } from "./model";
export { submittalKinds } from "./model";
export { type LanguageReading, readLanguage } from "./neutral-language/language-notes";
export type { LegalBasis } from "./neutral-language/legal-basis";
export { type ConcernFamily, type ConcernSeverity, concernFamilies, type LanguageNote } from "./neutral-language/model";
export { requirementsOf } from "./requirements-of";
export { askedSubmittalsSchema, type ClausesText, clausesSchema, reportStrayClauses } from "./schema";
