import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { beforeAll, describe, expect, test } from "vitest";
import { type PrintedDocument, printedAsPdf } from "#lib/document";
import { fonts, sample } from "./sample";

type Node = Readonly<{ role?: string; lang?: string; type?: string; id?: string; children?: readonly Node[] }>;

/** What a reader of PDF files that shares no code with the writer finds in one. */
async function found(document: PrintedDocument) {
  const pdf = await getDocument({ data: await printedAsPdf(document, fonts), verbosity: 0 }).promise;
  const pages = await Promise.all(
    Array.from({ length: pdf.numPages }, async (_, index) => {
      const page = await pdf.getPage(index + 1);
      const { items } = await page.getTextContent();
      return {
        tree: (await page.getStructTree()) as Node,
        text: items.map((item) => ("str" in item ? `${item.str}${item.hasEOL ? " " : ""}` : "")).join(""),
      };
    }),
  );
  const { info } = await pdf.getMetadata();
  return { pages, info, marks: await pdf.getMarkInfo(), outline: await pdf.getOutline() };
}

const roles = ({ role, children = [] }: Node): readonly string[] => [
  ...(role === undefined ? [] : [role]),
  ...children.flatMap(roles),
];
const count = (all: readonly string[], role: string) => all.filter((each) => each === role).length;

describe("printedAsPdf", () => {
  let inSample: Awaited<ReturnType<typeof found>>;
  beforeAll(async () => {
    inSample = await found(sample);
  });

  test("is tagged, with title, language, author and day", () => {
    const { info, marks } = inSample;
    expect(marks?.Marked).toBe(true);
    expect(info).toMatchObject({
      Title: "Section 32 18 13",
      Author: "Larkwater School District",
      Language: "en-US",
      CreationDate: "D:20261125000000Z",
    });
  });

  test("tags headings, nested lists and the table with its heads", () => {
    const { pages } = inSample;
    const all = pages.flatMap(({ tree }) => roles(tree));
    expect(count(all, "H2")).toBe(3);
    expect(count(all, "H3")).toBe(3);
    expect(count(all, "Lbl")).toBeGreaterThanOrEqual(38 + 4);
    expect(count(roles(pages[0]?.tree ?? {}), "L")).toBeGreaterThanOrEqual(4);
    expect(count(all, "Caption")).toBeGreaterThanOrEqual(1);
    expect(count(all, "TD")).toBeGreaterThanOrEqual(119);
    expect(count(all, "TH")).toBeGreaterThanOrEqual(3 + 60);
  });

  test("has a bookmark for each heading, nested as they are", () => {
    const { outline } = inSample;
    expect(outline.map(({ title }) => title)).toEqual([
      "PART 1 GENERAL",
      "PART 2 PRODUCTS",
      "Appendix A HOW BIDS ARE JUDGED",
    ]);
    expect(outline[0]?.items.map(({ title }: { title: string }) => title)).toEqual(["1.1 SUMMARY", "1.2 REFERENCES"]);
  });

  test("numbers its pages and repeats the heads of a table that goes on", () => {
    const { pages } = inSample;
    for (const [index, { text }] of pages.entries()) expect(text).toContain(`Page ${index + 1} of ${pages.length}`);
    expect(pages.filter(({ text }) => /Property\s*Bid A\s*Bid B/.test(text)).length).toBeGreaterThanOrEqual(2);
  });

  test("writes what the fonts have no sign for as its code, and loses nothing", async () => {
    const long = `${"q".repeat(400)} ${"word ".repeat(1200)}end.`;
    const { pages } = await found({
      ...sample,
      blocks: [
        { kind: "paragraph", text: "≥ 8 lbf, ½ in, Łódź, Ж, 草, 🏟, \u0007bell." },
        { kind: "paragraph", text: long },
        {
          kind: "table",
          caption: "A cell longer than a page",
          columns: [{ heading: "Text", share: 1, align: "start" }],
          hasRowHeads: false,
          rows: [[long]],
        },
      ],
    });
    const text = pages.map((page) => page.text).join("");
    expect(text).toContain("≥ 8 lbf, ½ in, Łódź, Ж, [U+8349], [U+1F3DF], bell.");
    expect(text.match(/word/g)).toHaveLength(2400);
    expect(text.match(/q/g)).toHaveLength(800);
  });

  test("is the same file for the same document", async () => {
    expect(Buffer.from(await printedAsPdf(sample, fonts)).equals(Buffer.from(await printedAsPdf(sample, fonts)))).toBe(
      true,
    );
  });
});
