export type { Figure } from "./figure";
export { formatFigure } from "./format";
export { figureFromInterval, intervalOfFigure, known, unknown } from "./from-interval";
export { inSentence } from "./in-sentence";
export { listed } from "./listed";
export { type Phrase, type PhraseQuantity, type PreferredUnits, quantityInPhrase, say, tell } from "./phrase";
export { explainShortfall, type Shortfall } from "./shortfall";
export type { Origin, OwnersAlternative, Working, WorkingInput, WorkingSource } from "./working";
