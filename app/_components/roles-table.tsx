import { type ActId, actLabels, roles } from "#lib/people";
import { Scroller } from "./scroller";

/** The table that the rules go by, printed. */
export function RolesTable() {
  const all = Object.values(roles);
  const acts = Object.entries(actLabels) as [ActId, string][];
  return (
    <Scroller label="Roles and what they may do">
      <table>
        <caption className="visually-hidden">Roles and what they may do</caption>
        <thead>
          <tr>
            <th scope="col">May</th>
            {all.map(({ label }) => (
              <th key={label} scope="col">
                {label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {acts.map(([act, label]) => (
            <tr key={act}>
              <th scope="row">{label}</th>
              {all.map((role) => (
                <td key={role.label}>{role.acts.includes(act) ? "yes" : "–"}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  );
}
