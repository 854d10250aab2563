import type { NumberedArticle, NumberedSection } from "./numbered-section";

/** Characters in a line, at most. */
const width = 88;
const step = 4;

/** A text broken at words, its lines hanging behind the number. */
function hanging(number: string, text: string, level: number): readonly string[] {
  const indent = " ".repeat(level * step);
  const lead = `${indent}${number.padEnd(step - 1)} `;
  const behind = " ".repeat(lead.length);
  const lines: string[] = [];
  let line = lead;
  for (const word of text.split(" ")) {
    const isBegun = line.trimEnd().length > (lines.length === 0 ? lead.trimEnd().length : 0);
    if (isBegun && line.length + word.length > width) {
      lines.push(line.trimEnd());
      line = behind;
    }
    line += `${word} `;
  }
  return [...lines, line.trimEnd()];
}

/** What a plain text holds beside the text that is issued. */
export type PlainTextOptions = Readonly<{ notes: "with notes to the specifier" | "without notes" }>;

function articleLines({ number, title, paragraphs }: NumberedArticle, { notes }: PlainTextOptions): readonly string[] {
  const body = paragraphs.flatMap(({ level, number: own, text, note }) => [
    ...(note !== "" && notes === "with notes to the specifier"
      ? hanging("", `[Note to the specifier: ${note}]`, level)
      : []),
    ...hanging(own, text, level),
  ]);
  return [`${number}  ${title}`, "", ...body, ""];
}

/** The section as plain text with hanging numbers, for mail and for the record. */
export function sectionText(section: NumberedSection, options: PlainTextOptions = { notes: "without notes" }): string {
  const parts = section.parts.flatMap(({ number, title, articles }) => [
    `${number}  ${title}`,
    "",
    ...articles.flatMap((article) => articleLines(article, options)),
  ]);
  const appendices = section.appendices.flatMap((article) => articleLines(article, options));
  return [
    `SECTION ${section.number}`,
    section.title,
    "",
    ...parts,
    `END OF SECTION ${section.number}`,
    "",
    ...appendices,
  ].join("\n");
}
