export type { ClauseLattice, TightCombination } from "./competition/clause-lattice";
export { type ClauseCompetition, type Competition, competition, type HowMany } from "./competition/competition";
export { competitionSentences, moveInWords } from "./competition/explain-competition";
export type { KnownSystem, LimitClause, LimitMove, Standing, StandingMatrix, SystemFigure } from "./competition/model";
export type { Relaxation } from "./competition/relaxations";
export { type LanguageReading, readLanguage } from "./neutral-language/language-notes";
export type { LegalBasis } from "./neutral-language/legal-basis";
export { type ConcernFamily, type ConcernSeverity, concernFamilies, type LanguageNote } from "./neutral-language/model";
