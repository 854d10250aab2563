"use client";
import { useState } from "react";
import type { CostingText } from "#lib/evaluation";
import { CostingForm } from "../../../_components/price/costing-form";
import type { CostingStart } from "../../../_components/price/costing-start";
import { AlternativeFields } from "./alternative-fields";
import { type LinkedBid, LinkFields } from "./link-fields";
import { filledOwners, type OwnersValues } from "./owners-values";

/** The owner's own figures about money. */
export function OwnersForm({ start, bids }: { start: CostingStart<OwnersValues>; bids: readonly LinkedBid[] }) {
  const [shared] = useState(() => ({
    parts: ["links", "linkParameters", "comparedWith", "baseAlternative"] as const,
    filled: (body: unknown) => filledOwners(body as CostingText, bids),
  }));
  return (
    <CostingForm start={start} shared={shared} label="Owner’s figures">
      <section aria-labelledby="links">
        <h2 id="links">From technical figures to money</h2>
        <p>
          Mass, hours of use and the test plan set part of the cost. Each of these can be worked out for a bid, stated
          as a figure of your own, or left off. Nothing is counted twice: where the bidder prices the same, the bidder’s
          price counts.
        </p>
        <LinkFields bids={bids} />
      </section>
      <section aria-labelledby="alternative">
        <h2 id="alternative">What the bids are compared with</h2>
        <p>
          Payback and savings need something to hold a bid against: another bid, or an alternative that no bidder
          offers, such as natural grass.
        </p>
        <AlternativeFields bids={bids} />
      </section>
    </CostingForm>
  );
}
