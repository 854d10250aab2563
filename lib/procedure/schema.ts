import { z } from "zod";
import type { Procedure, Sealed } from "./model";
import { stageIds } from "./stages";

const [, ...laterStages] = stageIds;

/** A moment as the server's clock gave it. */
export const momentField = z.iso.datetime({ error: "Expected a time such as 2026-11-25T10:30:00.000Z." });

export const doerSchema = z.strictObject({ id: z.string().min(1).max(64), name: z.string().min(1).max(80) });

const base64url = z.string().regex(/^[A-Za-z0-9_-]*$/, "Expected base64url.");

export const sealedSchema = z.strictObject({
  algorithm: z.literal("AES-256-GCM"),
  nonce: base64url.length(16),
  text: base64url.max(700_000),
}) satisfies z.ZodType<Sealed, unknown>;

/** 32 bytes as base64url; empty where nothing was sealed. */
export const keyField = z.union([z.literal(""), base64url.length(43)]);

const stepSchema = z.strictObject({
  stage: z.enum(laterStages),
  at: momentField,
  by: doerSchema,
  note: z.string().trim().max(2000, "Expected at most 2,000 characters.").default(""),
  accepted: z.array(z.string().max(2000)).max(200).default([]),
  bid: z.string().max(64).default(""),
  key: keyField.default(""),
});

const text = z.string().max(5000);

const amendmentSchema = z.strictObject({
  at: momentField,
  by: doerSchema,
  reason: z.string().trim().min(1, "Say why this is amended.").max(2000, "Expected at most 2,000 characters."),
  document: z.enum(["brief", "requirements"]),
  changes: z
    .array(z.strictObject({ field: text, from: text, to: text }))
    .min(1)
    .max(500),
});

/** The procedure of a project. Absent in what was stored before there was one: the project is a draft then. */
export const procedureSchema = z.strictObject({
  prices: z.enum(["open", "sealed"]).default("open"),
  steps: z.array(stepSchema).max(100).default([]),
  amendments: z.array(amendmentSchema).max(200).default([]),
}) satisfies z.ZodType<Procedure, unknown>;

/** Prices that stay closed until they are opened. The document has the id of its bid. */
export const sealedPricesSchema = z.strictObject({ by: doerSchema, at: momentField, contents: sealedSchema });

export type ProcedureText = z.input<typeof procedureSchema>;
export type SealedPricesText = z.input<typeof sealedPricesSchema>;
