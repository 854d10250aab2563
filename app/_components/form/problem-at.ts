import { type FieldErrors, get } from "react-hook-form";

/** The sentence about one field or about a list as a whole; null where nothing is the matter with it. */
export function problemAt(errors: FieldErrors, name: string): string | null {
  const message: unknown = get(errors, `${name}.message`) ?? get(errors, `${name}.root.message`);
  return typeof message === "string" && message !== "" ? message : null;
}
