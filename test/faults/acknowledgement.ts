import { z } from "zod";

/** What a writing process is asked to do. One that goes on tries again after an error, as a server does. */
export const writerTask = z.object({
  location: z.union([
    z.object({ kind: z.literal("sqlite"), folder: z.string() }),
    z.object({ kind: z.literal("postgres"), url: z.string() }),
  ]),
  round: z.string(),
  project: z.string().optional(),
  goesOn: z.boolean(),
});
export type WriterTask = z.infer<typeof writerTask>;

/** A line that a writing process prints: what the store has acknowledged, or the error that it gave. */
export const acknowledgement = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("started") }),
  z.object({ kind: z.literal("created"), project: z.string() }),
  z.object({ kind: z.literal("saved"), project: z.string(), id: z.string(), version: z.number(), words: z.string() }),
  z.object({ kind: z.literal("kept"), project: z.string(), id: z.string(), sha256: z.string() }),
  z.object({
    kind: z.literal("failed"),
    project: z.string(),
    /** Of the bid that was not acknowledged; empty where the error came while reading or with a file. */
    id: z.string(),
    words: z.string(),
    took: z.number(),
    name: z.string(),
    message: z.string(),
  }),
]);
export type Acknowledgement = z.infer<typeof acknowledgement>;
export type Failed = Extract<Acknowledgement, { kind: "failed" }>;
export type Written = Exclude<Acknowledgement, { kind: "started" | "failed" }>;

export const isWritten = (line: Acknowledgement): line is Written => line.kind !== "started" && line.kind !== "failed";
