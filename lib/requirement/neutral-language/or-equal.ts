import type { Surroundings } from "./model";
import { phraseList, placesOf } from "./phrase";
import type { Sentence } from "./sentences";

const equals = phraseList([
  "or ~2 equal|equals|equivalent|equivalents|comparable",
  "equal|equivalent product*|material* will|are|shall|may be? accepted|considered|allowed",
]);

/** Whether a sentence allows an equal, in itself or in the one behind it that begins with “or”. */
export function allowsEqual(sentence: Sentence, { next, count }: Surroundings): boolean {
  if (placesOf(equals, sentence, count).length > 0) return true;
  return next?.words[0]?.key === "or" && placesOf(equals, next, count).length > 0;
}
