"use client";
import { zodResolver } from "@hookform/resolvers/zod";
import { useState, useTransition } from "react";
import { FormProvider, type Path, type Resolver, useForm } from "react-hook-form";
import type { CostSetting } from "#lib/cost";
import { type BidText, bidSchema, startingBid } from "#lib/evaluation";
import { PriceLines } from "../../_components/price-lines";
import { type SealReply, sealTyped } from "../actions";
import { SealOutcome } from "./seal-outcome";
import styles from "./sealed.module.css";

const empty = (): BidText => ({ ...startingBid("A", "sealed"), statedTotal: "", statedTotalInWords: "" });

/** Prices typed anew, to be sealed. Once they are, the form is empty again: nothing of them stays on the page. */
export function SealedPricesForm({ project, bid, costing }: { project: string; bid: string; costing: CostSetting }) {
  const form = useForm<BidText>({
    defaultValues: empty(),
    resolver: zodResolver(bidSchema) as unknown as Resolver<BidText>,
    mode: "onBlur",
  });
  const [reply, setReply] = useState<SealReply>({ kind: "nothing-sent" });
  const [pending, start] = useTransition();
  const seal = () =>
    start(async () => {
      const { prices, statedTotal = "", statedTotalInWords = "" } = form.getValues();
      if (prices.length === 0) {
        setReply({ kind: "not-sealed", problems: [{ field: "", message: "Add a price line first." }] });
        return;
      }
      const outcome = await sealTyped({ project, bid }, { prices, statedTotal, statedTotalInWords }).catch(
        (): SealReply => ({
          kind: "not-sealed",
          problems: [{ field: "", message: "The server can’t be reached, so nothing was sealed. Try it again." }],
        }),
      );
      setReply(outcome);
      if (outcome.kind === "sealed") form.reset(empty());
      if (outcome.kind !== "not-sealed") return;
      for (const { field, message } of outcome.problems)
        if (field !== "") form.setError(field as Path<BidText>, { type: "server", message });
    });
  return (
    <FormProvider {...form}>
      <form
        className={styles.typed}
        aria-label="Prices to be sealed"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          if (!pending) seal();
        }}
      >
        <PriceLines costing={costing} />
        <button type="submit" className="primary" aria-disabled={pending}>
          Seal these prices
        </button>
        <SealOutcome reply={reply} />
      </form>
    </FormProvider>
  );
}
