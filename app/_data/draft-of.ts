import type { BidText } from "#lib/evaluation";
import { arePricesSealed } from "#lib/procedure";
import type { DocumentAddress } from "../_components/form/save-outcome";
import type { Draft } from "../_components/form/start-of";
import { askingEditor } from "./asker";
import { loadProject } from "./load-project";
import { projectStore } from "./store";

/** This editor's unsaved text of a document. The form that wrote it is the one that reads it, so its shape is the form's. */
export async function draftOf<Values>(where: DocumentAddress): Promise<Draft<Values> | null> {
  const editor = await askingEditor();
  const draft = editor && (await (await projectStore()).drafts.read(where, editor));
  return draft && { basedOn: draft.basedOnVersion, values: draft.body as Values };
}

/** This editor's unsaved text of a bid; while prices are sealed without any, so that none typed before come back. */
export async function bidDraft(project: string, bid: string): Promise<Draft<BidText> | null> {
  const draft = await draftOf<BidText>({ project, kind: "bid", id: bid });
  if (draft === null || !(await areSealed(project))) return draft;
  return { ...draft, values: { ...draft.values, ...noPrices } };
}

const noPrices = { prices: [], statedTotal: "", statedTotalInWords: "" };

async function areSealed(project: string): Promise<boolean> {
  const loaded = await loadProject(project);
  return loaded !== null && arePricesSealed(loaded.procedure);
}

/** A document as it stood in an earlier version, null if it never did; a bid while prices are sealed without any. */
export async function bodyOfVersion(address: DocumentAddress & Readonly<{ version: number }>): Promise<unknown> {
  const body = await (await projectStore()).documents.readVersion(address);
  if (body === null || address.kind !== "bid" || !(await areSealed(address.project))) return body;
  return { ...(body as BidText), ...noPrices };
}
