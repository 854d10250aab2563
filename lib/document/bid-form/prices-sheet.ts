import { amountInWords, costCategories, costLines, type PriceLineKind } from "#lib/cost";
import { bidSchema } from "#lib/evaluation";
import { parseExact } from "#lib/quantity";
import type { Sheet } from "../workbook/cell";
import { addressIn, type FormRow, formRows, readableText, refusalOf, tracesOf } from "./form-rows";
import type { FormCell, PriceText } from "./model";
import { biddersRoles, biddersSums, type PriceField, priceColumns, takes } from "./price-columns";
import { pricesTable, singleCells } from "./sheets";

export type PricesRead = Readonly<{
  prices: readonly PriceText[];
  statedTotal: string;
  statedTotalInWords: string;
  cells: readonly FormCell[];
}>;

type PriceRow = FormRow<PriceField>;

const plain = (text: string): string => text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, "");

/** The key of an entry that carries this label or is called so; undefined where none does. */
const keyOf = <K extends string>(
  entries: Readonly<Partial<Record<K, Readonly<{ label: string }>>>>,
  read: string,
): K | undefined =>
  (Object.keys(entries) as K[]).find((key) => [plain(key), plain(entries[key]?.label ?? key)].includes(plain(read)));

/** The price lines and sums of a filled form as text, and how each cell was read. */
export function pricesSheet(sheet: Sheet): PricesRead {
  const sums = sumsOf(sheet);
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
  return { prices, ...sums.texts, cells: [...sums.cells, ...cells] };
}

/** The sum that the form states, in figures and in words. Whether they agree is checked where the lines are known. */
function sumsOf(sheet: Sheet) {
  const [total, words] = ([singleCells.statedTotal, singleCells.statedTotalInWords] as const).map(({ entry }) =>
    sheet.cells.get(entry),
  );
  const texts = { statedTotal: readableText(total), statedTotalInWords: readableText(words) };
  const parsed = bidSchema.shape.statedTotal.safeParse(texts.statedTotal);
  const spoken = amountInWords(texts.statedTotalInWords);
  const cells = [
    { cell: total, of: singleCells.statedTotal, reading: "", problem: parsed.error?.issues[0]?.message ?? null },
    {
      cell: words,
      of: singleCells.statedTotalInWords,
      reading: spoken.ok ? inFigures(spoken.value) : "",
      problem: null,
    },
  ].flatMap(({ cell, of, reading, problem }): readonly FormCell[] => {
    if (cell === undefined) return [];
    const { text, address } = cell;
    const where = { sheet: sheet.name, address, about: "The sum", heading: of.labelText };
    return [{ ...where, text, reading, problem: refusalOf(cell) ?? problem }];
  });
  return { texts, cells };
}

const inFigures = (cents: number): string =>
  (cents / 100).toLocaleString("en-US", { minimumFractionDigits: 2, maximumFractionDigits: 2 });

/** The column that fills the field at a path of a line. */
function columnOf([name, part]: readonly PropertyKey[]): PriceField {
  if (name === "amount") return part === "quantity" ? "quantity" : part === "of" ? "shareOf" : "price";
  if (name === "role") return part === "expires" ? "expires" : "role";
  return priceColumns.find(({ fills }) => fills.some((field) => field === name))?.field ?? "label";
}

type AmountText = PriceText["amount"];

/** A lump sum or a price per area, as it is written. */
const plainAmount = (price: string): AmountText => ({
  kind: parseExact("moneyPerArea", price).ok ? "per-area" : "lump-sum",
  price,
});

/** Per unit where a quantity stands beside the price or its place asks for one, a share where it is written so. */
function amountOf(text: (field: PriceField) => string): AmountText {
  const [price, quantity, sum] = [text("price"), text("quantity"), text("shareOf")];
  if (quantity !== "" || keyOf(biddersRoles, text("role")) === "unit-price")
    return { kind: "per-unit", quantity, unitPrice: price };
  if (sum === "" && !price.endsWith("%")) return plainAmount(price);
  return { kind: "share", share: price, of: (keyOf(biddersSums, sum) ?? sum) as keyof typeof biddersSums };
}

type RoleText = NonNullable<PriceText["role"]>;

/**
 * The place of a price as the form gives it; undefined where its cell is empty. A cell that can't be read gives no place,
 * so that the price does not count as base bid. Whether a price is accepted is the owner's.
 */
function roleOf({ cells }: PriceRow, text: (field: PriceField) => string): RoleText | undefined {
  if (!cells.has("role")) return undefined;
  const written = text("role");
  const kind = keyOf(biddersRoles, written);
  if (kind === "option") return { kind, expires: text("expires") };
  return { kind: kind ?? written } as RoleText;
}

