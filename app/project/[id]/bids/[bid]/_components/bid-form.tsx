"use client";
import Link from "next/link";
import type { PropertyId } from "#lib/claim";
import type { CostSetting } from "#lib/cost";
import { type BidText, bidSchema } from "#lib/evaluation";
import { AutosaveForm } from "../../../../../_components/form/autosave-form";
import type { Choice } from "../../../../../_components/form/choice-field";
import type { DocumentAddress } from "../../../../../_components/form/save-outcome";
import type { Draft } from "../../../../../_components/form/start-of";
import { saveDocument } from "../../../_actions/save-document";
import { BidHead } from "./bid-head";
import { ClaimsLedger } from "./claims-ledger";
import { InfillFields } from "./infill-fields";
import { PriceLines } from "./price-lines";

/** Everything that is entered of one bid. */
export function BidForm({
  where,
  version,
  values,
  draft,
  materials,
  sealed,
  wanted,
  costing,
  otherLetters,
  names,
}: {
  where: DocumentAddress;
  version: number;
  values: BidText;
  draft: Draft<BidText> | null;
  materials: readonly Choice[];
  /** Where prices are sealed instead of written here; null where they stand in the bid. */
  sealed: string | null;
  /** The properties that the criteria ask for, whether the bid speaks to them or not. */
  wanted: readonly PropertyId[];
  costing: CostSetting;
  otherLetters: readonly string[];
  names: "shown" | "hidden";
}) {
  return (
    <AutosaveForm
      schema={bidSchema}
      where={where}
      version={version}
      values={values}
      draft={draft}
      save={saveDocument}
      label={`Bid ${values.letter}`}
    >
      <BidHead otherLetters={otherLetters} names={names} />
      <InfillFields materials={materials} />
      <ClaimsLedger wanted={wanted} />
      {sealed === null ? <PriceLines costing={costing} /> : <PricesElsewhere address={sealed} />}
    </AutosaveForm>
  );
}

function PricesElsewhere({ address }: { address: string }) {
  return (
    <section aria-labelledby="prices">
      <h2 id="prices">Prices</h2>
      <p>
        Prices of this project are sealed until they are opened together, so none stand here.{" "}
        <Link href={address} prefetch={false}>
          Enter and seal the prices of this bid
        </Link>
        .
      </p>
    </section>
  );
}
