import { z } from "zod";
import { type DocumentKind, documentKinds } from "./model";

/** Schemas that take every body as it is stored: for commands that open the store and do not look into documents. */
export const unreadBodies = Object.fromEntries(documentKinds.map((kind) => [kind, z.unknown()])) as {
  [K in DocumentKind]: z.ZodUnknown;
};
