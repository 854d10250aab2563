import { differences } from "./differences";

/** Where two versions of a document differ, entry by entry. */
export function VersionTable({ mine, theirs, theirsTitle }: { mine: unknown; theirs: unknown; theirsTitle: string }) {
  return (
    <div className="scroller">
      <table>
        <caption>Where the versions differ</caption>
        <thead>
          <tr>
            <th scope="col">Entry</th>
            <th scope="col">Yours</th>
            <th scope="col">{theirsTitle}</th>
          </tr>
        </thead>
        <tbody>
          {differences(mine, theirs).map((difference) => (
            <tr key={difference.path}>
              <th scope="row">{difference.path}</th>
              <td>{difference.mine}</td>
              <td>{difference.theirs}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
