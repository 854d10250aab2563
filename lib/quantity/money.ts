/** Rounds half away from zero, so that a credit and the same charge round alike. */
const roundedHalfUp = (value: number) => Math.sign(value) * Math.floor(Math.abs(value) + 0.5);

/**
 * Money in whole currency units: "$1,154,583". Cents may be unrounded; they are rounded once, here.
 * @throws RangeError if the amount is not a finite number
 */
export const formatMoney = (cents: number, currency = "USD"): string =>
  amount(roundedHalfUp(finite(cents) / 100), currency, 0);

/** Money to the cent: "$1,154,583.33". Same rounding as `formatMoney`. */
export const formatMoneyExact = (cents: number, currency = "USD"): string =>
  amount(roundedHalfUp(finite(cents)) / 100, currency, 2);

function finite(cents: number): number {
  if (!Number.isFinite(cents)) throw new RangeError(`no amount of money in ${cents}`);
  return cents;
}

function amount(value: number, currency: string, fractionDigits: number): string {
  const text = new Intl.NumberFormat("en-US", {
    style: "currency",
    currency,
    minimumFractionDigits: fractionDigits,
    maximumFractionDigits: fractionDigits,
  }).format(value === 0 ? 0 : value);
  return text.replace("-", "−");
}
