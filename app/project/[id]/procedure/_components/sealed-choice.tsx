"use client";
import { ActForm } from "../../../../_components/act-form";
import { choosePricesAreSealed } from "../actions";

/** Whether prices are read as they come in, or locked away until evaluators have agreed. */
export function SealedChoice({
  project,
  prices,
  mayChoose,
}: {
  project: string;
  prices: "open" | "sealed";
  mayChoose: boolean;
}) {
  const isSealed = prices === "sealed";
  return (
    <>
      <p>
        {isSealed
          ? "Prices are sealed. They are entered on a page of their own, locked at once, and shown to nobody before they are opened, not even to whoever typed them: no page, file or document holds them until then."
          : "Prices stand open: whoever reads a bid reads its prices. To have bids judged without knowing their prices, seal them before any price is entered."}
      </p>
      {mayChoose ? (
        <ActForm
          action={choosePricesAreSealed.bind(null, project)}
          button={isSealed ? "Leave prices open" : "Seal prices until they are opened"}
          label="Sealed prices"
        >
          {() => <input type="hidden" name="prices" value={isSealed ? "open" : "sealed"} />}
        </ActForm>
      ) : null}
    </>
  );
}
