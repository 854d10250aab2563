import type { ProjectRow } from "./tables";

/*
 * Names and owners are searched by their words, whatever the case, accents or signs between them: “o’neil” finds
 * “O'NEIL Field”, “senora” finds “Señora”. Both databases hold the folded words and compare them letter by letter, as each
 * would fold by rules of its own. A sign that no word holds, such as “%”, never reaches a pattern.
 */

/** The words of a text, folded, in their order. */
export const foldedWords = (text: string): readonly string[] =>
  text
    .normalize("NFKD")
    .toLowerCase()
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .match(/[\p{L}\p{N}]+/gu) ?? [];

/** As much as an index of either database takes, whatever the signs. Nobody searches by the end of a longer name. */
const mostSearched = 500;

export const searchedOf = ({ name, owner }: Pick<ProjectRow, "name" | "owner">): string =>
  [...foldedWords(`${name} ${owner}`).join(" ")].slice(0, mostSearched).join("");
