import type { Contract, Delivery } from "./model";
import { contractSchema, deliverySchema } from "./schema";

/** What holds until somebody says otherwise. @source share and days: common practice, no source */
export const startingContract: Contract = contractSchema.parse({});

/** Nothing delivered and nothing placed yet. @source tolerances: common practice, no source */
export const startingDelivery: Delivery = deliverySchema.parse({});
