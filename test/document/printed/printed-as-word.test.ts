import { unzipSync } from "fflate";
import { beforeAll, describe, expect, test } from "vitest";
import { printedAsWord, writtenNumbers } from "#lib/document";
import { hasTextDocuments, pageShown, textShown } from "../../libre-office";
import { blocks, sample } from "./sample";

const parts = async (document = sample) => {
  const files = unzipSync(await printedAsWord(document));
  return (name: string) => new TextDecoder().decode(files[name]);
};

describe("printedAsWord", () => {
  test("holds title, author, language and day in its properties", async () => {
    const core = (await parts())("docProps/core.xml");
    for (const wanted of [
      "<dc:title>Section 32 18 13</dc:title>",
      "<dc:creator>Larkwater School District</dc:creator>",
      "<dc:language>en-US</dc:language>",
      "2026-11-25T00:00:00Z",
    ])
      expect(core).toContain(wanted);
    expect((await parts())("word/styles.xml")).toContain('w:val="en-US"');
  });

  test("marks one row of each table as its headings", async () => {
    const body = (await parts())("word/document.xml");
    expect(body.match(/<w:tblHeader\b/g)).toHaveLength(1);
  });

  test("is the same file for the same document", async () => {
    expect(Buffer.from(await printedAsWord(sample)).equals(Buffer.from(await printedAsWord(sample)))).toBe(true);
  });

  test("takes signs that XML can’t hold out of what was typed", async () => {
    const read = await parts({
      ...sample,
      title: "A & B <c>\u0007",
      blocks: [{ kind: "paragraph", text: "one\u0000two\ud800 & <three>\nfour" }],
    });
    expect(read("word/document.xml")).toContain("onetwo &amp; &lt;three&gt; four");
    expect(read("docProps/core.xml")).toContain("<dc:title>A &amp; B &lt;c&gt;</dc:title>");
  });
});

describe.skipIf(!hasTextDocuments)("a DOCX opened in LibreOffice", () => {
  let [text, page] = ["", ""];
  beforeAll(async () => {
    const file = { sample: await printedAsWord(sample) };
    text = textShown(file).sample;
    page = pageShown(file).sample;
  });

  test("shows each number as we write it, counted by the word processor itself", () => {
    const shown = text.split("\n").map((line) => line.trim());
    const numbers = writtenNumbers(blocks);
    for (const [index, block] of blocks.entries()) {
      const number = numbers[index] ?? "";
      if (number === "" || (block.kind !== "heading" && block.kind !== "paragraph")) continue;
      const words = typeof block.text === "string" ? block.text : block.text.map((run) => run.text).join("");
      expect(shown).toContain(`${number} ${words}`);
    }
    expect(numbers.filter((number) => number !== "")).toHaveLength(44);
  });

  test("starts the second ordered list at one again", () => {
    const shown = text.split("\n").map((line) => line.trim());
    expect(shown).toContain("2. Then test again.");
    expect(shown).toContain("1. A second list counts from one.");
  });

  test("has its headings at their levels", () => {
    expect(page.match(/<h1\b/g)).toHaveLength(3);
    expect(page.match(/<h2\b/g)).toHaveLength(3);
  });

  test("has the heads of the table as heads", () => {
    expect(page.match(/<thead>/gi)).toHaveLength(1);
  });
});
