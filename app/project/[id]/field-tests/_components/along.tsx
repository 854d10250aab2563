/** What another form of the page asked for goes along in the address. */
export function Along({ values }: { values: Readonly<Record<string, string>> }) {
  return Object.entries(values).map(([name, value]) => <input key={name} type="hidden" name={name} value={value} />);
}
