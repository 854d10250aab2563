import { z } from "zod";
import { keptText } from "#lib/entry";
import { attachmentLimits } from "./limits";
import { type Attachment, type FileKind, fileKinds } from "./model";
import { safeName } from "./safe-name";

const kinds = Object.keys(fileKinds) as [FileKind, ...FileKind[]];

const owned = z.string().max(64);

/** What is known of a file, as the database and project files hold it. Name and kind are held to what is safe. */
export const attachmentSchema = z
  .strictObject({
    name: z.string().min(1, "Name the file.").max(attachmentLimits.nameCharacters),
    title: keptText("the title of the document", 300),
    of: z
      .discriminatedUnion("kind", [
        z.strictObject({ kind: z.literal("project") }),
        z.strictObject({ kind: z.literal("bid"), bid: owned }),
        z.strictObject({ kind: z.literal("submittal"), submittal: owned }),
        z.strictObject({ kind: z.literal("substitution"), substitution: owned }),
      ])
      .default({ kind: "project" }),
    kind: z.enum(kinds, { error: "Expected a kind of file: pdf, png or jpeg." }),
    bytes: z.int("Expected the number of bytes.").min(1).max(attachmentLimits.fileBytes),
    sha256: z.string().regex(/^[0-9a-f]{64}$/, "Expected a SHA-256 of 64 small hexadecimal digits."),
    note: keptText("a note", 5000),
  })
  .superRefine(({ name, kind }, context) => {
    const safe = safeName(name, kind);
    if (safe !== name)
      context.addIssue({
        code: "custom",
        path: ["name"],
        message: `The name of the file can’t be kept as it stands. Expected one such as “${safe}”.`,
      });
  }) satisfies z.ZodType<Attachment, unknown>;
