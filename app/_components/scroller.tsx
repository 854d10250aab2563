/** A region that scrolls by itself, with the keyboard too, so that wide tables and drawings never widen the page. */
export function Scroller({ label, children }: { label: string; children: React.ReactNode }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls has to be reachable by keyboard (WCAG 2.1.1)
    <section className="scroller" aria-label={label} tabIndex={0}>
      {children}
    </section>
  );
}
