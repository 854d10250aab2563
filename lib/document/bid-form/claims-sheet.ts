import {
  type ClaimField,
  type ClaimText,
  claimFields,
  claimsFromRows,
  evidenceLevels,
  formatCondition,
  matchEvidence,
  matchMethod,
  matchProperty,
  methodOf,
  type PastedClaim,
  type Property,
  parseCondition,
  propertyOf,
} from "#lib/claim";
import { formatReading, parseQuantity, unitFor } from "#lib/quantity";
import type { Cell, Sheet } from "../workbook/cell";
import { addressIn, type FormRow, formRows, readableText, refusalOf, tracesOf } from "./form-rows";
import { notStated } from "./lists";
import type { FormCell } from "./model";
import { claimsTable, type FormClaimField } from "./sheets";

type ClaimRow = FormRow<FormClaimField>;

/** A row that names a property alone says nothing yet: so stands every property in the blank form. */
const saysSomething = ({ cells }: ClaimRow): boolean => [...cells.keys()].some((field) => field !== "property");

/** The claims of a filled form as text, and how each cell was read. Read as pasted rows are, by the same rules. */
export function claimsSheet(sheet: Sheet): Readonly<{ claims: readonly ClaimText[]; cells: readonly FormCell[] }> {
  const rows = formRows(sheet, claimsTable).filter(saysSomething);
  const texts = rows.map(({ cells }) =>
    claimFields.map((field) =>
      field === "note" ? tracesOf(sheet.name, cells.values()).join(" ") : readableText(cells.get(field)),
    ),
  );
  const { claims } = claimsFromRows([claimFields, ...withoutBlank(texts)], (row) => `form-${row}`);
  return {
    claims: claims.map(({ claim }) => claim),
    cells: rows.flatMap((row, index) => {
      const pasted = claims[index];
      return pasted === undefined ? [] : cellsOf(sheet.name, row, pasted);
    }),
  };
}

/** A row is never blank here: where nothing of it can be read, its note says so. */
function withoutBlank(rows: readonly (readonly string[])[]): readonly (readonly string[])[] {
  if (rows.some((cells) => cells.every((cell) => cell === ""))) throw new RangeError("a filled row without any text");
  return rows;
}

function cellsOf(sheet: string, { row, cells }: ClaimRow, { claim, problems }: PastedClaim): readonly FormCell[] {
  const id = matchProperty(claim.property);
  const property = id === null ? null : propertyOf(id);
  const about = property?.label ?? claim.property;
  const problemsAt = new Map<ClaimField | "row", string>();
  for (const { field, message } of problems) problemsAt.set(field, message);
  return claimsTable.columns.flatMap((column): readonly FormCell[] => {
    if (column.kind === "given") return [];
    const { field, heading } = column;
    const cell = cells.get(field);
    const problem = (cell === undefined ? null : refusalOf(cell)) ?? problemsAt.get(field) ?? null;
    const ofRow = field === "property" ? (problemsAt.get("row") ?? null) : null;
    if (cell === undefined && problem === null && ofRow === null) return [];
    return [
      {
        sheet,
        address: addressIn(claimsTable, row, field),
        about,
        heading,
        text: cell?.text ?? "",
        reading: readers[field]?.(claim, property) ?? "",
        problem: problem === null ? ofRow : withExample(problem, cell, property),
      },
    ];
  });
}

/** A bare number is the commonest slip, so its sentence shows how the very number is written. */
function withExample(problem: string, cell: Cell | undefined, property: Property | null): string {
  if (cell?.kind !== "number" || property?.kind !== "quantity") return problem;
  const parsed = parseQuantity(property.dimension, cell.text);
  if (parsed.ok || parsed.problem.kind !== "unit-missing") return problem;
  const unit: string = unitFor(property.dimension, "us");
  const example = unit.startsWith("$") ? `$${cell.text}${unit.slice(1)}` : `${cell.text} ${unit}`;
  return `${problem} Write it as text with its unit, for instance “${example}”.`;
}

type Reader = (claim: ClaimText, property: Property | null) => string;

/** How a field of a claim was read; a field without a reader, or a reading that is empty, stays the text it is. */
const readers: Readonly<Partial<Record<FormClaimField, Reader>>> = {
  property: (_, property) => property?.label ?? "",
  figure: ({ figure }, property) => figureReading(figure, property),
  method: ({ method }) => {
    const id = matchMethod(method);
    return id === null ? "" : id === "not-stated" ? notStated : methodOf(id).designation;
  },
  condition: ({ condition }) => {
    const parsed = parseCondition(condition);
    return parsed.ok ? formatCondition(parsed.value) : "";
  },
  evidence: ({ evidence }) => evidenceLevels.find(({ id }) => id === matchEvidence(evidence))?.label ?? "",
};

function figureReading(figure: string, property: Property | null): string {
  if (property?.kind === "choice")
    return (
      property.choices.find(({ id, label }) => [id, label.toLowerCase()].includes(figure.toLowerCase()))?.label ?? ""
    );
  if (property?.kind !== "quantity") return "";
  const parsed = parseQuantity(property.dimension, figure);
  if (!parsed.ok) return "";
  const { reading } = parsed.value;
  return [
    ...new Set((["us", "metric"] as const).map((system) => formatReading(property.dimension, reading, system))),
  ].join(" = ");
}
