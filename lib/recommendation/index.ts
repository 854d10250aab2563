export { type Dissent, nothingWritten, type OwnersWords, type PaperPart, type PartWords, paperParts } from "./model";
export { ownersWordsSchema } from "./schema";
export { type WrittenPart, writtenPart } from "./written-part";
