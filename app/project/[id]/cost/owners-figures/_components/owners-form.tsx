"use client";
import { useState } from "react";
import { costingSchema } from "#lib/cost";
import type { CostingText } from "#lib/evaluation";
import { AutosaveForm } from "../../../../../_components/form/autosave-form";
import type { DocumentAddress } from "../../../../../_components/form/save-outcome";
import type { Draft } from "../../../../../_components/form/start-of";
import { saveDocument } from "../../../_actions/save-document";
import { AlternativeFields } from "./alternative-fields";
import { type LinkedBid, LinkFields } from "./link-fields";
import { filledOwners, type OwnersValues } from "./owners-values";

/** The owner's own figures about money; the levelling travels with them untouched. */
export function OwnersForm({
  where,
  version,
  values,
  draft,
  bids,
}: {
  where: DocumentAddress;
  version: number;
  values: OwnersValues;
  draft: Draft<OwnersValues> | null;
  bids: readonly LinkedBid[];
}) {
  const [shared] = useState(() => ({
    parts: ["links", "linkParameters", "comparedWith", "baseAlternative"] as const,
    filled: (body: unknown) => filledOwners(body as CostingText, bids),
  }));
  return (
    <AutosaveForm
      schema={costingSchema}
      where={where}
      version={version}
      values={values}
      draft={draft}
      save={saveDocument}
      label="Owner’s figures"
      shared={shared}
    >
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
    </AutosaveForm>
  );
}
