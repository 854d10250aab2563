/** The bytes of the fonts that a PDF embeds, each a whole TrueType font. They are handed in, as a room reads no files. */
export type PrintedFonts = Readonly<Record<"text" | "strong" | "emphasis" | "heading", Uint8Array>>;

export type Face = keyof PrintedFonts;
