import type { Attachment, AttachmentOwner } from "#lib/attachment";
import type { Project } from "#lib/evaluation";

/** A size as people read it. */
export const sizeInWords = (bytes: number): string =>
  bytes < 1024 * 1024
    ? `${Math.max(1, Math.round(bytes / 1024)).toLocaleString("en-US")} kB`
    : `${(bytes / 1024 / 1024).toFixed(1)} MB`;

/** What an attachment is called: its title, else the name of its file. */
export const calledOf = ({ title, name }: Attachment): string => (title === "" ? name : title);

/** Whose paper it is, in words. */
export function ownerInWords(owner: AttachmentOwner, { bids, submittals = [], substitutions = [] }: Project): string {
  switch (owner.kind) {
    case "project":
      return "The project";
    case "bid": {
      const letter = bids.find(({ id }) => id === owner.bid)?.letter;
      return letter === undefined ? "A bid that is no longer here" : `Bid ${letter}`;
    }
    case "submittal": {
      const item = submittals.find(({ id }) => id === owner.submittal)?.item;
      return item === undefined ? "A submittal that is no longer here" : `Submittal “${item}”`;
    }
    case "substitution": {
      const item = substitutions.find(({ id }) => id === owner.substitution)?.item;
      return item === undefined ? "A request that is no longer here" : `Request for substitution “${item}”`;
    }
  }
}
