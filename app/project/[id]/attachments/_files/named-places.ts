import { type AttachmentOwner, attachmentNamed } from "#lib/attachment";
import { propertyOf } from "#lib/claim";
import type { KeptAttachment, Project } from "#lib/evaluation";

/** One place that names a document and a page of it. */
export type NamedPlace = Readonly<{
  owner: AttachmentOwner;
  /** Who names it: “Bid A”. */
  by: string;
  /** What for: “G-max”. */
  what: string;
  document: string;
  page: string;
}>;

/** Every place of the project that names a document. */
export function namedPlaces({ bids, submittals = [], contract }: Project): readonly NamedPlace[] {
  const places = bids.flatMap(({ id, letter, claims, infill }) => {
    const from = { owner: { kind: "bid", bid: id }, by: `Bid ${letter}` } as const;
    return [
      ...claims.map(({ property, document, page }) => ({
        ...from,
        ...{ what: propertyOf(property).label, document, page },
      })),
      ...infill.components.map(({ document, page }) => ({ ...from, what: "Infill", document, page })),
    ];
  });
  const handedIn = submittals.flatMap(({ id, item, versions }) => {
    const from = { owner: { kind: "submittal", submittal: id }, by: `Submittal “${item}”` } as const;
    return versions.flatMap(({ values, reports }) => [
      ...values.map(({ property, document, page }) => ({
        ...from,
        ...{ what: propertyOf(property).label, document, page },
      })),
      ...reports.map(({ document, page }) => ({ ...from, what: "Laboratory report", document, page })),
    ]);
  });
  const measured = (contract?.measured ?? []).map(({ property, document, page }) => ({
    ...({ owner: { kind: "project" }, by: "Measured on the field" } as const),
    ...{ what: propertyOf(property).label, document, page },
  }));
  return [...places, ...handedIn, ...measured].filter(({ document }) => document !== "");
}

/** The places that mean one attachment. */
export const placesOf = (
  attachment: string,
  places: readonly NamedPlace[],
  attachments: readonly KeptAttachment[],
): readonly NamedPlace[] =>
  places.filter(({ document, owner }) => attachmentNamed(attachments, document, [owner])?.id === attachment);

/** A document that is named and not kept. */
export type MissingDocument = Readonly<{ owner: AttachmentOwner; by: string; document: string; times: number }>;

/** Documents that somebody names and that are not kept, each once, in the order in which they are named. */
export function missingDocuments(
  places: readonly NamedPlace[],
  attachments: readonly KeptAttachment[],
): readonly MissingDocument[] {
  const missing = new Map<string, MissingDocument>();
  for (const { owner, by, document } of places) {
    if (attachmentNamed(attachments, document, [owner]) !== null) continue;
    const key = `${by} ${document.toLowerCase()}`;
    const times = (missing.get(key)?.times ?? 0) + 1;
    missing.set(key, { owner, by, document: missing.get(key)?.document ?? document, times });
  }
  return [...missing.values()];
}
