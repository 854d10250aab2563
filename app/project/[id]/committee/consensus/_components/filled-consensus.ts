import type { CommitteeText } from "#lib/committee";
import type { Criterion } from "#lib/criteria";

type AgreedText = NonNullable<CommitteeText["agreed"]>[number];

export type ConsensusValues = Readonly<{
  opened: NonNullable<CommitteeText["opened"]> | null;
  agreed: Required<AgreedText>[];
}>;

/** What is agreed, with a place for every bid on every rated criterion, in their order. */
export function filledConsensus(
  { opened = null, agreed = [] }: CommitteeText,
  criteria: readonly Pick<Criterion, "id">[],
  bids: readonly string[],
): ConsensusValues {
  const start = { level: "", between: "", reason: "", dissent: "" };
  return {
    opened,
    agreed: criteria.flatMap(({ id: criterion }) =>
      bids.map((bid) => ({
        ...{ criterion, bid },
        ...start,
        ...agreed.find((entry) => entry.criterion === criterion && entry.bid === bid),
      })),
    ),
  };
}
