/** A label as it stands inside a sentence: “Pile height” → “pile height”, while “G-max” and “PFAS statement” stay. */
export const inSentence = (label: string): string =>
  /^\p{Lu}\p{Ll}/u.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label;
