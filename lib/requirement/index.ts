export { type LanguageReading, readLanguage } from "./neutral-language/language-notes";
export type { LegalBasis } from "./neutral-language/legal-basis";
export { type ConcernFamily, type ConcernSeverity, concernFamilies, type LanguageNote } from "./neutral-language/model";
