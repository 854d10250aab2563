import type { Contract } from "./model";
import { contractSchema } from "./schema";

/** What holds until somebody says otherwise. @source share and days: common practice, no source */
export const startingContract: Contract = contractSchema.parse({});
