import { z } from "zod";
import type { Release, ReleasePart } from "./model";
import { releaseParts } from "./release";

const parts = Object.keys(releaseParts) as [ReleasePart, ...ReleasePart[]];
const time = z.iso.datetime({ error: "Expected a time such as 2026-05-01T10:00:00.000Z." });

/** What the form of a new link holds. Days are of the calendar in UTC; the link ends with the day. */
export const releaseForm = z.object({
  label: z.string().trim().min(1, "Say whom or what the link is for.").max(120, "Expected at most 120 characters."),
  parts: z.array(z.enum(parts)).min(1, "Choose at least one part."),
  lastDay: z.iso.date({ error: "Write the last day as 2026-05-31." }),
});

/** A link as it is stored. */
export const releaseSchema = z.strictObject({
  label: z.string().min(1).max(120),
  parts: z.array(z.enum(parts)).min(1),
  tokenHash: z.string().regex(/^[0-9a-f]{64}$/, "Expected a SHA-256 in hexadecimal."),
  endsAt: time,
  takenBackAt: time.nullable(),
}) satisfies z.ZodType<Release, unknown>;
