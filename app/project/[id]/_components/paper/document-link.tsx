import { documentAddress, type Named, type Papers } from "./document-address";

/** A document as somebody names it, with its page; as a link that opens it there where the project keeps it. */
export function DocumentLink({ papers, named }: { papers: Papers; named: Named }) {
  const words = named.page === "" ? named.document : `${named.document}, page ${named.page}`;
  const address = documentAddress(papers, named);
  if (address === null) return words;
  return (
    <a href={address} target="_blank" rel="noopener">
      {words}
      <span className="visually-hidden"> (opens in another tab)</span>
    </a>
  );
}
