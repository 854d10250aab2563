import type { Attachment, AttachmentOwner } from "./model";

/** What is told apart when documents are named: letters and digits. “Test report no. 14.pdf” and “test report No 14” are one. */
const plain = (name: string): string =>
  name
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "");

const namesOf = ({ name, title }: Attachment): readonly string[] =>
  [title, name, name.replace(/\.[^.]+$/, "")].map(plain).filter((each) => each !== "");

/** The owner as one text, so that two can be held against each other. */
function keyOf(owner: AttachmentOwner): string {
  switch (owner.kind) {
    case "project":
      return "project";
    case "bid":
      return `bid ${owner.bid}`;
    case "submittal":
      return `submittal ${owner.submittal}`;
    case "substitution":
      return `substitution ${owner.substitution}`;
  }
}

const isOwnedBy = (attachment: Attachment, owner: AttachmentOwner): boolean => keyOf(attachment.of) === keyOf(owner);

/**
 * The file that a document of the given name is: one of the owners asked first, else one of the project. Null where none
 * has the name, or where several have it: nothing is guessed.
 * @param owners whose papers are looked through, in this order; those of the project come last
 */
export function attachmentNamed<Kept extends Attachment>(
  attachments: readonly Kept[],
  document: string,
  owners: readonly AttachmentOwner[],
): Kept | null {
  const wanted = plain(document);
  if (wanted === "") return null;
  for (const owner of [...owners, { kind: "project" } as const]) {
    const found = attachments.filter((each) => isOwnedBy(each, owner) && namesOf(each).includes(wanted));
    const [one, ...others] = found;
    if (one !== undefined) return others.length === 0 ? one : null;
  }
  return null;
}

/** The first page that a text names: “pp. 12–14” gives 12; null where it names none. */
export function firstPage(page: string): number | null {
  const number = Number(/\d{1,5}/.exec(page)?.[0]);
  return number >= 1 ? number : null;
}
