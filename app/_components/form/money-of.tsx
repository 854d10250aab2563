"use client";
import { createContext, useContext } from "react";
import type { CurrencyCode } from "#lib/quantity";

const Currency = createContext<CurrencyCode>("USD");

/** The currency in which the fields below suggest money. */
export const MoneyIn = ({ currency, children }: { currency: CurrencyCode; children: React.ReactNode }) => (
  <Currency.Provider value={currency}>{children}</Currency.Provider>
);

export const useCurrency = (): CurrencyCode => useContext(Currency);
