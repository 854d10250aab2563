"use server";
import { revalidatePath } from "next/cache";
import { z } from "zod";
import { explainForm, formFileBytes, readBidForm } from "#lib/document";
import { type PricesText, pricesSchema, sealPrices } from "#lib/evaluation";
import { act } from "../../../../../_data/act";
import { loadProject } from "../../../../../_data/load-project";

/** What became of prices that were sent to be sealed. No price comes back. */
export type SealReply = Readonly<
  | { kind: "nothing-sent" }
  | { kind: "sealed"; lines: number }
  | { kind: "not-sealed"; problems: readonly Readonly<{ field: string; message: string }>[] }
>;

const notSealed = (...sentences: readonly string[]): SealReply => ({
  kind: "not-sealed",
  problems: sentences.map((message) => ({ field: "", message })),
});

async function seal(project: string, bid: string, prices: PricesText): Promise<SealReply> {
  const read = pricesSchema.safeParse(prices);
  if (!read.success)
    return {
      kind: "not-sealed",
      problems: read.error.issues.map(({ path, message }) => ({ field: path.join("."), message })),
    };
  const sentences = await act(project, (editor) => sealPrices(editor, bid, prices));
  if (sentences.length > 0) return notSealed(...sentences);
  revalidatePath(`/project/${project}`, "layout");
  return { kind: "sealed", lines: prices.prices.length };
}

const place = z.object({ project: z.string(), bid: z.string() });

/** Seals prices as they were typed. */
export async function sealTyped(where: unknown, sent: unknown): Promise<SealReply> {
  const { project, bid } = place.parse(where);
  const { prices, statedTotal, statedTotalInWords } = z
    .object({ prices: z.array(z.unknown()), statedTotal: z.string(), statedTotalInWords: z.string() })
    .parse(sent);
  return seal(project, bid, { prices, statedTotal, statedTotalInWords } as PricesText);
}

/** Seals the prices of a filled form. What can’t be read is named by its cell, not by what it says. */
export async function sealFromForm(where: unknown, _before: SealReply, form: FormData): Promise<SealReply> {
  const { project, bid } = place.parse(where);
  const sent = form.get("file");
  if (!(sent instanceof File) || sent.name === "") return notSealed("Choose a filled bid form first.");
  if (sent.size > formFileBytes)
    return notSealed(explainForm({ kind: "not-opened", because: { kind: "too-large", bytes: sent.size } }));
  const loaded = await loadProject(project);
  if (loaded === null) return notSealed("This project is no longer here.");
  const { ownMaterials } = loaded.project.brief;
  const read = readBidForm(new Uint8Array(await sent.arrayBuffer()), { key: project, ownMaterials });
  if (!read.ok) return notSealed(explainForm(read.problem));
  const { prices, statedTotal, statedTotalInWords, cells } = read.value;
  const unread = cells.filter(({ sheet, problem }) => problem !== null && sheet === pricesSheetName);
  if (unread.length > 0)
    return notSealed(
      ...unread.map(
        ({ address, heading }) => `Cell ${address} of the sheet “${pricesSheetName}” (${heading}) can’t be read.`,
      ),
    );
  if (prices.length === 0) return notSealed("The form holds no price.");
  return seal(project, bid, { prices: [...prices], statedTotal, statedTotalInWords });
}

const pricesSheetName = "Prices";
