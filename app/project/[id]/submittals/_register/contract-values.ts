import type { ContractText } from "#lib/submittal";
import { type ClaimValues, filledClaim } from "./claim-values";

/** What holds after the award, with everything that forms have fields for. */
export type ContractValues = {
  bid: string;
  sameWithin: string;
  reviewDays: string;
  measured: ClaimValues[];
};

export const filledContract = ({
  bid = "",
  sameWithin = "2 %",
  reviewDays = "14",
  measured = [],
}: ContractText): ContractValues => ({ bid, sameWithin, reviewDays, measured: measured.map(filledClaim) });
