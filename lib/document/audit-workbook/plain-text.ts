/** What a cell of a spreadsheet program can hold, with room to spare. */
const mostCharacters = 32_000;

/** Characters that turn the direction of what follows: shown, so that no text can pass for another one. */
const turning = /[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/g;
/** Characters that XML has no place for, halves of pairs among them. */
const unwritable =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is taken out
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** A text as a cell can hold it. What it begins with does not matter: text is written as text and never as a formula. */
export const plainText = (text: string): string =>
  text
    .replace(turning, (character) => `⟨U+${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}⟩`)
    .replace(unwritable, "\ufffd")
    .slice(0, mostCharacters);
