import { z } from "zod";
import type { Schemas } from "./model";

/** Schemas that take every body as it is stored: for commands that open the store and do not look into documents. */
export const unreadBodies = {
  brief: z.unknown(),
  requirements: z.unknown(),
  bid: z.unknown(),
  campaign: z.unknown(),
  costing: z.unknown(),
  recommendation: z.unknown(),
} satisfies Schemas;
