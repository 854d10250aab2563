import type { LinkParameter } from "#lib/cost";
import type { DimensionName } from "#lib/quantity";

type ParameterWords = Readonly<{ label: string; hint: string; dimension?: DimensionName }>;

/** What each figure of the technical links is called on the form, with an example of how it is written. */
export const parameterWords: Readonly<Record<LinkParameter, ParameterWords>> = {
  payload: {
    label: "Load of one truck",
    hint: "To start with: 22 short tons (common practice, no source).",
    dimension: "mass",
  },
  freightPerLoad: { label: "Freight of one load", hint: "For instance “$640”.", dimension: "money" },
  displacementShare: {
    label: "Infill moved off its place a year",
    hint: "A share of the first mass, to start with 2 % (common practice, no source).",
  },
  carryOffShare: {
    label: "Infill carried off the field a year",
    hint: "To start with 1 % (common practice, no source).",
  },
  topUpPrice: { label: "Price of infill for top-up", hint: "For instance “$0.42/lb”.", dimension: "moneyPerMass" },
  carpetMass: {
    label: "Mass of the carpet without infill",
    hint: "Where a bid does not claim it, for instance “0.9 lb/ft²”.",
    dimension: "arealDensity",
  },
  tippingFee: { label: "Tipping fee", hint: "For instance “$78/short ton”.", dimension: "moneyPerMass" },
  haul: { label: "Haul to the disposal site", hint: "For instance “$24/short ton”.", dimension: "moneyPerMass" },
  recyclingCredit: {
    label: "Credit for what is recycled",
    hint: "By mass; only where a verified outlet takes it. May be empty.",
    dimension: "moneyPerMass",
  },
  groomingShareHeavy: {
    label: "Grooming for each hour of use, heavy infill",
    hint: "To start with 6 % (common practice, no source).",
  },
  groomingShareOther: {
    label: "Grooming for each hour of use, other infill",
    hint: "To start with 10 %: one hour for ten of use (trade interviews, weak).",
  },
  wage: { label: "Cost of an hour of work", hint: "For instance “$48/h”.", dimension: "moneyPerTime" },
  testVisitPrice: { label: "Price of one visit to test hardness", hint: "For instance “$1,150”.", dimension: "money" },
  testVisitsPerYear: { label: "Visits a year", hint: "To start with 1." },
  locationsPerVisit: {
    label: "Locations that the price of a visit covers",
    hint: "Empty: as many as the requirements ask for.",
  },
  shockLayerLives: {
    label: "Carpets that one shock layer stays under",
    hint: "Where a bid does not claim it, for instance 2.",
  },
  coolingDepth: {
    label: "Water for one cooling",
    hint: "As a depth over the field, for instance “0.1 in”.",
    dimension: "length",
  },
  coolingsPerYear: { label: "Coolings a year", hint: "For instance 60. Empty: none." },
  waterPrice: { label: "Price of water", hint: "For instance “$9/1,000 gal”.", dimension: "moneyPerVolume" },
};
