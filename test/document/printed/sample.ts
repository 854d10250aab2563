import { readFileSync } from "node:fs";
import type { PrintedBlock, PrintedDocument, PrintedFonts } from "#lib/document";

const font = (path: string) => readFileSync(`node_modules/@expo-google-fonts/${path}`);

export const fonts: PrintedFonts = {
  text: font("source-sans-3/400Regular/SourceSans3_400Regular.ttf"),
  strong: font("source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf"),
  emphasis: font("source-sans-3/400Regular_Italic/SourceSans3_400Regular_Italic.ttf"),
  heading: font("source-serif-4/600SemiBold/SourceSerif4_600SemiBold.ttf"),
};

const at = (level: number) => ({ scheme: "section", level }) as const;
const paragraph = (level: number, text: string): PrintedBlock => ({ kind: "paragraph", text, number: at(level) });

/** One of each block, with two parts, so that counts begin anew, and more than 27 paragraphs at one level. */
export const blocks: readonly PrintedBlock[] = [
  { kind: "paragraph", text: "Drawn up for the board of an invented district." },
  { kind: "heading", level: 1, text: "GENERAL", number: at(0) },
  { kind: "heading", level: 2, text: "SUMMARY", number: at(1) },
  paragraph(2, "This Section includes:"),
  paragraph(3, "Carpet with its backing."),
  paragraph(3, "Infill:"),
  paragraph(4, "Sand, at least 3 lb/ft² (14.6 kg/m²)."),
  paragraph(4, "Other, ≤ 40 °C × 2."),
  paragraph(5, "By weigh ticket."),
  { kind: "note", label: "Note to the specifier", text: "Say which sections the project has.", depth: 0 },
  paragraph(2, "Work in other Sections."),
  { kind: "heading", level: 2, text: "REFERENCES", number: at(1) },
  ...Array.from({ length: 29 }, (_, index) => paragraph(2, `Method number ${index + 1} of the list.`)),
  { kind: "heading", level: 1, text: "PRODUCTS", number: at(0) },
  { kind: "heading", level: 2, text: "PERFORMANCE", number: at(1) },
  {
    kind: "paragraph",
    number: at(2),
    text: [
      { text: "The limit is ", style: "plain" },
      { text: "165 g", style: "removed" },
      { text: "160 g", style: "added" },
      { text: ", and “each point” counts.", style: "strong" },
    ],
  },
  { kind: "list", isOrdered: true, items: ["First groom.", "Then test again."] },
  { kind: "list", isOrdered: true, items: ["A second list counts from one."] },
  { kind: "list", isOrdered: false, items: ["A point without order."] },
  {
    kind: "table",
    caption: "What the bids state",
    columns: [
      { heading: "Property", share: 3, align: "start" },
      { heading: "Bid A", share: 1, align: "end" },
      { heading: "Bid B", share: 1, align: "end" },
    ],
    hasRowHeads: true,
    rows: Array.from({ length: 60 }, (_, index) => [
      `Property ${index + 1}`,
      `${index} mm`,
      index === 3 ? "" : "not shown",
    ]),
  },
  { kind: "heading", level: 1, text: "HOW BIDS ARE JUDGED", number: { scheme: "appendix", level: 0 } },
  { kind: "paragraph", text: "Gates come first.", number: { scheme: "appendix", level: 1 } },
];

export const sample: PrintedDocument = {
  title: "Section 32 18 13",
  subtitle: "Synthetic grass surfacing",
  author: "Larkwater School District",
  language: "en-US",
  date: "2026-11-25",
  header: "Larkwater School District, new field",
  footer: "Draft of 2026-11-25",
  blocks,
};
