import type { Found, LanguageRule, Match, Surroundings } from "./model";
import { allowsEqual } from "./or-equal";
import { phraseList, placesOf } from "./phrase";
import type { Sentence } from "./sentences";

/** A rule as data: the phrases it looks for and where they are clean after all. */
type PhraseRule = Omit<LanguageRule, "find"> &
  Readonly<{
    phrases: readonly string[];
    /** A place inside one of these is clean: “best practice” for “best”. */
    unless?: readonly string[];
    /** A sentence that holds one of these is clean. */
    cleanBy?: readonly string[];
    /** “No patented product is required” is clean where the rule may be denied. */
    denied?: "clean" | "counts";
    /** “… or equal” in the sentence or right behind it makes it clean. */
    orEqual?: "clean" | "counts";
  }>;

const denials = new Set(["no", "not", "without", "never", "neither", "nor", "nobody", "cannot"]);
const exceptions = new Set(["other", "except", "but", "only", "unless", "than"]);
/** How far a denial reaches, in words. */
const reach = 8;

/** Whether the words before a place deny it within the same part of the sentence. */
function isDenied({ words }: Sentence, { first }: Match): boolean {
  for (let at = first - 1; at >= Math.max(0, first - reach); at--) {
    const word = words[at];
    if (word === undefined || word.text === ";" || word.text === ":" || exceptions.has(word.key)) return false;
    if (denials.has(word.key)) return true;
  }
  return false;
}

const inside = (inner: Match, outer: Match) => outer.first <= inner.first && inner.last <= outer.last;

/** A rule from its phrases. */
export function phraseRule({
  phrases,
  unless = [],
  cleanBy = [],
  denied = "counts",
  orEqual = "counts",
  ...rule
}: PhraseRule): LanguageRule {
  const [wanted, clean, cleaning] = [phraseList(phrases), phraseList(unless), phraseList(cleanBy)];
  const find = (sentence: Sentence, around: Surroundings): readonly Found[] => {
    const places = placesOf(wanted, sentence, around.count);
    if (places.length === 0 || placesOf(cleaning, sentence, around.count).length > 0) return [];
    if (orEqual === "clean" && allowsEqual(sentence, around)) return [];
    const cleanPlaces = placesOf(clean, sentence, around.count);
    return places.filter(
      (place) =>
        !cleanPlaces.some((cleanPlace) => inside(place, cleanPlace)) &&
        !(denied === "clean" && isDenied(sentence, place)),
    );
  };
  return { ...rule, find };
}
