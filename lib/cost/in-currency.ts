import type { Figure } from "#lib/figure";
import type { CurrencyCode, DimensionName } from "#lib/quantity";

/** A figure that was just made, with its currency, which is left out for US dollars. Its working stays untold. */
export const inCurrency = <D extends DimensionName>(made: Figure<D>, currency: CurrencyCode): Figure<D> =>
  currency === "USD" || made.kind === "unknown" ? made : Object.assign(made, { currency });
