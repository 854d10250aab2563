import { attachmentLimits } from "./limits";
import { type FileKind, fileKinds } from "./model";

/** Nothing a reader could see: control and format characters (with those that turn the direction of writing), halves. */
const invisible = /[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Cn}\u2028\u2029]/gu;

/** Characters that some file system gives a meaning. */
const withMeaning = /[<>:"|?*]+/g;

/** Names that Windows takes for devices, whatever the ending. */
const device = /^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i;

/** A cut that leaves no half of a surrogate pair. */
const cut = (text: string, most: number): string => text.slice(0, most).replace(/[\ud800-\udbff]$/, "");

/**
 * A name under which a file can be saved anywhere and which reads as what it is: without folders, without invisible
 * characters or a turned direction of writing, and with the ending of its kind.
 * @param given as the sender's computer called it
 */
export function safeName(given: string, kind: FileKind): string {
  const [ending] = fileKinds[kind].endings;
  const last = given.normalize("NFC").split(/[/\\]/).at(-1) ?? "";
  const seen = last
    .replace(/[\u2028\u2029\t\r\n]/g, " ")
    .replace(invisible, "")
    .replace(withMeaning, "-")
    .replace(/\s+/g, " ")
    .replace(/^[. ]+|[. ]+$/g, "");
  const shown = device.test(seen) ? `file ${seen}` : seen;
  const typed = /\.([^.]+)$/.exec(shown)?.[1]?.toLowerCase() ?? "";
  const hasEnding = fileKinds[kind].endings.some((each) => each === typed);
  const stem = hasEnding ? shown.slice(0, -typed.length - 1) : shown;
  const named = stem.replace(/[. ]+$/, "") || "file";
  const end = `.${hasEnding ? typed : ending}`;
  return `${cut(named, attachmentLimits.nameCharacters - end.length).trimEnd()}${end}`;
}
