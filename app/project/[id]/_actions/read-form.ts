"use server";
import { z } from "zod";
import {
  explainForm,
  type FormCell,
  type FormChange,
  formFileBytes,
  mergedBid,
  readBidForm,
  type Unmentioned,
  withoutPrices,
} from "#lib/document";
import { type BidText, startingBid } from "#lib/evaluation";
import { arePricesSealed } from "#lib/procedure";
import { freshId } from "../../../_components/form/fresh-id";
import { bidDraft } from "../../../_data/draft-of";
import { loadProject } from "../../../_data/load-project";
import { nextLetter } from "../bids/_letters";

/** What a filled form would do to a bid. Nothing is stored yet. */
export type FormReading = Readonly<
  | { kind: "none" }
  | { kind: "refused"; file: string; problem: string }
  | {
      kind: "read";
      file: string;
      /** The version of the bid that the form was laid over; null for a bid that is yet to be added. */
      version: number | null;
      bids: Readonly<Record<Unmentioned, BidText>>;
      changes: readonly FormChange[];
      cells: readonly FormCell[];
      remarks: readonly string[];
    }
>;

const address = z.strictObject({ project: z.string(), bid: z.string().nullable() });

/** Where, what was sent, what it would change. An editor's draft of the bid counts as what the bid holds. */
export async function readForm(where: unknown, _before: FormReading, form: FormData): Promise<FormReading> {
  const { project, bid } = address.parse(where);
  const sent = form.get("file");
  if (!(sent instanceof File) || sent.name === "")
    return { kind: "refused", file: "", problem: "Choose a filled bid form first." };
  const file = sent.name;
  const refused = (problem: string) => ({ kind: "refused", file, problem }) as const;
  if (sent.size > formFileBytes)
    return refused(explainForm({ kind: "not-opened", because: { kind: "too-large", bytes: sent.size } }));
  const loaded = await loadProject(project);
  if (loaded === null) return refused("This project is no longer here.");
  const { ownMaterials } = loaded.project.brief;
  const read = readBidForm(new Uint8Array(await sent.arrayBuffer()), { key: project, ownMaterials });
  if (!read.ok) return refused(explainForm(read.problem));
  const shown = arePricesSealed(loaded.procedure) ? withoutPrices(read.value) : read.value;
  const stored = bid === null ? null : loaded.documents.bids.find(({ id }) => id === bid);
  if (stored === undefined) return refused("This bid is no longer here.");
  const standing =
    stored === null
      ? startingBid(
          nextLetter(loaded.project.bids.map(({ letter }) => letter)),
          read.value.bidder || "Bidder not named",
        )
      : await textOnPage(project, stored);
  const merged = (unmentioned: Unmentioned) =>
    mergedBid(standing, shown, { ownMaterials, idFor: freshId, unmentioned });
  const kept = merged("keep");
  const { cells, remarks } = shown;
  return {
    kind: "read",
    file,
    version: stored?.version ?? null,
    bids: { keep: kept.bid, "take-out": merged("take-out").bid },
    changes: kept.changes,
    cells,
    remarks,
  };
}

/** What the page of the bid shows this editor: the draft typed over this version, else the bid. */
async function textOnPage(
  project: string,
  { id, version, body }: Readonly<{ id: string; version: number; body: BidText }>,
): Promise<BidText> {
  const draft = await bidDraft(project, id);
  return draft !== null && draft.basedOn === version ? draft.values : body;
}
