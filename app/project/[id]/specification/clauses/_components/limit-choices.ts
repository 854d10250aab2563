import { gateChoices } from "../../../requirements/_components/criterion-kinds";

/** The kinds of limit of a clause, in the words of criteria. */
export const limitChoices = gateChoices.map(({ value, label }) => ({
  value,
  label: value === "none" ? "No limit yet" : label,
}));
