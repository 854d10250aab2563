import { type FieldErrors, get } from "react-hook-form";

/** The sentence about one field; null where nothing is the matter with it. */
export function problemAt(errors: FieldErrors, name: string): string | null {
  const message: unknown = get(errors, `${name}.message`);
  return typeof message === "string" && message !== "" ? message : null;
}
