import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { PrintedFonts } from "#lib/document";

const packages = join(process.cwd(), "node_modules", "@expo-google-fonts");
const font = (...path: readonly string[]) => readFile(join(packages, ...path));

let kept: Promise<PrintedFonts> | undefined;

const read = async (): Promise<PrintedFonts> => {
  const [text, strong, emphasis, heading] = await Promise.all([
    font("source-sans-3", "400Regular", "SourceSans3_400Regular.ttf"),
    font("source-sans-3", "600SemiBold", "SourceSans3_600SemiBold.ttf"),
    font("source-sans-3", "400Regular_Italic", "SourceSans3_400Regular_Italic.ttf"),
    font("source-serif-4", "600SemiBold", "SourceSerif4_600SemiBold.ttf"),
  ]);
  return { text, strong, emphasis, heading };
};

/** The fonts that PDF files embed: the ones of the pages, as whole TrueType fonts. Read once. */
export const printedFonts = (): Promise<PrintedFonts> => {
  kept ??= read();
  return kept;
};
