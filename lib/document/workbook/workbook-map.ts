import { failed, type Result, succeeded } from "#lib/quantity";
import { limits } from "./limits";
import { type PackageParts, xmlOf } from "./package-parts";
import type { WorkbookProblem } from "./problem";

/** Where the parts of a workbook stand and how its days count. */
export type WorkbookMap = Readonly<{
  sheets: readonly Readonly<{ name: string; part: string }>[];
  sharedStrings: string | null;
  styles: string | null;
  /** Days count from 1904 in workbooks of old Macintosh programs, else from 1900. */
  daysFrom: 1900 | 1904;
}>;

type Relation = Readonly<{ id: string; kind: string; part: string }>;

const folderOf = (part: string): string => part.slice(0, part.lastIndexOf("/") + 1);
const relationsOf = (part: string): string => `${folderOf(part)}_rels/${part.slice(folderOf(part).length)}.rels`;

/** A target as it is written in a part of this folder → the name of the part. */
function resolved(folder: string, target: string): string {
  const steps: string[] = [];
  for (const step of (target.startsWith("/") ? target : `${folder}${target}`).split("/")) {
    if (step === "..") steps.pop();
    else if (step !== "." && step !== "") steps.push(step);
  }
  return steps.join("/");
}

function relations(parts: PackageParts, of: string): Result<readonly Relation[], WorkbookProblem> {
  const found: Relation[] = [];
  const problem = xmlOf(parts, relationsOf(of), (name, { Id = "", Type = "", Target = "" }) => {
    if (name === "Relationship")
      found.push({ id: Id, kind: Type.slice(Type.lastIndexOf("/") + 1), part: resolved(folderOf(of), Target) });
    return null;
  });
  return problem === null ? succeeded(found) : failed(problem);
}

/** Finds the sheets of a workbook. @source ECMA-376 part 2, clause 9; part 1, 12.3 and 18.2 */
export function workbookMap(parts: PackageParts): Result<WorkbookMap, WorkbookProblem> {
  if (!parts.has("_rels/.rels")) return failed({ kind: "not-a-workbook" });
  const root = relations(parts, "");
  if (!root.ok) return root;
  const workbook = root.value.find(({ kind }) => kind === "officeDocument")?.part;
  if (workbook === undefined || !parts.has(workbook) || !/\.xml$/i.test(workbook))
    return failed({ kind: "not-a-workbook" });
  const related = relations(parts, workbook);
  if (!related.ok) return related;
  const partOf = (kind: string) => related.value.find((relation) => relation.kind === kind)?.part ?? null;
  const sheets: { name: string; part: string }[] = [];
  let daysFrom: 1900 | 1904 = 1900;
  const problem = xmlOf(parts, workbook, (element, attributes) => {
    if (element === "workbookPr" && /^(1|true)$/.test(attributes.date1904 ?? "")) daysFrom = 1904;
    if (element !== "sheet") return null;
    const id = Object.entries(attributes).find(([name]) => /(^|:)id$/.test(name))?.[1];
    const relation = related.value.find((each) => each.id === id && each.kind === "worksheet");
    const name = attributes.name ?? "";
    if (sheets.some((sheet) => sheet.name.toLowerCase() === name.toLowerCase()))
      return { kind: "damaged", what: `it holds two sheets named “${name}”` };
    // sheets of other kinds, such as a chart by itself, hold no cells
    if (relation !== undefined) sheets.push({ name, part: relation.part });
    return sheets.length > limits.sheets ? { kind: "too-many-sheets", sheets: sheets.length } : null;
  });
  if (problem !== null) return failed(problem);
  return succeeded({ sheets, sharedStrings: partOf("sharedStrings"), styles: partOf("styles"), daysFrom });
}