function priceOf(sheet: string, row: PriceRow): PriceText {
  const { cells } = row;
  const text = (field: PriceField) => readableText(cells.get(field));
  const kind = keyOf(costLines, text("kind"));
  const role = kind === undefined ? undefined : roleOf(row, text);
  const amount = amountOf(text);
  const held: Held = { kind, role, amount };
  const traces = [...tracesOf(sheet, cells.values()), ...leftOver(row, held)];
  const head = {
    id: `form-price-${row.row}`,
    label: text("label"),
    givenBy: "bid",
    ...(role === undefined ? {} : { role }),
    ...(text("extension") !== "" && !idle("extension", held) ? { statedExtension: text("extension") } : {}),
    document: text("document"),
    page: text("page"),
    note: traces.join(" "),
  } as const;
  // without a way of payment the price must not count, so it waits in the note
  if (kind === undefined)
    return { kind: "at-base-date", ...head, category: "investment", amount: { kind: "lump-sum", price: "" } };
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
        removal: text("removal") === "" ? null : plainAmount(text("removal")),
        removalGivenBy: "bid",
        removalAtStudyEnd: "used-life-share",
        residual: "straight-line",
        escalation,
      };
  }
}

/** What of a row settles which of its columns its line takes. */
type Held = Readonly<{ kind: PriceLineKind | undefined; role: RoleText | undefined; amount: AmountText }>;

/** Whether no field of the line takes a column: all but the label where the way of payment is not known. */
function idle(field: PriceField, { kind, role, amount }: Held): boolean {
  if (kind === undefined) return !["label", "document", "page"].includes(field);
  if (field === "expires") return role?.kind !== "option";
  if (field === "extension") return amount.kind !== "per-unit" && amount.kind !== "per-area";
  if (field === "shareOf") return amount.kind !== "share";
  return !takes(kind, field);
}

/** What stands in idle columns, for the note: nothing typed is dropped. */
function leftOver({ row, cells }: PriceRow, held: Held): readonly string[] {
  const texts = priceColumns.flatMap(({ field, heading }) => {
    const text = readableText(cells.get(field));
    return text !== "" && idle(field, held) ? [`${heading}: “${text}”`] : [];
  });
  return texts.length === 0 ? [] : [`Also in row ${row} of the filled form: ${texts.join("; ")}.`];
}

function cellsOf(
  sheet: string,
  { row, cells }: PriceRow,
  price: PriceText,
  problems: ReadonlyMap<PriceField, string>,
): readonly FormCell[] {
  const held: Held = {
    kind: keyOf(costLines, readableText(cells.get("kind"))),
    role: price.role,
    amount: price.amount,
  };
  return priceColumns.flatMap(({ field, heading }): readonly FormCell[] => {
    const cell = cells.get(field);
    const problem =
      (cell === undefined ? null : refusalOf(cell)) ??
      placeProblem(field, held, cell?.text.trim() ?? "") ??
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
        reading: readingOf(field, held, price),
        problem,
      },
    ];
  });
}

const named = (entries: Readonly<Record<string, Readonly<{ label: string }> | undefined>>): string =>
  Object.values(entries)
    .map((entry) => `“${entry?.label}”`)
    .join(", ");

/** What the row means for one of its cells. */
function placeProblem(field: PriceField, held: Held, text: string): string | null {
  const read = text === "" ? "Nothing" : `“${text}”`;
  if (held.kind === undefined) {
    if (field === "kind")
      return `${read} was read. Expected one of ${named(costLines)}. Until then the price stands in the note of the line and does not count.`;
    return null;
  }
  if (field === "role" && text !== "" && keyOf(biddersRoles, text) === undefined)
    return `${read} was read. Expected one of ${named(biddersRoles)}, or nothing for the base bid.`;
  if (field === "shareOf" && held.amount.kind === "share" && keyOf(biddersSums, text) === undefined)
    return `${read} was read. Expected one of ${named(biddersSums)} beside a price that is a share.`;
  if (text === "" || !idle(field, held)) return null;
  return `“${text}” ${idleBecause(field, held.kind)}. It is kept in the note of the line.`;
}

function idleBecause(field: PriceField, kind: PriceLineKind): string {
  switch (field) {
    case "expires":
      return "is the last day of an option, and the place of this price is no option";
    case "extension":
      return "is the product of a quantity or an area and a unit price, and this price has none";
    case "shareOf":
      return "is the sum of which a price is a share, and this price is no share";
    default:
      return `belongs to no field of a price that is paid so: “${costLines[kind].label}”`;
  }
}

const amountWords = {
  "lump-sum": "lump sum",
  "per-area": "price per area",
  "per-unit": "price of one unit",
  share: "share of a sum",
} as const;

function readingOf(field: PriceField, { kind, role }: Held, price: PriceText): string {
  if (kind === undefined) return "";
  if (field === "kind") return costLines[kind].label;
  if (field === "role") return role === undefined ? "" : (biddersRoles[role.kind]?.label ?? "");
  if (field === "category") return "category" in price ? (costCategories[price.category]?.label ?? "") : "";
  if (field === "price") return amountWords[price.amount.kind];
  if (field !== "removal") return ""; // kept as written
  return price.kind === "replacement-chain" && price.removal ? amountWords[price.removal.kind] : "";
}
