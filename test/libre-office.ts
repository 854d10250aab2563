import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { findLibreOffice } from "./tools.mjs";

/** Whether a workbook can be recalculated here, and whether a text document can be opened. */
export const hasLibreOffice = findLibreOffice("calc") !== undefined;
export const hasTextDocuments = findLibreOffice("writer") !== undefined;

/** Works out every cell anew when a workbook is opened, whatever results it holds. */
const alwaysRecalculate = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>
`;

/** What is converted: by which part of the office suite, from and to which ending, and by which filter. */
type Conversion = Readonly<{ part: "calc" | "writer"; from: string; to: string; filter: string }>;

/** Opens files in LibreOffice without a window and gives them back converted. One start for all, with a profile of its own. */
function converted<K extends string>(
  files: Readonly<Record<K, Uint8Array>>,
  { part, from, to, filter }: Conversion,
): Record<K, Buffer> {
  const program = findLibreOffice(part);
  if (program === undefined) throw new Error(`no LibreOffice with ${part} was found`);
  const folder = mkdtempSync(join(tmpdir(), "evenfield-converted-"));
  try {
    const profile = join(folder, "profile");
    mkdirSync(join(profile, "user"), { recursive: true });
    writeFileSync(join(profile, "user", "registrymodifications.xcu"), alwaysRecalculate);
    const names = Object.keys(files) as K[];
    const paths = names.map((name) => join(folder, `${name}.${from}`));
    for (const [index, name] of names.entries()) writeFileSync(paths[index] ?? "", files[name]);
    const { status, stderr } = spawnSync(
      program,
      [
        ...[`-env:UserInstallation=${pathToFileURL(profile).href}`, "--headless", "--norestore", "--nolockcheck"],
        ...["--convert-to", `${to}:${filter}`, "--outdir", join(folder, "out"), ...paths],
      ],
      { timeout: 300_000, encoding: "utf8" },
    );
    const results = names.map((name) => join(folder, "out", `${name}.${to}`));
    const lacking = results.filter((path) => !existsSync(path));
    if (status !== 0 || lacking.length > 0)
      throw new Error(`LibreOffice ended with ${status}; ${lacking.join(", ")}: ${stderr}`);
    return Object.fromEntries(names.map((name, index) => [name, readFileSync(results[index] ?? "")])) as Record<
      K,
      Buffer
    >;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/**
 * Workbooks with every formula worked out anew.
 * @throws Error where LibreOffice is missing or gives a file less back
 */
export const recalculated = <K extends string>(files: Readonly<Record<K, Uint8Array>>): Record<K, Buffer> =>
  converted(files, { part: "calc", from: "xlsx", to: "xlsx", filter: "Calc MS Excel 2007 XML" });

/**
 * DOCX files as the text that a word processor shows, with the numbers it counted itself.
 * @throws Error where LibreOffice is missing or gives a file less back
 */
export function textShown<K extends string>(files: Readonly<Record<K, Uint8Array>>): Record<K, string> {
  const texts = converted(files, { part: "writer", from: "docx", to: "txt", filter: "Text (encoded):UTF8" });
  const names = Object.keys(texts) as K[];
  return Object.fromEntries(names.map((name) => [name, texts[name].toString("utf8").replace(/^\uFEFF/, "")])) as Record<
    K,
    string
  >;
}

/** DOCX files as HTML, in which headings, lists and heads of tables can be told apart. */
export function pageShown<K extends string>(files: Readonly<Record<K, Uint8Array>>): Record<K, string> {
  const pages = converted(files, { part: "writer", from: "docx", to: "html", filter: "HTML (StarWriter)" });
  const names = Object.keys(pages) as K[];
  return Object.fromEntries(names.map((name) => [name, pages[name].toString("utf8")])) as Record<K, string>;
}
