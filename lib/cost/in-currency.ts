import type { Figure } from "#lib/figure";
import type { CurrencyCode, DimensionName } from "#lib/quantity";

/** A figure of money with its currency, which is left out for US dollars. */
export const inCurrency = <D extends DimensionName>(figure: Figure<D>, currency: CurrencyCode): Figure<D> =>
  currency === "USD" || figure.kind === "unknown" ? figure : { ...figure, currency };
