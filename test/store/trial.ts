import { z } from "zod";
import { type Editor, editorNamed } from "#lib/access";
import { type Location, openStore, type Store, type StoreOptions } from "#lib/store";

/** Small schemas in the manner of the real ones: text in, numbers out. */
const count = z
  .string()
  .regex(/^\d+$/, "Write a whole number.")
  .transform((text) => ({ asEntered: text, value: Number(text) }));

export const schemas = {
  brief: z.strictObject({ name: z.string() }),
  requirements: z.strictObject({ limit: count }),
  bid: z.strictObject({ bidder: z.string(), claims: z.array(z.strictObject({ words: z.string(), count })) }),
  campaign: z.strictObject({ date: z.string() }),
  costing: z.strictObject({ currency: z.string() }),
  recommendation: z.strictObject({ words: z.string() }),
  attachment: z.strictObject({ name: z.string(), sha256: z.string(), bytes: z.number() }),
  specification: z.strictObject({ number: z.string() }),
  issue: z.strictObject({ text: z.string() }),
  people: z.looseObject({}),
  procedure: z.strictObject({ stage: z.string() }),
  committee: z.strictObject({ agreed: z.string() }),
  scoresheet: z.strictObject({ scores: z.string() }),
  "sealed-prices": z.strictObject({ sealed: z.string() }),
  contract: z.strictObject({ bid: z.string() }),
  submittal: z.strictObject({ item: z.string() }),
  substitution: z.strictObject({ item: z.string() }),
  delivery: z.strictObject({ tickets: z.string() }),
  release: z.strictObject({ label: z.string() }),
};

export type TrialStore = Store<typeof schemas>;

/** A database of its own for one test; `raw` runs SQL past the store. */
export type Trial = Readonly<{ location: Location; raw: (sql: string) => Promise<void> }>;

/** Makes a database with nothing in it; with `"tables"` it may have all tables already, which saves making them each time. */
export type TrialMaker = (holding?: "tables") => Promise<Trial>;

export const open = (location: Location, options: Partial<StoreOptions<typeof schemas>> = {}): Promise<TrialStore> =>
  openStore(location, { schemas, ...options });

export function editor(name: string): Editor {
  const named = editorNamed(name);
  if (!named.ok) throw new Error(named.problem.kind);
  return named.value;
}

export const ada = editor("Ada");
export const ben = editor("Ben");

export const bid = (bidder: string, words = "as stated", count = "3") => ({ bidder, claims: [{ words, count }] });

export const northField = {
  name: "North field",
  owner: "Harrow Vale district",
  origin: "own",
  documents: [
    { kind: "brief", body: { name: "North field" } },
    { kind: "requirements", body: { limit: "165" } },
    { kind: "bid", id: "bid-a", body: bid("Bidder A") },
    { kind: "bid", id: "bid-b", body: bid("Bidder B") },
  ],
} as const;

/** A store with one project in it. */
export async function withProject(location: Location, options: Partial<StoreOptions<typeof schemas>> = {}) {
  const store = await open(location, options);
  const made = await store.projects.create(northField, ada);
  if (made.kind !== "saved") throw new Error(made.kind);
  return { store, project: made.id, bidA: { project: made.id, kind: "bid", id: "bid-a" } as const };
}
