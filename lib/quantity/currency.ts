/** A currency that a project can be costed in: its name in words, its sign, and how it is written beside the sign. */
type Currency = Readonly<{ label: string; sign: string; spellings: readonly string[] }>;

/**
 * The currencies of projects by their ISO 4217 code. All have a hundred parts, so cents stand for all of them. A bare
 * dollar sign is the dollar of the project.
 */
export const currencies = {
  USD: { label: "US dollars", sign: "$", spellings: ["USD", "US$"] },
  CAD: { label: "Canadian dollars", sign: "$", spellings: ["CAD", "CA$", "C$", "CDN$"] },
  AUD: { label: "Australian dollars", sign: "$", spellings: ["AUD", "AU$", "A$"] },
  NZD: { label: "New Zealand dollars", sign: "$", spellings: ["NZD", "NZ$"] },
  EUR: { label: "euros", sign: "€", spellings: ["EUR", "€"] },
  GBP: { label: "pounds sterling", sign: "£", spellings: ["GBP", "£"] },
} as const satisfies Record<string, Currency>;

export type CurrencyCode = keyof typeof currencies;

export const currencyCodes = Object.keys(currencies) as readonly CurrencyCode[];

const codeOfSpelling = new Map<string, CurrencyCode>(
  currencyCodes.flatMap((code) => currencies[code].spellings.map((spelling) => [spelling, code] as const)),
);

/** The longest spellings first, so that "US$" is not read as a bare dollar sign. A code is a word of its own. */
const written = /(?:US|CA|CDN|AU|NZ|C|A)\$|(?<![A-Z])(?:USD|CAD|AUD|NZD|EUR|GBP)(?![A-Z])|[€£]/gi;

/** A price whose currency has been read: its code where one is named, and the text with a plain dollar sign instead. */
export type WrittenCurrency = Readonly<{ code: CurrencyCode | null; plain: string }>;

/** Reads the currency out of a price: "€4.85/m²" is in euros and reads on as "$4.85/m²"; "$4.85" names none. */
export function writtenCurrency(text: string): WrittenCurrency {
  let code: CurrencyCode | null = null;
  const plain = text.replace(written, (found) => {
    code = codeOfSpelling.get(found.toUpperCase()) ?? code;
    return "$";
  });
  return { code, plain };
}

/** Whether a price is written in another currency than the project's. A bare dollar sign fits every dollar. */
export function isForeignPrice(text: string, currency: CurrencyCode): boolean {
  const { code, plain } = writtenCurrency(text);
  if (code !== null) return code !== currency;
  return plain.includes("$") && currencies[currency].sign !== "$";
}

/** A figure that was formatted in dollars with the sign of its currency: "$0.97/ft²" in euros is "€0.97/ft²". */
export const withCurrencySign = (formatted: string, currency: CurrencyCode): string =>
  formatted.replaceAll("$", () => currencies[currency].sign);
