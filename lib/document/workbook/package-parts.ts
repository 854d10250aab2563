import { failed, type Result, succeeded } from "#lib/quantity";
import { type ArchivePart, archiveParts } from "./archive";
import { inflatedPart } from "./inflated-part";
import type { WorkbookProblem } from "./problem";
import { readXml } from "./xml";

/** The parts of a workbook by their lower-case names, unpacked when asked for. */
export type PackageParts = Readonly<{
  names: readonly string[];
  has: (name: string) => boolean;
  bytes: (name: string) => Result<Uint8Array, WorkbookProblem>;
}>;

/** Names of parts that run, embed or fetch something. @source ECMA-376 part 1, clauses 12 and 15 */
const macroParts = /(^|\/)(vbaproject\.bin|vbadata\.xml|macrosheets\/|dialogsheets\/|intlmacrosheets\/|activex\/)/i;
const outsideParts = /(^|\/)(externallinks\/|embeddings\/|connections\.xml|querytables\/|webextensions\/|customui\/)/i;

/** The parts of a file that is packed as a workbook and holds nothing that runs or draws on other files. */
export function packageParts(file: Uint8Array): Result<PackageParts, WorkbookProblem> {
  const listed = archiveParts(file);
  if (!listed.ok) return listed;
  const byName = new Map<string, ArchivePart>(listed.value.map((part) => [part.name.toLowerCase(), part]));
  for (const { name } of listed.value) {
    if (macroParts.test(name)) return failed({ kind: "holds-macros", part: name });
    if (outsideParts.test(name)) return failed({ kind: "refers-outside", part: name });
  }
  const parts: PackageParts = {
    names: listed.value.map(({ name }) => name),
    has: (name) => byName.has(name.toLowerCase()),
    bytes: (name) => {
      const part = byName.get(name.toLowerCase());
      return part === undefined
        ? failed({ kind: "damaged", what: `its part “${name}” is missing` })
        : inflatedPart(part);
    },
  };
  const found = harmless(parts, listed.value);
  return found === null ? succeeded(parts) : failed(found);
}

const contentTypes = "[content_types].xml";

/** Looks through the types of the parts and what they refer to. Addresses behind typed web links are let pass. */
function harmless(parts: PackageParts, listed: readonly ArchivePart[]): WorkbookProblem | null {
  if (!parts.has(contentTypes)) return { kind: "not-a-workbook" };
  const types = xmlOf(parts, contentTypes, (name, { ContentType = "", PartName = "", Extension = "" }) => {
    if (name !== "Override" && name !== "Default") return null;
    const macros = /macroenabled|vbaproject|vbadata|macrosheet|activex/i.test(ContentType);
    return macros ? { kind: "holds-macros", part: PartName || `*.${Extension}` } : null;
  });
  if (types !== null) return types;
  for (const { name } of listed) {
    if (!name.toLowerCase().endsWith(".rels")) continue;
    const problem = xmlOf(parts, name, (element, { TargetMode, Type = "", Target = "" }) => {
      if (element !== "Relationship" || TargetMode?.toLowerCase() !== "external") return null;
      return /\/hyperlink$/.test(Type) ? null : { kind: "refers-outside", part: Target };
    });
    if (problem !== null) return problem;
  }
  return null;
}

type Open = (name: string, attributes: Readonly<Record<string, string>>) => WorkbookProblem | null;

/** Reads the opening tags of a part. */
export function xmlOf(parts: PackageParts, name: string, open: Open): WorkbookProblem | null {
  const bytes = parts.bytes(name);
  return bytes.ok ? readXml(name, bytes.value, { open }) : bytes.problem;
}
