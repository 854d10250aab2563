import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { describe, expect, test } from "vitest";
import { readLanguage } from "#lib/requirement";

/** Text that people may read: string literals with a space in them, template texts and text between tags. */
function textsOf(path: string): readonly string[] {
  const source = ts.createSourceFile(
    path,
    readFileSync(path, "utf8"),
    ts.ScriptTarget.Latest,
    true,
    path.endsWith("x") ? ts.ScriptKind.TSX : ts.ScriptKind.TS,
  );
  const texts: string[] = [];
  const add = (text: string) => {
    const plain = text.replace(/\s+/g, " ").trim();
    if (/\p{L}.* .*\p{L}/u.test(plain)) texts.push(plain);
  };
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return;
    if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node) || ts.isJsxText(node)) add(node.text);
    else if (ts.isTemplateExpression(node))
      add(node.head.text + node.templateSpans.map(({ literal }) => ` … ${literal.text}`).join(""));
    ts.forEachChild(node, visit);
  };
  visit(source);
  return texts;
}

const filesUnder = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => join(folder, name));

/** Words of ours that look like trouble and are none, each with its reason. */
const argued: readonly Readonly<{ words: RegExp; because: string }>[] = [
  { words: /JSON Schema/, because: "an open standard for describing data, told to whoever runs the command" },
];

const isArgued = (text: string) => argued.some(({ words }) => words.test(text));

describe("what the project itself shows", () => {
  for (const folder of [
    "lib/document",
    "lib/requirement/drafting",
    "lib/requirement/completeness",
    "lib/submittal",
    "app",
  ]) {
    const files = filesUnder(folder);
    test(`${folder} gets no neutral-language note`, () => {
      expect(files.length).toBeGreaterThan(10);
      const noted = files.flatMap((path) =>
        textsOf(path).flatMap((text) =>
          isArgued(text)
            ? []
            : readLanguage(text).notes.map(({ words, family }) => `${path}: ${family}, “${words}” in “${text}”`),
        ),
      );
      expect(noted).toEqual([]);
    });
  }
});
