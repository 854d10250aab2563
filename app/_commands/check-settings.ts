// Looks at the settings before anything is started, tells all that is the matter with them, and else what the start needs.
import { installationFrom } from "#lib/installation";

const read = installationFrom(process.env);
if (read.ok) {
  const { listen } = read.value;
  console.log(JSON.stringify({ ...listen, ...(read.value.mode === "shared" ? { address: read.value.address } : {}) }));
} else {
  for (const { sentence } of read.problem) console.error(sentence);
  process.exitCode = 1;
}
