import type { BoardPaper } from "#lib/document";

/** Views of people who decide with the others but do not agree; nothing where nobody said so. */
export function Dissents({ dissents }: Pick<BoardPaper, "dissents">) {
  if (dissents.length === 0) return null;
  return (
    <>
      <h2>Views that differ</h2>
      <dl>
        {dissents.map(({ name, words }) => (
          <div key={`${name} ${words}`}>
            <dt>{name}</dt>
            <dd>{words}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}
