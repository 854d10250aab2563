import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { findLibreOffice } from "./tools.mjs";

/** Whether a workbook can be recalculated here. */
export const hasLibreOffice = findLibreOffice() !== undefined;

/** Works out every cell anew when a workbook is opened, whatever results it holds. */
const alwaysRecalculate = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>
`;

/**
 * Opens workbooks in LibreOffice without a window, works out every formula, and gives them back with results. One start
 * for all of them, with a profile of its own.
 * @throws Error where LibreOffice is missing or gives a file less back
 */
export function recalculated<K extends string>(files: Readonly<Record<K, Uint8Array>>): Record<K, Buffer> {
  const program = findLibreOffice();
  if (program === undefined) throw new Error("no LibreOffice was found");
  const folder = mkdtempSync(join(tmpdir(), "evenfield-recalculated-"));
  try {
    const profile = join(folder, "profile");
    mkdirSync(join(profile, "user"), { recursive: true });
    writeFileSync(join(profile, "user", "registrymodifications.xcu"), alwaysRecalculate);
    const names = Object.keys(files) as K[];
    const paths = names.map((name) => join(folder, `${name}.xlsx`));
    for (const [index, name] of names.entries()) writeFileSync(paths[index] ?? "", files[name]);
    const { status, stderr } = spawnSync(
      program,
      [
        ...[`-env:UserInstallation=${pathToFileURL(profile).href}`, "--headless", "--norestore", "--nolockcheck"],
        ...["--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir", join(folder, "out"), ...paths],
      ],
      { timeout: 300_000, encoding: "utf8" },
    );
    const results = names.map((name) => join(folder, "out", `${name}.xlsx`));
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
