/** Which organisation a new project shall belong to; asked only of whoever administers several. */
export function InOrganisation({
  organisations,
  id,
  chosen,
}: {
  organisations: readonly Readonly<{ id: string; name: string }>[];
  id: string;
  chosen?: string;
}) {
  if (organisations.length < 2) return null;
  return (
    <>
      <label htmlFor={id}>Organisation</label>
      <select id={id} name="organisation" defaultValue={chosen}>
        {organisations.map((organisation) => (
          <option key={organisation.id} value={organisation.id}>
            {organisation.name}
          </option>
        ))}
      </select>
    </>
  );
}
