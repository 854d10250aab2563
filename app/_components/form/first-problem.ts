/** Leads to the first field with a sentence of trouble, in the order of the page, opening whatever hides it. */
export function goToFirstProblem(form: HTMLFormElement | null): void {
  const field = form?.querySelector("[data-problem]");
  if (!field) return;
  for (let inside = field.parentElement; inside !== null; inside = inside.parentElement) {
    if (inside instanceof HTMLDetailsElement) inside.open = true;
  }
  field.scrollIntoView({ block: "center" });
  field.querySelector<HTMLElement>("input, select, textarea, button")?.focus();
}
