"use client";
import { useWatch } from "react-hook-form";
import {
  amountCents,
  amountText,
  assumptionsOf,
  type CostSetting,
  cashFlows,
  discountRate,
  flowPresentValue,
  type PriceLine,
  priceLineSchema,
  pricesOf,
  studyYearsOf,
} from "#lib/cost";
import { formatMoney, formatMoneyExact } from "#lib/quantity";
import styles from "./fields.module.css";

/** What one line comes to, as far as it reads. */
export function PriceOutcome({ name, costing }: { name: string; costing: CostSetting }) {
  const parsed = priceLineSchema.safeParse(useWatch({ name }));
  if (!parsed.success) return <p className={styles.hint}>What it comes to shows here as soon as the line reads.</p>;
  const line = parsed.data;
  const { currency } = costing.conventions;
  const years = studyYearsOf(costing.conventions);
  return (
    <ul className={styles.outcome}>
      {pricesOf(line, years).map(({ label, amount, schedule, givenBy }) => (
        <li key={label}>
          {label}
          {givenBy === "owner-estimate" ? " (owner’s estimate)" : ""}: {amountText(amount, costing.area)}
          {amount.kind === "lump-sum" || amount.kind === "share"
            ? ""
            : ` = ${formatMoneyExact(Math.round(amountCents(amount, costing.area)), currency)}`}{" "}
          {schedule}
        </li>
      ))}
      {assumptionsOf(line, years).map((assumption) => (
        <li key={assumption}>{assumption}</li>
      ))}
      {isShare(line) ? (
        <li>What it comes to depends on the other prices of the bid; the page of life-cycle cost shows it.</li>
      ) : (
        <li>
          Present value over {years.studyYears} years:{" "}
          <strong>{formatMoney(Math.round(presentValueOf(line, costing)), currency)}</strong>
        </li>
      )}
    </ul>
  );
}

const isShare = (line: PriceLine): boolean =>
  line.amount.kind === "share" || (line.kind === "replacement-chain" && line.removal?.kind === "share");

function presentValueOf(line: PriceLine, costing: CostSetting): number {
  const { timing } = costing.conventions;
  return cashFlows([line], costing).flows.reduce(
    (sum, { flow }) => sum + flowPresentValue(flow, { rate: discountRate(costing.conventions), timing }),
    0,
  );
}
