/** Where somebody types in a form: the name of the field and what is selected in it. */
export type Caret = Readonly<{ field: string; selected: readonly [number, number] | null }>;

type TextControl = HTMLInputElement | HTMLTextAreaElement;

const isTextControl = (element: Element): element is TextControl =>
  element instanceof HTMLTextAreaElement || element instanceof HTMLInputElement;

/** The field of a form that has the focus; null where none has. */
export function caretIn(form: HTMLFormElement | null): Caret | null {
  const element = document.activeElement;
  const field = element?.getAttribute("name");
  if (form === null || element === null || !form.contains(element) || !field) return null;
  const start = isTextControl(element) ? element.selectionStart : null;
  const end = isTextControl(element) ? element.selectionEnd : null;
  return { field, selected: start === null || end === null ? null : [start, end] };
}

/** Brings the caret back to where somebody typed, if drawing the form anew took it away or moved the field. */
export function putCaret(form: HTMLFormElement | null, { field, selected }: Caret): void {
  const element = form?.elements.namedItem(field);
  if (!(element instanceof HTMLElement) || element === document.activeElement) return;
  element.focus({ preventScroll: true });
  if (selected !== null && isTextControl(element)) element.setSelectionRange(...selected);
}
