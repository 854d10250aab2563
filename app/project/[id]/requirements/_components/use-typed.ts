"use client";
import { useWatch } from "react-hook-form";
import type { CriterionText } from "./measure-choices";
import type { HeadingText, Typed, WeighingText } from "./typed-weights";

/** What stands in the form that bears on weights, as it is typed. */
export function useTyped(): Typed {
  const criteria: readonly CriterionText[] = useWatch({ name: "criteria" });
  const headings: readonly HeadingText[] = useWatch({ name: "headings" }) ?? [];
  const weighing: WeighingText | undefined = useWatch({ name: "weighing" });
  return { criteria, headings, weighing };
}
