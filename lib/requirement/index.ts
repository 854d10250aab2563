export type { ClauseLattice, TightCombination } from "./competition/clause-lattice";
export { type ClauseCompetition, type Competition, competition, type HowMany } from "./competition/competition";
export { competitionSentences, howMany, relaxationInWords } from "./competition/explain-competition";
export type { KnownSystem, LimitClause, LimitMove, Standing, StandingMatrix, SystemFigure } from "./competition/model";
export type { Relaxation } from "./competition/relaxations";
export { completenessNotes, completenessRules } from "./completeness/completeness-notes";
export type { CompletenessNote, WrittenSection } from "./completeness/model";
export { type BlankId, type BlankPlace, blankPlaces, type FilledIn, sectionBlanks } from "./drafting/blanks";
export { type ChoiceId, type Choices, isChosen, sectionChoices } from "./drafting/choices";
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
export type { DraftingInput, DraftSection } from "./drafting/model";
export {
  blanksOf,
  type NumberedArticle,
  type NumberedParagraph,
  type NumberedSection,
  numberedSection,
} from "./drafting/numbered-section";
export type { SectionFacts } from "./drafting/section-facts";
export { type Issue, issueId, issueName } from "./issue";
export { type IssueText, issueSchema } from "./issue-schema";
export type { AskedSubmittal, Clause, HoldsAt, Requirement, RequirementSubject, Role, SubmittalKind } from "./model";
export { clausePlaces, submittalKinds } from "./model";
export { type LanguageReading, readLanguage } from "./neutral-language/language-notes";
export type { LegalBasis } from "./neutral-language/legal-basis";
export { type ConcernFamily, type ConcernSeverity, concernFamilies, type LanguageNote } from "./neutral-language/model";
export { requirementsOf } from "./requirements-of";
export { askedSubmittalsSchema, type ClausesText, clausesSchema, reportStrayClauses } from "./schema";
export {
  type OtherSystem,
  type Specification,
  type SystemOrigin,
  startingSpecification,
  systemOrigins,
} from "./specification";
export { type SpecificationText, specificationSchema } from "./specification-schema";
