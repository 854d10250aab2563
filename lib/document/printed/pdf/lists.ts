import type { Element } from "./sheet";

type Pdf = PDFKit.PDFDocument;

/** One item of a list as a screen reader sees it: its label, and the body in which deeper lists stand. */
export type ListItem = Readonly<{ label: Element; body: Element }>;

/** The lists that are open, the outermost first. Paragraphs of one depth in a row are items of one list. */
export type OpenLists = Readonly<{
  item: (depth: number) => ListItem;
  /** The body of the item above a depth, in which a remark on an item can stand; null at the outermost. */
  above: (depth: number) => Element | null;
  close: () => void;
}>;

export function openLists(pdf: Pdf, root: Element): OpenLists {
  let open: { list: Element; body: Element | null }[] = [];
  const listAt = (depth: number): { list: Element; body: Element | null } => {
    open = open.slice(0, depth + 1);
    while (open.length <= depth) {
      const parent = open.at(-1);
      const list = pdf.struct("L");
      (parent === undefined ? root : (parent.body ?? parent.list)).add(list);
      open.push({ list, body: null });
    }
    return open[depth] ?? { list: root, body: null };
  };
  return {
    item(depth) {
      const at = listAt(Math.min(depth, open.length));
      const [item, label, body] = [pdf.struct("LI"), pdf.struct("Lbl"), pdf.struct("LBody")];
      at.list.add(item);
      item.add(label).add(body);
      at.body = body;
      return { label, body };
    },
    above: (depth) => open[depth - 1]?.body ?? null,
    close() {
      open = [];
    },
  };
}
