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
  return moneyFormat(currency, fractionDigits)
    .format(value === 0 ? 0 : value)
    .replace("-", "−");
}

/** Kept because making one takes far longer than using it, and a cost table shows hundreds of amounts. */
const moneyFormats = new Map<string, Intl.NumberFormat>();

function moneyFormat(currency: string, fractionDigits: number): Intl.NumberFormat {
  const key = `${currency} ${fractionDigits}`;
  const kept = moneyFormats.get(key);
  if (kept !== undefined) return kept;
  const made = new Intl.NumberFormat("en-US", {
    style: "currency",
    currency,
    minimumFractionDigits: fractionDigits,
    maximumFractionDigits: fractionDigits,
  });
  moneyFormats.set(key, made);
  return made;
}
