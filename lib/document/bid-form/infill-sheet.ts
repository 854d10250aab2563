import { evidenceLevels, matchEvidence } from "#lib/claim";
import { bidSchema } from "#lib/evaluation";
import { infillMaterials } from "#lib/material";
import { formatReading, parseQuantity } from "#lib/quantity";
import type { Sheet } from "../workbook/cell";
import { addressIn, type FormRow, formRows, headingOf, readableText, refusalOf } from "./form-rows";
import { placements } from "./lists";
import type { ComponentText, FormCell, NamedMaterial } from "./model";
import { type ComponentField, infillTable, singleCells } from "./sheets";

export type InfillRead = Readonly<{
  placement: string;
  components: readonly ComponentText[];
  cells: readonly FormCell[];
}>;

const plain = (text: string): string => text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, "");

/** The infill of a filled form as text, and how each cell was read. */
export function infillSheet(sheet: Sheet, own: readonly NamedMaterial[]): InfillRead {
  const rows = formRows(sheet, infillTable);
  const components = rows.map((row) => componentOf(row, own));
  const placementCell = sheet.cells.get(singleCells.placement.entry);
  const written = readableText(placementCell);
  const placement =
    Object.entries(placements).find(([id, label]) => [id, plain(label)].includes(plain(written)))?.[0] ?? written;
  const parsed = bidSchema.shape.infill.safeParse({ placement, components });
  const issues = parsed.success ? [] : parsed.error.issues;
  const problemAt = (...path: readonly PropertyKey[]) =>
    issues.find((issue) => path.every((step, index) => issue.path[index] === step))?.message ?? null;
  const asksPlacement = components.length > 0 || written !== "";
  const placementProblem =
    (placementCell === undefined ? null : refusalOf(placementCell)) ?? (asksPlacement ? problemAt("placement") : null);
  const placementCells: readonly FormCell[] =
    placementCell === undefined && placementProblem === null
      ? []
      : [
          {
            sheet: sheet.name,
            address: singleCells.placement.entry,
            about: "Infill",
            heading: singleCells.placement.labelText,
            text: placementCell?.text ?? "",
            reading: placements[placement as keyof typeof placements] ?? "",
            problem: placementProblem,
          },
        ];
  const cells = rows.flatMap((row, index) =>
    cellsOf(sheet.name, row, components[index], (field) => problemAt("components", index, field), own),
  );
  return { placement, components, cells: [...placementCells, ...cells] };
}

const materialsOf = (own: readonly NamedMaterial[]) => [...own, ...infillMaterials];

function componentOf({ row, cells }: FormRow<ComponentField>, own: readonly NamedMaterial[]): ComponentText {
  const text = (field: ComponentField) => readableText(cells.get(field));
  const material = text("material");
  const evidence = text("evidence");
  return {
    id: `form-component-${row}`,
    material:
      materialsOf(own).find(({ id, label }) => [plain(id), plain(label)].includes(plain(material)))?.id ?? material,
    arealDensity: text("arealDensity"),
    bulkDensity: text("bulkDensity"),
    evidence: evidence === "" ? "stated" : (matchEvidence(evidence) ?? evidence),
    document: text("document"),
    page: text("page"),
    words: text("words"),
  };
}

function cellsOf(
  sheet: string,
  { row, cells }: FormRow<ComponentField>,
  component: ComponentText | undefined,
  problemAt: (field: ComponentField) => string | null,
  own: readonly NamedMaterial[],
): readonly FormCell[] {
  if (component === undefined) return [];
  const material = materialsOf(own).find(({ id }) => id === component.material);
  return infillTable.columns.flatMap((column): readonly FormCell[] => {
    if (column.kind === "given") return [];
    const { field, heading } = column;
    const cell = cells.get(field);
    const unknown =
      field === "material" && material === undefined && component.material !== ""
        ? `“${component.material}” is not a material of the list. Expected one of the list, or one that the brief describes as the owner's own.`
        : null;
    const problem = (cell === undefined ? null : refusalOf(cell)) ?? problemAt(field) ?? unknown;
    if (cell === undefined && problem === null) return [];
    return [
      {
        sheet,
        address: addressIn(infillTable, row, field),
        about: material?.label ?? (component.material || headingOf(infillTable, "material")),
        heading,
        text: cell?.text ?? "",
        reading: readingOf(field, component, material?.label ?? ""),
        problem,
      },
    ];
  });
}

function readingOf(field: ComponentField, component: ComponentText, material: string): string {
  switch (field) {
    case "material":
      return material;
    case "arealDensity":
    case "bulkDensity": {
      const parsed = parseQuantity(field, component[field]);
      if (!parsed.ok) return "";
      const { reading } = parsed.value;
      return (["us", "metric"] as const).map((system) => formatReading(field, reading, system)).join(" = ");
    }
    case "evidence":
      return evidenceLevels.find(({ id }) => id === matchEvidence(component.evidence))?.label ?? "";
    case "document":
    case "page":
    case "words":
      return "";
  }
}
