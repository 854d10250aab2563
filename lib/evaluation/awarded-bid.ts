import { stageOf, startingProcedure } from "#lib/procedure";
import { startingContract } from "#lib/submittal";
import type { Bid, Project } from "./model";

/** Whose bid was taken, and who said so. */
export type AwardedBid = Readonly<{ bid: Bid; by: "the award" | "the owner’s choice" }>;

/** The bid that the work is held against: the one of the award, else the one that the owner named. Null without one. */
export function awardedBid({
  bids,
  procedure = startingProcedure,
  contract = startingContract,
}: Project): AwardedBid | null {
  const step = stageOf(procedure) === "awarded" ? procedure.steps.at(-1) : undefined;
  const [id, by] =
    step === undefined ? ([contract.bid, "the owner’s choice"] as const) : ([step.bid, "the award"] as const);
  const bid = bids.find((each) => each.id === id);
  return bid === undefined ? null : { bid, by };
}
