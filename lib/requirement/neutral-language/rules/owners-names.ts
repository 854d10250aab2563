import { legalBases } from "../legal-basis";
import type { Found, LanguageRule } from "../model";
import { allowsEqual } from "../or-equal";

const basis = [legalBases.brandName, legalBases.makeOrSource];
/** A name as the words of a sentence are: small letters, hyphens and marks left out. */
const lettersOf = (name: string) => name.toLowerCase().match(/[\p{L}\p{M}]+|\d+(?:[.,/]\d+)*/gu) ?? [];

/** Names of makers or products that the owner wants to be told of, wherever they stand and however they are written. */
export const ownersNames: readonly LanguageRule[] = [
  {
    id: "owners-name",
    family: "owners-names",
    severity: "may shut others out",
    concern: "The owner’s list holds this name.",
    basis,
    offered: "Take the name out and describe the performance that it was meant to stand for.",
    find: (sentence, around) => {
      const { words } = sentence;
      const names = around.ownersNames.map(lettersOf).filter(({ length }) => length > 0);
      return words.flatMap((_, at): readonly Found[] =>
        names.flatMap((name) => {
          around.count();
          const stands = name.every((part, index) => words[at + index]?.key === part);
          if (!stands) return [];
          const place = { first: at, last: at + name.length - 1 };
          const concern =
            "The owner’s list holds this name. It stands with “or equal”; say which characteristics make an equal.";
          return [allowsEqual(sentence, around) ? { ...place, concern } : place];
        }),
      );
    },
  },
];
