import { costCategories, costLines, type PriceLineKind } from "#lib/cost";
import { bidSchema } from "#lib/evaluation";
import { parseExact } from "#lib/quantity";
import type { Sheet } from "../workbook/cell";
import { addressIn, type FormRow, formRows, readableText, refusalOf, tracesOf } from "./form-rows";
import type { FormCell, PriceText } from "./model";
import { type PriceField, priceColumns, takes } from "./price-columns";
import { pricesTable } from "./sheets";

export type PricesRead = Readonly<{ prices: readonly PriceText[]; cells: readonly FormCell[] }>;

type PriceRow = FormRow<PriceField>;

const plain = (text: string): string => text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, "");

/** The key of an entry that carries this label or is called so; undefined where none does. */
const keyOf = <K extends string>(
  entries: Readonly<Record<K, Readonly<{ label: string }>>>,
  read: string,
): K | undefined =>
  (Object.keys(entries) as K[]).find((key) => [plain(key), plain(entries[key].label)].includes(plain(read)));

/** The price lines of a filled form as text, and how each cell was read. */
export function pricesSheet(sheet: Sheet): PricesRead {
  const rows = formRows(sheet, pricesTable);
  const prices = rows.map((row) => priceOf(sheet.name, row));
  const parsed = bidSchema.shape.prices.safeParse(prices);
  const issues = parsed.success ? [] : parsed.error.issues;
  const cells = rows.flatMap((row, index) => {
    const price = prices[index];
    const own = issues.filter(({ path }) => path[0] === index);
    const problems = new Map(own.map(({ path, message }) => [columnOf(path.slice(1)), message] as const));
    return price === undefined ? [] : cellsOf(sheet.name, row, price, problems);
  });
  return { prices, cells };
}

/** The column that fills the field at a path of a line. */
function columnOf([name, part]: readonly PropertyKey[]): PriceField {
  if (name === "amount") return part === "quantity" ? "quantity" : "price";
  return priceColumns.find(({ fills }) => fills.some((field) => field === name))?.field ?? "label";
}

type AmountText = PriceText["amount"];

/** A lump sum unless it is written as a price per area, or has a quantity beside it. */
function amountOf(price: string, quantity: string): AmountText {
  if (quantity !== "") return { kind: "per-unit", quantity, unitPrice: price };
  return { kind: parseExact("moneyPerArea", price).ok ? "per-area" : "lump-sum", price };
}

function priceOf(sheet: string, row: PriceRow): PriceText {
  const { cells } = row;
  const text = (field: PriceField) => readableText(cells.get(field));
  const kind = keyOf(costLines, text("kind"));
  const traces = [...tracesOf(sheet, cells.values()), ...leftOver(row, kind)];
  const head = {
    id: `form-price-${row.row}`,
    label: text("label"),
    givenBy: "bid",
    document: text("document"),
    page: text("page"),
    note: traces.join(" "),
  } as const;
  // without a way of payment the price must not count, so it waits in the note
  if (kind === undefined)
    return { kind: "at-base-date", ...head, category: "investment", amount: { kind: "lump-sum", price: "" } };
  const amount = amountOf(text("price"), text("quantity"));
  const category = (keyOf(costCategories, text("category")) ?? text("category")) as keyof typeof costCategories;
  const escalation = text("escalation");
  switch (kind) {
    case "at-base-date":
      return { kind, ...head, category, amount };
    case "in-year":
      return { kind, ...head, category, amount, year: text("year"), escalation };
    case "yearly":
      return { kind, ...head, category, amount, from: text("from"), to: text("last"), escalation };
    case "periodic": {
      const years = { every: text("every"), from: text("from"), until: text("last"), except: text("except") };
      return { kind, ...head, category, amount, ...years, escalation };
    }
    case "replacement-chain":
      return {
        kind,
        ...head,
        amount,
        life: text("life"),
        lifeGivenBy: "bid",
        renewalSaving: text("renewalSaving"),
        removal: text("removal") === "" ? null : amountOf(text("removal"), ""),
        removalGivenBy: "bid",
        removalAtStudyEnd: "used-life-share",
        residual: "straight-line",
        escalation,
      };
  }
}

/** The filled columns that no field of the line takes: all but the label where the way of payment is not known. */
const idle = (kind: PriceLineKind | undefined, field: PriceField): boolean =>
  kind === undefined ? !["label", "document", "page"].includes(field) : !takes(kind, field);

/** What stands in idle columns, for the note: nothing typed is dropped. */
function leftOver({ row, cells }: PriceRow, kind: PriceLineKind | undefined): readonly string[] {
  const texts = priceColumns.flatMap(({ field, heading }) => {
    const text = readableText(cells.get(field));
    return text !== "" && idle(kind, field) ? [`${heading}: “${text}”`] : [];
  });
  return texts.length === 0 ? [] : [`Also in row ${row} of the filled form: ${texts.join("; ")}.`];
}

function cellsOf(
  sheet: string,
  { row, cells }: PriceRow,
  price: PriceText,
  problems: ReadonlyMap<PriceField, string>,
): readonly FormCell[] {
  const kind = keyOf(costLines, readableText(cells.get("kind")));
  return priceColumns.flatMap(({ field, heading }): readonly FormCell[] => {
    const cell = cells.get(field);
    const problem =
      (cell === undefined ? null : refusalOf(cell)) ??
      placeProblem(field, kind, cell?.text.trim() ?? "") ??
      problems.get(field) ??
      null;
    if (cell === undefined && problem === null) return [];
    return [
      {
        sheet,
        address: addressIn(pricesTable, row, field),
        about: price.label,
        heading,
        text: cell?.text ?? "",
        reading: readingOf(field, kind, price),
        problem,
      },
    ];
  });
}

const kindNames = Object.values(costLines)
  .map(({ label }) => `“${label}”`)
  .join(", ");

/** What the way of payment of a row means for one of its cells. */
function placeProblem(field: PriceField, kind: PriceLineKind | undefined, text: string): string | null {
  if (kind === undefined) {
    if (field === "kind")
      return `${text === "" ? "Nothing" : `“${text}”`} was read. Expected one of ${kindNames}. Until then the price stands in the note of the line and does not count.`;
    return null;
  }
  if (text === "" || takes(kind, field)) return null;
  return `“${text}” belongs to no field of a price that is paid so: “${costLines[kind].label}”. It is kept in the note of the line.`;
}

const amountWords = {
  "lump-sum": "lump sum",
  "per-area": "price per area",
  "per-unit": "price of one unit",
  share: "share of a sum",
} as const;

function readingOf(field: PriceField, kind: PriceLineKind | undefined, price: PriceText): string {
  if (kind === undefined) return "";
  if (field === "kind") return costLines[kind].label;
  if (field === "category") return "category" in price ? (costCategories[price.category]?.label ?? "") : "";
  if (field === "price") return amountWords[price.amount.kind];
  if (field !== "removal") return ""; // kept as written
  return price.kind === "replacement-chain" && price.removal ? amountWords[price.removal.kind] : "";
}
